package camberwell.vocabulary;

/** Adjusters that are worked on in the same way, by the name that a mechanic calls them. */
public enum Group implements Word {
    TOE("toe"),
    CAMBER("camber"),
    CASTER("caster"),
    PRESSURES("pressures"),
    BARS("bars"),
    SPRINGS("springs"),
    DAMPERS("dampers"),
    RIDE_HEIGHTS("ride-heights"),
    WINGS("wings"),
    BRAKE_BIAS("brake-bias"),
    DIFFERENTIAL("differential");

    private final String id;

    Group(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** The group of an adjuster. */
    public static Group of(Adjuster adjuster) {
        return switch (adjuster.kind()) {
            case TOE -> TOE;
            case CAMBER -> CAMBER;
            case CASTER -> CASTER;
            case PRESSURE -> PRESSURES;
            case STIFFNESS -> switch (adjuster) {
                case FRONT_ANTI_ROLL_BAR, REAR_ANTI_ROLL_BAR -> BARS;
                case FRONT_SPRINGS, REAR_SPRINGS -> SPRINGS;
                default -> DAMPERS;
            };
            case HEIGHT -> RIDE_HEIGHTS;
            case WING -> WINGS;
            case BRAKE_BIAS -> BRAKE_BIAS;
            case DIFFERENTIAL -> DIFFERENTIAL;
        };
    }
}
