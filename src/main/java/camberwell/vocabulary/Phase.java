package camberwell.vocabulary;

/** Where in the corner, or beside it, something happens. */
public enum Phase implements Word {
    /** In a straight line, from the first touch of the pedal to turn-in. */
    BRAKING("braking"),
    /** From turn-in to the apex, often still on the brakes. */
    ENTRY("entry"),
    /** The throttle closed in the corner, without braking: the power-off of ISO 9816. */
    LIFT_OFF("lift-off"),
    /** Around the apex, neither brake nor throttle to speak of. */
    MID_CORNER("mid-corner"),
    /** From the apex outwards, on the power. */
    EXIT("exit"),
    /** Running straight. */
    STRAIGHT("straight"),
    /** Over kerbs and sharp bumps. */
    KERBS("kerbs");

    private final String id;

    Phase(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
