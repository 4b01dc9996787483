package camberwell.vocabulary;

/** What came of a change, for the complaints that it was made for. */
public enum Outcome implements Word {
    BETTER("better", "it helped"),
    SAME("same", "no effect"),
    WORSE("worse", "it got worse"),
    /** Too few laps, or too much else changed: it says nothing for the change or against it. */
    UNCLEAR("unclear", "cannot tell");

    private final String id;
    private final String told;

    Outcome(String id, String told) {
        this.id = id;
        this.told = told;
    }

    @Override
    public String id() {
        return id;
    }

    /** In a few words: {@code no effect}. */
    public String told() {
        return told;
    }
}
