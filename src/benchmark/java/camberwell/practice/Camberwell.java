package camberwell.practice;

import camberwell.advice.Advisor;
import camberwell.advice.RankedChange;
import camberwell.cases.Paddock;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import java.util.List;
import java.util.Optional;

/** The advice of the program itself, its first change, at the size that it gives. */
final class Camberwell implements Advising {

    private final Advisor advisor = new Advisor(Paddock.rules(), Paddock.notes(), Paddock.weights());
    private final boolean remembers;

    /** @param remembers whether it is told what was tried before */
    Camberwell(boolean remembers) {
        this.remembers = remembers;
    }

    @Override
    public Optional<Move> next(Situation situation) {
        Conditions day = new Conditions(Surface.DRY, Optional.of(new Quantity(20, Unit.CELSIUS)),
                Optional.of(new Quantity(26, Unit.CELSIUS)), Optional.empty(), Optional.empty(), Turn.BOTH);
        Case run = new Case("a run", "-", situation.car(), day,
                Gauges.read(situation.driver().good().car(), situation.car()), situation.reports(), List.of());
        for (RankedChange change : advisor.advise(run).changes()) {
            Optional<Quantity> to = change.size().to();
            boolean moves = to.isPresent() && camberwell.model.CarModel.representsInMotion(change.change().adjuster());
            boolean again = remembers && situation.tried().stream().anyMatch(outcome ->
                    outcome.change().equals(change.change()) && outcome.after() > 0.97 * outcome.before());
            if (moves && !again) {
                return Optional.of(new Move(change.change().adjuster(), to.get()));
            }
        }
        return Optional.empty();
    }
}
