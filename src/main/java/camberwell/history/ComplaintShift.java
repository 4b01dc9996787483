package camberwell.history;

import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.vocabulary.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One complaint before a change and after it. Only better, same and worse are certain: the distances between grades mean
 * nothing.
 *
 * @param on the complaint
 * @param before as it was reported; empty where it is new
 * @param after as it is reported; empty where it is gone
 */
public record ComplaintShift(Tried.On on, Optional<Report> before, Optional<Report> after, Outcome outcome) {

    private static final int OCCURRENCES = 4;

    /** The complaints of both runs; none where the later run reports nothing at all, for then nobody was asked. */
    public static List<ComplaintShift> between(List<Report> before, List<Report> after) {
        List<ComplaintShift> shifts = new ArrayList<>();
        List<Report> left = new ArrayList<>(after);
        for (Report old : before) {
            Optional<Report> now = left.stream().filter(it -> same(old, it)).findFirst()
                    .or(() -> after.stream().filter(it -> same(old, it) && told(it, before) > 1).findFirst());
            now.ifPresent(left::remove);
            if (now.isPresent() || !after.isEmpty()) {
                shifts.add(new ComplaintShift(on(old), Optional.of(old), now, outcome(grade(old),
                        now.map(ComplaintShift::grade).orElse(0))));
            }
        }
        for (Report fresh : left) {
            Optional<Report> old = before.stream().filter(it -> same(it, fresh)).findFirst();
            shifts.add(new ComplaintShift(on(fresh), old, Optional.of(fresh), outcome(old.map(ComplaintShift::grade).orElse(0),
                    grade(fresh))));
        }
        return List.copyOf(shifts);
    }

    /** How many of the earlier complaints one later one takes in: told of all corners, it goes on with those of some. */
    private static long told(Report now, List<Report> before) {
        return before.stream().filter(old -> same(old, now)).count();
    }

    private static Outcome outcome(int before, int after) {
        return after < before ? Outcome.BETTER : after > before ? Outcome.WORSE : Outcome.SAME;
    }

    /** By severity, and where that is the same by how often it comes; 0 is none. */
    static int grade(Report report) {
        return 1 + report.severity().ordinal() * OCCURRENCES + OCCURRENCES - 1 - report.occurrence().ordinal();
    }

    private static boolean same(Report one, Report other) {
        return one.symptom() == other.symptom() && agree(one.where(), other.where())
                && agree(one.phase(), other.phase()) && agree(one.speed(), other.speed());
    }

    private static <T> boolean agree(Optional<T> one, Optional<T> other) {
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }

    /** The complaint that a report is about. */
    static Tried.On on(Report report) {
        return new Tried.On(Optional.of(report.symptom()), report.where(), report.phase(), report.speed());
    }

    /** The complaint, how it was and how it is: {@code understeer at entry: strong -> slight}. */
    public String text() {
        return on.text() + ": " + before.map(ComplaintShift::grading).orElse("none") + " -> "
                + after.map(ComplaintShift::grading).orElse("none");
    }

    private static String grading(Report report) {
        return report.severity().id() + switch (report.occurrence()) {
            case EVERY_LAP -> "";
            case SOME_LAPS -> ", some laps";
            case ONCE -> ", once";
        };
    }
}
