package camberwell.practice;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;

/**
 * Something that a driver feels of a car, against the same car as it should be.
 *
 * @param symptom what it is
 * @param phase where in the corner
 * @param speed of the corner
 * @param excess how strong, where 1 is just worth a word
 */
public record Felt(Symptom symptom, Phase phase, CornerSpeed speed, double excess) {

    private static final double CLEAR = 2;
    private static final double STRONG = 4;

    /** In the driver's words. */
    public Severity severity() {
        return excess >= STRONG ? Severity.STRONG : excess >= CLEAR ? Severity.CLEAR : Severity.SLIGHT;
    }
}
