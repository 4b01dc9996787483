package camberwell.vocabulary;

/** A wheel, named as seen from the driver's seat. */
public enum Wheel implements Word {
    FRONT_LEFT("front-left"),
    FRONT_RIGHT("front-right"),
    REAR_LEFT("rear-left"),
    REAR_RIGHT("rear-right");

    private final String id;

    Wheel(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** The axle that this wheel is on. */
    public Axle axle() {
        return this == FRONT_LEFT || this == FRONT_RIGHT ? Axle.FRONT : Axle.REAR;
    }

    /** Whether this wheel is on the left. */
    public boolean left() {
        return this == FRONT_LEFT || this == REAR_LEFT;
    }

    /** The wheel on the other end of the axle. */
    public Wheel partner() {
        return switch (this) {
            case FRONT_LEFT -> FRONT_RIGHT;
            case FRONT_RIGHT -> FRONT_LEFT;
            case REAR_LEFT -> REAR_RIGHT;
            case REAR_RIGHT -> REAR_LEFT;
        };
    }

    /** Whether this is the outer, loaded wheel in turns of {@code turn}; in turns both ways, each wheel is in some. */
    public boolean loadedIn(Turn turn) {
        return switch (turn) {
            case LEFT -> !left();
            case RIGHT -> left();
            case BOTH -> true;
        };
    }
}
