package camberwell.report;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.history.Laps;
import camberwell.history.Plan;
import camberwell.knowledge.Notes;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A test plan, as text for a screen and as JSON. */
public final class PlanText {

    private static final int PERCENT = 100;

    private final Notes notes;

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
        plan.steps().forEach(step -> step(step, page));
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
            page.point(0, plan.seen().map(seen -> "what is left to gain is under " + Laps.seconds(seen, 2)
                    + " a lap: a gain that cannot be seen cannot be kept").orElse("what is left to gain cannot be seen in "
                    + "so many laps"));
        }
        if (!plan.left().isEmpty()) {
            page.heading("Not in this plan");
            plan.left().forEach(left -> page.point(0, Words.sentence(Words.change(left.change())) + ": " + left.reason()));
        }
    }

    private void step(Plan.Step step, Page page) {
        page.heading("Run " + step.run() + ". " + title(step));
        switch (step.kind()) {
            case BASELINE -> page.labelled(3, "Why", "as it stands, to have laps and complaints to compare with");
            case BACK -> page.labelled(3, "Why", "what differs from its first run is the track's doing and the driver's, "
                    + "not the changes': it is taken off them, and then what helped goes back on");
            case UNDO, CHANGE -> change(step, step.change().orElseThrow(), page);
        }
    }

    /** What a run of the plan is for: {@code Rear toe: 0.10 deg more toe-in a wheel, 0.15 -> 0.25 deg}. */
    public static String title(Plan.Step step) {
        return switch (step.kind()) {
            case BASELINE -> "Nothing changed";
            case BACK -> "The start set-up once more";
            case UNDO, CHANGE -> Words.sentence(Words.move(step.change().orElseThrow()));
        };
    }

    private void change(Plan.Step step, RankedChange change, Page page) {
        if (!change.score().helps().isEmpty()) {
            page.labelled(3, "For", change.score().helps().stream().limit(2).map(help -> help.complaint().text())
                    .collect(Collectors.joining("; ")));
        }
        page.labelled(3, "Worth", "helps with a chance of " + Math.round(PERCENT * step.chance()) + " %; score "
                + Words.two(change.score().total()) + "; effort " + change.note().effort() + " of 5");
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
        json.put("stop", plan.stop().orElse(null));
        json.put("runs", plan.steps().stream().map(this::json).toList());
        json.put("left", plan.left().stream().map(left -> new Left(left.change().id(), left.reason())).toList());
        return json;
    }

    /** A change that is not in the plan, and why. */
    record Left(String change, String reason) {
    }

    private Map<String, Object> json(Plan.Step step) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("run", step.run());
        json.put("kind", step.kind().name().toLowerCase(Locale.ROOT));
        json.put("change", step.change().map(change -> change.change().id()).orElse(null));
        json.put("from", step.change().flatMap(change -> change.size().from()).map(Object::toString).orElse(null));
        json.put("to", step.change().flatMap(change -> change.size().to()).map(Object::toString).orElse(null));
        json.put("chance", step.change().map(change -> RunsJson.number(step.chance())).orElse(null));
        json.put("effort", step.change().map(change -> change.note().effort()).orElse(null));
        json.put("tests", step.cause().orElse(null));
        List<String> alike = step.alike().stream().map(Object::toString).toList();
        json.put("alike", alike);
        return json;
    }
}
