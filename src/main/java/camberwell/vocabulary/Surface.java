package camberwell.vocabulary;

/** The state of the track surface. */
public enum Surface implements Word {
    DRY("dry"),
    DAMP("damp"),
    WET("wet");

    private final String id;

    Surface(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
