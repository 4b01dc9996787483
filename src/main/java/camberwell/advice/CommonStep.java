package camberwell.advice;

import camberwell.vocabulary.Adjuster;

/** How far a person usually goes in one go, where nothing is known of the car: common practice, no source. */
final class CommonStep {

    private CommonStep() {
    }

    /** In words, with the unit. */
    static String of(Adjuster adjuster) {
        return switch (adjuster.kind()) {
            case TOE -> "a common step is 0.05 to 0.1° a wheel, about half a millimetre to one at the rim";
            case CAMBER -> "a common step is 0.25 to 0.5°";
            case CASTER -> "a common step is 0.5°";
            case PRESSURE -> "a common step is 0.05 to 0.1 bar cold, about 1 psi";
            case STIFFNESS -> adjuster.id().endsWith("springs") ? "a common step is one spring rate, about a tenth"
                    : "a common step is one position, or one or two clicks";
            case HEIGHT -> "a common step is 2 to 3 mm";
            case WING -> "a common step is one hole, or one degree";
            case BRAKE_BIAS -> "a common step is half a per cent to one";
            case DIFFERENTIAL -> "a common step is one position";
        };
    }
}
