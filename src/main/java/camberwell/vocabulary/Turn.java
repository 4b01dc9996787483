package camberwell.vocabulary;

/** The direction of the turns that something happens in. */
public enum Turn implements Word {
    LEFT("left", "left turns"),
    RIGHT("right", "right turns"),
    BOTH("both", "no difference between left and right");

    private final String id;
    private final String felt;

    Turn(String id, String felt) {
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

    /** Whether it happens in turns of one direction only. */
    public boolean oneSided() {
        return this != BOTH;
    }
}
