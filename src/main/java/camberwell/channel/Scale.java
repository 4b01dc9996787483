package camberwell.channel;

/** A quantity that columns are measured in, with the SI unit that camberwell reckons in. */
public enum Scale {
    TIME("s"), LENGTH("m"), SPEED("m/s"), ANGLE("rad"), ACCELERATION("m/s²"), ANGULAR_RATE("rad/s"), RATIO(""),
    PRESSURE("Pa"), TEMPERATURE("°C"), FORCE("N");

    private final String unit;

    Scale(String unit) {
        this.unit = unit;
    }

    /** The unit that values are kept in; temperatures in degrees Celsius. */
    public String unit() {
        return unit;
    }
}
