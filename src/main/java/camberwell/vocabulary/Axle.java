package camberwell.vocabulary;

/** An axle of the car. */
public enum Axle implements Word {
    FRONT("front"),
    REAR("rear");

    private final String id;

    Axle(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** The other axle. */
    public Axle other() {
        return this == FRONT ? REAR : FRONT;
    }
}
