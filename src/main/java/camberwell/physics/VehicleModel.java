package camberwell.physics;

import java.util.function.UnaryOperator;

/**
 * The car as the handling model sees it, the same to the left as to the right.
 *
 * @param mass mass with driver and fuel, kg, above 0
 * @param wheelbase wheelbase, m, above 0
 * @param frontWeightFraction part of the static weight on the front axle, between 0 and 1
 * @param cgHeight height of the whole car's centre of gravity, m, above 0
 * @param wheelRadius rolling radius, m, above 0; also the height of the unsprung masses
 * @param steeringAxis caster and kingpin inclination of the front wheels
 * @param driveFrontFraction part of the drive force at the front axle: 0 rear-wheel drive, 1 front-wheel drive
 * @param brakeFrontFraction part of the brake force at the front axle, 0 to 1
 * @param front front axle
 * @param rear rear axle
 */
public record VehicleModel(double mass, double wheelbase, double frontWeightFraction, double cgHeight,
        double wheelRadius, SteeringAxis steeringAxis, double driveFrontFraction, double brakeFrontFraction,
        AxleModel front, AxleModel rear) {

    /** Standard gravity, m/s². */
    public static final double GRAVITY = 9.80665;

    /** Refuses what is no car. */
    public VehicleModel {
        if (!(mass > 0.0 && wheelbase > 0.0 && cgHeight > 0.0 && wheelRadius > 0.0
                && Double.isFinite(mass + wheelbase + cgHeight + wheelRadius))) {
            throw new IllegalArgumentException("mass, wheelbase, heights and wheel radius must be positive");
        }
        if (!(frontWeightFraction > 0.0 && frontWeightFraction < 1.0)) {
            throw new IllegalArgumentException("front weight fraction must be between 0 and 1, is "
                    + frontWeightFraction);
        }
        if (!(driveFrontFraction >= 0.0 && driveFrontFraction <= 1.0 && brakeFrontFraction >= 0.0
                && brakeFrontFraction <= 1.0)) {
            throw new IllegalArgumentException("drive and brake fractions must be from 0 to 1");
        }
        if (!(front.unsprungMass() < mass * frontWeightFraction
                && rear.unsprungMass() < mass * (1.0 - frontWeightFraction))) {
            throw new IllegalArgumentException("an axle must carry more than its own unsprung mass");
        }
        // Refuses a car that its springs do not hold up.
        LoadTransfer.lateral(rollAxle(front, mass * frontWeightFraction, wheelRadius),
                rollAxle(rear, mass * (1.0 - frontWeightFraction), wheelRadius),
                sprungHeight(mass, cgHeight, front.unsprungMass() + rear.unsprungMass(), wheelRadius), 0.0, GRAVITY);
    }

    /** Distance from the centre of gravity to the front axle, m. */
    public double cgToFront() {
        return wheelbase * (1.0 - frontWeightFraction);
    }

    /** Distance from the centre of gravity to the rear axle, m. */
    public double cgToRear() {
        return wheelbase * frontWeightFraction;
    }

    /** Height of the sprung mass's centre of gravity, m. */
    public double sprungHeight() {
        return sprungHeight(mass, cgHeight, front.unsprungMass() + rear.unsprungMass(), wheelRadius);
    }

    private static double sprungHeight(double mass, double cgHeight, double unsprung, double wheelRadius) {
        return (mass * cgHeight - unsprung * wheelRadius) / (mass - unsprung);
    }

    /** Lateral load transfer and roll at a lateral acceleration in m/s², as long as all wheels stay on the ground. */
    public LoadTransfer.Lateral lateralTransfer(double lateral) {
        return LoadTransfer.lateral(rollAxle(front, mass * frontWeightFraction, wheelRadius),
                rollAxle(rear, mass * (1.0 - frontWeightFraction), wheelRadius), sprungHeight(), lateral, GRAVITY);
    }

    /** The bicycle model of the same car at small angles and without downforce, camber and toe left out. */
    public LinearBicycle bicycle() {
        double frontLoad = mass * GRAVITY * frontWeightFraction / 2.0;
        double rearLoad = mass * GRAVITY * (1.0 - frontWeightFraction) / 2.0;
        return new LinearBicycle(mass, cgToFront(), cgToRear(), 2.0 * front.tyre().corneringStiffness(frontLoad),
                2.0 * rear.tyre().corneringStiffness(rearLoad));
    }

    /** The same car with its front axle changed. */
    public VehicleModel withFront(UnaryOperator<AxleModel> change) {
        return new VehicleModel(mass, wheelbase, frontWeightFraction, cgHeight, wheelRadius, steeringAxis,
                driveFrontFraction, brakeFrontFraction, change.apply(front), rear);
    }

    /** The same car with its rear axle changed. */
    public VehicleModel withRear(UnaryOperator<AxleModel> change) {
        return new VehicleModel(mass, wheelbase, frontWeightFraction, cgHeight, wheelRadius, steeringAxis,
                driveFrontFraction, brakeFrontFraction, front, change.apply(rear));
    }

    /** The same car with ballast moved: another part of the weight on the front axle. */
    public VehicleModel withFrontWeightFraction(double fraction) {
        return new VehicleModel(mass, wheelbase, fraction, cgHeight, wheelRadius, steeringAxis, driveFrontFraction,
                brakeFrontFraction, front, rear);
    }

    /** The same car with its centre of gravity at another height, m. */
    public VehicleModel withCgHeight(double metres) {
        return new VehicleModel(mass, wheelbase, frontWeightFraction, metres, wheelRadius, steeringAxis,
                driveFrontFraction, brakeFrontFraction, front, rear);
    }

    /** The same car with another steering axis. */
    public VehicleModel withSteeringAxis(SteeringAxis axis) {
        return new VehicleModel(mass, wheelbase, frontWeightFraction, cgHeight, wheelRadius, axis, driveFrontFraction,
                brakeFrontFraction, front, rear);
    }

    /** The same car with another drive split. */
    public VehicleModel withDriveFrontFraction(double fraction) {
        return new VehicleModel(mass, wheelbase, frontWeightFraction, cgHeight, wheelRadius, steeringAxis, fraction,
                brakeFrontFraction, front, rear);
    }

    /** The same car with another brake balance. */
    public VehicleModel withBrakeFrontFraction(double fraction) {
        return new VehicleModel(mass, wheelbase, frontWeightFraction, cgHeight, wheelRadius, steeringAxis,
                driveFrontFraction, fraction, front, rear);
    }

    private static LoadTransfer.Axle rollAxle(AxleModel axle, double carriedMass, double wheelRadius) {
        return new LoadTransfer.Axle(carriedMass - axle.unsprungMass(), axle.track(), axle.rollCentreHeight(),
                axle.rollStiffness(), axle.unsprungMass(), wheelRadius, axle.tyreRollStiffness());
    }
}
