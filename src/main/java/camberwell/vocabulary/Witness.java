package camberwell.vocabulary;

/** By what the outcome of a change was judged. */
public enum Witness implements Word {
    /** The driver's impression and nothing else. */
    DRIVER("driver"),
    /** The complaints, graded before the change and after it. */
    COMPLAINTS("complaints"),
    LAPS("laps"),
    LOG("log");

    private final String id;

    Witness(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
