package camberwell.debrief;

import camberwell.car.Car;
import camberwell.run.Case;
import camberwell.run.Made;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Audience;
import java.util.ArrayList;
import java.util.List;

/** How a debrief asks. A newcomer is asked about what was felt; the others are asked in the trade's words. */
public final class Phrases {

    private Phrases() {
    }

    /**
     * The question.
     *
     * @param complaint what it is about, in words; empty where it is about the whole run
     */
    public static String question(Topic topic, String complaint, Audience audience) {
        String of = complaint.isEmpty() ? "" : " (" + complaint + ")";
        boolean newcomer = audience == Audience.NEWCOMER;
        return switch (topic.field()) {
            case CAR -> newcomer ? "Which of these is most like your car?" : "What kind of car is it?";
            case DRIVE -> newcomer ? "Which wheels does the engine turn?" : "Which wheels are driven?";
            case DOING -> newcomer ? "What did you feel the car do? Say it in your own words, or pick from the list; the "
                    + "worst first."
                    : "What was the car doing? In your own words or from the list, the worst first.";
            // Of a complaint that names its corners, they are not asked again.
            case PHASE -> complaint.endsWith(" corners") ? (newcomer ? "Where in the corner did you feel it?" : "Where in the "
                    + "corner?") + of : newcomer ? "Where in the corner did you feel it, and in what kind of corner?" + of
                    : "Where, and in which corners? For instance entry slow" + of;
            case SPEED -> newcomer ? "In what kind of corner did you feel it: slow, medium or fast?" + of
                    : "In which corners?" + of;
            case WHERE -> newcomer ? "Was it the two front tyres or the two rear ones?" + of : "Front or rear?" + of;
            case SINCE -> newcomer ? "When in the run did you feel it?" + of : "Since when in the run?" + of;
            case SEVERITY -> newcomer ? "How much did it bother you, and did you feel it on every lap?" + of
                    : "How bad, and how often?" + of;
            case OCCURRENCE -> newcomer ? "Did you feel it on every lap?" + of : "How often?" + of;
            case TURN -> newcomer ? "Did you feel it only when turning one way?" + of
                    : "In turns of one direction only?" + of;
            case SIMULATOR -> newcomer ? "Was that in a simulator, or in a real car?" : "A real car, or a simulator?";
            case SURFACE -> newcomer ? "Was the track wet?" : "Surface?";
            case TRACK -> newcomer ? "How warm was the surface of the track, if somebody measured it?"
                    : "Track temperature?";
            case TYRES -> newcomer ? "Did somebody measure the tyres when you came in?"
                    : "Were the tyres read when the car came in?";
            case LOOK -> newcomer ? "How do the tyres look? Does one edge look more worn than the other, or is the rubber "
                    + "rolled up in crumbs, or blistered?" : "How do the treads look? Worn inside, outside or in the middle, "
                    + "grained, blistered, and which?";
            case CIRCUIT -> newcomer ? "Which way do most turns of the circuit go?" : "Most turns of the circuit?";
            case ELSE -> "Anything else it did?";
            case DOUBT -> "Which is right?";
            case CHANGED -> newcomer ? "What did you change on the car since then?" : "What was changed since then?";
            case CAME -> newcomer ? "Is it still there?" + of : "What became of it?" + of;
            case OWN -> topic.own().orElseThrow().ask();
            case CORRECTED -> "Told otherwise" + of;
            case BESIDES -> "Said besides";
            case CARRIED, CORNER -> "";
        };
    }

    /** What is taken where nobody said it, in words; empty where all was said. */
    public static String taken(Taken taken, Audience audience) {
        boolean newcomer = audience == Audience.NEWCOMER;
        List<String> words = new ArrayList<>();
        Field.TAKEN.stream().filter(taken.all()::contains).forEach(field -> words.add(taken(field, newcomer)));
        String otherwise = "otherwise ";
        for (Field field : Field.TAKEN) {
            if (taken.otherwise().contains(field)) {
                words.add(otherwise + taken(field, newcomer));
                otherwise = "";
            }
        }
        return String.join(", ", words);
    }

    private static String taken(Field field, boolean newcomer) {
        return switch (field) {
            case SURFACE -> newcomer ? "the track was dry" : "dry";
            case SEVERITY -> newcomer ? "it bothered you clearly" : "plain to feel";
            case OCCURRENCE -> newcomer ? "you felt it on every lap" : "on every lap";
            case SINCE -> newcomer ? "from the first lap to the last" : "all run";
            default -> newcomer ? "in left and right turns alike" : "left and right alike";
        };
    }

    /** What a run has from the one before it: the settings, and what was said of day, place and driver. */
    static String carried(Earlier earlier) {
        Case run = earlier.begun();
        List<String> carried = new ArrayList<>(List.of("the settings"));
        run.conditions().said().ifPresent(surface -> carried.add(surface.id() + " track"));
        run.driven().sheet().track().ifPresent(carried::add);
        run.driven().sheet().driver().ifPresent(driver -> carried.add("driver " + driver));
        run.driven().sheet().tyreSet().ifPresent(set -> carried.add("tyre set " + set));
        List<Made> made = run.driven().changed();
        return "Carried on from " + earlier.name() + ": " + String.join(", ", carried) + "." + (made.isEmpty() ? ""
                : " Changed since, by the car's file: " + Spoken.text(made) + ".");
    }

    /** How an answer by numbers is typed for that car; empty where the answer is a word. */
    public static String form(Topic topic, Car car) {
        return switch (topic.field()) {
            case TRACK -> "A temperature, for instance 27 or 80 F.";
            case TYRES -> "If so, type what was read, one tyre or all of them in a line: inner edge (towards the car), "
                    + "middle, outer edge, and the hot pressure in " + Reply.pressureUnit(car).symbol() + ", for instance "
                    + "92 84 78 " + example(car) + "; from front left to rear right, or with fl, fr, rl, rr. No, if nobody "
                    + "did.";
            case LOOK -> "For instance: fronts worn inside. Fine, if nothing shows; unknown, if nobody looked.";
            case SIMULATOR -> "Type car or simulator.";
            case CHANGED -> "For instance rear toe in 2 steps, or front bar softer; nothing, if nothing was.";
            default -> "";
        };
    }

    private static String example(Car car) {
        Unit unit = Reply.pressureUnit(car);
        return new Quantity(1.95, Unit.BAR).to(unit).text(unit == Unit.BAR ? 2 : 0).replace(" " + unit.symbol(), "");
    }
}
