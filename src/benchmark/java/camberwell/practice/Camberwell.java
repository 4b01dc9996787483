package camberwell.practice;

import camberwell.advice.Advisor;
import camberwell.advice.RankedChange;
import camberwell.cases.Paddock;
import camberwell.car.Car;
import camberwell.history.History;
import camberwell.model.CarModel;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The advice of the program itself, its first change, at the size that it gives; for one fault. */
final class Camberwell implements Advising {

    private static final Advisor ADVISOR = new Advisor(Paddock.rules(), Paddock.notes(), Paddock.weights());

    private final Car written;
    private final boolean remembers;
    private final List<Case> runs = new ArrayList<>();

    /**
     * @param written the car as its file says
     * @param remembers whether its book of runs is read
     */
    Camberwell(Car written, boolean remembers) {
        this.written = written;
        this.remembers = remembers;
    }

    @Override
    public Optional<Move> next(Session session, List<Report> told) {
        Conditions day = new Conditions(Optional.of(Surface.DRY), Optional.of(new Quantity(20, Unit.CELSIUS)),
                Optional.of(new Quantity(26, Unit.CELSIUS)), Optional.empty(), Optional.empty(), Turn.BOTH);
        Car car = written.with(session.settings());
        Case run = new Case("a run", "-", car, day, Gauges.read(written, car), told, List.of(), Optional.empty(), Map.of(),
                List.of(), Driven.UNKNOWN.on(Driven.Sheet.UNKNOWN.numbered(runs.size() + 1)));
        runs.add(run);
        for (RankedChange change : ADVISOR.advise(remembers ? new History(runs).inform(run) : run).changes()) {
            Optional<Quantity> to = change.size().to();
            if (to.isPresent() && CarModel.representsInMotion(change.change().adjuster())) {
                return Optional.of(new Move(change.change().adjuster(), to.get(), change.besideIt()));
            }
        }
        return Optional.empty();
    }
}
