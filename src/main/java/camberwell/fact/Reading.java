package camberwell.fact;

import camberwell.vocabulary.Place;
import camberwell.vocabulary.Word;

/**
 * Something that the pyrometer or the gauge shows.
 *
 * @param place the axle or the wheel
 * @param state what it shows
 * @param certainty how clear the reading is, in (0, 1]: a ramp, not a threshold
 * @param statement the figures in words
 */
public record Reading(Place place, State state, double certainty, String statement) implements Premise {

    /** What can be read off a tyre. */
    public enum State implements Word {
        BELOW_WINDOW("below-window", true), INSIDE_WINDOW("inside-window", true), ABOVE_WINDOW("above-window", true),
        HOTTER_AXLE("hotter-axle", true), INNER_EDGE_HOT("inner-edge-hot", true),
        OUTER_EDGE_HOT("outer-edge-hot", true), MIDDLE_HOT("middle-hot", true), MIDDLE_COLD("middle-cold", true),
        EVEN_TREAD("even-tread", true), SIDES_DIFFER("sides-differ", true), ABOVE_TARGET("above-target", false),
        AT_TARGET("at-target", false), BELOW_TARGET("below-target", false),
        ABOVE_TARGET_ALONE("above-target-alone", false), BELOW_TARGET_ALONE("below-target-alone", false),
        BELOW_MINIMUM("below-minimum", false), NO_GROWTH("no-growth", false);

        private final String id;
        private final boolean temperature;

        State(String id, boolean temperature) {
            this.id = id;
            this.temperature = temperature;
        }

        @Override
        public String id() {
            return id;
        }
    }

    public boolean of(String place) {
        return this.place.is(place);
    }

    public boolean shows(String state) {
        return this.state.is(state);
    }

    /** Whether it comes from the pyrometer. */
    public boolean temperature() {
        return state.temperature;
    }

    /** Whether it comes from the gauge. */
    public boolean pressure() {
        return !state.temperature;
    }

    @Override
    public int hashCode() {
        return 31 * place.id().hashCode() + state.id().hashCode();
    }
}
