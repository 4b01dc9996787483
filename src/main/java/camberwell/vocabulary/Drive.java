package camberwell.vocabulary;

/** Which wheels are driven. */
public enum Drive implements Word {
    FRONT("front"),
    REAR("rear"),
    ALL("all");

    private final String id;

    Drive(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** Whether the wheels of {@code axle} are driven. */
    public boolean drives(Axle axle) {
        return this == ALL || (this == FRONT) == (axle == Axle.FRONT);
    }
}
