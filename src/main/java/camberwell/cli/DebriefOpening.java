package camberwell.cli;

import camberwell.car.Car;
import camberwell.debrief.Debrief;
import camberwell.debrief.Earlier;
import camberwell.debrief.PackQuestion;
import camberwell.history.Book;
import camberwell.history.Changes;
import camberwell.history.NextRun;
import camberwell.input.CaseReader;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Made;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where a talk begins: with a case that was saved, with the next run of a book, with a car, or with the kinds of cars. */
final class DebriefOpening {

    private final Console console;
    private final Engine engine;
    private final BookOption book;
    private final Optional<String> car;
    private final boolean saved;
    private Optional<Book> runs = Optional.empty();

    /**
     * One from the command line.
     *
     * @param car the car's file
     * @param saved whether the case is saved by itself rather than into a book
     */
    DebriefOpening(Console console, Engine engine, BookOption book, Optional<String> car, boolean saved) {
        this.console = console;
        this.engine = engine;
        this.book = book;
        this.car = car;
        this.saved = saved;
    }

    /** The book that the run is entered into, if it is; known once the talk has begun. */
    Optional<Book> runs() {
        return runs;
    }

    /** Goes on from a case that was saved. */
    Debrief resumed(String file) {
        return Debrief.of(source(), engine.cases().read(console.path(file)).run());
    }

    /** Begins anew, or with the next run where there is a book. */
    Debrief begun() throws IOException {
        Debrief.Source source = source();
        Optional<Case> fresh = car.map(console::path)
                .map(file -> untold(new CaseReader().readCar(file), file));
        runs = saved ? Optional.empty() : book.named() ? Optional.of(fresh.isPresent() ? book.begin(console)
                : book.open(console)) : Book.nearest(console.directory()).map(Book::in);
        Optional<NextRun> next = runs.flatMap(it -> fresh.map(run -> run.car().name())
                .or(() -> BookOption.last(it, Optional.empty()).map(run -> run.car().name()))
                .flatMap(name -> NextRun.of(it, name)));
        if (next.isPresent()) {
            return Debrief.of(source, earlier(next.get(), fresh));
        }
        if (!book.named()) {
            runs = Optional.empty();
        }
        if (fresh.isPresent()) {
            return Debrief.of(source, fresh.get());
        }
        return Debrief.of(source, "Debrief", engine.home().carClasses());
    }

    private Debrief.Source source() {
        return new Debrief.Source(engine::advisor, engine::rules, engine::notes,
                () -> engine.packs().stream().flatMap(pack -> pack.questions().stream())
                        .map(it -> new PackQuestion(it.id(), it.ask(), it.when(), it.answers())).toList());
    }

    /** Where the car's file says otherwise than the last run, that is what was changed since. */
    private static Earlier earlier(NextRun next, Optional<Case> fresh) {
        Case begun = next.begun().withTitle("Run " + next.number());
        if (fresh.isPresent()) {
            List<Made> made = Changes.between(next.last().car(), fresh.get().car());
            begun = begun.ofCar(fresh.get().car(), fresh.get().carFile());
            begun = begun.withDriven(new Driven(begun.driven().sheet(), made, List.of(), Optional.empty(), List.of()));
        }
        return new Earlier(next.last(), next.number(), begun, next::inform,
                (run, typed) -> MadeWords.apply(run, typed, next.last().driven().changed()));
    }

    private static Case untold(Car car, Path file) {
        return new Case("Debrief of the " + car.name(), "-", car, Conditions.UNKNOWN, Map.of(), List.of(), List.of(),
                Optional.of(file.toString()), Map.of());
    }
}
