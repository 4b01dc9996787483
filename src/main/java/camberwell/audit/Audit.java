package camberwell.audit;

import camberwell.audit.Judgement.Verdict;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.knowledge.Notes;
import camberwell.language.RuleText;
import camberwell.model.Bench;
import camberwell.model.Bench.Relief;
import camberwell.model.CarModel;
import camberwell.physics.CornerPhase;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Compares what notes and rules claim with the handling model, by direction, on every reference car that has the
 * adjuster. A claim that leaves the part of the corner open is held to all three; one that leaves the speed open to a
 * medium one, or to a fast one where it is about the air.
 */
public final class Audit {

    /** Enough that rounding does not decide. */
    private static final int STEPS = 3;

    private final Notes notes;
    private final List<Car> cars;
    private final Map<Surface, List<Bench>> benches = new EnumMap<>(Surface.class);
    private final Map<Made, Optional<CarModel>> made = new HashMap<>();

    private record Made(Bench bench, Change change, int steps) {
    }

    /**
     * @param notes every note
     * @param cars the reference cars
     * @throws IllegalArgumentException if the dimensions of one do not make a car
     */
    public Audit(Notes notes, List<Car> cars) {
        this.notes = notes;
        this.cars = List.copyOf(cars);
        for (Car car : cars) {
            if (CarModel.of(car, Surface.DRY).isEmpty()) {
                throw new IllegalArgumentException("the reference car " + car.name() + " lacks dimensions");
            }
        }
    }

    /** Judges every effect of every note on an adjustment, and every rule that proposes or opposes a change. */
    public List<Judgement> judge(Collection<RuleText> rules) {
        Claims claims = new Claims(notes);
        List<Judgement> judgements = new ArrayList<>();
        claims.ofNotes().forEach(claim -> judgements.add(judge(claim)));
        claims.ofRules(rules).forEach(claim -> judgements.add(judge(claim)));
        return judgements;
    }

    private Judgement judge(Claim claim) {
        Optional<String> unrepresented = notes.get(claim.change().adjuster().note()).model();
        if (unrepresented.isPresent()) {
            return judgement(claim, Verdict.NOT_REPRESENTED, Set.of(), Set.of(), unrepresented.get());
        }
        if (claim.troubles().isEmpty()) {
            return judgement(claim, Verdict.NOT_REPRESENTED, Set.of(), Set.of(),
                    "what it is about is no behaviour of the car in a steady corner");
        }
        Set<String> agreeing = new LinkedHashSet<>();
        Set<String> differing = new LinkedHashSet<>();
        for (Bench bench : benches.computeIfAbsent(claim.surface(), this::benches)) {
            if (!claim.holdsFor(bench.car().car())) {
                continue;
            }
            List<Set<Relief>> reliefs = claim.troubles().stream()
                    .map(trouble -> reliefs(bench, claim.change(), trouble)).toList();
            Relief said = claim.relieves() ? Relief.BETTER : Relief.WORSE;
            if (reliefs.stream().anyMatch(of -> of.contains(said) && !of.contains(said.opposite()))) {
                agreeing.add(bench.car().car().name());
            } else if (reliefs.stream().noneMatch(Set::isEmpty)
                    && reliefs.stream().anyMatch(of -> of.contains(said.opposite()))) {
                // Of several complaints a change serves one; it fails only where the model shows all of them.
                differing.add(bench.car().car().name());
            }
        }
        if (!differing.isEmpty()) {
            return judgement(claim, claim.explanation().isPresent() ? Verdict.EXPLAINED : Verdict.DIFFERS, agreeing,
                    differing, claim.explanation().orElse(null));
        }
        return agreeing.isEmpty() ? judgement(claim, Verdict.NOT_REPRESENTED, agreeing, differing,
                "a steady state does not show it, or no reference car moves by it")
                : judgement(claim, Verdict.AGREES, agreeing, differing, null);
    }

    private static Judgement judgement(Claim claim, Verdict verdict, Set<String> agreeing, Set<String> differing,
            String reason) {
        String on = claim.troubles().stream().map(trouble -> trouble.on().spoken()
                + trouble.where().map(axle -> " at the " + axle.id()).orElse("")
                + trouble.phases().stream().map(phase -> " at " + phase.id()).collect(Collectors.joining(" or"))
                + trouble.speeds().stream().map(speed -> " in " + speed.id() + " corners")
                        .collect(Collectors.joining(" or"))).distinct().collect(Collectors.joining("; "));
        return new Judgement(claim.by(), claim.change(), (claim.relieves() ? "against " : "worse for ")
                + (on.isEmpty() ? "the circumstances of the rule" : on), verdict, List.copyOf(agreeing),
                List.copyOf(differing), Optional.ofNullable(reason));
    }

    private List<Bench> benches(Surface surface) {
        return cars.stream().map(car -> new Bench(CarModel.of(car, surface).orElseThrow())).toList();
    }

    private Set<Relief> reliefs(Bench bench, Change change, Claim.Trouble trouble) {
        Set<Relief> reliefs = new LinkedHashSet<>();
        for (CornerPhase phase : phases(trouble)) {
            for (double speed : speeds(trouble, change.adjuster())) {
                relief(bench, change, trouble, phase, speed).ifPresent(reliefs::add);
            }
        }
        return reliefs;
    }

    /** By several steps where the car can make them; the other way round at a stop. */
    private Optional<Relief> relief(Bench bench, Change change, Claim.Trouble trouble, CornerPhase phase,
            double speed) {
        Optional<Setting> setting = bench.car().car().setting(change.adjuster());
        if (setting.isEmpty()) {
            return Optional.empty();
        }
        // Toe drags by its distance from zero, which several steps would pass.
        int most = change.adjuster().adjustment() == Adjustment.TOE ? 1 : STEPS;
        int steps = Math.min(most, setting.get().stepsLeft(change.direction()));
        boolean atStop = steps == 0;
        Change makeable = atStop ? change.opposite() : change;
        int toMake = atStop ? Math.min(most, setting.get().stepsLeft(makeable.direction())) : steps;
        Optional<Relief> relief = made.computeIfAbsent(new Made(bench, makeable, toMake),
                key -> bench.car().with(makeable, toMake)).flatMap(changed -> bench.relief(change.adjuster(), changed,
                        trouble.on(), trouble.where(), phase, speed));
        return atStop ? relief.map(Relief::opposite) : relief;
    }

    private static Set<CornerPhase> phases(Claim.Trouble trouble) {
        Set<CornerPhase> phases = new LinkedHashSet<>();
        for (Phase phase : trouble.phases()) {
            switch (phase) {
                case ENTRY -> phases.add(CornerPhase.ENTRY);
                case LIFT_OFF -> phases.add(CornerPhase.LIFT_OFF);
                case MID_CORNER -> phases.add(CornerPhase.MID_CORNER);
                case EXIT -> phases.add(CornerPhase.EXIT);
                // Nothing steady: straight-line braking, the straight, kerbs.
                default -> { }
            }
        }
        if (!trouble.phases().isEmpty()) {
            return phases;
        }
        boolean balance = trouble.on() == Symptom.UNDERSTEER || trouble.on() == Symptom.OVERSTEER
                || trouble.on() == Symptom.SNAP_OVERSTEER;
        return balance ? Set.of(CornerPhase.values()) : Set.of(CornerPhase.MID_CORNER);
    }

    private static List<Double> speeds(Claim.Trouble trouble, Adjuster adjuster) {
        if (!trouble.speeds().isEmpty()) {
            return trouble.speeds().stream().map(Audit::speed).toList();
        }
        return List.of(speed(adjuster.adjustment() == Adjustment.WING ? CornerSpeed.FAST : CornerSpeed.MEDIUM));
    }

    private static double speed(CornerSpeed speed) {
        return camberwell.physics.CornerSpeed.valueOf(speed.name()).metresPerSecond();
    }
}
