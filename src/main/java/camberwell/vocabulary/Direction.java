package camberwell.vocabulary;

/** Which way an adjuster is moved. */
public enum Direction implements Word {
    TOE_OUT("toe-out"),
    TOE_IN("toe-in"),
    MORE_NEGATIVE("more-negative"),
    LESS_NEGATIVE("less-negative"),
    MORE("more"),
    LESS("less"),
    HIGHER("higher"),
    LOWER("lower"),
    SOFTER("softer"),
    STIFFER("stiffer"),
    FORWARD("forward"),
    REARWARD("rearward");

    private final String id;

    Direction(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** The way back. */
    public Direction opposite() {
        return switch (this) {
            case TOE_OUT -> TOE_IN;
            case TOE_IN -> TOE_OUT;
            case MORE_NEGATIVE -> LESS_NEGATIVE;
            case LESS_NEGATIVE -> MORE_NEGATIVE;
            case MORE -> LESS;
            case LESS -> MORE;
            case HIGHER -> LOWER;
            case LOWER -> HIGHER;
            case SOFTER -> STIFFER;
            case STIFFER -> SOFTER;
            case FORWARD -> REARWARD;
            case REARWARD -> FORWARD;
        };
    }

    /**
     * Whether the setting's number grows this way, in the signs of ISO 8855 (toe-in and less negative camber are
     * the larger numbers) and with the larger number the stiffer, higher, more forward one.
     */
    public boolean raises() {
        return switch (this) {
            case TOE_IN, LESS_NEGATIVE, MORE, HIGHER, STIFFER, FORWARD -> true;
            case TOE_OUT, MORE_NEGATIVE, LESS, LOWER, SOFTER, REARWARD -> false;
        };
    }
}
