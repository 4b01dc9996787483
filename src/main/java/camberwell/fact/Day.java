package camberwell.fact;

import camberwell.run.Conditions;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import java.util.List;
import java.util.Optional;

/**
 * The day and the place, as the rules ask about them.
 *
 * @param thresholds from what on its words hold
 */
public record Day(Conditions conditions, Thresholds thresholds) implements Premise {

    /** What a day can be asked. */
    public static final Kind KIND = new Kind("Day", true, List.of(Attribute.of("surface", Surface.class),
            Attribute.of("circuit", "both-ways", "one-way"),
            Attribute.of("track", "cold", "mild", "hot"), Attribute.of("turns", Turn.class),
            Attribute.number("track-temperature", Unit.CELSIUS)), Day::figure);

    private static final String IN = " in ";

    /** With camberwell's own thresholds. */
    public Day(Conditions conditions) {
        this(conditions, Thresholds.BUILT_IN);
    }

    /** {@code track in °C}, {@code air in °F}. */
    private static Attribute figure(String name) {
        int in = name.indexOf(IN);
        Optional<Unit> unit = in < 0 ? Optional.empty() : Unit.withSymbol(name.substring(in + IN.length()));
        return unit.filter(it -> it.dimension() == Unit.Dimension.TEMPERATURE).isEmpty() ? null
                : name.startsWith("track ") ? Attribute.measured(name, unit.get(), Measure.TRACK)
                : name.startsWith("air ") ? Attribute.measured(name, unit.get(), Measure.AIR) : null;
    }

    @Override
    public Kind kind() {
        return KIND;
    }

    @Override
    public String word(String attribute) {
        return switch (attribute) {
            case "surface" -> conditions.surface().id();
            case "circuit" -> conditions.turns().oneSided() ? "one-way" : "both-ways";
            case "turns" -> conditions.turns().id();
            case "track" -> coldTrack() ? "cold" : hotTrack() ? "hot" : conditions.track().isPresent() ? "mild" : null;
            default -> throw unasked(attribute);
        };
    }

    /** Whether the track is known to be too cold to warm a tyre. */
    public boolean coldTrack() {
        return number("track-temperature") < thresholds.coldTrack();
    }

    /** Whether the track is known to be too hot to cool a tyre. */
    public boolean hotTrack() {
        return number("track-temperature") > thresholds.hotTrack();
    }

    @Override
    public double number(String attribute) {
        if (attribute.equals("track-temperature")) {
            return conditions.track().isPresent() ? conditions.track().get().in(Unit.CELSIUS) : Double.NaN;
        }
        Unit unit = KIND.attribute(attribute).flatMap(Attribute::unit).orElseThrow(() -> unasked(attribute));
        Optional<Quantity> asked = attribute.startsWith("air ") ? conditions.air() : conditions.track();
        return asked.isPresent() ? asked.get().in(unit) : Double.NaN;
    }

    @Override
    public String says(String attribute) {
        if (attribute.startsWith("air ")) {
            return conditions.air().map(air -> "the air is at " + air).orElse("the air temperature is not given");
        }
        return switch (attribute.startsWith("track ") ? "track" : attribute) {
            case "turns" -> conditions.turns() == Turn.BOTH ? "the circuit turns both ways"
                    : "most turns of the circuit go " + conditions.turns().id();
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
