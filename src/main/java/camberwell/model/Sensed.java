package camberwell.model;

import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleBiFunction;
import java.util.function.ToDoubleFunction;

/**
 * The figure of a moving car by which a complaint or a quality is sensed. The smallest change that counts is well below
 * what a driver notices and well above what the step of the integration leaves open.
 *
 * @param phases where it shows
 * @param figure the figure, of one axle where the complaint is bound to one
 * @param worse whether more of it is worse
 * @param least a change of less is nothing
 * @param by the adjustments whose effect it shows
 */
record Sensed(Set<Phase> phases, ToDoubleBiFunction<Figures, Optional<Axle>> figure, boolean worse, double least,
        Set<Adjustment> by) {

    private static final double LEAST_ANGLE = 0.002;
    private static final double LEAST_SLIP = 0.001;
    private static final double LEAST_TRAVEL = 0.05;
    private static final double LEAST_TORQUE = 0.02;
    /** A tyre whose load varies by all of what it carries at rest is as bad as a body thrown up with that, m/s². */
    static final double SWING = 20;
    private static final double LEAST_KICK = 0.03;

    private static final Set<Phase> CORNER =
            EnumSet.of(Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT);
    private static final Set<Phase> BALANCE =
            EnumSet.of(Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT, Phase.KERBS);
    private static final Set<Phase> BRAKES = EnumSet.of(Phase.BRAKING, Phase.ENTRY);
    private static final Set<Phase> POWER = EnumSet.of(Phase.EXIT);
    private static final Set<Phase> BUMPS = EnumSet.of(Phase.STRAIGHT, Phase.KERBS);
    private static final Set<Phase> KERBS = EnumSet.of(Phase.KERBS);

    private static final Set<Adjustment> ANY = EnumSet.allOf(Adjustment.class);
    private static final Set<Adjustment> DAMPERS = EnumSet.of(Adjustment.BUMP, Adjustment.REBOUND);
    private static final Map<Word, List<Sensed>> BY = new HashMap<>();

    static {
        less(Symptom.UNDERSTEER, BALANCE, Figures::understeer, LEAST_ANGLE, ANY);
        more(Symptom.OVERSTEER, BALANCE, Figures::understeer, LEAST_ANGLE, ANY);
        more(Symptom.SNAP_OVERSTEER, BALANCE, Figures::understeer, LEAST_ANGLE, ANY);
        less(Symptom.WHEELSPIN, POWER, Figures::spinning, LEAST_SLIP, ANY);
        less(Symptom.FRONT_LOCKING, BRAKES, Figures::frontLocking, LEAST_SLIP, ANY);
        less(Symptom.REAR_LOCKING, BRAKES, Figures::rearLocking, LEAST_SLIP, ANY);
        less(Symptom.UNSTABLE_BRAKING, BRAKES, Figures::rearLocking, LEAST_SLIP, ANY);
        less(Symptom.KERB_INSTABILITY, KERBS, Sensed::kicked, LEAST_KICK, ANY);
        put(Symptom.BOTTOMING, new Sensed(BUMPS, Sensed::travel, true, LEAST_TRAVEL, ANY));
        // What else weighs on the steering is not in the model.
        less(Symptom.HEAVY_STEERING, CORNER, Figures::torque, LEAST_TORQUE, EnumSet.of(Adjustment.CASTER));
        more(Symptom.LIGHT_STEERING, CORNER, Figures::torque, LEAST_TORQUE, EnumSet.of(Adjustment.CASTER));
        more(Quality.STEERING_FEEL, CORNER, Figures::torque, LEAST_TORQUE, EnumSet.of(Adjustment.CASTER));
        less(Quality.TRACTION, POWER, Figures::spinning, LEAST_SLIP, ANY);
        less(Quality.BRAKING_GRIP, EnumSet.of(Phase.BRAKING),
                figures -> Math.max(figures.frontLocking(), figures.rearLocking()), LEAST_SLIP, ANY);
        less(Quality.KERB_RIDE, KERBS, Sensed::kicked, LEAST_KICK, ANY);
        // Springs and bars hold the body where it leans, dampers where it moves.
        less(Quality.PLATFORM_CONTROL, EnumSet.of(Phase.ENTRY),
                figures -> figures.frontTravel() + figures.rearTravel(), LEAST_TRAVEL,
                EnumSet.complementOf(EnumSet.of(Adjustment.BUMP, Adjustment.REBOUND)));
        less(Quality.PLATFORM_CONTROL, EnumSet.of(Phase.STRAIGHT), Figures::heaved, LEAST_TRAVEL, DAMPERS);
    }

    private static void less(Word on, Set<Phase> phases, ToDoubleFunction<Figures> figure, double least,
            Set<Adjustment> by) {
        put(on, new Sensed(phases, (figures, where) -> figure.applyAsDouble(figures), true, least, by));
    }

    private static void more(Word on, Set<Phase> phases, ToDoubleFunction<Figures> figure, double least,
            Set<Adjustment> by) {
        put(on, new Sensed(phases, (figures, where) -> figure.applyAsDouble(figures), false, least, by));
    }

    private static void put(Word on, Sensed sensed) {
        BY.computeIfAbsent(on, fresh -> new ArrayList<>()).add(sensed);
    }

    /** How hard the body is thrown up, m/s², and how much the tyres lose of the road, in its terms. */
    private static double kicked(Figures figures) {
        return figures.thrown() + SWING * figures.swing();
    }

    private static double travel(Figures figures, Optional<Axle> where) {
        return where.isEmpty() ? Math.max(figures.frontTravel(), figures.rearTravel())
                : where.get() == Axle.FRONT ? figures.frontTravel() : figures.rearTravel();
    }

    /** What senses an adjustment's effect on it in a phase; empty where the moving car does not show it there. */
    static Optional<Sensed> of(Word on, Adjustment by, Phase phase) {
        return BY.getOrDefault(on, List.of()).stream()
                .filter(sensed -> sensed.by.contains(by) && sensed.phases.contains(phase)).findFirst();
    }

    /** Where an adjustment's effect on it shows; nowhere where the moving car does not show it. */
    static Set<Phase> phases(Word on, Adjustment by) {
        return BY.getOrDefault(on, List.of()).stream().filter(sensed -> sensed.by.contains(by)).findFirst()
                .map(Sensed::phases).orElse(Set.of());
    }

    /** What it gains, as so many times what counts at least: positive is better. */
    double gain(Figures before, Figures after, Optional<Axle> where) {
        double more = figure.applyAsDouble(after, where) - figure.applyAsDouble(before, where);
        return (worse ? -more : more) / least;
    }

    Bench.Relief relief(Figures before, Figures after, Optional<Axle> where) {
        double gain = figure.applyAsDouble(after, where) - figure.applyAsDouble(before, where);
        return Bench.Relief.of(worse ? -gain : gain, least);
    }
}
