package camberwell.vocabulary;

/** What a change acts on beside the complaints: things that a driver likes to keep. */
public enum Quality implements Word {
    /** How promptly the car answers the first steering input. */
    TURN_IN_RESPONSE("turn-in-response"),
    /** Drag: from toe, wings and rolling resistance. */
    STRAIGHT_LINE_SPEED("straight-line-speed"),
    /** How little the car needs minding on a straight and under braking. */
    STRAIGHT_LINE_STABILITY("straight-line-stability"),
    /** How hard the tyres can brake in a straight line. */
    BRAKING_GRIP("braking-grip"),
    /** How much power the driven tyres can put down. */
    TRACTION("traction"),
    /** How long the tyres last and how evenly they wear. */
    TYRE_LIFE("tyre-life"),
    /** How well the car takes kerbs and bumps. */
    KERB_RIDE("kerb-ride"),
    /** How steady the body is held over the road, for the aerodynamics and the stops. */
    PLATFORM_CONTROL("platform-control"),
    /** How clearly the wheel tells what the front tyres do. */
    STEERING_FEEL("steering-feel");

    private final String id;

    Quality(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
