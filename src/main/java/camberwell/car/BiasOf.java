package camberwell.car;

import camberwell.vocabulary.Word;

/** What a car's brake bias counts at the front, of front and rear together. */
public enum BiasOf implements Word {
    /** The share of the braking force. */
    FORCE("force"),
    /** The share of the line pressure, as a gauge on each circuit shows it. */
    PRESSURE("pressure");

    private final String id;

    BiasOf(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
