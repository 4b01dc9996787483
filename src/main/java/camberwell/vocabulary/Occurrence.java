package camberwell.vocabulary;

/** How regularly a complaint comes. */
public enum Occurrence implements Word {
    EVERY_LAP("every-lap", "you can rely on it"),
    SOME_LAPS("some-laps", "it comes and goes"),
    ONCE("once", "it happened a single time");

    private final String id;
    private final String felt;

    Occurrence(String id, String felt) {
        this.id = id;
        this.felt = felt;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String felt() {
        return felt;
    }
}
