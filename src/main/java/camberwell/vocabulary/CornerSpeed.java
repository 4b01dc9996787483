package camberwell.vocabulary;

/** How fast the corner is. */
public enum CornerSpeed implements Word {
    /** Aerodynamic load hardly matters. */
    SLOW("slow"),
    MEDIUM("medium"),
    /** Aerodynamic load matters, where the car has any. */
    FAST("fast");

    private final String id;

    CornerSpeed(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
