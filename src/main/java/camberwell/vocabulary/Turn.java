package camberwell.vocabulary;

/** The direction of the turns that something happens in. */
public enum Turn implements Word {
    LEFT("left"),
    RIGHT("right"),
    BOTH("both");

    private final String id;

    Turn(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** Whether it happens in turns of one direction only. */
    public boolean oneSided() {
        return this != BOTH;
    }
}
