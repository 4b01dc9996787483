package camberwell.model;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.physics.AxleModel;
import camberwell.physics.CornerPhase;
import camberwell.physics.Inflation;
import camberwell.physics.Pac2002;
import camberwell.physics.SteeringAxis;
import camberwell.physics.Toe;
import camberwell.physics.VehicleModel;
import camberwell.physics.motion.MovingCar;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Surface;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A car as it stands, as a car of the handling model.
 *
 * <p>The tyre is the model's open one about the car's own wheel loads, with the car's grip. Where both axles have
 * tyres of one size they share one tyre; else each axle's tyre fits the load that it carries. Ride heights and
 * pressures act by how far they were moved from where the car stood: a car's file gives no map of roll centres,
 * aerodynamics and tyres over them. The wings' drag is not in it.
 */
public final class CarModel {

    /** Peak friction of the reference road tyre at its load; see {@link Pac2002}. */
    private static final double ROAD_FRICTION = 1.05;
    /** Lean at which a loaded tyre grips most, rad: common practice, no source. */
    private static final double OPTIMUM_LEAN = Math.toRadians(3.5);
    private static final double WHEEL_RADIUS = 0.31;
    private static final double RIM = 17 * 0.0254;
    /** Where the car's file has no brake bias: common practice, no source. */
    private static final Map<Drive, Double> BRAKE_FRONT = Map.of(Drive.FRONT, 0.78, Drive.REAR, 0.64, Drive.ALL, 0.68);
    private static final double CASTER = Math.toRadians(5);
    /** Lock off the power over lock on it, where a car has both: common practice, no source. */
    private static final double COAST_PART = 0.5;
    /** Lock without torque over lock on the power, where the car's file gives no preload: common practice. */
    private static final double PRELOAD_PART = 0.15;
    /** Acceleration for which the lock on the power is meant, over the grip; see {@link CornerPhase#EXIT}. */
    private static final double POWER_PART = 0.2;
    /** What it takes to hold the speed against the drag of cornering, m/s². */
    private static final double HOLDING = 0.5;
    /** What a damp and a wet track leave of the dry one's friction: common practice, no source. */
    private static final Map<Surface, Double> FRICTION = Map.of(Surface.DRY, 1.0, Surface.DAMP, 0.8, Surface.WET, 0.6);

    private static final Set<Adjuster.Kind> KINDS = Set.of(Adjuster.Kind.TOE, Adjuster.Kind.CAMBER,
            Adjuster.Kind.CASTER, Adjuster.Kind.WING, Adjuster.Kind.BRAKE_BIAS, Adjuster.Kind.DIFFERENTIAL);
    private static final Set<Adjuster> STIFFNESSES = Set.of(Adjuster.FRONT_ANTI_ROLL_BAR, Adjuster.REAR_ANTI_ROLL_BAR,
            Adjuster.FRONT_SPRINGS, Adjuster.REAR_SPRINGS);

    private static final Set<Adjuster> IN_MOTION = Set.of(Adjuster.FRONT_BUMP, Adjuster.FRONT_REBOUND,
            Adjuster.REAR_BUMP, Adjuster.REAR_REBOUND, Adjuster.FRONT_RIDE_HEIGHT, Adjuster.REAR_RIDE_HEIGHT);
    /** Known by what a published form makes of them, of one car against itself: nothing to hide a fault in. */
    private static final Set<Dimension> ROLL_STIFFNESS = Set.of(Dimension.FRONT_WHEEL_RATE, Dimension.REAR_WHEEL_RATE,
            Dimension.FRONT_BAR, Dimension.REAR_BAR);
    private static final Set<Adjuster> PRESSURES = Set.of(Adjuster.FRONT_PRESSURE, Adjuster.REAR_PRESSURE);

    private final Car car;
    private final Optional<Lent> lent;
    private final Surface surface;
    private final Lock lock;
    private final Car origin;
    private final VehicleModel onPower;
    private final VehicleModel holding;
    private final VehicleModel offPower;
    private final VehicleModel overrun;

    /**
     * What the differential holds besides what it holds on the power, N m.
     *
     * @param preload with no torque through it
     * @param coast with the throttle closed
     */
    record Lock(double preload, double coast) {

        private Lock more(double preloaded, double coasting) {
            return new Lock(Math.max(0, preload + preloaded), Math.max(0, coast + coasting));
        }
    }

    private CarModel(Car car, Optional<Lent> lent, Surface surface, Lock lock, Optional<Car> before) {
        this.car = car;
        this.lent = lent;
        this.surface = surface;
        this.lock = lock;
        this.origin = before.orElse(car);
        this.onPower = vehicle(si(Dimension.DIFFERENTIAL_LOCK));
        this.holding = vehicle(lock.preload() + powerRamp() * HOLDING * si(Dimension.MASS) * wheelRadius());
        this.offPower = vehicle(lock.coast());
        this.overrun = offPower.withBrakeFrontFraction(offPower.driveFrontFraction());
    }

    /**
     * The model of a car.
     *
     * @param car the car as it stands; a dimension that it lacks is lent by a class of car
     * @param surface of the track
     * @return the model; empty for a class of car, for a car without wheelbase, mass or front weight, and for
     *     dimensions that do not make a car
     */
    public static Optional<CarModel> of(Car car, Surface surface) {
        if (car.generic()) {
            return Optional.empty();
        }
        CarClass carClass = CarClass.of(car);
        Optional<Map<Dimension, Quantity>> all = carClass.complete(car);
        if (all.isEmpty()) {
            return Optional.empty();
        }
        List<Dimension> lacks = all.get().keySet().stream().filter(CarModel::matters)
                .filter(dimension -> car.dimension(dimension).isEmpty()).toList();
        Car complete = car.withDimensions(all.get());
        double power = complete.dimension(Dimension.DIFFERENTIAL_LOCK).orElseThrow().si();
        double preload = car.setting(Adjuster.DIFFERENTIAL_PRELOAD).map(Setting::now)
                .filter(now -> now.unit().dimension() == Unit.Dimension.TORQUE)
                .map(now -> Math.min(now.si(), power)).orElse(PRELOAD_PART * power);
        return sound(complete, lacks.isEmpty() ? Optional.empty() : Optional.of(new Lent(carClass.text(), lacks)), surface,
                new Lock(preload, Math.max(preload, COAST_PART * power)), Optional.empty());
    }

    /** A step that no adjuster takes, and air that no wing moves, are nothing to be told of. */
    private static boolean matters(Dimension dimension) {
        return switch (dimension) {
            case FRONT_DOWNFORCE, REAR_DOWNFORCE, FRONT_WING_STEP, REAR_WING_STEP, FRONT_BAR_STEP, REAR_BAR_STEP,
                    DIFFERENTIAL_STEP, DIFFERENTIAL_LOCK, FRONT_DRIVE, FRONT_BRAKES, FRONT_TYRE_RATE,
                    REAR_TYRE_RATE -> false;
            default -> true;
        };
    }

    private static Optional<CarModel> sound(Car car, Optional<Lent> lent, Surface surface, Lock lock,
            Optional<Car> before) {
        try {
            return Optional.of(new CarModel(car, lent, surface, lock, before));
        } catch (IllegalArgumentException noCar) {
            // Each dimension is plausible by itself, and together they are still no car: no figure.
            return Optional.empty();
        }
    }

    /** Whether the model knows what that adjuster does; its two wheels of an axle are alike. */
    public static boolean represents(Adjuster adjuster) {
        return KINDS.contains(adjuster.kind()) && adjuster.wheel().isEmpty() || STIFFNESSES.contains(adjuster);
    }

    /** Whether the transient model knows what that adjuster does. */
    public static boolean representsInMotion(Adjuster adjuster) {
        return represents(adjuster) || IN_MOTION.contains(adjuster);
    }

    /**
     * The car with one adjuster set otherwise.
     *
     * @param adjuster the adjuster
     * @param to its new setting, in a unit of the same dimension as the car's own
     * @return the other car; empty when the model does not represent the adjuster, or the car lacks it
     */
    public Optional<CarModel> with(Adjuster adjuster, Quantity to) {
        return represents(adjuster) ? set(adjuster, to) : Optional.empty();
    }

    /** The same for the car in motion, which knows of dampers and heights too. */
    public Optional<CarModel> withInMotion(Adjuster adjuster, Quantity to) {
        return representsInMotion(adjuster) || PRESSURES.contains(adjuster) ? set(adjuster, to) : Optional.empty();
    }

    private Optional<CarModel> set(Adjuster adjuster, Quantity to) {
        Optional<Setting> from = car.setting(adjuster);
        if (from.isEmpty() || unscaled(adjuster, to)) {
            return Optional.empty();
        }
        Car moved = car.with(Map.of(adjuster, to));
        Lock held = lock;
        if (adjuster == Adjuster.DIFFERENTIAL_COAST) {
            held = lock.more(0, from.get().stepsUp(to) * si(Dimension.DIFFERENTIAL_STEP));
        } else if (adjuster == Adjuster.DIFFERENTIAL_PRELOAD) {
            double more = moved.dimension(Dimension.DIFFERENTIAL_LOCK).orElseThrow().si()
                    - si(Dimension.DIFFERENTIAL_LOCK);
            held = lock.more(more, more);
        }
        return sound(moved, lent, surface, held, Optional.of(origin));
    }

    /** Springs that are numbered and not rated say nothing of the wheel rate. */
    private static boolean unscaled(Adjuster adjuster, Quantity to) {
        boolean springs = adjuster == Adjuster.FRONT_SPRINGS || adjuster == Adjuster.REAR_SPRINGS;
        boolean angles = adjuster.adjustment() == Adjustment.TOE || adjuster.adjustment() == Adjustment.CAMBER
                || adjuster.adjustment() == Adjustment.CASTER || adjuster.adjustment() == Adjustment.BRAKE_BIAS;
        return springs && to.unit().dimension() != Unit.Dimension.STIFFNESS || angles && to.unit() == Unit.POSITION;
    }

    /** The car with {@code steps} of its own steps of a change made, as far as its stop. */
    public Optional<CarModel> with(Change change, int steps) {
        return car.setting(change.adjuster())
                .flatMap(setting -> with(change.adjuster(), setting.moved(change.direction(), steps)));
    }

    /** The same for the car in motion, which knows of dampers and heights too. */
    public Optional<CarModel> withInMotion(Change change, int steps) {
        return car.setting(change.adjuster())
                .flatMap(setting -> withInMotion(change.adjuster(), setting.moved(change.direction(), steps)));
    }

    /**
     * The car of the handling model. The differential holds what its ramps give for the torque of that phase: on the
     * power, off it, or no more than holds the speed; with the throttle closed the engine brakes the driven wheels.
     */
    public VehicleModel vehicle(CornerPhase phase) {
        return switch (phase) {
            case ENTRY -> offPower;
            case LIFT_OFF -> overrun;
            case MID_CORNER -> holding;
            case EXIT -> onPower;
        };
    }

    /** What the differential holds besides what it holds on the power. */
    Lock lock() {
        return lock;
    }

    /** Part of the driving torque through the differential that its ramps add to its preload, 0 to 1. */
    double powerRamp() {
        double driven = car.drive().orElseThrow() == Drive.FRONT ? 1 : 1 - si(Dimension.FRONT_DRIVE);
        double torque = driven * wheelRadius() * si(Dimension.MASS)
                * (POWER_PART * ROAD_FRICTION * si(Dimension.TYRE_GRIP) * VehicleModel.GRAVITY + HOLDING);
        double ramp = si(Dimension.DIFFERENTIAL_LOCK) - lock.preload();
        return torque > 0 ? Math.max(0, Math.min(1, ramp / torque)) : 0;
    }

    /** The car of the transient model. */
    public MovingCar inMotion() {
        return InMotion.of(this);
    }

    /** The car as it stood before any change: what its dampers and heights are measured from. */
    Car origin() {
        return origin;
    }

    /** How far an adjuster of heights has been moved from where the car stood, m. */
    double raised(Axle axle) {
        Adjuster height = axle == Axle.FRONT ? Adjuster.FRONT_RIDE_HEIGHT : Adjuster.REAR_RIDE_HEIGHT;
        Optional<Setting> before = origin.setting(height);
        return before.isEmpty() || before.get().now().unit().dimension() != Unit.Dimension.LENGTH ? 0
                : now(height).orElseThrow().si() - before.get().now().si();
    }

    /** What the air in an axle's tyres is to what it was before any change. */
    Inflation inflation(Axle axle) {
        Adjuster pressure = Adjuster.pressureOf(axle);
        Optional<Quantity> before = origin.setting(pressure).map(Setting::now);
        return before.isEmpty() || before.get().equals(now(pressure).orElseThrow()) ? Inflation.NOMINAL
                : new Inflation(now(pressure).orElseThrow().si() / before.get().si() - 1);
    }

    /** Load of a wheel at rest, N. */
    double standing(int wheel) {
        double front = si(Dimension.FRONT_WEIGHT);
        return si(Dimension.MASS) * VehicleModel.GRAVITY / 2 * (wheel < 2 ? front : 1 - front);
    }

    /** Damping ratio of the body on its springs, dampers in the middle of their range. */
    double damping() {
        return CarClass.of(car).damping();
    }

    /** The car, with every dimension. */
    public Car car() {
        return car;
    }

    /**
     * Whether the car's own file tells its stiffness in roll at both ends. A class of car tells which way a change goes, and not
     * how near a car of it is to neutral.
     */
    public boolean ownStiffness() {
        return lent.isEmpty() || Collections.disjoint(lent.get().what(), ROLL_STIFFNESS);
    }

    /** What a class lent that the car's file leaves out; empty where it has all that matters. */
    public Optional<Lent> lent() {
        return lent;
    }

    private VehicleModel vehicle(double lock) {
        double mass = si(Dimension.MASS);
        double front = si(Dimension.FRONT_WEIGHT);
        double wheelLoad = mass * VehicleModel.GRAVITY / 4;
        boolean oneSize = oneSize();
        double frontLoad = oneSize ? wheelLoad : 2 * front * wheelLoad;
        double rearLoad = oneSize ? wheelLoad : 2 * (1 - front) * wheelLoad;
        Drive drive = car.drive().orElseThrow();
        double driveFront = si(Dimension.FRONT_DRIVE);
        double kingpin = si(Dimension.KINGPIN_INCLINATION);
        double caster = angle(Adjuster.CASTER).orElse(CASTER);
        double brakeFront = now(Adjuster.BRAKE_BIAS).flatMap(bias -> BrakeBalance.force(car, bias))
                .orElse(BRAKE_FRONT.get(drive));
        return new VehicleModel(mass, si(Dimension.WHEELBASE), front, si(Dimension.CG_HEIGHT), wheelRadius(),
                new SteeringAxis(caster, kingpin), driveFront, brakeFront,
                new AxleModel(si(Dimension.FRONT_TRACK), si(Dimension.FRONT_ROLL_CENTRE),
                        si(Dimension.FRONT_WHEEL_RATE), si(Dimension.FRONT_BAR), si(Dimension.FRONT_UNSPRUNG),
                        toe(Axle.FRONT), camber(Axle.FRONT), si(Dimension.FRONT_CAMBER_RECOVERY),
                        perSpeedSquared(Dimension.FRONT_DOWNFORCE), drive == Drive.FRONT ? lock : 0,
                        inflation(Axle.FRONT).of(tyre(frontLoad)),
                        inflation(Axle.FRONT).verticalRate() * si(Dimension.FRONT_TYRE_RATE)),
                new AxleModel(si(Dimension.REAR_TRACK), si(Dimension.REAR_ROLL_CENTRE), si(Dimension.REAR_WHEEL_RATE),
                        si(Dimension.REAR_BAR), si(Dimension.REAR_UNSPRUNG), toe(Axle.REAR), camber(Axle.REAR),
                        si(Dimension.REAR_CAMBER_RECOVERY), perSpeedSquared(Dimension.REAR_DOWNFORCE),
                        drive == Drive.FRONT ? 0 : lock, inflation(Axle.REAR).of(tyre(rearLoad)),
                        inflation(Axle.REAR).verticalRate() * si(Dimension.REAR_TYRE_RATE)));
    }

    private boolean oneSize() {
        TyreSpec front = car.tyres(Axle.FRONT);
        TyreSpec rear = car.tyres(Axle.REAR);
        return front.rim().equals(rear.rim()) && front.diameter().equals(rear.diameter());
    }

    private Pac2002 tyre(double load) {
        double grip = si(Dimension.TYRE_GRIP);
        return Pac2002.normalised(load, ROAD_FRICTION * grip * FRICTION.get(surface), grip, OPTIMUM_LEAN);
    }

    private double wheelRadius() {
        return car.tyres(Axle.REAR).diameter().map(diameter -> diameter.si() / 2).orElse(WHEEL_RADIUS);
    }

    private double camber(Axle axle) {
        return angle(Adjuster.camberOf(axle)).orElse(0.0);
    }

    private double toe(Axle axle) {
        return now(Adjuster.toeOf(axle)).filter(toe -> toe.unit() != Unit.POSITION).map(toe -> {
            if (toe.unit().dimension() == Unit.Dimension.ANGLE) {
                return toe.si();
            }
            double rim = car.tyres(axle).rim().map(Quantity::si).orElse(RIM);
            return Math.toRadians(Toe.degreesFromMillimetres(1000 * toe.si(), 1000 * rim));
        }).orElse(0.0);
    }

    /** Dimensions give the load at 200 km/h; the model takes it over the square of the speed. */
    private double perSpeedSquared(Dimension downforce) {
        double speed = Unit.KILOMETRE_PER_HOUR.toSi(200);
        return si(downforce) / (speed * speed);
    }

    /** An angle, rad; one that is counted in clicks is not known. */
    private Optional<Double> angle(Adjuster adjuster) {
        return now(adjuster).filter(now -> now.unit().dimension() == Unit.Dimension.ANGLE).map(Quantity::si);
    }

    private Optional<Quantity> now(Adjuster adjuster) {
        return car.setting(adjuster).map(Setting::now);
    }

    private double si(Dimension dimension) {
        return car.dimensions().get(dimension).si();
    }
}
