package camberwell.fact;

import camberwell.run.Conditions;
import camberwell.units.Unit;
import camberwell.vocabulary.Surface;
import java.util.List;

/** The day and the place, as the rules ask about them. */
public record Day(Conditions conditions) implements Premise {

    /** What a day can be asked. */
    public static final Kind KIND = new Kind("Day", true, List.of(Attribute.of("surface", Surface.class),
            Attribute.of("circuit", "both-ways", "one-way"),
            Attribute.of("track", "cold", "mild", "hot"), Attribute.number("track-temperature", Unit.CELSIUS)));

    /** Below this the track warms no tyre: common practice, no source. */
    private static final double COLD_TRACK_CELSIUS = 15;
    /** Above this the track cools no tyre: common practice, no source. */
    private static final double HOT_TRACK_CELSIUS = 38;

    @Override
    public Kind kind() {
        return KIND;
    }

    @Override
    public String word(String attribute) {
        return switch (attribute) {
            case "surface" -> conditions.surface().id();
            case "circuit" -> conditions.turns().oneSided() ? "one-way" : "both-ways";
            case "track" -> coldTrack() ? "cold" : hotTrack() ? "hot" : conditions.track().isPresent() ? "mild" : null;
            default -> throw unasked(attribute);
        };
    }

    /** Whether the track is known to be too cold to warm a tyre. */
    public boolean coldTrack() {
        return number("track-temperature") < COLD_TRACK_CELSIUS;
    }

    /** Whether the track is known to be too hot to cool a tyre. */
    public boolean hotTrack() {
        return number("track-temperature") > HOT_TRACK_CELSIUS;
    }

    @Override
    public double number(String attribute) {
        if (attribute.equals("track-temperature")) {
            return conditions.track().isPresent() ? conditions.track().get().in(Unit.CELSIUS) : Double.NaN;
        }
        throw unasked(attribute);
    }

    @Override
    public String says(String attribute) {
        return switch (attribute) {
            case "circuit" -> "the circuit turns " + (word(attribute).equals("one-way") ? "mostly one way" : "both ways");
            case "surface" -> "the surface is " + conditions.surface().id();
            case "track", "track-temperature" -> conditions.track().map(track -> "the track is at " + track)
                    .orElse("the track temperature is not given");
            default -> throw unasked(attribute);
        };
    }

    @Override
    public int hashCode() {
        return conditions.surface().id().hashCode();
    }

    @Override
    public double certainty() {
        return 1;
    }

    @Override
    public String statement() {
        String surface = conditions.said().map(it -> it.id() + " track").orElse("track");
        return conditions.track().isPresent() ? surface + " at " + conditions.track().get()
                : conditions.said().isPresent() ? surface : "nothing told of the track";
    }
}
