package camberwell.vocabulary;

/** What a driver wants of the car, complaint or none. */
public enum Wish implements Word {
    MORE_ROTATION("more-rotation", "the car should turn more readily"),
    MORE_CALM("more-calm", "the car should forgive more"),
    LONGER_TYRE_LIFE("longer-tyre-life", "the tyres should last longer"),
    MORE_STRAIGHT_SPEED("more-straight-speed", "the car should be faster on the straight"),
    LIGHTER_STEERING("lighter-steering", "the wheel should take less strength");

    private final String id;
    private final String felt;

    Wish(String id, String felt) {
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
