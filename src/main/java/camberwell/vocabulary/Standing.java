package camberwell.vocabulary;

/** How an adjuster's present setting compares with what is ordinary for such a car. */
public enum Standing implements Word {
    /** Toe-in, any amount. */
    TOED_IN("toed-in"),
    /** Toe-out, any amount. */
    TOED_OUT("toed-out"),
    /** No toe. */
    STRAIGHT("straight"),
    /** More toe-in than is ordinary. */
    FAR_TOED_IN("far-toed-in"),
    /** More toe-out than is ordinary. */
    FAR_TOED_OUT("far-toed-out"),
    /** More negative camber, more caster, a stiffer, higher or larger setting than is ordinary. */
    BEYOND_ORDINARY("beyond-ordinary"),
    /** Less negative camber, less caster, a softer, lower or smaller setting than is ordinary. */
    SHORT_OF_ORDINARY("short-of-ordinary"),
    /** Neither. */
    ORDINARY("ordinary");

    private final String id;

    Standing(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
