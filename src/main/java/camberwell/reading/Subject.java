package camberwell.reading;

import camberwell.fact.Reading.State;
import camberwell.vocabulary.Word;

/** What a reading of the tyres is about. */
public enum Subject implements Word {
    CAMBER("camber"), PRESSURE("pressure"), TEMPERATURE("temperature"), AXLES("axles"), SIDES("sides");

    private final String id;

    Subject(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** What that state is about. An even tread is told of with the camber: it says that nothing is to be changed. */
    public static Subject of(State state) {
        return switch (state) {
            case INNER_EDGE_HOT, OUTER_EDGE_HOT, INNER_EDGE_HOT_ALONE, OUTER_EDGE_HOT_ALONE, EVEN_TREAD -> CAMBER;
            case MIDDLE_HOT, MIDDLE_COLD, ABOVE_TARGET, AT_TARGET, BELOW_TARGET, ABOVE_TARGET_ALONE,
                    BELOW_TARGET_ALONE, BELOW_MINIMUM, NO_GROWTH -> PRESSURE;
            case BELOW_WINDOW, INSIDE_WINDOW, ABOVE_WINDOW -> TEMPERATURE;
            case HOTTER_AXLE -> AXLES;
            case SIDES_DIFFER -> SIDES;
        };
    }
}
