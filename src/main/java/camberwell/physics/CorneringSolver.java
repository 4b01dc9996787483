package camberwell.physics;

import camberwell.physics.NoEquilibrium.Reason;

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
final class CorneringSolver implements Newton.Unknowns {

    private static final int ROUNDS = 40;
    private static final double FOLDS_FROM = 0.8;
    private static final double JUST_BELOW = 0.99;
    /** Turns tighter than this part of a radius of one wheelbase are for forklifts. */
    private static final double TIGHTEST_TURN = 0.8;

    private final VehicleModel car;
    private final FourWheels wheels = new FourWheels();
    private final Stance stance;
    private final PullShare share;
    private final AxleForce frontForce;
    private final AxleForce rearForce;
    private final Broyden coupling = new Broyden();
    private final Newton newton = new Newton(this);
    private final double[] off = new double[3];
    private double speed;
    private double lateral;
    private double longitudinal;
    private double steer;
    private double sideslip;
    private double pull;
    private double frontMoment;
    private double forceScale;
    private double momentScale;
    private boolean placed;
    private boolean folded;

    CorneringSolver(VehicleModel car) {
        this.car = car;
        this.stance = new Stance(car, wheels);
        this.share = new PullShare(car, wheels);
        this.frontForce = new AxleForce(car.front(), car.cgToFront(), FourWheels.FRONT_LEFT, true, car.wheelbase(), wheels);
        this.rearForce = new AxleForce(car.rear(), -car.cgToRear(), FourWheels.REAR_LEFT, false, car.wheelbase(), wheels);
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
        Reason fallen = stance.place(speed, lateral, longitudinal);
        if (fallen != null) {
            return fallen;
        }
        placed = true;
        return iterate();
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
            if (Newton.largest(off) < Newton.TOLERANCE) {
                steer += off[0];
                return verdict();
            }
            coupling.step(off[0], off[1], off[2]);
            move(coupling.step, 1.0);
        }
        follow();
        if (newton.settle()) {
            steer += off[0];
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
    @Override
    public void follow() {
        stance.shapeTyres(steer);
        share.share(pull, lateral);
        double yawRate = lateral / speed;

        // Each axle's own yaw moment is part of what it delivers, see AxleForce; the other's is owed to it.
        rearForce.prepare(speed, sideslip, yawRate);
        double rearSlip = rearForce.slipFor((car.mass() * lateral * car.cgToFront() + frontMoment)
                / car.wheelbase());
        // Exact inverse of slip = -atan((v sin(sideslip) - r b) / (v cos(sideslip))).
        sideslip = Math.asin(yawRate * car.cgToRear() * Math.cos(rearSlip) / speed) - rearSlip;

        frontForce.prepare(speed, sideslip, yawRate);
        double frontSlip = frontForce.slipFor((car.mass() * lateral * car.cgToRear() - rearForce.yawMoment())
                / car.wheelbase());

        off[0] = frontSlip + frontForce.direction() - steer;
        off[1] = (car.mass() * longitudinal + frontForce.drag() + rearForce.drag() - pull) / forceScale;
        off[2] = (frontForce.yawMoment() - frontMoment) / momentScale;
    }

    /** Moves steer, pull and front moment by a part of a step, each scaled to about one. */
    @Override
    public double[] off() {
        return off;
    }

    @Override
    public void move(double[] step, double part) {
        steer += part * step[0];
        pull += part * step[1] * forceScale;
        frontMoment += part * step[2] * momentScale;
    }

    private Reason verdict() {
        // A car that only holds its speed may lose a little of it instead of spinning an unloaded wheel.
        if (longitudinal > 0.0 && (share.frontTractionShort() || share.rearTractionShort())) {
            return share.frontTractionShort() ? Reason.FRONT_TRACTION : Reason.REAR_TRACTION;
        }
        if (share.brakesShort()) {
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
            AxleForce axle = i < FourWheels.REAR_LEFT ? frontForce : rearForce;
            slip[i] = axle.slip(i);
            force[i] = wheels.lateralForce(i, slip[i]);
            camber[i] = (i & 1) == 0 ? wheels.lean[i] : -wheels.lean[i];
            used[i] = wheels.utilisation(i, force[i]);
            scrub[i] = Math.abs(force[i] * Math.sin(slip[i])) * speed;
        }
        double toFront = car.cgToFront();
        double toRear = car.cgToRear();
        LimitBalance balance = limitBalance();
        double frontSlope = frontForce.slope();
        double rearSlope = rearForce.slope();
        double stiffness = rearSlope * toRear - frontSlope * toFront;
        return new Equilibrium(point, side * steer, side * sideslip, side * stance.roll(), FourWheels.placed(slip, side, side),
                FourWheels.placed(camber, side, 1.0), FourWheels.placed(wheels.load, side, 1.0),
                        FourWheels.placed(force, side, side),
                FourWheels.placed(wheels.longitudinalForce, side, 1.0), FourWheels.placed(used, side, 1.0),
                        clamp(frontForce.use()),
                clamp(rearForce.use()), balance, tangentGradient(),
                stiffness / (car.wheelbase() * (frontSlope + rearSlope)), stiffness, FourWheels.placed(scrub, side, 1.0),
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
}
