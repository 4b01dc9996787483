package camberwell.model;

import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.EnumSet;
import java.util.HashMap;
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
 */
record Sensed(Set<Phase> phases, ToDoubleBiFunction<Figures, Optional<Axle>> figure, boolean worse, double least) {

    private static final double LEAST_ANGLE = 0.01;
    private static final double LEAST_SLIP = 0.002;
    private static final double LEAST_TRAVEL = 0.05;
    private static final double LEAST_TORQUE = 0.2;
    private static final double LEAST_POWER = 10;

    private static final Set<Phase> CORNER =
            EnumSet.of(Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT);
    private static final Set<Phase> BRAKES = EnumSet.of(Phase.BRAKING, Phase.ENTRY);
    private static final Set<Phase> POWER = EnumSet.of(Phase.EXIT);
    private static final Set<Phase> BUMPS = EnumSet.of(Phase.STRAIGHT, Phase.KERBS);
    private static final Set<Phase> KERBS = EnumSet.of(Phase.KERBS);
    private static final Set<Phase> STRAIGHT = EnumSet.of(Phase.STRAIGHT);

    private static final Map<Word, Sensed> BY = new HashMap<>();

    static {
        less(Symptom.UNDERSTEER, CORNER, Figures::understeer, LEAST_ANGLE);
        more(Symptom.OVERSTEER, CORNER, Figures::understeer, LEAST_ANGLE);
        more(Symptom.SNAP_OVERSTEER, CORNER, Figures::understeer, LEAST_ANGLE);
        less(Symptom.WHEELSPIN, POWER, Figures::spinning, LEAST_SLIP);
        less(Symptom.FRONT_LOCKING, BRAKES, Figures::frontLocking, LEAST_SLIP);
        less(Symptom.REAR_LOCKING, BRAKES, Figures::rearLocking, LEAST_SLIP);
        less(Symptom.UNSTABLE_BRAKING, BRAKES, Figures::rearLocking, LEAST_SLIP);
        less(Symptom.KERB_INSTABILITY, KERBS, Figures::disturbed, LEAST_ANGLE);
        less(Symptom.HEAVY_STEERING, CORNER, Figures::torque, LEAST_TORQUE);
        more(Symptom.LIGHT_STEERING, CORNER, Figures::torque, LEAST_TORQUE);
        less(Symptom.WANDERING, STRAIGHT, Figures::work, LEAST_ANGLE);
        BY.put(Symptom.BOTTOMING, new Sensed(BUMPS, Sensed::travel, true, LEAST_TRAVEL));
        BY.put(Symptom.OVERHEATING, new Sensed(CORNER, Sensed::scrub, true, LEAST_POWER));
        BY.put(Symptom.GRAINING, new Sensed(CORNER, Sensed::scrub, true, LEAST_POWER));
        BY.put(Symptom.SLOW_WARM_UP, new Sensed(CORNER, Sensed::scrub, false, LEAST_POWER));
        less(Quality.TRACTION, POWER, Figures::spinning, LEAST_SLIP);
        less(Quality.BRAKING_GRIP, EnumSet.of(Phase.BRAKING),
                figures -> Math.max(figures.frontLocking(), figures.rearLocking()), LEAST_SLIP);
        less(Quality.KERB_RIDE, KERBS, Figures::disturbed, LEAST_ANGLE);
        less(Quality.PLATFORM_CONTROL, EnumSet.of(Phase.ENTRY),
                figures -> figures.frontTravel() + figures.rearTravel(), LEAST_TRAVEL);
        more(Quality.STEERING_FEEL, CORNER, Figures::torque, LEAST_TORQUE);
        less(Quality.STRAIGHT_LINE_STABILITY, STRAIGHT, Figures::work, LEAST_ANGLE);
        less(Quality.TYRE_LIFE, CORNER, figures -> figures.frontScrub() + figures.rearScrub(), LEAST_POWER);
    }

    private static void less(Word on, Set<Phase> phases, ToDoubleFunction<Figures> figure, double least) {
        BY.put(on, new Sensed(phases, (figures, where) -> figure.applyAsDouble(figures), true, least));
    }

    private static void more(Word on, Set<Phase> phases, ToDoubleFunction<Figures> figure, double least) {
        BY.put(on, new Sensed(phases, (figures, where) -> figure.applyAsDouble(figures), false, least));
    }

    private static double travel(Figures figures, Optional<Axle> where) {
        return where.isEmpty() ? Math.max(figures.frontTravel(), figures.rearTravel())
                : where.get() == Axle.FRONT ? figures.frontTravel() : figures.rearTravel();
    }

    private static double scrub(Figures figures, Optional<Axle> where) {
        return where.isEmpty() ? figures.frontScrub() + figures.rearScrub()
                : where.get() == Axle.FRONT ? figures.frontScrub() : figures.rearScrub();
    }

    /** What senses it in a phase; empty where the moving car does not show it there. */
    static Optional<Sensed> of(Word on, Phase phase) {
        return Optional.ofNullable(BY.get(on)).filter(sensed -> sensed.phases.contains(phase));
    }

    /** Where it shows; nowhere where the moving car does not show it. */
    static Set<Phase> phases(Word on) {
        return BY.containsKey(on) ? BY.get(on).phases : Set.of();
    }

    Bench.Relief relief(Figures before, Figures after, Optional<Axle> where) {
        double gain = figure.applyAsDouble(after, where) - figure.applyAsDouble(before, where);
        return Bench.Relief.of(worse ? -gain : gain, least);
    }
}
