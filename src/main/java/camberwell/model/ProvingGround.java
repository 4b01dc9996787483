package camberwell.model;

import camberwell.physics.CornerPhase;
import camberwell.physics.HandlingModel;
import camberwell.physics.motion.Bumps;
import camberwell.physics.motion.Channel;
import camberwell.physics.motion.Corner;
import camberwell.physics.motion.History;
import camberwell.physics.motion.InATurn;
import camberwell.physics.motion.Kerb;
import camberwell.physics.motion.Manoeuvre;
import camberwell.physics.motion.Measures;
import camberwell.physics.motion.MovingCar;
import camberwell.physics.motion.Pace;
import camberwell.physics.motion.StepSteer;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Where a car is driven before and after a change. What is asked of it is taken from the car as it stands, and is the
 * same for every other: the same course at the same pace. Remembers what it measured. For one thread.
 */
public final class ProvingGround {

    /** Parts of its cornering grip that a driver uses, and of the same for braking and power: common practice. */
    private static final double CORNERING = 0.93;
    private static final double BRAKING = 0.7;
    private static final Map<Drive, Double> POWER = Map.of(Drive.FRONT, 0.35, Drive.REAR, 0.4, Drive.ALL, 0.55);
    /** W/kg, by the grip of the tyres: a car on slicks has more than a road car. */
    private static final double ENGINE = 150;
    private static final double LIFTS_AT = 0.88;
    private static final double TURNS_AT = 0.7;
    private static final double BRAKES_IN_A_TURN = 0.3;
    private static final double POWER_IN_A_TURN = 0.2;
    private static final double STEPS_TO = 0.5;
    /** What toe does to the answer is over before the load has moved. */
    private static final Manoeuvre.Part AT_ONCE =
            new Manoeuvre.Part(Manoeuvre.Phase.ENTRY, Channel.TIME, -0.05, 0.05);
    private static final Manoeuvre.Part SOON =
            new Manoeuvre.Part(Manoeuvre.Phase.ENTRY, Channel.TIME, 0, 0.1);
    /** A change of less is nothing: far below what a driver notices, well above what the step of a run leaves open. */
    private static final double LEAST_ANSWER = 0.0001;
    private static final double LEAST_PART = 0.001;
    private static final Set<Adjustment> OFF_THE_POWER = EnumSet.of(Adjustment.BRAKE_BIAS,
            Adjustment.DIFFERENTIAL_PRELOAD, Adjustment.DIFFERENTIAL_COAST);
    /** Adjustments that move load between the wheels of an axle: where one hangs, they move nothing there. */
    private static final Set<Adjustment> MOVE_LOAD = EnumSet.of(Adjustment.ANTI_ROLL_BAR, Adjustment.SPRINGS,
            Adjustment.RIDE_HEIGHT);
    private static final Set<Word> STEERING_LEFT_FREE = Set.of(Symptom.SLOW_TURN_IN, Symptom.NERVOUS_TURN_IN,
            Quality.TURN_IN_RESPONSE, Symptom.UNSTABLE_BRAKING);
    private static final double HANGS = 0.005;
    /** Complaints about where the car goes while the pedals slow it, which a straight does not show. */
    private static final Set<Word> WHERE_IT_GOES = Set.of(Symptom.UNDERSTEER, Symptom.OVERSTEER,
            Symptom.SNAP_OVERSTEER, Symptom.UNSTABLE_BRAKING);
    private static final double KERB_AT = 0.6;
    private static final double KERB_HEIGHT = 0.025;
    private static final double KERB_LENGTH = 1.5;

    private final CarModel car;
    private final Map<Double, Double> grip = new HashMap<>();
    private final Map<Asked, Manoeuvre> manoeuvres = new HashMap<>();
    private final Map<Driven, Map<Phase, Figures>> measured = new HashMap<>();
    private final Map<Driven, History> answers = new HashMap<>();

    /** What a car can be asked to do. */
    public enum Exercise {
        /** Braking, into a corner, round it and out of it. */
        CORNER(Phase.BRAKING, Phase.ENTRY, Phase.MID_CORNER, Phase.EXIT),
        /** The throttle closed in a corner, the driver holding his course: ISO 9816 with a driver. */
        LIFT_OFF(Phase.LIFT_OFF),
        /** A kerb under the inner wheels in a corner. */
        KERB(Phase.KERBS),
        /** A straight with bumps. */
        BUMPS(Phase.STRAIGHT),
        /** Step steer, ISO 7401. */
        STEP_STEER,
        /** Braking in a turn, the wheel held, ISO 7975. */
        BRAKING_IN_A_TURN,
        /** The throttle closed in a turn, the wheel held, ISO 9816. */
        POWER_OFF,
        /** The throttle opened in a turn, the wheel held. */
        POWER_ON;

        private final List<Phase> phases;

        Exercise(Phase... phases) {
            this.phases = List.of(phases);
        }

        /** As it is called on the command line: {@code power-off}. */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** The exercise that shows a phase. */
        public static Exercise of(Phase phase) {
            for (Exercise exercise : values()) {
                if (exercise.phases.contains(phase)) {
                    return exercise;
                }
            }
            throw new IllegalArgumentException("nothing shows " + phase);
        }
    }

    /**
     * What a car is asked to do.
     *
     * @param speed m/s
     */
    public record Asked(Exercise exercise, double speed) {

        /** What shows a phase at a speed in m/s. */
        public static Asked of(Phase phase, double speed) {
            return new Asked(Exercise.of(phase), speed);
        }
    }

    private record Driven(CarModel model, Asked asked) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Driven driven && model == driven.model && asked.equals(driven.asked);
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(model) + asked.hashCode();
        }
    }

    /** @param car the car as it stands */
    public ProvingGround(CarModel car) {
        this.car = car;
    }

    /** The car as it stands. */
    public CarModel car() {
        return car;
    }

    /** What it can hold with neither brake nor power at a speed in m/s, m/s². */
    private double grip(double speed) {
        return grip.computeIfAbsent(speed, fresh -> HandlingModel.maxLateralAcceleration(
                car.vehicle(CornerPhase.MID_CORNER), speed, 0));
    }

    /** The exercise at a speed in m/s, as the car as it stands can do it. */
    public Manoeuvre manoeuvre(Exercise exercise, double speed) {
        return manoeuvres.computeIfAbsent(new Asked(exercise, speed), fresh -> ask(exercise, speed));
    }

    private Manoeuvre ask(Exercise exercise, double speed) {
        double most = grip(speed);
        return switch (exercise) {
            case CORNER -> new Corner(speed, new Pace.Demand(CORNERING * most, BRAKING * most,
                    POWER.get(car.car().drive().orElseThrow()) * most, ENGINE * most / 10));
            case LIFT_OFF -> new InATurn(InATurn.Kind.POWER_OFF, speed * speed / (LIFTS_AT * most), speed,
                    -CornerPhase.OVERRUN, true);
            case KERB -> new Kerb(speed * speed / (KERB_AT * most), speed, KERB_HEIGHT, KERB_LENGTH);
            case BUMPS -> new Bumps(speed, 1);
            case BRAKING_IN_A_TURN -> inATurn(InATurn.Kind.BRAKING, speed, -BRAKES_IN_A_TURN * most);
            case POWER_OFF -> inATurn(InATurn.Kind.POWER_OFF, speed, -CornerPhase.OVERRUN);
            case POWER_ON -> inATurn(InATurn.Kind.POWER_ON, speed, POWER_IN_A_TURN * most);
            case STEP_STEER -> new StepSteer(speed, car.vehicle(CornerPhase.MID_CORNER).bicycle()
                    .steer(speed * speed / (STEPS_TO * most), speed));
        };
    }

    private Manoeuvre inATurn(InATurn.Kind what, double speed, double change) {
        return new InATurn(what, speed * speed / (TURNS_AT * grip(speed)), speed, change, false);
    }

    /** Radius of the turn that an exercise is driven in at a speed in m/s, m; infinite for one that is in none. */
    public double radius(Exercise exercise, double speed) {
        return manoeuvre(exercise, speed) instanceof InATurn turn ? turn.radius() : Double.POSITIVE_INFINITY;
    }

    /** Has a car do an exercise. */
    public History drive(CarModel other, Exercise exercise, double speed) {
        return manoeuvre(exercise, speed).drive(other.inMotion());
    }

    /**
     * How a car behaves in a phase.
     *
     * @param other this car, or the same with a change made
     * @param phase the phase
     * @param speed m/s
     * @return empty where the car was lost before
     */
    public Optional<Figures> figures(CarModel other, Phase phase, double speed) {
        Map<Phase, Figures> known = measured.computeIfAbsent(new Driven(other, Asked.of(phase, speed)),
                fresh -> measure(other, manoeuvre(fresh.asked().exercise(), speed)));
        return Optional.ofNullable(known.get(phase));
    }

    /**
     * Drives cars, on as many cores as there are, through what {@link #figures} will be asked for; it is then known.
     *
     * @param cars this car, or the same with a change made
     * @param asked what each of them does
     */
    public void driveAhead(List<CarModel> cars, Collection<Asked> asked) {
        List<Driven> fresh = new ArrayList<>();
        for (CarModel other : cars) {
            for (Asked one : asked) {
                Driven driven = new Driven(other, one);
                if (!measured.containsKey(driven)) {
                    fresh.add(driven);
                    // A manoeuvre is laid out for all cars, and by one thread.
                    manoeuvre(one.exercise(), one.speed());
                }
            }
        }
        List<Map<Phase, Figures>> found = fresh.parallelStream()
                .map(driven -> measure(driven.model(), manoeuvres.get(driven.asked()))).toList();
        for (int i = 0; i < fresh.size(); i++) {
            measured.put(fresh.get(i), found.get(i));
        }
    }

    /** Mean yaw rate over a part of the first moments after the same step of steer, degrees a second. */
    private double answer(CarModel other, double speed, Manoeuvre.Part part) {
        History run = answers.computeIfAbsent(new Driven(other, new Asked(Exercise.STEP_STEER, speed)),
                fresh -> drive(other, Exercise.STEP_STEER, speed));
        return Math.toDegrees(Measures.mean(run, part, Channel.YAW_RATE));
    }

    /** The phase in which a moving car shows best what an adjustment does to it; empty where it does not. */
    public static Optional<Phase> shows(Word on, Adjustment by) {
        Set<Phase> phases = Sensed.phases(on, by);
        return phases.stream().filter(phase -> phase == Phase.MID_CORNER).findFirst()
                .or(() -> phases.stream().findFirst());
    }

    /**
     * What a change does to a complaint or a quality.
     *
     * @param by what was changed
     * @param changed the same car with the change made
     * @param on a symptom or a quality
     * @param where the axle it is on, where it is bound to one
     * @param phase the phase
     * @param speed m/s
     * @return empty where the moving car does not show it
     */
    public Optional<Bench.Relief> relief(Adjustment by, CarModel changed, Word on, Optional<Axle> where, Phase phase,
            double speed) {
        if (by == Adjustment.CASTER && STEERING_LEFT_FREE.contains(on)) {
            // Calms by the weight at the wheel, which is not held by its angle there.
            return Optional.empty();
        }
        if (on == Symptom.SLOW_TURN_IN || on == Symptom.NERVOUS_TURN_IN || on == Quality.TURN_IN_RESPONSE) {
            return turnIn(by, changed, on == Symptom.NERVOUS_TURN_IN, speed);
        }
        Exercise held = phase == Phase.BRAKING ? Exercise.BRAKING_IN_A_TURN : phase == Phase.LIFT_OFF ? Exercise.POWER_OFF
                : null;
        if (held != null && WHERE_IT_GOES.contains(on)) {
            return wheelHeld(changed, on, held, speed);
        }
        Optional<Sensed> sensed = Sensed.of(on, by, phase);
        Optional<Figures> before = sensed.flatMap(it -> figures(car, phase, speed));
        Optional<Figures> after = before.flatMap(it -> figures(changed, phase, speed));
        boolean hangs = MOVE_LOAD.contains(by) && phase != Phase.KERBS && phase != Phase.STRAIGHT
                && before.filter(it -> it.leastLoad() < HANGS).isPresent();
        return hangs ? Optional.empty() : after.map(to -> sensed.get().relief(before.get(), to, where));
    }

    /**
     * How much a change does for a complaint where the driver steers along his course.
     *
     * @param by what was changed
     * @param changed the same car with the change made
     * @param on a symptom
     * @param where the axle it is on, where it is bound to one
     * @param phase the phase
     * @param speed m/s
     * @return so many times the smallest change that counts, positive for the better; empty where the moving car does not
     *     show it, or is lost
     */
    public OptionalDouble gain(Adjustment by, CarModel changed, Word on, Optional<Axle> where, Phase phase, double speed) {
        Optional<Sensed> sensed = Sensed.of(on, by, phase);
        Optional<Figures> before = sensed.flatMap(it -> figures(car, phase, speed));
        Optional<Figures> after = before.flatMap(it -> figures(changed, phase, speed));
        return after.isEmpty() || after.get().lost() ? OptionalDouble.empty()
                : OptionalDouble.of(sensed.get().gain(before.get(), after.get(), where));
    }

    /** Brakes and the lock off the power turn a car in, or not, on the brakes alone; the rest by a step of steer. */
    private Optional<Bench.Relief> turnIn(Adjustment by, CarModel changed, boolean nervous, double speed) {
        if (OFF_THE_POWER.contains(by)) {
            return relief(by, changed, nervous ? Symptom.OVERSTEER : Symptom.UNDERSTEER, Optional.empty(), Phase.ENTRY,
                    speed);
        }
        Manoeuvre.Part part = by == Adjustment.TOE ? AT_ONCE : SOON;
        double before = answer(car, speed, part);
        double gain = (answer(changed, speed, part) - before) / before;
        return Optional.of(Bench.Relief.of(nervous ? -gain : gain, by == Adjustment.TOE ? LEAST_PART : LEAST_ANSWER));
    }

    /**
     * Braking (ISO 7975) or the throttle closed (ISO 9816) in a turn with the wheel held: a car that turns in of itself is
     * unsteady, one that runs wide pushes. A driver who steers hides it: the turn that he starts from changes, too.
     */
    private Optional<Bench.Relief> wheelHeld(CarModel changed, Word on, Exercise exercise, double speed) {
        double before = curvature(car, exercise, speed);
        double gain = (curvature(changed, exercise, speed) - before) / before;
        return Double.isFinite(gain) ? Optional.of(Bench.Relief.of(on == Symptom.UNDERSTEER ? gain : -gain,
                LEAST_PART)) : Optional.empty();
    }

    /** Mean curvature of the path over the first second of it, 1/m. */
    private double curvature(CarModel other, Exercise exercise, double speed) {
        History run = answers.computeIfAbsent(new Driven(other, new Asked(exercise, speed)),
                fresh -> manoeuvre(exercise, speed).driveParts(other.inMotion()));
        Manoeuvre.Part part = manoeuvre(exercise, speed).parts().get(0);
        return Measures.mean(run, part, Channel.YAW_RATE) / Measures.mean(run, part, Channel.SPEED);
    }

    private static Map<Phase, Figures> measure(CarModel other, Manoeuvre manoeuvre) {
        MovingCar moving = other.inMotion();
        History run = manoeuvre.driveParts(moving);
        Map<Phase, Figures> figures = new EnumMap<>(Phase.class);
        for (Manoeuvre.Part part : manoeuvre.parts()) {
            Figures of = Figures.of(other, run, part);
            if (Double.isFinite(of.understeer())) {
                figures.put(Phase.valueOf(part.phase().name()), of);
            }
        }
        return figures;
    }
}
