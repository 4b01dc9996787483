package camberwell.vocabulary;

/** How fast the corner is. */
public enum CornerSpeed implements Word {
    /** Aerodynamic load hardly matters. */
    SLOW("slow", "hairpins and corners in the low gears"),
    MEDIUM("medium", "corners in between"),
    /** Aerodynamic load matters, where the car has any. */
    FAST("fast", "sweepers, in the high gears");

    private final String id;
    private final String felt;

    CornerSpeed(String id, String felt) {
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
