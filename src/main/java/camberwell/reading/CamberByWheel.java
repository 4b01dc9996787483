package camberwell.reading;

import camberwell.car.Car;
import camberwell.fact.Proposal;
import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A car whose camber is set wheel by wheel, as on an oval, in a run. What is said of an axle's camber is meant for the
 * loaded wheel: where the turns go one way for the outer one alone, where they go both ways for both, unless something
 * speaks of one of them. That camber is judged on the loaded wheel is common practice, no source.
 */
public final class CamberByWheel {

    private final Case run;
    private final LoadedSide side;

    private CamberByWheel(Case run) {
        this.run = run;
        this.side = LoadedSide.of(run);
    }

    /** That of {@code run}; empty where no wheel of its car has its camber set by itself. */
    public static Optional<CamberByWheel> of(Case run) {
        return run.car().camberByWheel(Axle.FRONT) || run.car().camberByWheel(Axle.REAR)
                ? Optional.of(new CamberByWheel(run)) : Optional.empty();
    }

    /** {@code run} as it is judged: where one wheel of an axle is the loaded one, the axle's camber is that wheel's. */
    public static Case judged(Case run) {
        Optional<CamberByWheel> camber = of(run);
        return camber.isPresent() ? camber.get().judged() : run;
    }

    private Case judged() {
        Car car = run.car();
        for (Axle axle : Axle.values()) {
            Optional<Wheel> one = loadedAlone(axle);
            if (one.isPresent()) {
                car = car.withSetting(Adjuster.camberOf(axle), car.setting(Adjuster.camberOf(one.get())).orElseThrow());
            }
        }
        return run.withCar(car).withTried(tried());
    }

    /** The change as this car makes it: of an axle's camber where one of its wheels is loaded, that wheel's. */
    public Change named(Change change) {
        if (!ofAnAxle(change)) {
            return change;
        }
        Optional<Wheel> one = loadedAlone(change.adjuster().axle().orElseThrow());
        return one.isPresent() ? new Change(Adjuster.camberOf(one.get()), change.direction()) : change;
    }

    /** What rules propose, as this car makes it. What is said of one wheel stands before what is said of its axle. */
    public List<Proposal> named(List<Proposal> said) {
        List<Proposal> named = new ArrayList<>();
        for (Proposal proposal : said) {
            if (!ofAnAxle(proposal.change()) || !saidOfOne(proposal.change(), said)) {
                named.add(new Proposal(named(proposal.change()), proposal.certainty(), proposal.rule(), proposal.premises(),
                        proposal.amount()));
            }
        }
        return named;
    }

    /** Whether rules speak of one wheel instead; of the loaded one, where it was read, they may speak as well. */
    private boolean saidOfOne(Change axles, List<Proposal> said) {
        Axle axle = axles.adjuster().axle().orElseThrow();
        Optional<Wheel> loaded = loadedAlone(axle);
        if (!run.car().camberByWheel(axle) || loaded.map(run.tyres()::get).filter(tyre -> tyre.hasTread()).isPresent()) {
            return false;
        }
        return said.stream().filter(proposal -> proposal.certainty() > 0).map(Proposal::change)
                .anyMatch(change -> change.adjuster().wheel().filter(wheel -> wheel.axle() == axle).isPresent()
                        && change.adjuster().adjustment() == Adjustment.CAMBER
                        && !change.adjuster().wheel().equals(loaded));
    }

    private static boolean ofAnAxle(Change change) {
        return change.adjuster().adjustment() == Adjustment.CAMBER && change.adjuster().wheel().isEmpty();
    }

    /** The one loaded wheel of an axle whose camber can be set; empty where it is neither or both. */
    private Optional<Wheel> loadedAlone(Axle axle) {
        Optional<Wheel> alone = Optional.empty();
        for (Wheel wheel : Wheel.values()) {
            if (wheel.axle() == axle && side.loads(wheel) && run.car().setting(Adjuster.camberOf(wheel)).isPresent()) {
                if (alone.isPresent()) {
                    return Optional.empty();
                }
                alone = Optional.of(wheel);
            }
        }
        return alone;
    }

    /** What was tried, with both wheels of an axle moved alike in one run as one change of that axle. */
    private List<Tried> tried() {
        List<Tried> all = new ArrayList<>();
        for (Tried tried : run.tried()) {
            Optional<Tried> both = all.isEmpty() ? Optional.empty() : both(all.get(all.size() - 1), tried);
            if (both.isPresent()) {
                all.set(all.size() - 1, both.get());
            } else {
                all.add(new Tried(named(tried.change()), tried.moved(), tried.outcome(), tried.on(), tried.trial()));
            }
        }
        return all;
    }

    private Optional<Tried> both(Tried left, Tried right) {
        Optional<Wheel> one = left.change().adjuster().wheel();
        Tried.Trial trial = right.trial();
        boolean alike = one.isPresent() && left.change().adjuster().adjustment() == Adjustment.CAMBER
                && right.change().adjuster() == Adjuster.camberOf(one.get().partner())
                && left.change().direction() == right.change().direction() && left.outcome() == right.outcome()
                && left.on().equals(right.on()) && left.trial().equals(trial)
                && left.moved().putBack() == right.moved().putBack() && loadedAlone(one.get().axle()).isEmpty();
        return alike ? Optional.of(new Tried(new Change(Adjuster.camberOf(one.get().axle()), left.change().direction()),
                new Tried.Moved(left.moved().steps(), Optional.empty(), Optional.empty(), left.moved().putBack()),
                left.outcome(), left.on(), new Tried.Trial(trial.run(), trial.runsAgo(), trial.laps(),
                        Math.max(1, trial.together() - 1), trial.witness(), trial.surface(), trial.elsewhere())))
                : Optional.empty();
    }
}
