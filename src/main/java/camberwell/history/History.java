package camberwell.history;

import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Tried;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The last runs of one car, oldest first.
 *
 * @param runs at most {@link #MOST}: what lies further back weighs an eighth and less
 */
public record History(List<Case> runs) {

    /** How many runs are looked at; with a half-life of ten runs the last of them weighs 1/8. */
    public static final int MOST = 30;
    /** Earlier runs from which is learned how far off the car is, and the size of a camber change. */
    private static final int EARLIER = 5;

    /** Copies the list. */
    public History {
        runs = List.copyOf(runs);
    }

    /** The history of the car of that name. */
    public static History of(Book book, String carName) {
        return of(book, carName, Integer.MAX_VALUE);
    }

    /** What was known when {@code now} was driven, where it is a run of the book; else all that is known. */
    public static History knownTo(Book book, Case now) {
        Optional<Integer> number = now.driven().sheet().number();
        boolean itsOwn = number.isPresent() && book.pages(now.car().name()).stream()
                .anyMatch(page -> page.number() == number.get());
        return of(book, now.car().name(), itsOwn ? number.get() : Integer.MAX_VALUE);
    }

    /** The history of the car of {@code run} around that run: what was before it and the one after it. */
    public static History upTo(Book book, Case run) {
        int number = number(run);
        return of(book, run.car().name(), book.pages(run.car().name()).stream().mapToInt(Book.Page::number)
                .filter(other -> other > number).min().orElse(number));
    }

    private static History of(Book book, String carName, int last) {
        List<Book.Page> pages = book.pages(carName).stream().filter(page -> page.number() <= last).toList();
        return new History(pages.subList(Math.max(0, pages.size() - MOST), pages.size()).parallelStream()
                .map(book::read).filter(run -> run.car().name().equals(carName)).toList());
    }

    /** The last run. */
    public Optional<Case> last() {
        return runs.isEmpty() ? Optional.empty() : Optional.of(runs.get(runs.size() - 1));
    }

    /** The run before the one of that number. */
    public Optional<Case> before(int number) {
        Case found = null;
        for (Case run : runs) {
            if (number(run) < number) {
                found = run;
            }
        }
        return Optional.ofNullable(found);
    }

    private static int number(Case run) {
        return run.driven().sheet().number().orElse(0);
    }

    /** What came of the changes before the run of that number; empty for the first run. */
    public Optional<Judgement> judgement(int number, Optional<Double> leastGain) {
        for (int i = 1; i < runs.size(); i++) {
            if (number(runs.get(i)) == number) {
                return Optional.of(judged(i, leastGain));
            }
        }
        return Optional.empty();
    }

    private Judgement judged(int i, Optional<Double> leastGain) {
        Optional<Case> again = i + 1 < runs.size() && Changes.none(runs.get(i - 1).car(), runs.get(i + 1).car())
                ? Optional.of(runs.get(i + 1)) : Optional.empty();
        return Judgement.of(i > 1 ? Optional.of(runs.get(i - 2)) : Optional.empty(), runs.get(i - 1), runs.get(i), again,
                leastGain);
    }

    /** Every judgement on runs with a change, oldest first. */
    public List<Judgement> judgements(Optional<Double> leastGain) {
        List<Judgement> all = new ArrayList<>();
        for (int i = 1; i < runs.size(); i++) {
            Judgement judgement = judged(i, leastGain);
            if (!judgement.changes().isEmpty()) {
                all.add(judgement);
            }
        }
        return all;
    }

    /** What was tried on the car since it was last rebuilt, as it bears on {@code now}. */
    public List<Tried> tried(Case now) {
        List<Tried> tried = new ArrayList<>();
        for (int i = 1; i < runs.size(); i++) {
            if (runs.get(i).driven().sheet().rebuilt()) {
                tried.clear();
                continue;
            }
            int ago = runs.size() - 1 - i;
            boolean elsewhere = elsewhere(runs.get(i).driven().sheet(), now.driven().sheet())
                    || differ(driver(runs.get(i)), driver(now));
            for (Tried outcome : judged(i, Optional.empty()).outcomes()) {
                Tried.Trial trial = outcome.trial();
                tried.add(new Tried(outcome.change(), outcome.moved(), outcome.outcome(), outcome.on(),
                        new Tried.Trial(trial.run(), Optional.of(ago), trial.laps(), trial.together(),
                                trial.witness(), trial.surface(), elsewhere)));
            }
        }
        return tried;
    }

    private static boolean elsewhere(Driven.Sheet then, Driven.Sheet now) {
        return differ(then.track(), now.track()) || differ(then.tyreSet(), now.tyreSet());
    }

    /** Whose word the complaints of a run are: what one driver feels is not what another would. */
    private static Optional<String> driver(Case run) {
        return run.driven().sheet().driver().or(() -> run.background().pupil().name())
                .map(name -> name.strip().toLowerCase(Locale.ROOT));
    }

    private static boolean differ(Optional<String> one, Optional<String> other) {
        return one.isPresent() && other.isPresent() && !one.equals(other);
    }

    /** {@code now} with what the book knows of its car: what was tried, and earlier runs. */
    public Case inform(Case now) {
        List<Tried> tried = new ArrayList<>(tried(now));
        tried.addAll(now.tried());
        return now.withTried(tried).withEarlier(earlier(now));
    }

    /** Earlier runs with tread temperatures or complaints: those that the case names, or else the last ones of the book. */
    List<Case> earlier(Case now) {
        if (!now.earlier().isEmpty()) {
            return now.earlier();
        }
        List<Case> earlier = new ArrayList<>();
        for (int i = runs.size() - 1; i >= 0 && earlier.size() < EARLIER; i--) {
            Case run = runs.get(i);
            boolean itself = run.driven().sheet().number().equals(now.driven().sheet().number());
            if (!(run.tyres().isEmpty() && run.reports().isEmpty()) && !itself) {
                earlier.add(0, run);
            }
        }
        return earlier;
    }
}
