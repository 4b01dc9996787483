package camberwell.debrief;

import camberwell.car.Car;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Audience;

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
            case DOING -> newcomer ? "What did you feel the car do? Name one thing or several, the worst first."
                    : "What was the car doing? One or more, the worst first.";
            case PHASE -> newcomer ? "Where in the corner did you feel it, and in what kind of corner?" + of
                    : "Where, and in which corners? For instance entry slow" + of;
            case SPEED -> newcomer ? "In what kind of corner did you feel it?" + of : "In which corners?" + of;
            case WHERE -> newcomer ? "Was it the two front tyres or the two rear ones?" + of : "Front or rear?" + of;
            case SINCE -> newcomer ? "When in the run did you feel it?" + of : "Since when in the run?" + of;
            case SEVERITY -> newcomer ? "How much did it bother you, and did you feel it on every lap?" + of
                    : "How bad, and how often?" + of;
            case OCCURRENCE -> newcomer ? "Did you feel it on every lap?" + of : "How often?" + of;
            case TURN -> newcomer ? "Did you feel it only when turning one way?" + of
                    : "In turns of one direction only?" + of;
            case SURFACE -> newcomer ? "How wet was the track?" : "Surface?";
            case TRACK -> newcomer ? "How warm was the surface of the track, if somebody measured it?"
                    : "Track temperature?";
            case TYRES -> newcomer ? "Did somebody measure the tyres when you came in? Tyre by tyre, the temperature "
                    + "of the tread near the inside edge, in the middle and near the outside edge; then the pressure."
                    : "Tyres, wheel by wheel: inner, middle, outer, hot pressure.";
            case CIRCUIT -> newcomer ? "Which way do most turns of the circuit go?" : "Most turns of the circuit?";
        };
    }

    /** How an answer by numbers is typed for that car; empty where the answer is a word. */
    public static String form(Topic topic, Car car) {
        return switch (topic.field()) {
            case TRACK -> "A temperature, for instance 27 or 80 F.";
            case TYRES -> "For instance 92 84 78; inner is the edge that faces the car. With the hot pressure in "
                    + Reply.pressureUnit(car).symbol() + ": 92 84 78 " + example(car) + ", or " + example(car)
                    + " alone. Unknown if nobody measured.";
            default -> "";
        };
    }

    private static String example(Car car) {
        Unit unit = Reply.pressureUnit(car);
        return new Quantity(1.95, Unit.BAR).to(unit).text(unit == Unit.BAR ? 2 : 0).replace(" " + unit.symbol(), "");
    }
}
