package camberwell.physics;

import java.util.Optional;

/**
 * The car cannot hold the operating point.
 *
 * @param point the operating point
 * @param reason what ran out
 */
public record NoEquilibrium(OperatingPoint point, Reason reason) implements Solution {

    /** What ran out. */
    public enum Reason {
        /** The front tyres have no more lateral force: the car ploughs. */
        FRONT_GRIP(AxleEnd.FRONT),
        /** The rear tyres have no more lateral force: the car spins. */
        REAR_GRIP(AxleEnd.REAR),
        /** A driven front wheel spins. */
        FRONT_TRACTION(AxleEnd.FRONT),
        /** A driven rear wheel spins. */
        REAR_TRACTION(AxleEnd.REAR),
        /** All wheels brake as hard as they can. */
        BRAKING(null),
        /** Both inner wheels are off the ground. */
        ROLLOVER(null),
        /** The turn's radius is less than the car can steer. */
        TURN_TOO_TIGHT(null),
        /** The iteration did not settle; only within a hair of the limit. */
        NOT_SETTLED(null);

        private final AxleEnd axle;

        Reason(AxleEnd axle) {
            this.axle = axle;
        }

        /** The axle that ran out, where it is one axle. */
        public Optional<AxleEnd> axle() {
            return Optional.ofNullable(axle);
        }
    }
}
