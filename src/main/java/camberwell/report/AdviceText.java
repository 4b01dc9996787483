package camberwell.report;

import camberwell.advice.Advice;
import camberwell.advice.Conflict;
import camberwell.advice.DrivingAdvice;
import camberwell.advice.Predictions;
import camberwell.advice.RankedChange;
import camberwell.advice.Score;
import camberwell.advice.Size;
import camberwell.advice.Withheld;
import camberwell.fact.Finding;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import java.util.List;
import java.util.stream.Collectors;

/** Advice as text for a screen, down to the width of a phone. */
public final class AdviceText {

    private static final int MOST_HELPS = 3;
    private static final int MOST_COSTS = 3;

    private final Notes notes;
    private final int top;
    private final boolean terms;

    /**
     * @param top how many changes to show
     * @param terms whether to show every term of the score
     */
    public AdviceText(Notes notes, int top, boolean terms) {
        this.notes = notes;
        this.top = top;
        this.terms = terms;
    }

    /** Writes {@code advice} on {@code page}. */
    public void write(Advice advice, Page page) {
        page.heading(advice.run().title());
        page.paragraph(0, advice.run().car().name() + ", " + advice.run().car().drive().id() + "-wheel drive, "
                + advice.run().conditions().surface().id() + " track"
                + advice.run().conditions().track().map(track -> " at " + track).orElse(""));
        findings(advice.findings(), page);
        if (advice.drivingFirst()) {
            driving("First, for the driver", advice.driving(), page);
        }
        if (advice.changes().isEmpty()) {
            page.heading(advice.complaints().isEmpty() ? "Nothing asks for a change. Leave the car as it is."
                    : advice.withheld().isEmpty() ? "Not enough to name a change. Say more of what the car does, and "
                    + "read the tyres." : "No change to the car for now.");
        } else {
            page.heading(advice.changes().size() == 1 ? "One change" : "Change one thing at a time, in this order");
            Predictions predictions = new Predictions(advice);
            advice.changes().stream().limit(top).forEach(change -> change(change, predictions, page));
            if (advice.changes().size() > top) {
                page.blank().paragraph(0, advice.changes().size() - top + " more with --top "
                        + advice.changes().size());
            }
        }
        if (!advice.drivingFirst()) {
            driving("For the driver", advice.driving(), page);
        }
        conflicts(advice.conflicts(), page);
        withheld(advice.withheld(), page);
        if (!advice.cautions().isEmpty()) {
            page.heading("Before you touch the car");
            advice.cautions().forEach(caution -> page.point(0, caution.statement()));
        }
    }

    private void findings(List<Finding> findings, Page page) {
        if (findings.isEmpty()) {
            return;
        }
        page.heading("What is going on");
        for (Finding finding : findings) {
            page.point(0, notes.get(finding.id()).statement() + " (" + Words.certainty(finding.certainty()) + ", "
                    + Words.two(finding.certainty()) + ")");
        }
    }

    private void change(RankedChange change, Predictions predictions, Page page) {
        page.heading(change.rank() + ". " + Words.sentence(Words.change(change.change())) + ", " + Words.size(change));
        for (Size.WheelSize wheel : change.size().wheels()) {
            page.paragraph(3, wheel.wheel().id() + ": from " + wheel.from() + " to " + wheel.to());
        }
        page.labelled(3, "Why", change.way().rationale());
        if (!change.score().helps().isEmpty()) {
            page.labelled(3, "Helps", change.score().helps().stream().limit(MOST_HELPS)
                    .map(help -> help.complaint().text()).collect(Collectors.joining("; ")));
        }
        if (!change.score().costs().isEmpty()) {
            page.labelled(3, "Costs", costs(change.score()));
        }
        change.size().computation().forEach(line -> page.labelled(3, "Size", line));
        predictions.of(change).ifPresent(predicted ->
                page.labelled(3, "Model", PredictionText.line(predicted, change.change().adjuster())));
        page.labelled(3, "Watch", change.way().watch());
        page.labelled(3, "Put back", change.way().putBack());
        page.labelled(3, "Rules", change.rules().stream().collect(Collectors.joining("; ")));
        if (terms) {
            Score score = change.score();
            page.labelled(3, "Score", Words.two(score.total()) + " = certainty " + Words.two(score.certainty())
                    + " x (relief " + Words.two(score.relief()) + " - harm to complaints "
                    + Words.two(score.harmToComplaints()) + " - harm to what is fine "
                    + Words.two(score.harmToFine()) + ") - effort " + Words.two(score.effort()) + " - risk "
                    + Words.two(score.risk()));
        }
    }

    private static String costs(Score score) {
        return score.costs().stream().limit(MOST_COSTS)
                .map(cost -> cost.on() + (cost.why().startsWith("complained") ? " gets worse" : " may suffer"))
                .collect(Collectors.joining("; "));
    }

    private static void driving(String heading, List<DrivingAdvice> driving, Page page) {
        if (driving.isEmpty()) {
            return;
        }
        page.heading(heading);
        for (DrivingAdvice advice : driving) {
            page.point(0, advice.note().statement());
            Note.Practice practice = advice.note().practice().orElseThrow();
            page.labelled(2, "Try", practice.tryNext());
            page.labelled(2, "Feel", practice.feel());
            page.labelled(2, "Which?", practice.carOrDriver());
        }
    }

    private static void conflicts(List<Conflict> conflicts, Page page) {
        if (!conflicts.isEmpty()) {
            page.heading("What pulls both ways");
            conflicts.forEach(conflict -> page.point(0, Words.sentence(conflict.statement()) + " ("
                    + conflict.changes().stream().map(Words::change).collect(Collectors.joining(", ")) + ")"));
        }
    }

    private static void withheld(List<Withheld> withheld, Page page) {
        if (!withheld.isEmpty()) {
            page.heading("Not now");
            withheld.forEach(change -> page.point(0, Words.sentence(Words.change(change.change())) + ": "
                    + change.reason()));
        }
    }
}
