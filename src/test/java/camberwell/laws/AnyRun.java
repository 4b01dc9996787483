package camberwell.laws;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * A run as it might come in, the same for the same number: any driven wheels, any part of the adjusters, standing anywhere
 * in their range, tyres that are cold, right, hot, soft or hard, and one to three complaints that make sense.
 */
public final class AnyRun {

    private static final double LOW = 75;
    private static final double HIGH = 100;
    private static final double TARGET = 1.90;

    private final Random random;
    /** Whether the tyres were set below their minimum. */
    private final boolean soft;
    /** Whether the rear wheels may be found toed out. */
    private final boolean bent;

    private AnyRun(long number) {
        // Neighbouring seeds give neighbouring first draws, hence the stride.
        this.random = new Random(number * 0x9E3779B97F4A7C15L);
        this.soft = number % 11 == 7;
        this.bent = number % 13 == 5;
    }

    /** The run of that number. */
    public static Case of(long number) {
        return new AnyRun(number).make(number);
    }

    private Case make(long number) {
        Car car = number % 6 == 5 ? wheelByWheel(car()) : car();
        Conditions conditions = new Conditions(Optional.of(one(Surface.DRY, Surface.DRY, Surface.DRY, Surface.DAMP, Surface.WET)),
                maybe(celsius(random.nextInt(30))), maybe(celsius(5 + random.nextInt(45))), Optional.empty(),
                Optional.empty(), one(Turn.BOTH, Turn.BOTH, Turn.BOTH, Turn.LEFT, Turn.RIGHT));
        List<Report> reports = new ArrayList<>();
        int count = 1 + random.nextInt(3);
        for (int i = 0; i < count; i++) {
            Report report = report();
            if (!reports.contains(report)) {
                reports.add(report);
            }
        }
        return new Case("Run " + number, "-", car, conditions, random.nextInt(3) == 0 ? Map.of() : tyres(), reports,
                List.of());
    }

    private Car car() {
        Drive drive = one(Drive.values());
        boolean few = random.nextInt(4) == 0;
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        for (Adjuster adjuster : Adjuster.values()) {
            boolean ofTheTyre = adjuster.adjustment().ofTyre();
            if (adjuster.wheel().isEmpty() && (few ? ofTheTyre : random.nextInt(6) > 0)) {
                adjusters.put(adjuster, setting(adjuster));
            }
        }
        Map<Axle, TyreSpec> tyres = new EnumMap<>(Axle.class);
        for (Axle axle : Axle.values()) {
            tyres.put(axle, new TyreSpec(Optional.of(celsius(LOW)), Optional.of(celsius(HIGH)),
                    Optional.of(bar(TARGET)), Optional.empty(), Optional.empty(), Optional.of(bar(1.40)), Optional.empty(), Optional.empty(),
                    Optional.empty()));
        }
        Map<Dimension, Quantity> dimensions = new EnumMap<>(Dimension.class);
        if (random.nextBoolean()) {
            dimensions.put(Dimension.WHEELBASE, new Quantity(2.55, Unit.METRE));
            dimensions.put(Dimension.MASS, new Quantity(900 + random.nextInt(600), Unit.KILOGRAM));
            dimensions.put(Dimension.FRONT_WEIGHT, new Quantity(drive == Drive.FRONT ? 61 : 46 + random.nextInt(10),
                    Unit.PERCENT));
            dimensions.put(Dimension.CG_HEIGHT, new Quantity(0.46, Unit.METRE));
            dimensions.put(Dimension.TYRE_GRIP, new Quantity(100 + random.nextInt(40), Unit.PERCENT));
        }
        return new Car("Any car", Optional.of(drive), adjusters, tyres, dimensions, false);
    }

    /** The same car with the camber of each wheel set by itself, each standing a little elsewhere. */
    private static Car wheelByWheel(Car car) {
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        adjusters.putAll(car.adjusters());
        for (Wheel wheel : Wheel.values()) {
            Setting both = car.adjusters().get(Adjuster.camberOf(wheel.axle()));
            adjusters.remove(Adjuster.camberOf(wheel.axle()));
            if (both != null) {
                double apart = wheel.left() ? 0 : Math.min(2, both.stepsLeft(Direction.LESS_NEGATIVE)) * both.step().value();
                adjusters.put(Adjuster.camberOf(wheel), both.withNow(both.now().withValue(
                        Math.rint((both.now().value() + apart) * 1e6) / 1e6)));
            }
        }
        return new Car(car.name(), car.drive(), adjusters, car.tyres(), car.dimensions(), false);
    }

    /** Anywhere in the range, on a whole step; some in the units and steps that other cars have. */
    private Setting setting(Adjuster adjuster) {
        double[] range = range(adjuster);
        Unit unit = unit(adjuster);
        int steps = (int) Math.round((range[1] - range[0]) / range[2]);
        double now = random.nextInt(8) == 0 ? range[random.nextInt(2)] : range[0] + random.nextInt(steps + 1) * range[2];
        boolean reversed = unit == Unit.POSITION && random.nextInt(4) == 0;
        return new Setting(new Quantity(Math.rint(now * 1e6) / 1e6, unit), new Quantity(range[0], unit),
                new Quantity(range[1], unit), new Quantity(range[2], unit), reversed);
    }

    private static Unit unit(Adjuster adjuster) {
        return switch (adjuster.adjustment()) {
            case TOE, CAMBER, CASTER -> Unit.DEGREE;
            case PRESSURE -> Unit.BAR;
            case SPRINGS -> Unit.NEWTON_PER_MILLIMETRE;
            case RIDE_HEIGHT -> Unit.MILLIMETRE;
            case BRAKE_BIAS -> Unit.PERCENT;
            case DIFFERENTIAL_PRELOAD -> Unit.NEWTON_METRE;
            default -> Unit.POSITION;
        };
    }

    private double[] range(Adjuster adjuster) {
        boolean fine = random.nextBoolean();
        return switch (adjuster.adjustment()) {
            case TOE -> adjuster.axle().orElseThrow() == Axle.REAR ? new double[] {bent ? -0.1 : 0, 0.4, fine ? 0.05 : 0.1}
                    : new double[] {-0.3, 0.2, fine ? 0.05 : 0.1};
            case CAMBER -> new double[] {-4, -1, fine ? 0.1 : 0.25};
            case CASTER -> new double[] {3, 9, 0.5};
            case PRESSURE -> new double[] {1.2, 2.2, fine ? 0.02 : 0.05};
            case SPRINGS -> new double[] {40, 120, fine ? 5 : 10};
            case RIDE_HEIGHT -> fine ? new double[] {20, 60, 1} : new double[] {80, 140, 5};
            case BRAKE_BIAS -> new double[] {55, 75, fine ? 0.5 : 1};
            case DIFFERENTIAL_PRELOAD -> new double[] {20, 120, 10};
            case BUMP, REBOUND -> new double[] {0, 24, fine ? 1 : 2};
            default -> new double[] {1, fine ? 5 : 9, 1};
        };
    }

    private Map<Wheel, TyreReading> tyres() {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        for (Axle axle : Axle.values()) {
            double mean = one(62.0, 72.0, 80.0, 88.0, 96.0, 104.0, 112.0) + random.nextInt(4);
            double edge = one(-12.0, -4.0, 3.0, 5.0, 7.0, 14.0, 22.0);
            double middle = one(-9.0, -4.0, 0.0, 0.0, 0.0, 4.0, 9.0);
            double off = one(-0.4, -0.18, -0.07, 0.0, 0.0, 0.07, 0.18, 0.4);
            for (Wheel wheel : Wheel.values()) {
                if (wheel.axle() == axle && random.nextInt(8) > 0) {
                    double side = random.nextInt(10) == 0 ? 12 : random.nextInt(3);
                    double alone = random.nextInt(14) == 0 ? -0.25 : 0;
                    double hot = Math.max(0.6, TARGET + off + alone);
                    tyres.put(wheel, new TyreReading(Optional.of(celsius(mean + side + edge / 2)),
                            Optional.of(celsius(mean + side + middle)), Optional.of(celsius(mean + side - edge / 2)),
                            Optional.of(bar(soft ? 1.30 : 1.55)), maybe(bar(Math.rint(hot * 100) / 100))));
                }
            }
        }
        return tyres;
    }

    private Report report() {
        Symptom symptom = one(Symptom.values());
        Optional<Phase> phase = Optional.empty();
        Optional<Place> where = Optional.empty();
        if (symptom.ofTyre()) {
            where = Optional.of(one(Place.FRONT, Place.REAR));
        } else if (random.nextInt(5) > 0) {
            Phase said = one(Phase.values());
            phase = symptom.senseless(said).isEmpty() ? Optional.of(said) : Optional.empty();
        }
        return new Report(symptom, where, phase, maybe(one(CornerSpeed.values())), one(Severity.values()),
                one(Occurrence.EVERY_LAP, Occurrence.EVERY_LAP, Occurrence.SOME_LAPS, Occurrence.ONCE),
                maybe(one(Since.values())), random.nextInt(4) == 0 ? Optional.of(one(Turn.values())) : Optional.empty());
    }

    @SafeVarargs
    private <T> T one(T... of) {
        return of[random.nextInt(of.length)];
    }

    private <T> Optional<T> maybe(T value) {
        return random.nextBoolean() ? Optional.of(value) : Optional.empty();
    }

    private static Quantity celsius(double degrees) {
        return new Quantity(degrees, Unit.CELSIUS);
    }

    private static Quantity bar(double bar) {
        return new Quantity(bar, Unit.BAR);
    }
}
