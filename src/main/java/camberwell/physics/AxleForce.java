package camberwell.physics;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * What an axle delivers over the slip angle at its middle: its lateral force in the car's axes, and the yaw moment
 * of its unequal longitudinal forces as a lateral force that would turn the car as much.
 */
final class AxleForce implements UnivariateFunction {

    private static final int EVALUATIONS = 200;
    /** Golden-section steps; the force at a peak so located is exact to about 1e-7. */
    private static final int PEAK_STEPS = 18;
    private static final double GOLDEN = (Math.sqrt(5.0) - 1.0) / 2.0;

    private final BracketingNthOrderBrentSolver roots =
            new BracketingNthOrderBrentSolver(1e-14, 1e-13, 1e-7, 5);
    private final FourWheels wheels;
    private final AxleModel axle;
    private final double ahead;
    private final int left;
    private final boolean steered;
    /** Toe of each wheel as steer to the left: toe-in turns the left wheel right and the right wheel left. */
    private final double[] toe;
    /** Slip of each wheel beyond that of the axle's middle: its toe, and its own path round the turn. */
    private final double[] offset = new double[2];
    /** Yaw lever of each wheel's longitudinal force over the wheelbase, in the sense of this axle's side force. */
    private final double[] lever;
    private double direction;
    private double owed;
    private double slip;
    private double peakSlip;
    private double peakForce;
    private boolean peakKnown;

    /**
     * One at rest.
     *
     * @param ahead how far the axle is ahead of the centre of gravity, m; negative behind it
     * @param left its left wheel
     * @param wheelbase in m
     */
    AxleForce(AxleModel axle, double ahead, int left, boolean steered, double wheelbase, FourWheels wheels) {
        this.wheels = wheels;
        this.axle = axle;
        this.ahead = ahead;
        this.left = left;
        this.steered = steered;
        this.toe = new double[] {-axle.toe(), axle.toe()};
        double outer = Math.copySign(axle.track() / (2.0 * wheelbase), ahead);
        this.lever = new double[] {-outer, outer};
    }

    /** Forgets the last solution. */
    void forget() {
        slip = 0.0;
        peakKnown = false;
    }

    /**
     * Takes over how the car moves.
     *
     * @param speed in m/s
     * @param sideslip of the centre of gravity, rad
     * @param yawRate in rad/s
     */
    void prepare(double speed, double sideslip, double yawRate) {
        double across = speed * Math.sin(sideslip) + yawRate * ahead;
        double along = speed * Math.cos(sideslip);
        direction = Math.atan(across / along);
        double half = yawRate * axle.track() / 2.0;
        offset[0] = toe[0] - (Math.atan(across / (along - half)) - direction);
        offset[1] = toe[1] - (Math.atan(across / (along + half)) - direction);
    }

    /** Where the axle's middle goes, as an angle from the car's axis in rad. */
    double direction() {
        return direction;
    }

    /** Slip angle of one of its wheels at the equilibrium, rad. */
    double slip(int wheel) {
        return slip + offset[wheel - left];
    }

    @Override
    public double value(double atSlip) {
        return force(atSlip) - owed;
    }

    double force(double atSlip) {
        double force = 0.0;
        for (int side = 0; side < 2; side++) {
            int wheel = left + side;
            double heading = heading(atSlip, side);
            double sine = Math.sin(heading);
            double cosine = Math.cos(heading);
            double across = wheels.lateralForce(wheel, atSlip + offset[side]);
            double along = wheels.longitudinalForce[wheel];
            force += across * cosine + along * sine + lever[side] * (along * cosine - across * sine);
        }
        return force;
    }

    /** The slip angle at which the axle delivers the force; its peak, and a shortage noted, if it cannot. */
    double slipFor(double force) {
        owed = force;
        if (peakKnown) {
            peakForce = force(peakSlip);
        }
        if (!peakKnown || peakForce < 1.001 * owed) {
            findPeak();
        }
        if (owed >= peakForce) {
            slip = peakSlip;
        } else if (value(-peakSlip) >= 0.0) {
            slip = -peakSlip;
        } else {
            double start = Math.max(-0.9 * peakSlip, Math.min(0.99 * peakSlip, slip));
            slip = roots.solve(EVALUATIONS, this, -peakSlip, peakSlip, start, AllowedSolution.ANY_SIDE);
        }
        return slip;
    }

    /** Part of the capacity that is owed; above 1 where the axle falls short. */
    double use() {
        return peakForce > 0.0 ? owed / peakForce : 2.0;
    }

    /** Lateral force that it can deliver, N. */
    double capacity() {
        findPeak();
        return peakForce;
    }

    private void findPeak() {
        double inner = wheels.curve[left].peakSlip() - offset[0];
        double outer = wheels.curve[left + 1].peakSlip() - offset[1];
        // A hanging wheel has a peak too, of no force, but one that need not bracket anything.
        double low = 0.4 * (wheels.load[left] > 0.0 ? Math.min(inner, outer) : outer);
        double high = 1.3 * (wheels.load[left] > 0.0 ? Math.max(inner, outer) : outer);
        double first = high - GOLDEN * (high - low);
        double second = low + GOLDEN * (high - low);
        double atFirst = force(first);
        double atSecond = force(second);
        for (int i = 0; i < PEAK_STEPS; i++) {
            if (atFirst < atSecond) {
                low = first;
                first = second;
                atFirst = atSecond;
                second = low + GOLDEN * (high - low);
                atSecond = force(second);
            } else {
                high = second;
                second = first;
                atSecond = atFirst;
                first = high - GOLDEN * (high - low);
                atFirst = force(first);
            }
        }
        peakSlip = atFirst > atSecond ? first : second;
        peakForce = Math.max(atFirst, atSecond);
        peakKnown = true;
    }

    /** Force that the axle takes out of the car's travel; what must be pulled besides the acceleration, N. */
    double drag() {
        double drag = 0.0;
        for (int side = 0; side < 2; side++) {
            int wheel = left + side;
            double heading = heading(slip, side);
            drag += wheels.lateralForce(wheel, slip + offset[side]) * Math.sin(heading)
                    + wheels.longitudinalForce[wheel] * (1.0 - Math.cos(heading));
        }
        return drag;
    }

    /** Yaw moment of unequal longitudinal forces in the car's axes, N m, positive into the left turn. */
    double yawMoment() {
        return axle.track() / 2.0 * (forward(1) - forward(0));
    }

    private double forward(int side) {
        int wheel = left + side;
        double heading = heading(slip, side);
        return wheels.longitudinalForce[wheel] * Math.cos(heading)
                - wheels.lateralForce(wheel, slip + offset[side]) * Math.sin(heading);
    }

    /** Slope of the force at the equilibrium, N/rad; at least 1, so that a ratio of slopes stays a number. */
    double slope() {
        double slope = 0.0;
        for (int side = 0; side < 2; side++) {
            slope += wheels.ellipse[left + side] * wheels.curve[left + side].slope(slip + offset[side]);
        }
        return Math.max(1.0, slope);
    }

    private double heading(double atSlip, int side) {
        return steered ? atSlip + direction + toe[side] : toe[side];
    }
}
