package camberwell.physics;

/**
 * One axle of the handling model. Both wheels are alike.
 *
 * @param track track width, m, above 0
 * @param rollCentreHeight roll-centre height above the road, m
 * @param wheelRate spring rate at one wheel, N/m, not negative
 * @param barRate roll stiffness of the anti-roll bar, N m/rad, not negative
 * @param unsprungMass unsprung mass of the axle, kg; 0 lumps it with the body
 * @param toe static toe of one wheel, rad, toe-in positive
 * @param camber static camber, rad, negative when the top leans in
 * @param camberGain part of the body's roll that the suspension takes back, see {@link RollCamber}
 * @param downforce aerodynamic load on the axle over the square of the speed, N/(m/s)²
 * @param lockingTorque torque difference between the wheels that a limited-slip differential holds, N m; acts where
 *     the axle is driven
 * @param tyre tyre of both wheels
 * @param tyreRate vertical rate of one tyre, N/m, above 0; infinite for a tyre that does not give
 */
public record AxleModel(double track, double rollCentreHeight, double wheelRate, double barRate, double unsprungMass,
        double toe, double camber, double camberGain, double downforce, double lockingTorque, MagicFormula tyre,
        double tyreRate) {

    private static final double LARGEST_ANGLE = 0.2;

    /** An axle on tyres that do not give. */
    public AxleModel(double track, double rollCentreHeight, double wheelRate, double barRate, double unsprungMass,
            double toe, double camber, double camberGain, double downforce, double lockingTorque, MagicFormula tyre) {
        this(track, rollCentreHeight, wheelRate, barRate, unsprungMass, toe, camber, camberGain, downforce,
                lockingTorque, tyre, Double.POSITIVE_INFINITY);
    }

    /** Refuses dimensions that no axle has. */
    public AxleModel {
        if (!(track > 0.0 && wheelRate >= 0.0 && barRate >= 0.0 && unsprungMass >= 0.0 && lockingTorque >= 0.0)) {
            throw new IllegalArgumentException("track must be positive; rates, mass and torque not negative");
        }
        if (!(Math.abs(toe) <= LARGEST_ANGLE && Math.abs(camber) <= LARGEST_ANGLE)) {
            throw new IllegalArgumentException("toe " + toe + " and camber " + camber + " must be within "
                    + LARGEST_ANGLE + " rad");
        }
        if (!Double.isFinite(track + wheelRate + barRate + unsprungMass + lockingTorque + rollCentreHeight
                + camberGain + downforce)) {
            throw new IllegalArgumentException("every dimension of an axle must be finite");
        }
        if (!(tyreRate > 0.0)) {
            throw new IllegalArgumentException("the vertical rate of a tyre must be positive");
        }
        if (tyre == null) {
            throw new IllegalArgumentException("an axle needs a tyre");
        }
    }

    /** Roll stiffness of springs and bar together, N m/rad. */
    public double rollStiffness() {
        return LoadTransfer.springRollStiffness(wheelRate, track) + barRate;
    }

    /** Roll stiffness of its tyres, N m/rad; infinite where they do not give. */
    public double tyreRollStiffness() {
        return LoadTransfer.springRollStiffness(tyreRate, track);
    }

    /** The same axle with another vertical rate of each tyre, N/m. */
    public AxleModel withTyreRate(double newtonsPerMetre) {
        return new AxleModel(track, rollCentreHeight, wheelRate, barRate, unsprungMass, toe, camber, camberGain,
                downforce, lockingTorque, tyre, newtonsPerMetre);
    }

    /** The same axle with another spring rate at the wheel, N/m. */
    public AxleModel withWheelRate(double newtonsPerMetre) {
        return new AxleModel(track, rollCentreHeight, newtonsPerMetre, barRate, unsprungMass, toe, camber, camberGain,
                downforce, lockingTorque, tyre, tyreRate);
    }

    /** The same axle with another anti-roll bar, N m/rad. */
    public AxleModel withBarRate(double newtonMetresPerRadian) {
        return new AxleModel(track, rollCentreHeight, wheelRate, newtonMetresPerRadian, unsprungMass, toe, camber,
                camberGain, downforce, lockingTorque, tyre, tyreRate);
    }

    /** The same axle with another roll-centre height, m. */
    public AxleModel withRollCentreHeight(double metres) {
        return new AxleModel(track, metres, wheelRate, barRate, unsprungMass, toe, camber, camberGain, downforce,
                lockingTorque, tyre, tyreRate);
    }

    /** The same axle with another toe of each wheel, rad. */
    public AxleModel withToe(double radians) {
        return new AxleModel(track, rollCentreHeight, wheelRate, barRate, unsprungMass, radians, camber, camberGain,
                downforce, lockingTorque, tyre, tyreRate);
    }

    /** The same axle with another static camber, rad. */
    public AxleModel withCamber(double radians) {
        return new AxleModel(track, rollCentreHeight, wheelRate, barRate, unsprungMass, toe, radians, camberGain,
                downforce, lockingTorque, tyre, tyreRate);
    }

    /** The same axle with another aerodynamic load, N/(m/s)². */
    public AxleModel withDownforce(double coefficient) {
        return new AxleModel(track, rollCentreHeight, wheelRate, barRate, unsprungMass, toe, camber, camberGain,
                coefficient, lockingTorque, tyre, tyreRate);
    }

    /** The same axle with another locking torque of its differential, N m. */
    public AxleModel withLockingTorque(double newtonMetres) {
        return new AxleModel(track, rollCentreHeight, wheelRate, barRate, unsprungMass, toe, camber, camberGain,
                downforce, newtonMetres, tyre, tyreRate);
    }

    /** The same axle on other tyres. */
    public AxleModel withTyre(MagicFormula other) {
        return new AxleModel(track, rollCentreHeight, wheelRate, barRate, unsprungMass, toe, camber, camberGain,
                downforce, lockingTorque, other, tyreRate);
    }
}
