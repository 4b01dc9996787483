package camberwell.report;

import camberwell.history.Changes;
import camberwell.history.ComplaintShift;
import camberwell.history.CountedLaps;
import camberwell.history.Judgement;
import camberwell.history.LapComparison;
import camberwell.history.Laps;
import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Made;
import camberwell.run.Report;
import camberwell.statistics.Difference;
import camberwell.statistics.Interval;
import camberwell.statistics.StintFit;
import camberwell.statistics.StintFit.Trend;
import camberwell.statistics.Verdict;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Runs of the book as text for a screen. */
public final class RunsText {

    private static final int DOTS = 24;

    private static final int FINE = 3;
    private static final int PERCENT = 100;

    private final Page page;

    /** @param page to write on */
    public RunsText(Page page) {
        this.page = page;
    }

    /** A run in a few lines: who, where and when, what was changed, the laps and the complaints. */
    public void brief(Case run, Optional<Judgement> judgement) {
        Driven.Sheet sheet = run.driven().sheet();
        page.blank().paragraph(0, sheet.number().map(number -> "Run " + number).orElse("A run") + ": " + who(run));
        judgement.ifPresent(it -> changed(it.changes()));
        if (!run.driven().laps().isEmpty()) {
            page.labelled(2, "Laps", laps(run));
        }
        if (!run.reports().isEmpty()) {
            page.labelled(2, "Felt", run.reports().stream().map(Report::text).collect(Collectors.joining("; ")));
        }
        judgement.ifPresent(this::came);
    }

    /** {@code 2026-05-03 10:20, A. Driver, Home circuit, tyre set 2, dry track}. */
    private static String who(Case run) {
        Driven.Sheet sheet = run.driven().sheet();
        List<String> parts = new ArrayList<>();
        sheet.date().ifPresent(date -> parts.add(date.toLocalTime().equals(LocalTime.MIDNIGHT)
                ? date.toLocalDate().toString() : date.toLocalDate() + " " + date.toLocalTime()));
        parts.add(run.car().name());
        sheet.driver().ifPresent(parts::add);
        sheet.track().ifPresent(parts::add);
        sheet.tyreSet().ifPresent(set -> parts.add("tyre set " + set));
        run.conditions().said().ifPresent(surface -> parts.add(surface.id() + " track"));
        if (sheet.rebuilt()) {
            parts.add("rebuilt before it");
        }
        return String.join(", ", parts);
    }

    private void changed(List<Made> changes) {
        page.labelled(2, "Changed", changes.isEmpty() ? "nothing"
                : changes.stream().map(RunsText::made).collect(Collectors.joining("; ")));
    }

    /** {@code front toe towards toe-out, -0.10 -> -0.15 deg}. */
    public static String made(Made made) {
        String how = made.moved().from().isPresent() && made.moved().to().isPresent()
                ? ", " + Words.fromTo(made.moved().from().get(), made.moved().to().get()) : "";
        return Words.change(made.change()) + how;
    }

    private static String laps(Case run) {
        CountedLaps counted = CountedLaps.of(run.driven().laps());
        String count = counted.count() + " of " + Laps.count(counted.laps().size()) + " count";
        if (counted.count() < CountedLaps.FEWEST) {
            return count + "; fewer than " + CountedLaps.FEWEST + " tell nothing";
        }
        StintFit fit = StintFit.of(List.of(counted.stint()), Trend.COMMON);
        return count + "; " + Laps.time(fit.mean(0), 2) + " at mid-stint, trend "
                + Laps.signed(fit.slope(0).estimate(), FINE) + " a lap, scatter " + Laps.seconds(fit.scatter(), 2);
    }

    private void came(Judgement judgement) {
        if (judgement.changes().isEmpty()) {
            return;
        }
        judgement.shifts().forEach(shift -> page.labelled(2, "Then", shift(shift)));
        judgement.laps().filter(it -> it.difference().isPresent()).ifPresent(it ->
                page.labelled(2, "Then", "lap time " + difference(it) + ": " + it.verdict().told()));
    }

    /** {@code understeer at entry: clear, then slight (it helped)}. */
    public static String shift(ComplaintShift shift) {
        return shift.text() + " (" + shift.outcome().told() + ")";
    }

    /** The same, where nothing may have been changed that could have helped. */
    private static String shift(ComplaintShift shift, List<Made> changes) {
        return !changes.isEmpty() ? shift(shift) : shift.text() + (switch (shift.outcome()) {
            case BETTER -> " (less of it)";
            case SAME -> " (the same)";
            case WORSE -> " (more of it)";
            case UNCLEAR -> "";
        });
    }

    /** {@code -0.15 s (95 %: -0.25 s to -0.05 s)}, where there is a difference. */
    public static String difference(LapComparison laps) {
        Interval interval = laps.interval().orElseThrow();
        return Laps.signed(laps.difference().orElseThrow().estimate(), 2) + " (95 %: "
                + Laps.signed(interval.low(), 2) + " to " + Laps.signed(interval.high(), 2) + ")";
    }

    /** All of a run: the set-up, every lap and why it counts or not, the readings' place, what came of the change. */
    public void whole(Case run, Optional<Judgement> judgement) {
        if (!run.title().equals("Run " + run.driven().sheet().number().orElse(0))) {
            page.heading(run.title());
        }
        brief(run, judgement);
        page.heading("Set-up");
        page.columns(0, Changes.setup(run.car()).entrySet().stream().map(entry ->
                Words.sentence(entry.getKey().spoken()) + " " + setting(run, entry.getKey(), entry.getValue())).toList());
        if (!run.driven().laps().isEmpty()) {
            laps(CountedLaps.of(run.driven().laps()).laps());
        }
        judgement.ifPresent(this::learned);
    }

    /** Those that count with a dot where they stand between the fastest and the slowest of them. */
    private void laps(List<CountedLaps.Counted> laps) {
        page.heading("Laps");
        double[] counting = laps.stream().filter(CountedLaps.Counted::counts).flatMap(lap -> lap.lap().seconds().stream())
                .mapToDouble(Double::doubleValue).toArray();
        double fastest = Arrays.stream(counting).min().orElse(0);
        double slowest = Arrays.stream(counting).max().orElse(0);
        for (CountedLaps.Counted lap : laps) {
            String time = lap.lap().seconds().map(seconds -> Laps.time(seconds, 2)).orElse("-");
            String dot = counting.length < 2 || lap.lap().seconds().isEmpty() ? ""
                    : "  " + new DotLine(fastest, slowest, DOTS).mark(lap.lap().seconds().get(), 'o').text().stripTrailing();
            page.verbatim(beside(String.valueOf(lap.number()), 4) + (lap.counts() ? beside(time, 8) + dot
                    : beside(time, 8) + "  does not count" + (lap.why().isEmpty() ? "" : ": " + lap.why())));
        }
        if (counting.length > 1) {
            page.paragraph(0, "left " + Laps.time(fastest, 2) + ", right " + Laps.time(slowest, 2));
        }
    }

    private static String beside(String text, int width) {
        return text + " ".repeat(Math.max(1, width - text.length()));
    }

    private static String setting(Case run, Adjuster adjuster, Quantity setting) {
        return setting.text(run.car().setting(adjuster).orElseThrow().decimals());
    }

    /** Runs side by side: what differs, the complaints, the lap times and what they can tell. */
    public void compare(List<Case> runs, LapComparison laps, List<ComplaintShift> shifts) {
        String names = runs.stream().map(run -> "run " + run.driven().sheet().number().orElse(0))
                .collect(Collectors.joining(", "));
        page.heading(Words.sentence(names) + (runs.size() > 2 ? ": B less the mean of the A beside it" : ": B less A"));
        runs.forEach(run -> page.point(0, who(run)));
        List<Made> changes = Changes.between(runs.get(0).car(), runs.get(1).car());
        changed(changes);
        if (!shifts.isEmpty()) {
            page.heading("Complaints");
            shifts.forEach(shift -> page.point(0, shift(shift, changes)));
        }
        page.heading("Lap times");
        laps(laps);
    }

    private void laps(LapComparison laps) {
        for (CountedLaps stint : laps.stints()) {
            page.point(0, stint.count() + " of " + Laps.count(stint.laps().size()) + " count" + stint.laps().stream()
                    .filter(lap -> !lap.counts()).map(lap -> "lap " + lap.number() + " " + lap.why())
                    .collect(Collectors.collectingAndThen(Collectors.joining("; "), out ->
                            out.isEmpty() ? "" : "; out: " + out)));
        }
        if (laps.difference().isEmpty()) {
            page.blank().paragraph(0, "Fewer than " + CountedLaps.FEWEST + " laps count in one of them, so nothing can "
                    + "be told. Eight each are a fair number.");
            return;
        }
        Difference difference = laps.difference().get();
        StintFit fit = laps.fit().orElseThrow();
        page.blank().labelled(0, "Difference", difference(laps) + ", the trend of "
                + Laps.signed(fit.slope(0).estimate(), FINE) + " a lap taken out");
        page.labelled(0, "Verdict", laps.verdict().told() + "; the chance that B is faster is "
                + Math.round(PERCENT * difference.chanceLess()) + " %");
        page.labelled(0, "Worth", "at least " + Laps.seconds(laps.leastGain(), 2) + (laps.leastGainGiven()
                ? ", as you said" : ", the least that so many laps show; say another with --least-gain"));
        laps.welch().ifPresent(welch -> page.labelled(0, "No trend", Laps.signed(welch.estimate(), 2) + " (95 %: "
                + Laps.signed(welch.interval(0.95).low(), 2) + " to " + Laps.signed(welch.interval(0.95).high(), 2)
                + "), if the laps had none (Welch)"));
        page.labelled(0, "Scatter", Laps.seconds(fit.scatter(), 2) + " a lap about the trend; " + laps.fewest()
                + " laps each show " + Laps.seconds(laps.seen().orElseThrow(), 2) + " four times in five");
        if (laps.verdict() == Verdict.CANNOT_TELL) {
            double wanted = laps.leastGainGiven() ? laps.leastGain() : Math.abs(difference.estimate());
            laps.lapsFor(wanted).ifPresent(each -> page.labelled(0, "To tell", Laps.seconds(wanted, 2) + " takes "
                    + each + " laps each that count"));
        }
        laps.caveats().forEach(caveat -> page.labelled(0, "Mind", caveat));
    }

    /** What came of the changes before a run, and what is learned from it. */
    public void judged(Judgement judgement) {
        int number = judgement.run().driven().sheet().number().orElse(0);
        page.heading("Run " + number + " against run " + judgement.before().driven().sheet().number().orElse(0)
                + judgement.again().map(run -> ", and back on run " + run.driven().sheet().number().orElse(0)).orElse(""));
        changed(judgement.changes());
        judgement.shifts().forEach(shift -> page.labelled(2, "Felt", shift(shift, judgement.changes())));
        if (judgement.shifts().isEmpty()) {
            page.labelled(2, "Felt", judgement.run().driven().verdict().map(verdict -> "the driver: " + verdict.told())
                    .orElse("no complaints were noted after it, so they say nothing"));
        }
        judgement.laps().ifPresent(laps -> {
            page.heading("Lap times");
            laps(laps);
        });
        learned(judgement);
    }

    private void learned(Judgement judgement) {
        if (judgement.changes().isEmpty()) {
            return;
        }
        page.heading("What is learned from it");
        judgement.outcomes().forEach(outcome -> page.point(0, Words.sentence(Words.change(outcome.change())) + " "
                + outcome.text() + outcome.trial().witness().map(witness -> switch (witness) {
                    case DRIVER -> " (by the driver's word alone, which counts half)";
                    case COMPLAINTS -> " (it went away with the change)";
                    case LAPS -> " (the lap times say so too)";
                    case LOG -> " (by the log)";
                }).orElse("")));
    }
}
