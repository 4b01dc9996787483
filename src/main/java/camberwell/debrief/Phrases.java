package camberwell.debrief;

import camberwell.car.Car;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;

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

    /** What a word means to somebody who felt it. */
    public static String felt(Word word) {
        if (word instanceof Symptom symptom) {
            return felt(symptom);
        }
        if (word instanceof Phase phase) {
            return switch (phase) {
                case BRAKING -> "in a straight line on the brakes, before you turn the wheel";
                case ENTRY -> "from turning the wheel to the inmost point of the corner";
                case LIFT_OFF -> "when you come off the throttle in the corner and do not brake";
                case MID_CORNER -> "around the inmost point, on neither pedal to speak of";
                case EXIT -> "from the inmost point outwards, on the throttle";
                case STRAIGHT -> "running straight";
                case KERBS -> "over kerbs and sharp bumps";
            };
        }
        if (word instanceof CornerSpeed speed) {
            return switch (speed) {
                case SLOW -> "hairpins and corners in the low gears";
                case MEDIUM -> "corners in between";
                case FAST -> "sweepers, in the high gears";
            };
        }
        if (word instanceof Severity severity) {
            return switch (severity) {
                case SLIGHT -> "you notice it, and can live with it";
                case CLEAR -> "it costs time or confidence";
                case STRONG -> "it decides how you have to drive";
            };
        }
        if (word instanceof Since since) {
            return switch (since) {
                case FIRST_LAPS -> "at the start, and better later";
                case WHOLE_RUN -> "from the first lap to the last";
                case LATE_RUN -> "only after some laps";
            };
        }
        return phrase(word);
    }

    private static String phrase(Word word) {
        if (word instanceof Occurrence occurrence) {
            return switch (occurrence) {
                case EVERY_LAP -> "you can rely on it";
                case SOME_LAPS -> "it comes and goes";
                case ONCE -> "it happened a single time";
            };
        }
        if (word instanceof Surface surface) {
            return switch (surface) {
                case DRY -> "no water anywhere on the line";
                case DAMP -> "dark and greasy, no spray";
                case WET -> "water that sprays";
            };
        }
        if (word instanceof Turn turn) {
            return switch (turn) {
                case LEFT -> "left turns";
                case RIGHT -> "right turns";
                case BOTH -> "no difference between left and right";
            };
        }
        return word instanceof Place place ? "the " + place.spoken() + " tyres" : word.spoken();
    }

    private static String felt(Symptom symptom) {
        return switch (symptom) {
            case UNDERSTEER -> "the nose runs wide: you turn the wheel, and the car goes on straight";
            case OVERSTEER -> "the tail steps out, and you steer against it";
            case SNAP_OVERSTEER -> "the tail comes round at once, without warning";
            case WHEELSPIN -> "you press the throttle, the wheels spin and the car hardly goes";
            case FRONT_LOCKING -> "on the brakes a front wheel stops turning: smoke, no steering";
            case REAR_LOCKING -> "on the brakes a rear wheel stops turning: the tail goes light";
            case UNSTABLE_BRAKING -> "the car weaves on the brakes";
            case SLOW_TURN_IN -> "you turn the wheel, and the car takes its time";
            case NERVOUS_TURN_IN -> "a touch of the wheel, and the car darts";
            case WANDERING -> "it will not run straight by itself";
            case PULLING -> "it draws to one side";
            case HEAVY_STEERING -> "the wheel takes strength";
            case LIGHT_STEERING -> "the wheel goes light and tells you nothing";
            case SLOW_WARM_UP -> "the tyres take too long to grip";
            case OVERHEATING -> "the tyres grip less and less as they get hot";
            case GRAINING -> "the tread rolls up into little balls of rubber";
            case BOTTOMING -> "the floor or the stops hit: a bang, and the car skips";
            case KERB_INSTABILITY -> "kerbs throw the car";
            case HOT_INNER_EDGE -> "the edge of the tread that faces the car is the hot or worn one";
            case HOT_OUTER_EDGE -> "the edge of the tread that faces away is the hot or worn one";
            case HOT_MIDDLE -> "the middle of the tread is the hot or worn part";
            case COLD_MIDDLE -> "the middle of the tread works less than its edges";
        };
    }
}
