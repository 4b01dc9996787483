package camberwell.vocabulary;

/** Where in the corner, or beside it, something happens. */
public enum Phase implements Word {
    /** In a straight line, from the first touch of the pedal to turn-in. */
    BRAKING("braking", "under braking", "in a straight line on the brakes, before you turn the wheel"),
    /** From turn-in to the apex, often still on the brakes. */
    ENTRY("entry", "at entry", "from turning the wheel to the inmost point of the corner"),
    /** The throttle closed in the corner, without braking: the power-off of ISO 9816. */
    LIFT_OFF("lift-off", "at lift-off", "when you come off the throttle in the corner and do not brake"),
    /** Around the apex, neither brake nor throttle to speak of. */
    MID_CORNER("mid-corner", "at mid-corner", "around the inmost point, on neither pedal to speak of"),
    /** From the apex outwards, on the power. */
    EXIT("exit", "at exit", "from the inmost point outwards, on the throttle"),
    /** Running straight. */
    STRAIGHT("straight", "on the straight", "running straight"),
    /** Over kerbs and sharp bumps. */
    KERBS("kerbs", "over kerbs", "over kerbs and sharp bumps");

    private final String id;
    private final String at;
    private final String felt;

    Phase(String id, String at, String felt) {
        this.id = id;
        this.at = at;
        this.felt = felt;
    }

    @Override
    public String id() {
        return id;
    }

    /** Where it happens, as the end of a sentence: {@code at entry}, {@code over kerbs}. */
    public String at() {
        return at;
    }

    @Override
    public String felt() {
        return felt;
    }
}
