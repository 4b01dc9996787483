package camberwell.model;

import camberwell.car.BiasOf;
import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Surface;
import java.util.Map;
import java.util.Optional;

/**
 * The braking force at the front against the load there at hard braking. The load share is {@code b/L + (a/g) h/L}, with
 * the static share b/L, the deceleration a and the height h of the centre of gravity over the wheelbase L (T. D.
 * Gillespie, Fundamentals of Vehicle Dynamics, SAE, 1992, ch. 3, cited from memory). Downforce is left out.
 *
 * @param forceShare of the front in the braking force, in [0, 1]
 * @param loadShare of the front in the load at that deceleration, in [0, 1]
 * @param deceleration in parts of standard gravity
 */
public record BrakeBalance(Car car, double forceShare, double loadShare, double deceleration) {

    /** Hard braking uses this much of the grip; the rest is the driver's margin: common practice, no source. */
    private static final double HARD = 0.9;
    private static final double ROAD_FRICTION = 1.05;
    private static final Map<Surface, Double> FRICTION = Map.of(Surface.DRY, 1.0, Surface.DAMP, 0.8, Surface.WET, 0.6);

    /** Of a car whose file gives its brake bias as a force, or how to convert it, and the dimensions; else empty. */
    public static Optional<BrakeBalance> of(Car car, Surface surface) {
        Optional<Double> force = car.setting(Adjuster.BRAKE_BIAS).map(Setting::now).flatMap(now -> force(car, now));
        Optional<Quantity> front = car.dimension(Dimension.FRONT_WEIGHT);
        Optional<Quantity> height = car.dimension(Dimension.CG_HEIGHT);
        Optional<Quantity> wheelbase = car.dimension(Dimension.WHEELBASE);
        if (car.generic() || force.isEmpty() || front.isEmpty() || height.isEmpty() || wheelbase.isEmpty()) {
            return Optional.empty();
        }
        double grip = car.dimension(Dimension.TYRE_GRIP).map(Quantity::si).orElse(1.0);
        double deceleration = HARD * ROAD_FRICTION * grip * FRICTION.get(surface);
        double load = front.get().si() + deceleration * height.get().si() / wheelbase.get().si();
        return Optional.of(new BrakeBalance(car, force.get(), Math.min(1, load), deceleration));
    }

    /**
     * The share of the front in the braking force at a brake bias. From line pressures p of both circuits and the share k
     * that the front brakes give at equal pressure: {@code p k / (p k + (1 - p)(1 - k))}.
     *
     * @return empty when the bias is counted in clicks, or in pressure with nothing to convert it by
     */
    public static Optional<Double> force(Car car, Quantity bias) {
        if (bias.unit().dimension() != Unit.Dimension.RATIO) {
            return Optional.empty();
        }
        double share = bias.si();
        if (car.biasOf() == BiasOf.FORCE) {
            return Optional.of(share);
        }
        return car.dimension(Dimension.FRONT_BRAKES).map(brakes -> share * brakes.si()
                / (share * brakes.si() + (1 - share) * (1 - brakes.si())));
    }

    /** The same car at another brake bias. */
    public BrakeBalance at(Quantity bias) {
        return new BrakeBalance(car, force(car, bias).orElse(forceShare), loadShare, deceleration);
    }

    /** Per cent of the force by which the front locks first; negative when the rear does. */
    public double sparePercent() {
        return 100 * (forceShare - loadShare);
    }

    /** In words. */
    public String text() {
        return Figures.fill("at %.1f g the front carries %.0f %s of the load and gives %.0f %s of the braking force",
                deceleration, 100 * loadShare, "%", 100 * forceShare, "%");
    }

    /** What is missing, in words. */
    public static String unknown(Car car) {
        return car.biasOf() == BiasOf.PRESSURE && car.dimension(Dimension.FRONT_BRAKES).isEmpty()
                ? "the car counts line pressure, and its file does not say what force that makes (front-brakes)"
                : "the car's file gives too little to hold the braking force against the load";
    }
}
