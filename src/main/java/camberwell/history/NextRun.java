package camberwell.history;

import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Tried;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The run after the last one of a car: what is carried on to it, and what the book knows of it. */
public final class NextRun {

    private final History past;
    private final Case last;
    private final int number;
    private List<Tried> before;

    private NextRun(History past, Case last, int number) {
        this.past = past;
        this.last = last;
        this.number = number;
    }

    /** The next run of the car of that name; empty where the book has none of it yet. */
    public static Optional<NextRun> of(Book book, String carName) {
        History past = History.of(book, carName);
        int number = book.pages().stream().mapToInt(Book.Page::number).max().orElse(0) + 1;
        return past.last().map(last -> new NextRun(past, last, number));
    }

    /** The run before. */
    public Case last() {
        return last;
    }

    /** The number that it will have, unless somebody enters another run first. */
    public int number() {
        return number;
    }

    /** The run before it was driven: {@link #carriedOn} with the complaints of the run before, to ask what became of them. */
    public Case begun() {
        return carriedOn(last).withReports(last.reports());
    }

    /** The same car, day and settings; what was felt, read and timed is of the run before. */
    public static Case carriedOn(Case run) {
        Driven.Sheet sheet = run.driven().sheet();
        Driven fresh = Driven.UNKNOWN.on(new Driven.Sheet(Optional.empty(), Optional.empty(), sheet.driver(),
                sheet.track(), sheet.tyreSet(), false));
        return run.withTitle("").withReports(List.of()).withTyres(Map.of()).withTried(List.of())
                .withEarlier(List.of()).withDriven(fresh);
    }

    /** {@code now}, which is this run as far as it is told, with what came of all changes, its own included. */
    public Case inform(Case now) {
        List<Tried> tried = new ArrayList<>(before(now));
        if (now.driven().sheet().rebuilt()) {
            tried.clear();
        } else {
            List<Case> runs = past.runs();
            Judgement judgement = Judgement.of(runs.size() > 1 ? Optional.of(runs.get(runs.size() - 2)) : Optional.empty(), last,
                    now, Optional.empty(), Optional.empty());
            judgement.outcomes().forEach(outcome -> tried.add(ago(outcome, 0)));
        }
        tried.addAll(now.tried());
        return now.withTried(tried).withEarlier(past.earlier(now));
    }

    /** What came of the changes before the last run, which nothing that is told of this one alters. */
    private List<Tried> before(Case now) {
        if (before == null) {
            before = past.tried(now).stream().map(tried -> ago(tried, tried.trial().runsAgo().orElse(0) + 1)).toList();
        }
        return before;
    }

    private static Tried ago(Tried tried, int runs) {
        Tried.Trial trial = tried.trial();
        return new Tried(tried.change(), tried.moved(), tried.outcome(), tried.on(), new Tried.Trial(trial.run(),
                Optional.of(runs), trial.laps(), trial.together(), trial.witness(), trial.surface(), trial.elsewhere()));
    }
}
