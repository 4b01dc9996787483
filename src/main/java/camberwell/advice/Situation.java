package camberwell.advice;

import camberwell.physics.CornerPhase;
import camberwell.physics.CornerSpeed;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Phase;
import java.util.Optional;

/**
 * The part of a corner, and its speed, in which a change is looked at by the handling model: those of the complaint, as
 * far as they are said. What acts in one part of the corner alone is looked at there, and a wing in fast corners.
 *
 * @param phase part of the corner
 * @param speed typical speed of the corner
 */
record Situation(CornerPhase phase, CornerSpeed speed) {

    static Situation of(Adjuster adjuster, Optional<Complaint> complaint) {
        CornerSpeed usual = adjuster.adjustment() == Adjustment.WING ? CornerSpeed.FAST : CornerSpeed.MEDIUM;
        return new Situation(phase(adjuster, complaint.flatMap(Complaint::phase)),
                complaint.flatMap(Complaint::speed).map(said -> CornerSpeed.valueOf(said.name())).orElse(usual));
    }

    private static CornerPhase phase(Adjuster adjuster, Optional<Phase> said) {
        return switch (adjuster) {
            case BRAKE_BIAS, DIFFERENTIAL_COAST -> CornerPhase.ENTRY;
            case DIFFERENTIAL_POWER -> CornerPhase.EXIT;
            default -> said.map(phase -> switch (phase) {
                case BRAKING, ENTRY -> CornerPhase.ENTRY;
                case LIFT_OFF -> CornerPhase.LIFT_OFF;
                case EXIT -> CornerPhase.EXIT;
                case MID_CORNER, STRAIGHT, KERBS -> CornerPhase.MID_CORNER;
            }).orElse(CornerPhase.MID_CORNER);
        };
    }
}
