package camberwell.report;

import camberwell.history.Changes;
import camberwell.history.ComplaintShift;
import camberwell.history.CountedLaps;
import camberwell.history.Judgement;
import camberwell.history.LapComparison;
import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Made;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.statistics.Interval;
import camberwell.vocabulary.Word;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Runs of the book as JSON: maps are its objects, lists its arrays. */
public final class RunsJson {

    private static final int DIGITS = 6;

    private RunsJson() {
    }

    /** One run, and what came of the changes before it. */
    public static Map<String, Object> run(Case run, Optional<Judgement> judgement, String file) {
        Driven.Sheet sheet = run.driven().sheet();
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("number", sheet.number().orElse(null));
        json.put("file", file);
        json.put("title", run.title());
        json.put("car", run.car().name());
        json.put("date", sheet.date().map(Object::toString).orElse(null));
        json.put("driver", sheet.driver().orElse(null));
        json.put("track", sheet.track().orElse(null));
        json.put("tyre-set", sheet.tyreSet().orElse(null));
        json.put("surface", id(run.conditions().said()));
        Map<String, Object> setup = new LinkedHashMap<>();
        Changes.setup(run.car()).forEach((adjuster, quantity) -> setup.put(adjuster.id(), quantity.toString()));
        json.put("setup", setup);
        json.put("changed", judgement.map(it -> it.changes().stream().map(RunsJson::made).toList()).orElse(List.of()));
        json.put("laps", CountedLaps.of(run.driven().laps()).laps().stream().map(RunsJson::lap).toList());
        json.put("reports", run.reports().stream().map(RunsJson::report).toList());
        json.put("verdict", id(run.driven().verdict()));
        json.put("judgement", judgement.filter(it -> !it.changes().isEmpty()).map(RunsJson::judgement).orElse(null));
        return json;
    }

    private static Map<String, Object> made(Made made) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("change", made.change().id());
        json.put("from", made.moved().from().map(Object::toString).orElse(null));
        json.put("to", made.moved().to().map(Object::toString).orElse(null));
        json.put("steps", made.moved().steps().orElse(null));
        return json;
    }

    private static Map<String, Object> lap(CountedLaps.Counted lap) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("lap", lap.number());
        json.put("seconds", lap.lap().seconds().map(RunsJson::number).orElse(null));
        json.put("flags", lap.lap().flags().stream().map(Word::id).sorted().toList());
        json.put("counts", lap.counts());
        json.put("why", lap.why().isEmpty() ? null : lap.why());
        return json;
    }

    private static Map<String, Object> report(Report report) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("symptom", report.symptom().id());
        json.put("where", id(report.where()));
        json.put("phase", id(report.phase()));
        json.put("speed", id(report.speed()));
        json.put("severity", report.severity().id());
        json.put("occurrence", report.occurrence().id());
        return json;
    }

    private static String id(Optional<? extends Word> word) {
        return word.isPresent() ? word.get().id() : null;
    }

    /** What came of the changes before a run. */
    public static Map<String, Object> judgement(Judgement judgement) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("run", judgement.run().driven().sheet().number().orElse(null));
        json.put("against", judgement.before().driven().sheet().number().orElse(null));
        json.put("back-on", judgement.again().flatMap(run -> run.driven().sheet().number()).orElse(null));
        json.put("changed", judgement.changes().stream().map(RunsJson::made).toList());
        json.put("complaints", judgement.shifts().stream().map(RunsJson::shift).toList());
        json.put("lap-times", judgement.laps().map(RunsJson::laps).orElse(null));
        json.put("outcomes", judgement.outcomes().stream().map(RunsJson::outcome).toList());
        return json;
    }

    private static Map<String, Object> shift(ComplaintShift shift) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("on", id(shift.on().symptom()));
        json.put("phase", id(shift.on().phase()));
        json.put("speed", id(shift.on().speed()));
        json.put("before", shift.before().map(report -> report.severity().id()).orElse("none"));
        json.put("after", shift.after().map(report -> report.severity().id()).orElse("none"));
        json.put("outcome", shift.outcome().id());
        return json;
    }

    private static Map<String, Object> outcome(Tried tried) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("change", tried.change().id());
        json.put("steps", tried.moved().steps().orElse(null));
        json.put("outcome", tried.outcome().id());
        json.put("on", id(tried.on().symptom()));
        json.put("phase", id(tried.on().phase()));
        json.put("laps", tried.trial().laps().orElse(null));
        json.put("together", tried.trial().together());
        json.put("judged-by", id(tried.trial().witness()));
        return json;
    }

    /** Runs side by side. */
    public static Map<String, Object> comparison(List<Case> runs, LapComparison laps, List<ComplaintShift> shifts) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("runs", runs.stream().map(run -> run.driven().sheet().number().orElse(null)).toList());
        json.put("changed", Changes.between(runs.get(0).car(), runs.get(1).car()).stream().map(RunsJson::made).toList());
        json.put("complaints", shifts.stream().map(RunsJson::shift).toList());
        json.put("lap-times", laps(laps));
        return json;
    }

    private static Map<String, Object> laps(LapComparison laps) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("counted", laps.stints().stream().map(CountedLaps::count).toList());
        json.put("difference", laps.difference().map(it -> number(it.estimate())).orElse(null));
        json.put("standard-error", laps.difference().map(it -> number(it.standardError())).orElse(null));
        json.put("degrees-of-freedom", laps.difference().map(it -> number(it.degreesOfFreedom())).orElse(null));
        json.put("interval-95", laps.interval().map(RunsJson::interval).orElse(null));
        json.put("chance-faster", laps.difference().map(it -> number(it.chanceLess())).orElse(null));
        json.put("welch", laps.welch().map(it -> interval(it.interval(0.95))).orElse(null));
        json.put("trend", laps.fit().map(it -> number(it.slope(0).estimate())).orElse(null));
        json.put("scatter", laps.scatter().map(RunsJson::number).orElse(null));
        json.put("seen", laps.seen().map(RunsJson::number).orElse(null));
        json.put("least-gain", number(laps.leastGain()));
        json.put("verdict", laps.verdict().told());
        json.put("unit", "s");
        json.put("caveats", laps.caveats());
        return json;
    }

    private static List<BigDecimal> interval(Interval interval) {
        return List.of(number(interval.low()), number(interval.high()));
    }

    static BigDecimal number(double number) {
        BigDecimal tidy = BigDecimal.valueOf(number).setScale(DIGITS, RoundingMode.HALF_UP).stripTrailingZeros();
        return tidy.signum() == 0 ? BigDecimal.ZERO : tidy.scale() < 0 ? tidy.setScale(0) : tidy;
    }
}
