package camberwell.vocabulary;

/** The state of the track surface. */
public enum Surface implements Word {
    DRY("dry", "no water anywhere on the line"),
    DAMP("damp", "dark and greasy, no spray"),
    WET("wet", "water that sprays");

    private final String id;
    private final String felt;

    Surface(String id, String felt) {
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
