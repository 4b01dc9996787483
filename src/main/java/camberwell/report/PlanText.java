package camberwell.report;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.history.Gain;
import camberwell.history.Laps;
import camberwell.history.Optimum;
import camberwell.history.Plan;
import camberwell.knowledge.Notes;
import camberwell.units.Figures;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A test plan, as text for a screen and as JSON. */
public final class PlanText {

    private static final int PERCENT = 100;

    private final Notes notes;

    /** In the words of those notes. */
    public PlanText(Notes notes) {
        this.notes = notes;
    }

    /** Writes the plan. */
    public void write(Plan plan, Advice advice, Page page) {
        page.heading("Plan for the " + advice.run().car().name());
        plan.stop().ifPresent(stop -> page.paragraph(0, "Before anything else: " + stop + "."));
        if (plan.steps().isEmpty()) {
            page.paragraph(0, advice.changes().isEmpty() ? "There is nothing to try." : "Too few laps for a run of "
                    + plan.lapsEach() + " that count.");
        } else {
            page.paragraph(0, plan.steps().size() + (plan.steps().size() == 1 ? " run" : " runs") + " of "
                    + Laps.count(plan.lapsEach()) + " that count, with the laps out and in " + plan.lapsInAll() + " in all. "
                    + plan.seen().map(seen -> "The last laps scatter by " + Laps.seconds(plan.scatter().orElseThrow(), 2)
                    + ", so such runs show a difference of " + Laps.seconds(seen, 2) + " a lap, no less.").orElse(
                    "How far the laps scatter is not known yet; the first run will show it."));
        }
        plan.optima().forEach(best -> page.paragraph(0, best(best)));
        plan.steps().forEach(step -> step(plan, step, page));
        if (!plan.steps().isEmpty()) {
            page.heading("After each run");
            page.point(0, "Say what the car did before you look at the times. Do not tell the driver what was changed.");
            page.point(0, "Better: keep it, and take one step more. No effect: put it back before the next. Worse: put it "
                    + "back at once.");
            page.point(0, "Enter it with camberwell runs add; then camberwell runs judge tells what came of it, and this "
                    + "plan, asked for again, goes on from there.");
            page.heading("Stop when");
            page.point(0, "the complaints are slight or gone");
            page.point(0, "three changes in a row did nothing: then it is the driver, the tyres or the reading");
            page.point(0, "its chance times " + plan.gain().map(PlanText::gain).orElse("what a change that helps brings a "
                    + "lap") + " is less than the laps left can show, and what is left is slight: a gain that cannot be "
                    + "seen cannot be kept");
            page.point(0, "three settings of a lever are timed, and the quickest lies within a step of where it stands");
        }
        if (!plan.left().isEmpty()) {
            page.heading("Not in this plan");
            plan.left().forEach(left -> page.point(0, Words.sentence(Words.change(left.change())) + ": " + left.reason()));
        }
    }

    /** What a change that helps is expected to bring: {@code 0.20 s (the mean of 3 changes that helped)}. */
    private static String gain(Gain gain) {
        return Laps.seconds(gain.seconds(), 2) + (gain.changes() == 0 ? " (as you expect)" : gain.changes() == 1
                ? " (what the one change brought that helped)" : " (the mean of " + gain.changes() + " changes that helped)");
    }

    /** The quickest of three settings, how surely, and from what. */
    public static String best(Optimum best) {
        String from = best.tried().stream().map(it -> it.setting() + " " + Laps.time(it.seconds(), 2) + " (run "
                + it.runs().stream().map(String::valueOf).collect(Collectors.joining(", ")) + ")")
                .collect(Collectors.joining(", "));
        String parabola = "The parabola through " + from + " has its vertex at " + best.at();
        String adjuster = Words.sentence(best.adjuster().spoken());
        return !best.told() ? adjuster + ": cannot tell. " + parabola + ", but the three do not differ by more than such "
                + "laps can show." : adjuster + ": quickest at " + best.at() + ", with 95 % from " + best.from().orElseThrow()
                + " to " + best.to().orElseThrow() + ". " + parabola + ". " + (best.stepsAway() == 0
                ? "It stands there, to a step: leave it." : "The nearest that it can be set to is " + best.nearest() + ".");
    }

    private void step(Plan plan, Plan.Step step, Page page) {
        page.heading("Run " + step.run() + ". " + title(step));
        switch (step.kind()) {
            case BASELINE -> page.labelled(3, "Why", "as it stands, to have laps and complaints to compare with");
            case BACK -> page.labelled(3, "Why", "what differs from its first run is the track's doing and the driver's, "
                    + "not the changes': it is taken off them, and then what helped goes back on");
            case BEST -> page.labelled(3, "Why", "three settings of it were timed; this is the quickest of all between them, "
                    + "and the run shows whether it is");
            case UNDO, CHANGE -> change(plan, step, step.change().orElseThrow(), page);
        }
    }

    /** What a run of the plan is for: {@code Rear toe: 0.10 deg more toe-in a wheel, 0.15 -> 0.25 deg}. */
    public static String title(Plan.Step step) {
        return switch (step.kind()) {
            case BASELINE -> "Nothing changed";
            case BACK -> "The start set-up once more";
            case BEST -> Words.sentence(step.best().orElseThrow().adjuster().spoken()) + " to "
                    + step.best().orElseThrow().nearest() + ", the quickest of three settings";
            case UNDO, CHANGE -> Words.sentence(Words.move(step.change().orElseThrow()));
        };
    }

    /** What it is worth on the clock, and whether the clock can show it. */
    public static Optional<String> clock(Plan plan, Plan.Step step) {
        return plan.clockTells(step).map(tells -> Figures.fixed(step.chance(), 2) + " x "
                + Laps.seconds(plan.gain().orElseThrow().seconds(), 2) + " = " + Laps.seconds(plan.worth(step).orElseThrow(), 2)
                + " a lap; the laps left show " + Laps.seconds(step.seen().orElseThrow(), 2)
                + (tells ? "" : " at the least, so judge it by the complaint and not by the clock"));
    }

    private void change(Plan plan, Plan.Step step, RankedChange change, Page page) {
        if (!change.score().helps().isEmpty()) {
            page.labelled(3, "For", change.score().helps().stream().limit(2).map(help -> help.complaint().text())
                    .collect(Collectors.joining("; ")));
        }
        page.labelled(3, "Worth", "helps with a chance of " + Math.round(PERCENT * step.chance()) + " %; score "
                + Words.two(change.score().total()) + "; effort " + change.note().effort() + " of 6");
        clock(plan, step).ifPresent(clock -> page.labelled(3, "Clock", clock));
        if (step.kind() == Plan.Kind.UNDO) {
            page.labelled(3, "Teaches", "whether that change was the cause: what it brought should go away");
        } else {
            step.cause().ifPresent(cause -> page.labelled(3, "Teaches", "whether this is so: "
                    + notes.get(cause).statement() + (step.alike().isEmpty() ? "" : " If nothing comes of it, there is "
                    + "less to be had from " + step.alike().stream().map(Words::change)
                    .collect(Collectors.joining(", ")) + " too.")));
        }
        page.labelled(3, "Watch", change.way().watch());
    }

    /** The plan as JSON. */
    public Map<String, Object> json(Plan plan, Advice advice) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("car", advice.run().car().name());
        json.put("laps-each", plan.lapsEach());
        json.put("laps-in-all", plan.lapsInAll());
        json.put("scatter", plan.scatter().map(RunsJson::number).orElse(null));
        json.put("seen", plan.seen().map(RunsJson::number).orElse(null));
        json.put("gain", plan.gain().map(gain -> RunsJson.number(gain.seconds())).orElse(null));
        json.put("gain-of", plan.gain().map(Gain::changes).orElse(null));
        json.put("stop", plan.stop().orElse(null));
        json.put("best", plan.optima().stream().map(PlanText::json).toList());
        json.put("runs", plan.steps().stream().map(step -> json(plan, step)).toList());
        json.put("left", plan.left().stream().map(left -> new Left(left.change().id(), left.reason())).toList());
        return json;
    }

    /** A change that is not in the plan, and why. */
    record Left(String change, String reason) {
    }

    private static Map<String, Object> json(Optimum best) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("adjuster", best.adjuster().id());
        json.put("tried", best.tried().stream().map(it -> new Timed(it.setting().toString(), it.runs(),
                RunsJson.number(it.seconds()))).toList());
        json.put("at", best.at().toString());
        json.put("interval-95", best.told() ? List.of(best.from().orElseThrow().toString(),
                best.to().orElseThrow().toString()) : null);
        json.put("nearest", best.nearest().toString());
        json.put("steps-away", best.stepsAway());
        return json;
    }

    /** A setting that was timed. */
    record Timed(String setting, List<Integer> runs, BigDecimal seconds) {
    }

    private Map<String, Object> json(Plan plan, Plan.Step step) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("run", step.run());
        json.put("kind", step.kind().name().toLowerCase(Locale.ROOT));
        step.best().ifPresent(best -> json.put("set", best.adjuster().id()));
        json.put("change", step.change().map(change -> change.change().id()).orElse(null));
        json.put("from", step.change().flatMap(change -> change.size().from()).map(Object::toString).orElse(null));
        json.put("to", step.change().flatMap(change -> change.size().to())
                .or(() -> step.best().map(Optimum::nearest)).map(Object::toString).orElse(null));
        json.put("chance", step.change().map(change -> RunsJson.number(step.chance())).orElse(null));
        json.put("worth", plan.worth(step).map(RunsJson::number).orElse(null));
        json.put("seen", step.seen().map(RunsJson::number).orElse(null));
        json.put("effort", step.change().map(change -> change.note().effort()).orElse(null));
        json.put("tests", step.cause().orElse(null));
        List<String> alike = step.alike().stream().map(Object::toString).toList();
        json.put("alike", alike);
        return json;
    }
}
