package camberwell.vocabulary;

/** What the car does for its driver by itself. */
public enum Aid implements Word {
    ANTI_LOCK("anti-lock"), TRACTION_CONTROL("traction-control");

    private final String id;

    Aid(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
