package camberwell.model;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.physics.LoadTransfer;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Drive;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A class of car, for the dimensions that a car's file leaves out. Wheel rates follow from a ride frequency, and bars
 * from the roll stiffness of the springs; all figures are common practice, no source.
 *
 * @param kind what it is built for
 * @param drive its driven wheels
 */
record CarClass(Kind kind, Drive drive) {

    /** What a car is built for. */
    enum Kind {
        ROAD("road car", 0.52, 1.50, 1.4, 1.00, 190_000, 0.35, 0, 0),
        /** Built on a road car: its weight and height, springs and tyres between the two; dampers and tyre rate of the next. */
        TRACK_DAY("road-based track car", 0.52, 1.52, 1.9, 1.15, 250_000, 0.6, 0, 0),
        COMPETITION("competition car", 0.47, 1.52, 2.4, 1.30, 250_000, 0.6, 600, 1000),
        SINGLE_SEATER("winged single-seater", 0.30, 1.55, 4.0, 1.50, 200_000, 0.7, 1800, 2600);

        private final String name;
        private final double cgHeight;
        private final double track;
        /** Of the body on its springs, Hz. */
        private final double rideFrequency;
        private final double tyreGrip;
        /** Vertical rate of one tyre, N/m; that of three open road cars is from 158 to 213 N/mm. */
        private final double tyreRate;
        /** Damping ratio of the body on its springs, dampers in the middle of their range. */
        private final double damping;
        /** At 200 km/h, N. */
        private final double frontDownforce;
        private final double rearDownforce;

        Kind(String name, double cgHeight, double track, double rideFrequency, double tyreGrip, double tyreRate,
                double damping, double frontDownforce, double rearDownforce) {
            this.name = name;
            this.cgHeight = cgHeight;
            this.track = track;
            this.rideFrequency = rideFrequency;
            this.tyreGrip = tyreGrip;
            this.tyreRate = tyreRate;
            this.damping = damping;
            this.frontDownforce = frontDownforce;
            this.rearDownforce = rearDownforce;
        }
    }

    /** kg with the driver; a car for the road is hardly ever lighter, nor one that was built to race without wings heavier. */
    private static final double LIGHT = 750;
    private static final double HEAVY = 1100;
    /** Tyres with more grip than this, a part of the weight, or that want to be this warm, °C, are for racing alone. */
    private static final double RACING_GRIP = 1.25;
    private static final double RACING_WARMTH = 70;
    private static final double UNSPRUNG_PART = 0.065;
    private static final double LOCK = 250;
    private static final double WING_STEP = 90;
    private static final double BAR_STEP_PART = 0.2;

    /** The class of a car whose driven wheels are known: by its mass and wings, its tyres, and what it lets one adjust. */
    static CarClass of(Car car) {
        Drive drive = car.drive().orElseThrow();
        boolean wings = car.setting(Adjuster.FRONT_WING).isPresent() && car.setting(Adjuster.REAR_WING).isPresent();
        if (wings && mass(car) < LIGHT) {
            return new CarClass(Kind.SINGLE_SEATER, drive);
        }
        boolean built = car.setting(Adjuster.FRONT_SPRINGS).isPresent()
                || car.setting(Adjuster.FRONT_ANTI_ROLL_BAR).isPresent()
                || car.setting(Adjuster.REAR_ANTI_ROLL_BAR).isPresent();
        return new CarClass(!built ? Kind.ROAD : ofTheRoad(car) ? Kind.TRACK_DAY : Kind.COMPETITION, drive);
    }

    /** Infinite where nobody says. */
    private static double mass(Car car) {
        return car.dimension(Dimension.MASS).map(Quantity::si).orElse(Double.POSITIVE_INFINITY);
    }

    /** Whether a car that lets one adjust springs or bars is a road car all the same: no wing, and no tyres for racing. */
    private static boolean ofTheRoad(Car car) {
        Optional<Quantity> grip = car.dimension(Dimension.TYRE_GRIP);
        Optional<Quantity> warm = car.tyres(Axle.FRONT).windowLow().or(() -> car.tyres(Axle.REAR).windowLow());
        boolean racing = grip.isPresent() ? grip.get().si() > RACING_GRIP
                : warm.isPresent() ? warm.get().in(Unit.CELSIUS) >= RACING_WARMTH : mass(car) < HEAVY;
        return car.setting(Adjuster.FRONT_WING).isEmpty() && car.setting(Adjuster.REAR_WING).isEmpty() && !racing
                && mass(car) >= LIGHT;
    }

    /** Damping ratio of the body on its springs, dampers in the middle of their range. */
    double damping() {
        return kind.damping;
    }

    /** In words: {@code rear-drive competition car}. */
    String text() {
        return (drive == Drive.ALL ? "all-wheel-drive " : drive.id() + "-drive ") + kind.name;
    }

    /**
     * Every dimension of {@code car}: its own, and those of the class where it gives none. Empty when it lacks its
     * wheelbase, its mass or its weight on the front axle, for which no class can stand in.
     */
    Optional<Map<Dimension, Quantity>> complete(Car car) {
        if (car.dimension(Dimension.WHEELBASE).isEmpty() || car.dimension(Dimension.MASS).isEmpty()
                || car.dimension(Dimension.FRONT_WEIGHT).isEmpty()) {
            return Optional.empty();
        }
        EnumMap<Dimension, Quantity> all = new EnumMap<>(Dimension.class);
        all.putAll(car.dimensions());
        boolean rigid = drive == Drive.FRONT;
        give(all, Dimension.CG_HEIGHT, kind.cgHeight);
        give(all, Dimension.FRONT_TRACK, kind.track);
        give(all, Dimension.REAR_TRACK, kind.track);
        give(all, Dimension.FRONT_ROLL_CENTRE, 0.05);
        give(all, Dimension.REAR_ROLL_CENTRE, rigid ? 0.14 : 0.09);
        double mass = all.get(Dimension.MASS).si();
        give(all, Dimension.FRONT_UNSPRUNG, UNSPRUNG_PART * mass);
        give(all, Dimension.REAR_UNSPRUNG, UNSPRUNG_PART * mass);
        double front = all.get(Dimension.FRONT_WEIGHT).si();
        give(all, Dimension.FRONT_WHEEL_RATE, wheelRate(mass * front - all.get(Dimension.FRONT_UNSPRUNG).si()));
        give(all, Dimension.REAR_WHEEL_RATE, wheelRate(mass * (1 - front) - all.get(Dimension.REAR_UNSPRUNG).si()));
        give(all, Dimension.FRONT_TYRE_RATE, kind.tyreRate);
        give(all, Dimension.REAR_TYRE_RATE, kind.tyreRate);
        bar(all, Dimension.FRONT_BAR, Dimension.FRONT_BAR_STEP, (rigid ? 0.4 : 0.6)
                * springs(all, Dimension.FRONT_WHEEL_RATE, Dimension.FRONT_TRACK));
        bar(all, Dimension.REAR_BAR, Dimension.REAR_BAR_STEP, (rigid ? 0.6 : 0.3)
                * springs(all, Dimension.REAR_WHEEL_RATE, Dimension.REAR_TRACK));
        give(all, Dimension.FRONT_CAMBER_RECOVERY, 0.3);
        give(all, Dimension.REAR_CAMBER_RECOVERY, rigid ? 0.3 : 0.5);
        give(all, Dimension.KINGPIN_INCLINATION, Math.toRadians(12));
        boolean frontWing = car.setting(Adjuster.FRONT_WING).isPresent();
        boolean rearWing = car.setting(Adjuster.REAR_WING).isPresent();
        give(all, Dimension.FRONT_DOWNFORCE, frontWing || rearWing ? kind.frontDownforce : 0);
        give(all, Dimension.REAR_DOWNFORCE, rearWing ? kind.rearDownforce : 0);
        give(all, Dimension.FRONT_WING_STEP, WING_STEP);
        give(all, Dimension.REAR_WING_STEP, WING_STEP);
        give(all, Dimension.TYRE_GRIP, kind.tyreGrip);
        give(all, Dimension.FRONT_DRIVE, drive == Drive.FRONT ? 1 : drive == Drive.REAR ? 0 : 0.5);
        boolean locks = car.setting(Adjuster.DIFFERENTIAL_POWER).isPresent()
                || car.setting(Adjuster.DIFFERENTIAL_PRELOAD).isPresent()
                || car.setting(Adjuster.DIFFERENTIAL_COAST).isPresent();
        give(all, Dimension.DIFFERENTIAL_LOCK, locks ? LOCK : 0);
        give(all, Dimension.DIFFERENTIAL_STEP, LOCK / 6);
        return Optional.of(all);
    }

    private static void give(Map<Dimension, Quantity> all, Dimension dimension, double si) {
        all.computeIfAbsent(dimension, missing -> Quantity.ofSi(si, missing.unit()));
    }

    private static void bar(Map<Dimension, Quantity> all, Dimension bar, Dimension step, double rate) {
        give(all, bar, rate);
        give(all, step, BAR_STEP_PART * all.get(bar).si());
    }

    private static double springs(Map<Dimension, Quantity> all, Dimension wheelRate, Dimension track) {
        return LoadTransfer.springRollStiffness(all.get(wheelRate).si(), all.get(track).si());
    }

    /** {@code (2 pi f)² m} for each of the axle's two wheels. */
    private double wheelRate(double sprungMassOfAxle) {
        double angular = 2 * Math.PI * kind.rideFrequency;
        return Math.max(1, angular * angular * sprungMassOfAxle / 2);
    }
}
