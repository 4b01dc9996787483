package camberwell.fact;

import camberwell.vocabulary.Place;
import camberwell.vocabulary.Word;
import java.util.List;

/**
 * Something that the pyrometer or the gauge shows.
 *
 * @param place the axle or the wheel
 * @param state what it shows
 * @param certainty how clear the reading is, in (0, 1]: a ramp, not a threshold
 * @param statement the figures in words
 */
public record Reading(Place place, State state, double certainty, String statement) implements Premise {

    /** What a reading can be asked. */
    public static final Kind KIND = new Kind("Reading", false, List.of(Attribute.of("place", Place.class),
            Attribute.of("shows", State.class), Attribute.of("instrument", Instrument.class)));

    /** What it was read with. */
    public enum Instrument implements Word {
        PYROMETER("pyrometer", "tread temperatures"), GAUGE("gauge", "pressures");

        private final String id;
        private final String reads;

        Instrument(String id, String reads) {
            this.id = id;
            this.reads = reads;
        }

        @Override
        public String id() {
            return id;
        }

        /** What it reads, in words. */
        public String reads() {
            return reads;
        }
    }

    /** A question that readings answer between them: one of its states shows, or none. */
    public enum Topic {
        WINDOW(Instrument.PYROMETER), TREAD(Instrument.PYROMETER), AXLES(Instrument.PYROMETER),
        SIDES(Instrument.PYROMETER), TARGET(Instrument.GAUGE), ALONE(Instrument.GAUGE),
        MINIMUM(Instrument.GAUGE), GROWTH(Instrument.GAUGE);

        private final Instrument instrument;

        Topic(Instrument instrument) {
            this.instrument = instrument;
        }
    }

    /**
     * What can be read off a tyre. Of states with the same trait no two show at one place; those without one go over
     * into others by a ramp, so that for a while both are so.
     */
    public enum State implements Word {
        BELOW_WINDOW("below-window", Topic.WINDOW, "window"), INSIDE_WINDOW("inside-window", Topic.WINDOW, ""),
        ABOVE_WINDOW("above-window", Topic.WINDOW, "window"), HOTTER_AXLE("hotter-axle", Topic.AXLES, ""),
        INNER_EDGE_HOT("inner-edge-hot", Topic.TREAD, "edges"),
        OUTER_EDGE_HOT("outer-edge-hot", Topic.TREAD, "edges"),
        INNER_EDGE_HOT_ALONE("inner-edge-hot-alone", Topic.TREAD, "edges"),
        OUTER_EDGE_HOT_ALONE("outer-edge-hot-alone", Topic.TREAD, "edges"), MIDDLE_HOT("middle-hot", Topic.TREAD, "middle"),
        MIDDLE_COLD("middle-cold", Topic.TREAD, "middle"), EVEN_TREAD("even-tread", Topic.TREAD, ""),
        SIDES_DIFFER("sides-differ", Topic.SIDES, ""), ABOVE_TARGET("above-target", Topic.TARGET, "target"),
        AT_TARGET("at-target", Topic.TARGET, ""), BELOW_TARGET("below-target", Topic.TARGET, "target"),
        ABOVE_TARGET_ALONE("above-target-alone", Topic.ALONE, ""),
        BELOW_TARGET_ALONE("below-target-alone", Topic.ALONE, ""),
        BELOW_MINIMUM("below-minimum", Topic.MINIMUM, ""), NO_GROWTH("no-growth", Topic.GROWTH, "");

        private final String id;
        private final Topic topic;
        private final String trait;

        State(String id, Topic topic, String trait) {
            this.id = id;
            this.topic = topic;
            this.trait = trait;
        }

        @Override
        public String id() {
            return id;
        }

        /** The question that it is an answer to. */
        public Topic topic() {
            return topic;
        }

        /** What it is read with. */
        public Instrument instrument() {
            return topic.instrument;
        }

        /**
         * Whether it is what is left of a measurement that does not show {@code other}: an even tread, a pressure on its target.
         */
        public boolean isRestOf(State other) {
            return topic == other.topic && trait.isEmpty() && !other.trait.isEmpty();
        }

        /** What no second state of the same trait shows beside; empty where it excludes nothing. */
        public String trait() {
            return trait;
        }
    }

    @Override
    public Kind kind() {
        return KIND;
    }

    @Override
    public String word(String attribute) {
        return switch (attribute) {
            case "place" -> place.id();
            case "shows" -> state.id();
            case "instrument" -> state.instrument().id();
            default -> throw unasked(attribute);
        };
    }

    @Override
    public double number(String attribute) {
        throw unasked(attribute);
    }

    @Override
    public String says(String attribute) {
        return switch (attribute) {
            case "place" -> "it was read at the " + place.id();
            case "shows" -> statement;
            case "instrument" -> "the " + state.instrument().id() + " was read";
            default -> throw unasked(attribute);
        };
    }

    @Override
    public int hashCode() {
        return 31 * place.id().hashCode() + state.id().hashCode();
    }
}
