package camberwell.practice;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Wheel;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What pyrometer and gauge read of a car: in the middle of the window and at the target, the inner edge a little hotter
 * as it should be, and more so with more negative camber than is right. The slope is common practice, no source.
 */
public final class Gauges {

    private static final double SPREAD = 6;
    private static final double KELVIN_PER_DEGREE = 7;
    private static final double GROWTH = 0.35;

    private Gauges() {
    }

    /**
     * The readings of all four tyres.
     *
     * @param good the car as it should be
     * @param now the car as it is
     */
    public static Map<Wheel, TyreReading> read(Car good, Car now) {
        Map<Wheel, TyreReading> readings = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            reading(good, now, wheel.axle()).ifPresent(reading -> readings.put(wheel, reading));
        }
        return readings;
    }

    private static Optional<TyreReading> reading(Car good, Car now, Axle axle) {
        TyreSpec spec = now.tyres(axle);
        if (spec.windowLow().isEmpty() || spec.windowHigh().isEmpty()) {
            return Optional.empty();
        }
        double middle = (spec.windowLow().get().in(Unit.CELSIUS) + spec.windowHigh().get().in(Unit.CELSIUS)) / 2;
        double spread = SPREAD + KELVIN_PER_DEGREE * (camber(good, axle) - camber(now, axle));
        Optional<Quantity> hot = spec.hotTarget();
        return Optional.of(new TyreReading(celsius(middle + spread / 2), celsius(middle), celsius(middle - spread / 2),
                hot.map(target -> new Quantity(target.in(Unit.BAR) - GROWTH, Unit.BAR)), hot));
    }

    private static double camber(Car car, Axle axle) {
        return car.setting(Adjuster.camberOf(axle)).map(Setting::now).map(now -> now.in(Unit.DEGREE)).orElse(0.0);
    }

    private static Optional<Quantity> celsius(double degrees) {
        return Optional.of(new Quantity(Math.rint(degrees), Unit.CELSIUS));
    }
}
