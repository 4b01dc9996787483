package camberwell.advice;

import camberwell.model.Bench;
import camberwell.model.Prediction;
import camberwell.physics.CornerPhase;
import java.util.Optional;

/**
 * What the handling model predicts of a change that is advised, beside what the rules claim.
 *
 * @param prediction the car before and after
 * @param claimed the complaint that the change is said to relieve and that the model can show
 * @param relief what the model shows of that complaint
 */
public record Predicted(Prediction prediction, Optional<Complaint> claimed, Optional<Bench.Relief> relief) {

    /** Whether the model shows the relief that is claimed; empty where it can show neither. */
    public Optional<Boolean> agrees() {
        return relief.filter(it -> it != Bench.Relief.NONE).map(it -> it == Bench.Relief.BETTER);
    }

    /** A part of the corner in words. */
    public static String phase(CornerPhase phase) {
        return switch (phase) {
            case ENTRY -> "entry";
            case LIFT_OFF -> "lift-off";
            case MID_CORNER -> "mid-corner";
            case EXIT -> "exit";
        };
    }
}
