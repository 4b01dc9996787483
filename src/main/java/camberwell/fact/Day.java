package camberwell.fact;

import camberwell.run.Conditions;
import camberwell.units.Quantity;
import camberwell.units.Unit;

/** The day and the place, as the rules ask about them. A question about what is not known is answered no. */
public record Day(Conditions conditions) implements Premise {

    /** Below this the track warms no tyre: common practice, no source. */
    private static final double COLD_TRACK_CELSIUS = 15;
    /** Above this the track cools no tyre: common practice, no source. */
    private static final double HOT_TRACK_CELSIUS = 38;

    public boolean surfaceIs(String surface) {
        return conditions.surface().is(surface);
    }

    public boolean surfaceIsNot(String surface) {
        return !surfaceIs(surface);
    }

    /** Whether the circuit has its turns both ways, which is so unless somebody says otherwise. */
    public boolean turnsBothWays() {
        return !conditions.turns().oneSided();
    }

    public boolean coldTrack() {
        return conditions.track().filter(track -> track.in(Unit.CELSIUS) < COLD_TRACK_CELSIUS).isPresent();
    }

    public boolean hotTrack() {
        return conditions.track().filter(track -> track.in(Unit.CELSIUS) > HOT_TRACK_CELSIUS).isPresent();
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
        return conditions.surface().id() + " track" + conditions.track().map(Quantity::toString)
                .map(track -> " at " + track).orElse("");
    }
}
