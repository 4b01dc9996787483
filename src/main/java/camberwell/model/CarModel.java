package camberwell.model;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.physics.AxleModel;
import camberwell.physics.CornerPhase;
import camberwell.physics.Pac2002;
import camberwell.physics.SteeringAxis;
import camberwell.physics.Toe;
import camberwell.physics.VehicleModel;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Surface;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A car as it stands, as a car of the handling model.
 *
 * <p>The tyre is the model's open one about the car's own wheel loads, with the car's grip. Where both axles have
 * tyres of one size they share one tyre; else each axle's tyre fits the load that it carries. Ride heights and
 * pressures are not in it: a car's file gives no map of roll centres and aerodynamics over height, and open tyre data
 * no single sign for pressure. Neither is the wings' drag.
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
    /** What a damp and a wet track leave of the dry one's friction: common practice, no source. */
    private static final Map<Surface, Double> FRICTION = Map.of(Surface.DRY, 1.0, Surface.DAMP, 0.8, Surface.WET, 0.6);

    private static final Set<Adjuster.Kind> KINDS = Set.of(Adjuster.Kind.TOE, Adjuster.Kind.CAMBER,
            Adjuster.Kind.CASTER, Adjuster.Kind.WING, Adjuster.Kind.BRAKE_BIAS, Adjuster.Kind.DIFFERENTIAL);
    private static final Set<Adjuster> STIFFNESSES = Set.of(Adjuster.FRONT_ANTI_ROLL_BAR, Adjuster.REAR_ANTI_ROLL_BAR,
            Adjuster.FRONT_SPRINGS, Adjuster.REAR_SPRINGS);

    private final Car car;
    private final Optional<CarClass> lent;
    private final Surface surface;
    private final double coastLock;
    private final VehicleModel onPower;
    private final VehicleModel offPower;

    private CarModel(Car car, Optional<CarClass> lent, Surface surface, double coastLock) {
        this.car = car;
        this.lent = lent;
        this.surface = surface;
        this.coastLock = coastLock;
        this.onPower = vehicle(si(Dimension.DIFFERENTIAL_LOCK));
        this.offPower = vehicle(coastLock);
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
        boolean own = all.get().keySet().stream().filter(CarModel::matters).allMatch(car.dimensions()::containsKey);
        Car complete = car.withDimensions(all.get());
        double coast = COAST_PART * complete.dimension(Dimension.DIFFERENTIAL_LOCK).orElseThrow().si();
        return sound(complete, own ? Optional.empty() : Optional.of(carClass), surface, coast);
    }

    /** A step that no adjuster takes, and air that no wing moves, are nothing to be told of. */
    private static boolean matters(Dimension dimension) {
        return switch (dimension) {
            case FRONT_DOWNFORCE, REAR_DOWNFORCE, FRONT_WING_STEP, REAR_WING_STEP, FRONT_BAR_STEP, REAR_BAR_STEP,
                    DIFFERENTIAL_STEP, DIFFERENTIAL_LOCK, FRONT_DRIVE, FRONT_BRAKES -> false;
            default -> true;
        };
    }

    private static Optional<CarModel> sound(Car car, Optional<CarClass> lent, Surface surface, double coastLock) {
        try {
            return Optional.of(new CarModel(car, lent, surface, coastLock));
        } catch (IllegalArgumentException noCar) {
            // Each dimension is plausible by itself, and together they are still no car: no figure.
            return Optional.empty();
        }
    }

    /** Whether the model knows what that adjuster does. */
    public static boolean represents(Adjuster adjuster) {
        return KINDS.contains(adjuster.kind()) || STIFFNESSES.contains(adjuster);
    }

    /**
     * The car with one adjuster set otherwise.
     *
     * @param adjuster the adjuster
     * @param to its new setting, in a unit of the same dimension as the car's own
     * @return the other car; empty when the model does not represent the adjuster, or the car lacks it
     */
    public Optional<CarModel> with(Adjuster adjuster, Quantity to) {
        Optional<Setting> from = car.setting(adjuster);
        if (from.isEmpty() || !represents(adjuster) || unscaled(adjuster, to)) {
            return Optional.empty();
        }
        Car moved = car.with(Map.of(adjuster, to));
        double coast = coastLock;
        if (adjuster == Adjuster.DIFFERENTIAL_COAST) {
            coast += from.get().stepsUp(to) * si(Dimension.DIFFERENTIAL_STEP);
        } else if (adjuster == Adjuster.DIFFERENTIAL_PRELOAD) {
            coast += moved.dimension(Dimension.DIFFERENTIAL_LOCK).orElseThrow().si() - si(Dimension.DIFFERENTIAL_LOCK);
        }
        return sound(moved, lent, surface, Math.max(0, coast));
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

    /** The car of the handling model: off the power the differential holds what its coast ramps give. */
    public VehicleModel vehicle(CornerPhase phase) {
        return phase == CornerPhase.ENTRY ? offPower : onPower;
    }

    /** The car, with every dimension. */
    public Car car() {
        return car;
    }

    /** The class that lent dimensions which the car's file leaves out: {@code rear-drive road car}. */
    public Optional<String> lentBy() {
        return lent.map(CarClass::text);
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
                        tyre(frontLoad)),
                new AxleModel(si(Dimension.REAR_TRACK), si(Dimension.REAR_ROLL_CENTRE), si(Dimension.REAR_WHEEL_RATE),
                        si(Dimension.REAR_BAR), si(Dimension.REAR_UNSPRUNG), toe(Axle.REAR), camber(Axle.REAR),
                        si(Dimension.REAR_CAMBER_RECOVERY), perSpeedSquared(Dimension.REAR_DOWNFORCE),
                        drive == Drive.FRONT ? 0 : lock, tyre(rearLoad)));
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
