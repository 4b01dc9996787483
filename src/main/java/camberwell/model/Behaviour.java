package camberwell.model;

import camberwell.physics.CornerPhase;
import camberwell.physics.Equilibrium;
import camberwell.physics.HandlingModel;
import camberwell.physics.OperatingPoint;
import camberwell.physics.Solution;
import camberwell.physics.VehicleModel;
import camberwell.physics.Wheels;
import java.util.Optional;

/**
 * How a car behaves in one part of a corner: near its limit, where the driver feels which end gives up, and well below
 * it, where the understeer gradient is a property of the car and not of the cliff edge.
 *
 * @param near near the limit; its understeer gradient is not to be read
 * @param calm well below it, in the same part of the corner
 */
public record Behaviour(Equilibrium near, Equilibrium calm) {

    /** A wheel that carries less hangs, N. */
    private static final double LEAST_LOAD = 1.0;

    /** What a car is asked to do to show its behaviour, the same for a car before and after a change. */
    public record Question(CornerPhase phase, OperatingPoint near, OperatingPoint calm) {

        /** Of the estimated limit, which may be a few percent too high. */
        private static final double NEAR = 0.9;
        private static final int SPEED_ROUNDS = 8;
        /** Where downforce would carry the car round at any speed, m/s. */
        private static final double MOST_SPEED = 90;
        private static final double CALM = 0.7;
        /**
         * The question about a part of a corner at a speed.
         *
         * @param car the car that the limit is taken from
         * @param phase part of the corner
         * @param speed m/s, above 0
         * @return the question; empty when the car can hold no such point
         */
        public static Optional<Question> about(CarModel car, CornerPhase phase, double speed) {
            return about(car, phase, speed, steadyGrip(car, speed));
        }

        static Optional<Question> about(CarModel car, CornerPhase phase, double speed, double steady) {
            if (!(steady > 0)) {
                return Optional.empty();
            }
            double longitudinal = phase.longitudinal(steady, speed);
            double grip = phase == CornerPhase.MID_CORNER ? steady
                    : HandlingModel.estimateLimit(car.vehicle(phase), speed, longitudinal, 0.9 * steady);
            return grip > 0 ? Optional.of(new Question(phase,
                    new OperatingPoint(speed, NEAR * grip, longitudinal),
                    new OperatingPoint(speed, CALM * grip, longitudinal))) : Optional.empty();
        }

        /**
         * The question about a turn of a given radius, at the speed that it is driven at.
         *
         * @param car the car
         * @param phase part of the corner
         * @param speed m/s, above 0
         * @param radius m, above 0
         * @return the question; empty when the car cannot turn so tight at that speed
         */
        public static Optional<Question> inTurn(CarModel car, CornerPhase phase, double speed, double radius) {
            double steady = steadyGrip(car, speed);
            double longitudinal = phase.longitudinal(steady, speed);
            OperatingPoint point = new OperatingPoint(speed, speed * speed / radius, longitudinal);
            return HandlingModel.solve(car.vehicle(phase), point) instanceof Equilibrium
                    ? Optional.of(new Question(phase, point, point)) : Optional.empty();
        }

        /**
         * The speed at which a turn of that radius is driven near the limit, m/s.
         *
         * @param car the car
         * @param phase part of the corner
         * @param radius m, above 0
         */
        public static double speedFor(CarModel car, CornerPhase phase, double radius) {
            double speed = Math.sqrt(NEAR * VehicleModel.GRAVITY * radius);
            for (int round = 0; round < SPEED_ROUNDS; round++) {
                Optional<Question> held = about(car, phase, speed);
                if (held.isEmpty()) {
                    return speed;
                }
                speed = Math.min(MOST_SPEED, Math.sqrt(held.get().near().lateral() * radius));
            }
            return speed;
        }
    }

    /** What the car can hold with neither brake nor power at a speed in m/s, nearly: m/s², 0 where nothing. */
    static double steadyGrip(CarModel car, double speed) {
        return HandlingModel.estimateLimit(car.vehicle(CornerPhase.MID_CORNER), speed, 0, VehicleModel.GRAVITY / 2);
    }

    /** The behaviour of a car; empty when it cannot hold what is asked. */
    public static Optional<Behaviour> of(CarModel car, Question question) {
        Solution near = HandlingModel.solveQuickly(car.vehicle(question.phase()), question.near());
        Solution calm = HandlingModel.solve(car.vehicle(question.phase()), question.calm());
        return near instanceof Equilibrium atLimit && calm instanceof Equilibrium below
                ? Optional.of(new Behaviour(atLimit, below)) : Optional.empty();
    }

    /** Understeer gradient well below the limit, degrees per g; positive understeers. */
    public double understeerGradient() {
        return calm.understeerGradientDegreesPerG();
    }

    /**
     * Whether a wheel hangs in the air near the limit. The springs and bars of its axle then share out nothing more,
     * and the limit says nothing of them.
     */
    public boolean wheelHangs() {
        return wheelHangs(near);
    }

    static boolean wheelHangs(Equilibrium equilibrium) {
        Wheels load = equilibrium.load();
        return Math.min(Math.min(load.frontLeft(), load.frontRight()), Math.min(load.rearLeft(), load.rearRight()))
                < LEAST_LOAD;
    }

    /** Limit balance near the limit: positive when the front gives up first. */
    public double limitBalance() {
        return near.limitBalance().value();
    }
}
