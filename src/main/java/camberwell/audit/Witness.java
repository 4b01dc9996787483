package camberwell.audit;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.fact.Reading;
import camberwell.model.Bench;
import camberwell.model.Bench.Relief;
import camberwell.model.CarModel;
import camberwell.model.ProvingGround;
import camberwell.physics.CornerPhase;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One reference car on one surface, and what the two handling models show of a claim on it. The steady model speaks
 * where a corner settles; where something is still changing, the car in motion does. For one thread.
 */
final class Witness {

    /** Enough that rounding does not decide. */
    private static final int STEPS = 3;
    private static final Set<Symptom> BALANCE =
            Set.of(Symptom.UNDERSTEER, Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER);
    private static final Set<Adjustment> TRANSIENT = EnumSet.of(Adjustment.BUMP, Adjustment.REBOUND,
            Adjustment.RIDE_HEIGHT, Adjustment.BRAKE_BIAS, Adjustment.DIFFERENTIAL_PRELOAD,
            Adjustment.DIFFERENTIAL_POWER, Adjustment.DIFFERENTIAL_COAST);
    private static final Map<Phase, CornerPhase> STEADY = Map.of(Phase.ENTRY, CornerPhase.ENTRY, Phase.LIFT_OFF,
            CornerPhase.LIFT_OFF, Phase.MID_CORNER, CornerPhase.MID_CORNER, Phase.EXIT, CornerPhase.EXIT);

    private final Car car;
    private final Bench bench;
    private final ProvingGround track;
    private final Map<Made, Optional<CarModel>> made = new HashMap<>();

    private record Made(Change change, int steps) {
    }

    /** What a claim comes to on this car. */
    enum Testimony { AGREES, DIFFERS, SILENT }

    Witness(Car car, Surface surface) {
        CarModel model = CarModel.of(car, surface).orElseThrow();
        this.car = car;
        this.bench = new Bench(model);
        this.track = new ProvingGround(model);
    }

    String name() {
        return car.name();
    }

    Testimony judge(Claim claim) {
        if (!claim.holdsFor(car)) {
            return Testimony.SILENT;
        }
        List<Set<Relief>> reliefs = claim.troubles().stream().map(trouble -> reliefs(claim.change(), trouble)).toList();
        Relief said = claim.relieves() ? Relief.BETTER : Relief.WORSE;
        if (reliefs.stream().anyMatch(of -> of.contains(said) && !of.contains(said.opposite()))) {
            return Testimony.AGREES;
        }
        // Of several complaints a change serves one; it fails only where the model shows all of them.
        return reliefs.stream().noneMatch(Set::isEmpty)
                && reliefs.stream().anyMatch(of -> of.contains(said.opposite()))
                ? Testimony.DIFFERS : Testimony.SILENT;
    }

    private Set<Relief> reliefs(Change change, Claim.Trouble trouble) {
        Set<Relief> reliefs = new LinkedHashSet<>();
        for (Phase phase : phases(trouble, change.adjuster().adjustment())) {
            for (double speed : speeds(trouble, change.adjuster())) {
                relief(change, trouble, phase, speed).ifPresent(reliefs::add);
            }
        }
        return reliefs;
    }

    private static Set<Phase> phases(Claim.Trouble trouble, Adjustment by) {
        if (!trouble.phases().isEmpty()) {
            return trouble.phases();
        }
        return BALANCE.contains(trouble.on()) ? EnumSet.of(Phase.ENTRY, Phase.MID_CORNER, Phase.EXIT)
                : Set.of(ProvingGround.shows(trouble.on(), by).orElse(Phase.MID_CORNER));
    }

    private static List<Double> speeds(Claim.Trouble trouble, Adjuster adjuster) {
        if (!trouble.speeds().isEmpty()) {
            return trouble.speeds().stream().map(Witness::speed).toList();
        }
        return List.of(speed(adjuster.adjustment() == Adjustment.WING ? CornerSpeed.FAST : CornerSpeed.MEDIUM));
    }

    private static double speed(CornerSpeed speed) {
        return camberwell.physics.CornerSpeed.valueOf(speed.name()).metresPerSecond();
    }

    /** By several steps where the car can make them; the other way round at a stop. */
    private Optional<Relief> relief(Change change, Claim.Trouble trouble, Phase phase, double speed) {
        Optional<Setting> setting = car.setting(change.adjuster());
        if (setting.isEmpty()) {
            return Optional.empty();
        }
        if (trouble.on() instanceof Reading.State reading) {
            return Gauge.relief(setting.get(), change, reading);
        }
        // Toe drags by its distance from zero, which several steps would pass.
        int most = change.adjuster().adjustment() == Adjustment.TOE ? 1 : STEPS;
        int steps = Math.min(most, setting.get().stepsLeft(change.direction()));
        boolean atStop = steps == 0;
        Change makeable = atStop ? change.opposite() : change;
        int toMake = atStop ? Math.min(most, setting.get().stepsLeft(makeable.direction())) : steps;
        Optional<Relief> relief = made.computeIfAbsent(new Made(makeable, toMake),
                key -> bench.car().withInMotion(makeable, toMake))
                .flatMap(changed -> shown(change.adjuster(), changed, trouble, phase, speed));
        return atStop ? relief.map(Relief::opposite) : relief;
    }

    private Optional<Relief> shown(Adjuster adjuster, CarModel changed, Claim.Trouble trouble, Phase phase,
            double speed) {
        Word on = trouble.on();
        if (on == Symptom.WHEELSPIN || on == Quality.TRACTION) {
            // How much power it takes to spin a wheel is a limit, and the steady model looks for it.
            return settles(adjuster) ? steady(adjuster, changed, trouble, phase, speed)
                    : moving(adjuster, changed, trouble, phase, speed);
        }
        boolean changes = TRANSIENT.contains(adjuster.adjustment()) || phase == Phase.BRAKING
                || phase == Phase.KERBS || phase == Phase.STRAIGHT;
        Optional<Relief> moving = changes ? moving(adjuster, changed, trouble, phase, speed) : Optional.empty();
        return moving.isPresent() ? moving : steady(adjuster, changed, trouble, phase, speed)
                .or(() -> changes ? Optional.empty() : moving(adjuster, changed, trouble, phase, speed));
    }

    /** Whether a settled corner shows what an adjuster does. */
    private static boolean settles(Adjuster adjuster) {
        return CarModel.represents(adjuster) || adjuster.adjustment() == Adjustment.PRESSURE;
    }

    private Optional<Relief> moving(Adjuster adjuster, CarModel changed, Claim.Trouble trouble, Phase phase,
            double speed) {
        return track.relief(adjuster.adjustment(), changed, trouble.on(), trouble.where(), phase, speed);
    }

    private Optional<Relief> steady(Adjuster adjuster, CarModel changed, Claim.Trouble trouble, Phase phase,
            double speed) {
        if (!settles(adjuster)) {
            return Optional.empty();
        }
        CornerPhase settled = STEADY.getOrDefault(phase, trouble.phases().isEmpty() ? CornerPhase.MID_CORNER : null);
        return settled == null ? Optional.empty()
                : bench.relief(adjuster, changed, trouble.on(), trouble.where(), settled, speed);
    }
}
