package camberwell.model;

import camberwell.physics.CornerPhase;
import camberwell.physics.Equilibrium;
import camberwell.physics.HandlingModel;
import camberwell.physics.NoEquilibrium;
import camberwell.physics.OperatingPoint;
import camberwell.physics.Solution;
import java.util.Optional;

/**
 * How a car behaves in one part of a corner: near its limit, where the driver feels which end gives up, and well below
 * it, where the understeer gradient is a property of the car and not of the cliff edge.
 *
 * @param near near the limit
 * @param calm well below it, in the same part of the corner
 */
public record Behaviour(Equilibrium near, Equilibrium calm) {

    /** What a car is asked to do to show its behaviour, the same for a car before and after a change. */
    public record Question(CornerPhase phase, OperatingPoint near, OperatingPoint calm) {

        private static final double CALM = 0.7;
        private static final int ROUNDS = 12;
        private static final double CLOSE = 0.005;
        private static final double GRAVITY = 9.80665;

        /**
         * The question about a part of a corner at a speed.
         *
         * @param car the car that the limit is taken from
         * @param phase part of the corner
         * @param speed m/s, above 0
         * @return the question; empty when the car can hold no such point
         */
        public static Optional<Question> about(CarModel car, CornerPhase phase, double speed) {
            double steady = grip(car, CornerPhase.MID_CORNER, speed, 0);
            double longitudinal = phase.longitudinal(steady, speed);
            double grip = phase == CornerPhase.MID_CORNER ? steady : grip(car, phase, speed, longitudinal);
            if (!(grip > 0)) {
                return Optional.empty();
            }
            double near = CornerPhase.NEAR_THE_LIMIT * grip;
            return Optional.of(new Question(phase, new OperatingPoint(speed, near, longitudinal),
                    new OperatingPoint(speed, CALM * grip, longitudinal)));
        }

        /** The question at a lateral acceleration that is given, m/s². */
        public static Question at(CornerPhase phase, double speed, double lateral, double longitudinal) {
            return new Question(phase, new OperatingPoint(speed, lateral, longitudinal),
                    new OperatingPoint(speed, Math.min(lateral, CALM * lateral), longitudinal));
        }

        /**
         * The lateral acceleration that the car can hold, within a percent or two: what the weaker axle could hold with
         * its present loads, the loads brought up step by step. A tenth of the time of the exact limit.
         */
        private static double grip(CarModel car, CornerPhase phase, double speed, double longitudinal) {
            double lateral = 0.5 * GRAVITY;
            double held = 0;
            for (int round = 0; round < ROUNDS; round++) {
                Solution solution = HandlingModel.solve(car.vehicle(phase),
                        new OperatingPoint(speed, lateral, longitudinal));
                if (solution instanceof NoEquilibrium) {
                    lateral = held > 0 ? (held + lateral) / 2 : lateral / 2;
                    continue;
                }
                held = lateral;
                Equilibrium equilibrium = (Equilibrium) solution;
                double most = Math.min(equilibrium.limitBalance().front(), equilibrium.limitBalance().rear());
                if (most - held < CLOSE * most) {
                    return most;
                }
                lateral = (held + most) / 2 + 0.45 * (most - held);
            }
            return held;
        }
    }

    /** The behaviour of a car; empty when it cannot hold what is asked. */
    public static Optional<Behaviour> of(CarModel car, Question question) {
        Solution near = HandlingModel.solve(car.vehicle(question.phase()), question.near());
        Solution calm = HandlingModel.solve(car.vehicle(question.phase()), question.calm());
        return near instanceof Equilibrium atLimit && calm instanceof Equilibrium below
                ? Optional.of(new Behaviour(atLimit, below)) : Optional.empty();
    }

    /** Understeer gradient well below the limit, degrees per g; positive understeers. */
    public double understeerGradient() {
        return calm.understeerGradientDegreesPerG();
    }

    /** Limit balance near the limit: positive when the front gives up first. */
    public double limitBalance() {
        return near.limitBalance().value();
    }
}
