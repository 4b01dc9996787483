package camberwell.vocabulary;

/** An axle or a wheel that something is bound to. */
public enum Place implements Word {
    FRONT("front"),
    REAR("rear"),
    FRONT_LEFT("front-left"),
    FRONT_RIGHT("front-right"),
    REAR_LEFT("rear-left"),
    REAR_RIGHT("rear-right");

    private final String id;

    Place(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** The axle itself, or the axle of the wheel. */
    public Axle axle() {
        return id.startsWith("front") ? Axle.FRONT : Axle.REAR;
    }
}
