package camberwell.physics;

import camberwell.physics.NoEquilibrium.Reason;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * The car in a steady turn on four tyres.
 *
 * <p>Given speed, lateral and longitudinal acceleration, the model finds steer and sideslip so that lateral force and
 * yaw moment balance. It knows lateral and longitudinal load transfer ({@link LoadTransfer}), tyres with load
 * sensitivity and camber ({@link MagicFormula}), camber in roll and with steer, static toe (parallel steering),
 * drive and brake force with their splits through a friction ellipse, a differential as a locking torque, and
 * downforce. Braking and power are held long enough to settle; there is no yaw acceleration, so what dampers and
 * turn-in response do is not here, nor are tyre temperature, compliance, aerodynamic drag and ride-height change.
 * Where power is not asked for, and the inner driven wheel is too light for what it takes to hold the speed, the car
 * is let lose a little of it.
 *
 * <p><b>Bars and springs.</b> The stiffer end takes more of the elastic load transfer; a pair of tyres grips less the
 * more unequally it is loaded, so that end gives up earlier.
 *
 * <p><b>Toe.</b> In a turn the outer tyre carries more load and has the greater cornering stiffness. Toe-in gives it
 * more slip and takes slip from the inner tyre: the axle pulls harder at the same mean slip. At the front, toe-in
 * so needs less steer in the middle of the corner (towards oversteer) and toe-out more (towards understeer), though
 * toe-out sharpens turn-in, which is transient and not in this model. At the rear, toe-in needs less sideslip: stable.
 * At the limit little of it is left at the front: toe-in brings the peaks of the two tyres together, since the loaded
 * one peaks at a larger slip angle, but turns the outer tyre's force backward, against the turn. Judge front toe by the
 * understeer gradient; its sign in the limit balance is not to be relied on.
 *
 * <p><b>Camber.</b> Negative camber leans the outer tyre into the turn: camber thrust helps it and hurts the inner
 * one, and the outer one carries more load. With a tyre that has an optimum, more of it costs grip again, earlier for
 * the axle than for the outer tyre alone.
 *
 * <p>Stateless and thread-safe. Results are never NaN: where there is no equilibrium, {@link NoEquilibrium} says why.
 */
public final class HandlingModel {

    private static final double GRADIENT_STEP = 0.05;
    private static final double LIMIT_TOLERANCE = 1e-5;
    private static final int EVALUATIONS = 500;
    /** Parts of a limit at which a gap is looked for: of 12 000 drawn cars none had one further down. */
    private static final double[] LOOK_BACK = {0.94, 0.96, 0.97, 0.98, 0.985, 0.9875, 0.99, 0.9925, 0.995, 0.9975, 1};
    private static final double LEAST_BOUND = 1.0;
    private static final int ESTIMATE_ROUNDS = 8;
    /** Part of an estimate at which the next one is taken, and how near to it one may be taken to be good. */
    private static final double ESTIMATE_BELOW = 0.95;
    private static final double ESTIMATE_CLOSE = 0.06;
    private static final double ESTIMATE_FAR = 0.25;
    private static final double ESTIMATE_BACK = 0.88;

    private HandlingModel() {
    }

    /**
     * Solves an operating point.
     *
     * @param car the car
     * @param point the operating point
     * @return the equilibrium, or why there is none
     */
    public static Solution solve(VehicleModel car, OperatingPoint point) {
        CorneringSolver solver = new CorneringSolver(car);
        Solution solution = solve(solver, point);
        return solution instanceof Equilibrium equilibrium
                ? equilibrium.withUndersteerGradient(gradient(solver, car, point, Math.abs(point.lateral())))
                : solution;
    }

    /**
     * Solves an operating point for less than half the time of {@link #solve}: the understeer gradient is that of the
     * tyres' slopes alone, without load transfer.
     *
     * @param car the car
     * @param point the operating point
     * @return the equilibrium, or why there is none
     */
    public static Solution solveQuickly(VehicleModel car, OperatingPoint point) {
        return solve(new CorneringSolver(car), point);
    }

    private static Solution solve(CorneringSolver solver, OperatingPoint point) {
        Reason reason = solver.solveOrFollow(point.speed(), Math.abs(point.lateral()), point.longitudinal());
        return reason == null ? solver.describe(point) : new NoEquilibrium(point, reason);
    }

    /**
     * The most that a car can corner, within about five percent for a tenth of the time of {@link #limit}: what the
     * weaker axle could hold with its present loads, the loads brought up in a step or two.
     *
     * @param car the car
     * @param speed speed, m/s, above 0
     * @param longitudinal longitudinal acceleration, m/s², held at the same time
     * @param guess lateral acceleration to start from, m/s², above 0
     * @return m/s²; 0 where no equilibrium was found
     */
    public static double estimateLimit(VehicleModel car, double speed, double longitudinal, double guess) {
        CorneringSolver solver = new CorneringSolver(car);
        double lateral = guess;
        double held = 0.0;
        for (int round = 0; round < ESTIMATE_ROUNDS; round++) {
            Reason reason = solver.solve(speed, lateral, longitudinal);
            if (reason != null) {
                lateral = held > 0.0 ? (held + lateral) / 2.0 : ESTIMATE_BACK * lateral;
                continue;
            }
            held = lateral;
            LimitBalance balance = solver.limitBalance();
            double estimate = Math.min(balance.front(), balance.rear());
            if (estimate - held <= ESTIMATE_CLOSE * estimate) {
                return estimate;
            }
            // From far below, load transfer still to come makes the estimate too high.
            lateral = (estimate - held > ESTIMATE_FAR * estimate ? ESTIMATE_BACK : ESTIMATE_BELOW) * estimate;
        }
        return held;
    }

    /**
     * The most that a car can corner. Where the limit is a fold of the solution rather than an axle's peak it is found
     * to within about half a percent.
     *
     * @param car the car
     * @param speed speed, m/s, above 0
     * @param longitudinal longitudinal acceleration, m/s², held at the same time
     * @return the limit, and what ends it
     */
    public static CorneringLimit limit(VehicleModel car, double speed, double longitudinal) {
        CorneringSolver solver = new CorneringSolver(car);
        Reason reason = solver.solve(speed, 0.0, longitudinal);
        if (reason != null) {
            return new CorneringLimit(0.0, reason);
        }
        // Load transfer takes from what the axles could hold before it, so the limit is mostly below this.
        LimitBalance straight = solver.limitBalance();
        double high = Math.max(LEAST_BOUND, Math.min(straight.front(), straight.rear()));
        // Asked as the search below asks: else an end that only one of the two sees brackets nothing.
        reason = solver.solveOrFollow(speed, high, longitudinal);
        // Ends at the latest where the turn is too tight to steer.
        while (reason == null) {
            high *= 2.0;
            reason = solver.solveOrFollow(speed, high, longitudinal);
        }
        Beyond beyond = new Beyond(high, reason);
        UnivariateFunction margin = lateral -> {
            Reason there = solver.solveOrFollow(speed, lateral, longitudinal);
            beyond.note(lateral, there);
            return solver.margin(there);
        };
        double most = new BracketingNthOrderBrentSolver(0.0, LIMIT_TOLERANCE, 0.0, 5)
                .solve(EVALUATIONS, margin, 0.0, high, AllowedSolution.LEFT_SIDE);
        return beforeGap(solver, speed, longitudinal, new CorneringLimit(most, beyond.reason));
    }

    /**
     * A search for the end of what can be held may step over a gap: load transfer takes from one axle and gives to the
     * other, and past the first end there are sometimes equilibria again, which no driver reaches. Looks back for one.
     */
    private static CorneringLimit beforeGap(CorneringSolver solver, double speed, double longitudinal,
            CorneringLimit found) {
        double held = 0.0;
        for (double part : LOOK_BACK) {
            double lateral = part * found.lateral();
            Reason reason = solver.solveOrFollow(speed, lateral, longitudinal);
            if (reason != null) {
                // There may be another below the first that was found.
                return beforeGap(solver, speed, longitudinal,
                        edge(solver, speed, longitudinal, held, new CorneringLimit(lateral, reason)));
            }
            held = lateral;
        }
        return found;
    }

    private static CorneringLimit edge(CorneringSolver solver, double speed, double longitudinal, double held,
            CorneringLimit refused) {
        double low = held;
        double high = refused.lateral();
        Reason reason = refused.reason();
        while (high - low > LIMIT_TOLERANCE) {
            double middle = (low + high) / 2.0;
            Reason there = solver.solveOrFollow(speed, middle, longitudinal);
            if (there == null) {
                low = middle;
            } else {
                high = middle;
                reason = there;
            }
        }
        return new CorneringLimit(low, reason);
    }

    /** The lateral acceleration of {@link #limit}, m/s². */
    public static double maxLateralAcceleration(VehicleModel car, double speed, double longitudinal) {
        return limit(car, speed, longitudinal).lateral();
    }

    private static double gradient(CorneringSolver solver, VehicleModel car, OperatingPoint point, double lateral) {
        double speed = point.speed();
        double turn = car.wheelbase() / (speed * speed);
        double steer = solver.steer();
        double tangent = solver.tangentGradient();
        double below = Math.abs(lateral - GRADIENT_STEP);
        boolean hasBelow = solver.solveNear(speed, below, point.longitudinal()) == null;
        double steerBelow = Math.copySign(1.0, lateral - GRADIENT_STEP) * solver.steer();
        boolean hasAbove = solver.solveNear(speed, lateral + GRADIENT_STEP, point.longitudinal()) == null;
        double steerAbove = solver.steer();
        if (hasBelow && hasAbove) {
            return (steerAbove - steerBelow) / (2.0 * GRADIENT_STEP) - turn;
        }
        if (hasBelow) {
            return (steer - steerBelow) / GRADIENT_STEP - turn;
        }
        return hasAbove ? (steerAbove - steer) / GRADIENT_STEP - turn : tangent;
    }

    /** Remembers what ran out at the least acceleration that could not be held. */
    private static final class Beyond {

        private double least;
        private Reason reason;

        Beyond(double least, Reason reason) {
            this.least = least;
            this.reason = reason;
        }

        void note(double lateral, Reason there) {
            if (there != null && lateral <= least) {
                least = lateral;
                reason = there;
            }
        }
    }
}
