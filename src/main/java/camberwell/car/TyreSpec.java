package camberwell.car;

import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import java.util.Optional;

/**
 * What the maker says of the tyres of one axle, as far as it is known. Pressures are gauge pressures.
 *
 * @param windowLow lower end of the working range of the tread
 * @param windowHigh upper end of the working range of the tread
 * @param hotTarget the pressure to run at when hot
 * @param leftTarget that of the left tyre, where it has one of its own
 * @param rightTarget that of the right tyre, where it has one of its own
 * @param coldMinimum the lowest cold pressure that the maker or the series allows
 * @param rim rim diameter, at which toe in millimetres is measured
 * @param diameter outer diameter of the tyre
 * @param camberPerKelvin degrees of camber that shift the spread between the edges by one kelvin
 */
public record TyreSpec(Optional<Quantity> windowLow, Optional<Quantity> windowHigh, Optional<Quantity> hotTarget,
        Optional<Quantity> leftTarget, Optional<Quantity> rightTarget, Optional<Quantity> coldMinimum,
        Optional<Quantity> rim, Optional<Quantity> diameter, Optional<Quantity> camberPerKelvin) {

    /** A tyre of which nothing is known. */
    public static final TyreSpec UNKNOWN = new TyreSpec(Optional.empty(), Optional.empty(), Optional.empty(),
            Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** The pressure that this wheel's tyre is to run at when hot: its own, or else that of the axle. */
    public Optional<Quantity> hotTarget(Wheel wheel) {
        return ownTarget(wheel).or(() -> hotTarget);
    }

    /** The hot pressure that is given for this wheel by itself. */
    public Optional<Quantity> ownTarget(Wheel wheel) {
        return wheel.left() ? leftTarget : rightTarget;
    }
}
