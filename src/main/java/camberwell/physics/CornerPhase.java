package camberwell.physics;

/**
 * The parts of a corner as operating points of a steady-state model: braking and turning, the throttle closed, steady,
 * power and turning.
 *
 * <p>The longitudinal accelerations are parts of the car's own cornering limit, so that a car on slicks is asked for
 * more than one on road tyres: three tenths of it under trail braking, two tenths under power, the latter falling with
 * the speed above 110 km/h as the engine's power runs out; with the throttle closed the engine slows the car by as much
 * as {@link #OVERRUN} (common practice, no source).
 */
public enum CornerPhase {
    /** Braking and turning. */
    ENTRY(-0.3),
    /** The throttle closed in the corner, the brakes off. */
    LIFT_OFF(0.0),
    /** Neither braking nor accelerating. */
    MID_CORNER(0.0),
    /** Power and turning. */
    EXIT(0.2);

    /** Part of the achievable lateral acceleration at which a driver feels the balance clearly. */
    public static final double NEAR_THE_LIMIT = 0.95;

    /** Deceleration by the engine with the throttle closed, m/s². */
    public static final double OVERRUN = 0.8;

    private static final double POWER_FALLS_FROM = CornerSpeed.MEDIUM.metresPerSecond();

    private final double partOfGrip;

    CornerPhase(double partOfGrip) {
        this.partOfGrip = partOfGrip;
    }

    /**
     * The operating point of this phase.
     *
     * @param car the car
     * @param speed speed in the corner, m/s
     * @param fraction lateral acceleration asked for, as a part of what the car can hold in this phase, 0 to 1;
     *     {@link #NEAR_THE_LIMIT} where nothing else is known
     * @return the point; its lateral acceleration is 0 where the car can hold none
     */
    public OperatingPoint at(VehicleModel car, double speed, double fraction) {
        double grip = HandlingModel.maxLateralAcceleration(car, speed, 0.0);
        double longitudinal = longitudinal(grip, speed);
        double achievable = this == MID_CORNER
                ? grip
                : HandlingModel.maxLateralAcceleration(car, speed, longitudinal);
        return new OperatingPoint(speed, fraction * achievable, longitudinal);
    }

    /**
     * Longitudinal acceleration of this phase.
     *
     * @param grip lateral acceleration that the car can hold at that speed with neither brake nor power, m/s²
     * @param speed speed in the corner, m/s
     * @return m/s², negative under braking
     */
    public double longitudinal(double grip, double speed) {
        if (this == LIFT_OFF) {
            return -OVERRUN;
        }
        double powerLeft = this == EXIT ? Math.min(1.0, POWER_FALLS_FROM / speed) : 1.0;
        return partOfGrip * grip * powerLeft;
    }
}
