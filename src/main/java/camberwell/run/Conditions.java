package camberwell.run;

import camberwell.units.Quantity;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import java.util.Optional;

/**
 * The day and the place.
 *
 * @param said the surface of the track, where anybody said what it was
 * @param air air temperature
 * @param track temperature of the track surface
 * @param coldTyres temperature of the tyres when the cold pressure was set; the air's where it is not given
 * @param altitude height of the track above the sea, for the ambient pressure
 * @param turns the way that most turns go; both unless it is said otherwise
 */
public record Conditions(Optional<Surface> said, Optional<Quantity> air, Optional<Quantity> track,
        Optional<Quantity> coldTyres, Optional<Quantity> altitude, Turn turns) {

    /** The surface of the track: dry unless it is said otherwise. */
    public Surface surface() {
        return said.orElse(Surface.DRY);
    }

    /** The same day on another surface. */
    public Conditions withSurface(Surface other) {
        return new Conditions(Optional.of(other), air, track, coldTyres, altitude, turns);
    }

    /** The same day with the air at another temperature. */
    public Conditions withAir(Quantity other) {
        return new Conditions(said, Optional.of(other), track, coldTyres, altitude, turns);
    }

    /** The same day with the track at another temperature. */
    public Conditions withTrack(Quantity other) {
        return new Conditions(said, air, Optional.of(other), coldTyres, altitude, turns);
    }

    /** The same day on a circuit that mostly turns another way. */
    public Conditions withTurns(Turn others) {
        return new Conditions(said, air, track, coldTyres, altitude, others);
    }

    /** A day of which nothing is known. */
    public static final Conditions UNKNOWN = new Conditions(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), Turn.BOTH);
}
