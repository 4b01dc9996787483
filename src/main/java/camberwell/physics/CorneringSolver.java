package camberwell.physics;

import camberwell.physics.NoEquilibrium.Reason;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds the equilibrium of {@link HandlingModel} in a left turn.
 *
 * <p>Accelerations fix the wheel loads and, but for weak couplings, the lateral force that each axle owes. Each axle
 * then has one unknown, its slip angle, on the rising branch of its force up to its peak: two bracketed roots instead
 * of a search in the plane that could leave the branch. The couplings (longitudinal force to pull the steered wheels'
 * drag, yaw moment of unequal longitudinal forces, camber with steer) go round in a fixed-point iteration. An axle
 * that cannot deliver is held at its peak until the rest has settled, and only then named.
 *
 * <p>Mutable and not to be shared between threads; it lives for one question to the model. Left is inner.
 */
final class CorneringSolver {

    private static final int FRONT_LEFT = 0;
    private static final int FRONT_RIGHT = 1;
    private static final int REAR_LEFT = 2;
    private static final int REAR_RIGHT = 3;

    private static final int ROUNDS = 40;
    private static final int EVALUATIONS = 200;
    private static final double TOLERANCE = 1e-10;
    private static final double FOLDS_FROM = 0.8;
    private static final double JUST_BELOW = 0.99;
    /** Golden-section steps; the force at a peak so located is exact to about 1e-7. */
    private static final int PEAK_STEPS = 18;
    private static final double GOLDEN = (Math.sqrt(5.0) - 1.0) / 2.0;
    /** Part of the inner wheel's grip that the differential uses before it shifts torque to the outer one. */
    private static final double INNER_WHEEL_SPINS_FROM = 0.9;
    /** Part of a wheel's grip that braking may use; what a wheel cannot take, the others must. */
    private static final double BRAKED_PART = 0.95;
    private static final double DRIVEN_PART = 0.999;
    /** Lateral acceleration, m/s², about which the wheels' speed difference makes a differential lock. */
    private static final double LOCKING_SETS_IN = 0.5;
    /** Turns tighter than this part of a radius of one wheelbase are for forklifts. */
    private static final double TIGHTEST_TURN = 0.8;

    private final VehicleModel car;
    private final AxleForce frontForce;
    private final AxleForce rearForce;
    private final BracketingNthOrderBrentSolver roots =
            new BracketingNthOrderBrentSolver(1e-14, 1e-13, 1e-7, 5);

    private final Broyden coupling = new Broyden();
    private final Newton newton = new Newton();
    private final double[] off = new double[3];
    private final double[] load = new double[4];
    private final double[] lean = new double[4];
    private final double[] longitudinalForce = new double[4];
    private final double[] ellipse = new double[4];
    private final MagicCurve[] curve = new MagicCurve[4];
    private double speed;
    private double lateral;
    private double longitudinal;
    private double roll;
    private double frontTravel;
    private double rearTravel;
    private double steer;
    private double sideslip;
    private double pull;
    private double frontMoment;
    private double forceScale;
    private double momentScale;
    private boolean placed;
    private boolean folded;
    private boolean brakesShort;
    private boolean frontTractionShort;
    private boolean rearTractionShort;

    CorneringSolver(VehicleModel car) {
        this.car = car;
        this.frontForce = new AxleForce(car.front(), car.cgToFront(), FRONT_LEFT, true);
        this.rearForce = new AxleForce(car.rear(), -car.cgToRear(), REAR_LEFT, false);
    }

    /**
     * Solves from scratch.
     *
     * @return null when in equilibrium, else what ran out
     */
    Reason solve(double atSpeed, double atLateral, double atLongitudinal) {
        steer = car.wheelbase() * atLateral / (atSpeed * atSpeed);
        sideslip = 0.0;
        pull = car.mass() * atLongitudinal;
        frontMoment = 0.0;
        frontForce.forget();
        rearForce.forget();
        return solveNear(atSpeed, atLateral, atLongitudinal);
    }

    /**
     * Solves from scratch, and where the iteration did not settle once more from a solution below: near a fold there are
     * points that it misses.
     */
    Reason solveOrFollow(double atSpeed, double atLateral, double atLongitudinal) {
        Reason reason = solve(atSpeed, atLateral, atLongitudinal);
        if (reason == null || !folded) {
            return reason;
        }
        return solve(atSpeed, JUST_BELOW * atLateral, atLongitudinal) == null
                ? solveNear(atSpeed, atLateral, atLongitudinal) : solve(atSpeed, atLateral, atLongitudinal);
    }

    /** Solves from where the last solution left off. */
    Reason solveNear(double atSpeed, double atLateral, double atLongitudinal) {
        speed = atSpeed;
        lateral = atLateral;
        longitudinal = atLongitudinal;
        placed = false;
        folded = false;
        if (lateral * car.wheelbase() > TIGHTEST_TURN * speed * speed) {
            return Reason.TURN_TOO_TIGHT;
        }
        Reason fallen = placeLoads();
        if (fallen != null) {
            return fallen;
        }
        placed = true;
        return iterate();
    }

    private Reason placeLoads() {
        double front = car.mass() * VehicleModel.GRAVITY * car.frontWeightFraction();
        double rear = car.mass() * VehicleModel.GRAVITY - front;
        double moved = LoadTransfer.longitudinal(car.mass(), car.cgHeight(), car.wheelbase(), longitudinal);
        front += car.front().downforce() * speed * speed - moved;
        rear += car.rear().downforce() * speed * speed + moved;
        if (!(front > 0.0)) {
            return Reason.FRONT_GRIP;
        }
        if (!(rear > 0.0)) {
            return Reason.REAR_GRIP;
        }
        LoadTransfer.Lateral transfer = car.lateralTransfer(lateral);
        roll = transfer.roll();
        frontTravel = transfer.frontTravel();
        rearTravel = transfer.rearTravel();
        double acrossFront = transfer.front().total();
        double acrossRear = transfer.rear().total();
        double trackRatio = car.front().track() / car.rear().track();
        if (acrossFront > front / 2.0) {
            // The inner front wheel hangs: the rear axle carries what is left of the roll moment.
            acrossRear += (acrossFront - front / 2.0) * trackRatio;
            acrossFront = front / 2.0;
        } else if (acrossRear > rear / 2.0) {
            acrossFront += (acrossRear - rear / 2.0) / trackRatio;
            acrossRear = rear / 2.0;
        }
        if (acrossFront > front / 2.0 || acrossRear > rear / 2.0) {
            return Reason.ROLLOVER;
        }
        load[FRONT_LEFT] = front / 2.0 - acrossFront;
        load[FRONT_RIGHT] = front / 2.0 + acrossFront;
        load[REAR_LEFT] = rear / 2.0 - acrossRear;
        load[REAR_RIGHT] = rear / 2.0 + acrossRear;
        return null;
    }

    /**
     * Broyden's method on the couplings, started as a plain fixed-point iteration (which the couplings outgrow where
     * an axle's force is nearly flat); Newton's where that does not settle, as happens within a few percent of a fold.
     */
    private Reason iterate() {
        forceScale = car.mass() * VehicleModel.GRAVITY;
        momentScale = forceScale * car.wheelbase();
        coupling.restart();
        for (int round = 0; round < ROUNDS; round++) {
            follow();
            if (largest(off) < TOLERANCE) {
                steer += off[0];
                return verdict();
            }
            coupling.step(off[0], off[1], off[2]);
            move(coupling.step, 1.0);
        }
        follow();
        if (newton.settle()) {
            return verdict();
        }
        // Within a hair of the limit each axle could still deliver, but not together with what that asks of the other
        // forces: the solution has a fold there, and the iteration nothing to settle on.
        Reason verdict = verdict();
        if (verdict == null) {
            folded = true;
            verdict = use() < FOLDS_FROM ? Reason.NOT_SETTLED : busier();
        }
        return verdict;
    }

    /** Goes round the couplings once: {@code off} is how far each of the three is from what follows from it. */
    private void follow() {
        shapeTyres();
        shareLongitudinalForce();
        double yawRate = lateral / speed;

        // Each axle's own yaw moment is part of what it delivers, see AxleForce; the other's is owed to it.
        rearForce.prepare(yawRate);
        double rearSlip = rearForce.slipFor((car.mass() * lateral * car.cgToFront() + frontMoment)
                / car.wheelbase());
        // Exact inverse of slip = -atan((v sin(sideslip) - r b) / (v cos(sideslip))).
        sideslip = Math.asin(yawRate * car.cgToRear() * Math.cos(rearSlip) / speed) - rearSlip;

        frontForce.prepare(yawRate);
        double frontSlip = frontForce.slipFor((car.mass() * lateral * car.cgToRear() - rearForce.yawMoment())
                / car.wheelbase());

        off[0] = frontSlip + frontForce.direction - steer;
        off[1] = (car.mass() * longitudinal + frontForce.drag() + rearForce.drag() - pull) / forceScale;
        off[2] = (frontForce.yawMoment() - frontMoment) / momentScale;
    }

    /** Moves steer, pull and front moment by a part of a step, each scaled to about one. */
    private void move(double[] step, double part) {
        steer += part * step[0];
        pull += part * step[1] * forceScale;
        frontMoment += part * step[2] * momentScale;
    }

    private static double largest(double[] of) {
        return Math.max(Math.abs(of[0]), Math.max(Math.abs(of[1]), Math.abs(of[2])));
    }

    private Reason verdict() {
        // A car that only holds its speed may lose a little of it instead of spinning an unloaded wheel.
        if (longitudinal > 0.0 && (frontTractionShort || rearTractionShort)) {
            return frontTractionShort ? Reason.FRONT_TRACTION : Reason.REAR_TRACTION;
        }
        if (brakesShort) {
            return Reason.BRAKING;
        }
        return use() > 1.0 ? busier() : null;
    }

    /** Part of its capacity that the busier axle uses; above 1 where it falls short. */
    private double use() {
        return Math.max(frontForce.use(), rearForce.use());
    }

    private Reason busier() {
        return frontForce.use() >= rearForce.use() ? Reason.FRONT_GRIP : Reason.REAR_GRIP;
    }

    private void shapeTyres() {
        AxleModel front = car.front();
        AxleModel rear = car.rear();
        SteeringAxis axis = car.steeringAxis();
        // The suspension takes back a part of its own travel alone; what the tyres give, the wheels lean with.
        double frontLean = roll - front.camberGain() * frontTravel;
        double rearLean = roll - rear.camberGain() * rearTravel;
        lean[FRONT_LEFT] = RollCamber.inner(axis.camber(front.camber(), steer), frontLean, 0.0);
        lean[FRONT_RIGHT] = -RollCamber.outer(axis.camber(front.camber(), -steer), frontLean, 0.0);
        lean[REAR_LEFT] = RollCamber.inner(rear.camber(), rearLean, 0.0);
        lean[REAR_RIGHT] = -RollCamber.outer(rear.camber(), rearLean, 0.0);
        for (int i = 0; i < 4; i++) {
            curve[i] = (i < REAR_LEFT ? front : rear).tyre().at(load[i], lean[i]);
        }
    }

    private void shareLongitudinalForce() {
        brakesShort = false;
        double driveFront = car.driveFrontFraction();
        if (pull >= 0.0) {
            frontTractionShort = drive(FRONT_LEFT, pull * driveFront, driveFront > 0.0 ? car.front() : null);
            rearTractionShort = drive(REAR_LEFT, pull * (1.0 - driveFront), driveFront < 1.0 ? car.rear() : null);
        } else {
            frontTractionShort = false;
            rearTractionShort = false;
            double front = pull * car.brakeFrontFraction();
            split(FRONT_LEFT, front, driveFront > 0.0 ? car.front() : null);
            split(REAR_LEFT, pull - front, driveFront < 1.0 ? car.rear() : null);
            passOnBraking();
        }
        for (int i = 0; i < 4; i++) {
            ellipse[i] = MagicFormula.ellipse(longitudinalForce[i], curve[i]);
        }
    }

    /** Shares an axle's drive; true if a wheel spins. */
    private boolean drive(int left, double force, AxleModel driven) {
        split(left, force, driven);
        int right = left + 1;
        boolean spins = limit(left);
        if (spins && driven != null) {
            // The outer wheel gets no more than the spinning one and the lock.
            double most = longitudinalForce[left] + 2.0 * locked(driven);
            longitudinalForce[right] = Math.min(longitudinalForce[right], most);
        }
        return limit(right) || spins;
    }

    private boolean limit(int wheel) {
        double most = DRIVEN_PART * grip(wheel);
        if (Math.abs(longitudinalForce[wheel]) <= most) {
            return false;
        }
        longitudinalForce[wheel] = Math.copySign(most, longitudinalForce[wheel]);
        return true;
    }

    /** Force that the differential takes from one wheel and gives to the other at most, N. */
    private double locked(AxleModel driven) {
        return driven.lockingTorque() / (2.0 * car.wheelRadius()) * lateral / Math.hypot(lateral, LOCKING_SETS_IN);
    }

    /**
     * Shares an axle's force between its wheels. While both wheels grip, the outer one is faster and a locking
     * differential takes torque from it (against the turn); as the inner one nears its grip, it turns that round.
     */
    private void split(int left, double force, AxleModel driven) {
        double half = force / 2.0;
        double inner = half;
        if (driven != null && driven.lockingTorque() > 0.0) {
            double locked = locked(driven);
            inner = Math.max(half - locked, Math.min(half + locked, INNER_WHEEL_SPINS_FROM * grip(left)));
        }
        longitudinalForce[left] = inner;
        longitudinalForce[left + 1] = force - inner;
    }

    private void passOnBraking() {
        double left = 0.0;
        double room = 0.0;
        for (int i = 0; i < 4; i++) {
            double most = -BRAKED_PART * grip(i);
            if (longitudinalForce[i] < most) {
                left += most - longitudinalForce[i];
                longitudinalForce[i] = most;
            }
            room += longitudinalForce[i] - most;
        }
        if (left > 0.0) {
            brakesShort = left > room;
            double part = brakesShort || room == 0.0 ? 1.0 : left / room;
            for (int i = 0; i < 4; i++) {
                longitudinalForce[i] -= part * (longitudinalForce[i] + BRAKED_PART * grip(i));
            }
        }
    }

    private double grip(int wheel) {
        return MagicFormula.LONGITUDINAL_GRIP * curve[wheel].d();
    }

    double steer() {
        return steer;
    }

    /**
     * How far the last question asked was from the limit: what the busier axle has left, over its capacity. Negative
     * beyond the limit; -1 where something else than the tyres' lateral force ran out.
     */
    double margin(Reason reason) {
        boolean lateralForce = reason == null || reason == Reason.FRONT_GRIP || reason == Reason.REAR_GRIP;
        if (!lateralForce || !placed) {
            return -1.0;
        }
        double left = 1.0 - Math.min(2.0, use());
        return folded ? -Math.abs(left) : left;
    }

    /**
     * The solution with everything that follows from it, its understeer gradient from the tyres' slopes alone. To be
     * called after a solve that returned null.
     *
     * @param point the point asked for; mirrored where it turns right
     */
    Equilibrium describe(OperatingPoint point) {
        double side = point.lateral() < 0.0 ? -1.0 : 1.0;
        double[] slip = new double[4];
        double[] force = new double[4];
        double[] camber = new double[4];
        double[] used = new double[4];
        double[] scrub = new double[4];
        for (int i = 0; i < 4; i++) {
            AxleForce axle = i < REAR_LEFT ? frontForce : rearForce;
            slip[i] = axle.slip + axle.offset[i & 1];
            force[i] = ellipse[i] * curve[i].force(slip[i]);
            camber[i] = (i & 1) == 0 ? lean[i] : -lean[i];
            used[i] = utilisation(i, force[i]);
            scrub[i] = Math.abs(force[i] * Math.sin(slip[i])) * speed;
        }
        double toFront = car.cgToFront();
        double toRear = car.cgToRear();
        LimitBalance balance = limitBalance();
        double frontSlope = frontForce.slope();
        double rearSlope = rearForce.slope();
        double stiffness = rearSlope * toRear - frontSlope * toFront;
        return new Equilibrium(point, side * steer, side * sideslip, side * roll, wheels(slip, side, side),
                wheels(camber, side, 1.0), wheels(load, side, 1.0), wheels(force, side, side),
                wheels(longitudinalForce, side, 1.0), wheels(used, side, 1.0), clamp(frontForce.use()),
                clamp(rearForce.use()), balance, tangentGradient(),
                stiffness / (car.wheelbase() * (frontSlope + rearSlope)), stiffness, wheels(scrub, side, 1.0),
                toeDrag());
    }

    /** What each axle could hold with the present loads and longitudinal forces. */
    LimitBalance limitBalance() {
        double front = frontForce.capacity() * car.wheelbase() + rearForce.yawMoment();
        double rear = rearForce.capacity() * car.wheelbase() - frontForce.yawMoment();
        return new LimitBalance(Math.max(0.0, front / (car.mass() * car.cgToRear())),
                Math.max(0.0, rear / (car.mass() * car.cgToFront())));
    }

    /** Understeer gradient from the tyres' slopes, for where no neighbouring equilibrium exists. */
    double tangentGradient() {
        return car.mass() / car.wheelbase()
                * (car.cgToRear() / frontForce.slope() - car.cgToFront() / rearForce.slope());
    }

    private double utilisation(int wheel, double force) {
        MagicCurve tyre = curve[wheel];
        double peak = force >= 0.0 ? tyre.peak() : tyre.d() - tyre.verticalShift();
        if (!(tyre.d() > 0.0 && peak > 0.0)) {
            return 0.0;
        }
        return Math.min(1.0, Math.hypot(force / peak, longitudinalForce[wheel] / grip(wheel)));
    }

    private double toeDrag() {
        double front = car.mass() * VehicleModel.GRAVITY * car.frontWeightFraction()
                + car.front().downforce() * speed * speed;
        double rear = car.mass() * VehicleModel.GRAVITY * (1.0 - car.frontWeightFraction())
                + car.rear().downforce() * speed * speed;
        return 2.0 * Toe.drag(car.front().tyre().corneringStiffness(front / 2.0), car.front().toe())
                + 2.0 * Toe.drag(car.rear().tyre().corneringStiffness(rear / 2.0), car.rear().toe());
    }

    private static double clamp(double part) {
        return Math.max(0.0, Math.min(1.0, part));
    }

    private static Wheels wheels(double[] value, double side, double sign) {
        return side > 0.0
                ? new Wheels(sign * value[FRONT_LEFT], sign * value[FRONT_RIGHT], sign * value[REAR_LEFT],
                        sign * value[REAR_RIGHT])
                : new Wheels(sign * value[FRONT_RIGHT], sign * value[FRONT_LEFT], sign * value[REAR_RIGHT],
                        sign * value[REAR_LEFT]);
    }

    /** Newton's method on the couplings, its slopes by differences and its steps halved until they help. */
    private final class Newton {

        private static final int STEPS = 15;
        private static final int HALVINGS = 5;
        private static final double DIFFERENCE = 1e-6;

        private final double[][] slope = new double[3][3];
        private final double[] here = new double[3];
        private final double[] step = new double[3];

        /** Settles from where the car stands; false if it does not, with the car left near where it would. */
        boolean settle() {
            for (int i = 0; i < STEPS; i++) {
                if (largest(off) < TOLERANCE) {
                    steer += off[0];
                    return true;
                }
                System.arraycopy(off, 0, here, 0, 3);
                if (!findStep() || !follows()) {
                    return false;
                }
            }
            return false;
        }

        private boolean findStep() {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    step[k] = k == j ? DIFFERENCE : 0.0;
                }
                move(step, 1.0);
                follow();
                for (int k = 0; k < 3; k++) {
                    slope[k][j] = (off[k] - here[k]) / DIFFERENCE;
                }
                move(step, -1.0);
            }
            double[] a = slope[0];
            double[] b = slope[1];
            double[] c = slope[2];
            double volume = determinant(a[0], b[0], c[0], a[1], b[1], c[1], a[2], b[2], c[2]);
            step[0] = -determinant(here[0], here[1], here[2], a[1], b[1], c[1], a[2], b[2], c[2]) / volume;
            step[1] = -determinant(a[0], b[0], c[0], here[0], here[1], here[2], a[2], b[2], c[2]) / volume;
            step[2] = -determinant(a[0], b[0], c[0], a[1], b[1], c[1], here[0], here[1], here[2]) / volume;
            return Double.isFinite(largest(step));
        }

        private boolean follows() {
            double part = Math.min(1.0, Broyden.LONGEST_STEP / largest(step));
            for (int i = 0; i < HALVINGS; i++) {
                move(step, part);
                follow();
                if (largest(off) < largest(here)) {
                    return true;
                }
                move(step, -part);
                part /= 2.0;
            }
            follow();
            return false;
        }

        private static double determinant(double a, double b, double c, double d, double e, double f, double g,
                double h, double i) {
            return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
        }
    }

    /**
     * What an axle delivers over the slip angle at its middle: its lateral force in the car's axes, and the yaw moment
     * of its unequal longitudinal forces as a lateral force that would turn the car as much.
     */
    private final class AxleForce implements UnivariateFunction {

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

        AxleForce(AxleModel axle, double ahead, int left, boolean steered) {
            this.axle = axle;
            this.ahead = ahead;
            this.left = left;
            this.steered = steered;
            this.toe = new double[] {-axle.toe(), axle.toe()};
            double outer = Math.copySign(axle.track() / (2.0 * car.wheelbase()), ahead);
            this.lever = new double[] {-outer, outer};
        }

        void forget() {
            slip = 0.0;
            peakKnown = false;
        }

        void prepare(double yawRate) {
            double across = speed * Math.sin(sideslip) + yawRate * ahead;
            double along = speed * Math.cos(sideslip);
            direction = Math.atan(across / along);
            double half = yawRate * axle.track() / 2.0;
            offset[0] = toe[0] - (Math.atan(across / (along - half)) - direction);
            offset[1] = toe[1] - (Math.atan(across / (along + half)) - direction);
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
                double across = ellipse[wheel] * curve[wheel].force(atSlip + offset[side]);
                double along = longitudinalForce[wheel];
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

        double capacity() {
            findPeak();
            return peakForce;
        }

        private void findPeak() {
            double inner = curve[left].peakSlip() - offset[0];
            double outer = curve[left + 1].peakSlip() - offset[1];
            // A hanging wheel has a peak too, of no force, but one that need not bracket anything.
            double low = 0.4 * (load[left] > 0.0 ? Math.min(inner, outer) : outer);
            double high = 1.3 * (load[left] > 0.0 ? Math.max(inner, outer) : outer);
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
                drag += ellipse[wheel] * curve[wheel].force(slip + offset[side]) * Math.sin(heading)
                        + longitudinalForce[wheel] * (1.0 - Math.cos(heading));
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
            return longitudinalForce[wheel] * Math.cos(heading)
                    - ellipse[wheel] * curve[wheel].force(slip + offset[side]) * Math.sin(heading);
        }

        /** Slope of the force at the equilibrium, N/rad; at least 1, so that a ratio of slopes stays a number. */
        double slope() {
            double slope = 0.0;
            for (int side = 0; side < 2; side++) {
                slope += ellipse[left + side] * curve[left + side].slope(slip + offset[side]);
            }
            return Math.max(1.0, slope);
        }

        private double heading(double atSlip, int side) {
            return steered ? atSlip + direction + toe[side] : toe[side];
        }
    }
}
