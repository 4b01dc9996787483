package camberwell.practice;

import camberwell.advice.Advisor;
import camberwell.advice.RankedChange;
import camberwell.cases.Paddock;
import camberwell.model.CarModel;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The advice of the program itself, its first change, at the size that it gives. */
final class Camberwell implements Advising {

    private static final int LAPS = 8;
    /** A driver notices that a complaint is weaker or stronger by this part. */
    private static final double NOTICED = 0.15;

    private final Advisor advisor = new Advisor(Paddock.rules(), Paddock.notes(), Paddock.weights());
    private final boolean remembers;

    /** @param remembers whether it is told what was tried before */
    Camberwell(boolean remembers) {
        this.remembers = remembers;
    }

    @Override
    public Optional<Move> next(Session session, List<Report> told) {
        Conditions day = new Conditions(Optional.of(Surface.DRY), Optional.of(new Quantity(20, Unit.CELSIUS)),
                Optional.of(new Quantity(26, Unit.CELSIUS)), Optional.empty(), Optional.empty(), Turn.BOTH);
        Case run = new Case("a run", "-", session.car(), day,
                Gauges.read(session.driver().good().car(), session.car()), told, List.of(),
                Optional.empty(), Map.of(), remembers ? tried(session.steps()) : List.of(), Driven.UNKNOWN);
        for (RankedChange change : advisor.advise(run).changes()) {
            Optional<Quantity> to = change.size().to();
            if (to.isPresent() && CarModel.representsInMotion(change.change().adjuster())) {
                return Optional.of(new Move(change.change().adjuster(), to.get()));
            }
        }
        return Optional.empty();
    }

    /** What a driver notes of each change, complaint by complaint. */
    private static List<Tried> tried(List<Session.Step> results) {
        List<Tried> tried = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            Session.Step result = results.get(i);
            Tried.Moved moved = new Tried.Moved(Optional.of(result.steps()), Optional.of(result.from()),
                    Optional.of(result.to()), false);
            Tried.Trial trial = new Tried.Trial(Optional.of(i + 1), Optional.of(results.size() - 1 - i),
                    Optional.of(LAPS), 1, Optional.empty(), Optional.of(Surface.DRY), false);
            for (Report report : result.told()) {
                tried.add(new Tried(result.change(), moved, outcome(result, report), new Tried.On(
                        Optional.of(report.symptom()), Optional.empty(), report.phase(), report.speed()), trial));
            }
        }
        return tried;
    }

    private static Outcome outcome(Session.Step result, Report report) {
        double before = felt(result.before(), report);
        double after = felt(result.after(), report);
        return after < (1 - NOTICED) * before ? Outcome.BETTER : after > (1 + NOTICED) * before ? Outcome.WORSE
                : Outcome.SAME;
    }

    private static double felt(List<Felt> felt, Report report) {
        return felt.stream().filter(it -> it.symptom() == report.symptom()
                && it.phase() == report.phase().orElseThrow()
                && report.speed().filter(speed -> speed != it.speed()).isEmpty()).mapToDouble(Felt::excess).sum();
    }
}
