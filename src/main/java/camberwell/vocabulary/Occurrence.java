package camberwell.vocabulary;

/** How regularly a complaint comes. */
public enum Occurrence implements Word {
    EVERY_LAP("every-lap"),
    SOME_LAPS("some-laps"),
    ONCE("once");

    private final String id;

    Occurrence(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
