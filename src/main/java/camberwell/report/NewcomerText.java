package camberwell.report;

import camberwell.advice.Advice;
import camberwell.advice.Answer;
import camberwell.advice.RankedChange;
import camberwell.fact.Finding;
import camberwell.fact.Premise;
import camberwell.fact.Reading;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.knowledge.Terms;
import camberwell.run.Report;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Turn;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * Advice for a newcomer: what the car did, why, one thing to try in driving, one change, what to feel, how to tell. The
 * conclusions are those of every other text; the words are those of a newspaper.
 */
public final class NewcomerText {

    /** What a driver does first of whom the rules say nothing: laps alike, or nothing can be judged. */
    private static final String DRIVE_ALIKE = "repeat-the-lap-before-changing";
    /** The caution of a car that is not driven again before it has been looked at. */
    private static final String DAMAGE = "check-for-damage";
    private static final String LOOK = "Something on the car may be hurt, loose or bent. Look for it before you change a "
            + "setting. Do not drive on while you do not know why a tyre loses air or why the car pulls.";
    private static final int MOST_FINDINGS = 2;

    private final Notes notes;
    private final Terms terms;

    /** In the words of those notes, with the trade's words explained by {@code terms}. */
    public NewcomerText(Notes notes, Terms terms) {
        this.notes = notes;
        this.terms = terms;
    }

    /** Writes {@code advice} on {@code page}. */
    public void write(Advice advice, Page page) {
        page.heading(advice.run().title());
        advice.halt().ifPresent(caution -> halt(caution, page));
        page.heading("What the car did");
        if (advice.run().heard().filter(heard -> !heard.refused().isEmpty()).isPresent()) {
            HeardText.write(advice.run(), page);
        }
        if (advice.run().reports().isEmpty()) {
            page.paragraph(0, advice.complaints().isEmpty() ? "You told of nothing that is wrong."
                    : "You told of nothing that is wrong, but the tyres show something.");
        }
        advice.run().reports().forEach(report -> page.point(0, told(report, terms)));
        why(advice, page);
        readAgain(advice, page);
        if (advice.complaints().isEmpty()) {
            page.heading("What to do");
            page.paragraph(0, advice.doubts().isEmpty() ? "Leave the car as it is."
                    : "Put that right first. Nothing else asks for a change.");
            return;
        }
        if (advice.halt().isPresent()) {
            afterwards(advice, page);
            unanswered(advice, page);
            return;
        }
        if (maybeDamaged(advice)) {
            page.heading("First look at the car");
            page.paragraph(0, LOOK);
        }
        Optional<Note> driving = driving(advice);
        if (advice.drivingFirst()) {
            driving.ifPresent(note -> driving(note, "Try this first, before you change the car", page));
            change(advice, "If that does not help, change one thing on the car", page);
        } else {
            driving.ifPresent(note -> driving(note, "One thing to try in your driving", page));
            change(advice, "One thing to change on the car", page);
        }
        if (driving.isEmpty() && !advice.changes().isEmpty()) {
            nextRun(advice, page);
        }
        notForIt(advice, page);
        unanswered(advice, page);
        if (!advice.cautions().isEmpty()) {
            page.heading("Before you touch the car");
            String general = advice.cautions().stream().filter(Note::goesWithChanges).map(Note::plain)
                    .collect(Collectors.joining(" "));
            if (!general.isEmpty()) {
                page.paragraph(0, general);
            }
            advice.cautions().stream().filter(caution -> !caution.goesWithChanges())
                    .forEach(caution -> page.point(0, caution.plain().isBlank() ? caution.statement()
                            : caution.plain()));
        }
    }

    /**
     * What to try in the driving. Where the rules have nothing, the lap is driven again only if that can tell something:
     * when the fault does not come every lap, or when there is nothing to change. It is not driven again in a car that
     * may be damaged.
     */
    private Optional<Note> driving(Advice advice) {
        if (!advice.driving().isEmpty()) {
            return Optional.of(advice.driving().get(0).note());
        }
        boolean always = advice.run().reports().stream()
                .allMatch(report -> report.occurrence() == Occurrence.EVERY_LAP);
        boolean answered = !advice.changes().isEmpty() || !advice.answers().isEmpty()
                && advice.answers().stream().noneMatch(Answer::nothing);
        boolean forbidden = !notes.get(DRIVE_ALIKE).when().holds(advice.circumstances());
        return maybeDamaged(advice) || forbidden || always && answered ? Optional.empty()
                : Optional.of(notes.get(DRIVE_ALIKE));
    }

    /** What comes before everything else, and nothing after it that would send the driver out. */
    private static void halt(Note caution, Page page) {
        page.heading("Stop: look at the car first");
        if (caution.name().equals(DAMAGE)) {
            page.paragraph(0, LOOK);
            page.blank();
        }
        page.paragraph(0, caution.plain().isBlank() ? caution.statement() : caution.plain());
        page.blank().paragraph(0, "Leave the settings as they are until that is done. If you do not find it, ask someone "
                + "who knows the car.");
    }

    /** What belongs to mending it, and no word of the next run. */
    private static void afterwards(Advice advice, Page page) {
        if (!advice.changes().isEmpty()) {
            page.heading("Only when that is found and mended");
            page.paragraph(0, Words.sentence(Words.move(advice.changes().get(0))) + ".");
        }
    }

    private static void readAgain(Advice advice, Page page) {
        if (!advice.doubts().isEmpty()) {
            page.heading("Check these readings first");
            advice.doubts().forEach(doubt -> page.point(0, Words.sentence(doubt) + "."));
        }
    }

    private void unanswered(Advice advice, Page page) {
        List<Report> nothing = Unanswered.in(advice);
        if (!nothing.isEmpty()) {
            page.heading("What this page cannot answer");
            nothing.forEach(report -> page.point(0, terms.felt(report.symptom()) + Unanswered
                    .of(advice, report).map(read -> " But " + read + ". Tell what else you feel.")
                    .orElse(" Ask a coach about this one.")));
        }
    }

    /** What troubles most, where the one change that is told is for something else: why none is for it, and what to tell. */
    private void notForIt(Advice advice, Page page) {
        if (advice.changes().isEmpty()) {
            return;
        }
        Change first = advice.changes().get(0).change();
        advice.answers().stream().filter(answer -> answer.report().measured().isEmpty())
                .min(Comparator.comparing((Answer answer) -> answer.report().severity(), Comparator.reverseOrder()))
                .filter(answer -> !answer.nothing() && !answer.by().contains("change " + first.id()))
                .ifPresent(answer -> {
                    page.heading("What you told of");
                    page.point(0, terms.felt(answer.report().symptom()) + " " + whyNot(advice, answer, first));
                });
    }

    private static String whyNot(Advice advice, Answer answer, Change first) {
        String tell = Unanswered.more(advice, answer.report());
        if (answer.by().stream().anyMatch(by -> by.startsWith("change "))) {
            return "What is for this comes after the change above, when you have driven with that one.";
        }
        return first.adjuster().kind() == Adjuster.Kind.PRESSURE
                ? "Put the air right first, drive again, and see what is left of this. " + tell
                : "The change above is not for this, and nothing that is known yet speaks for one. " + tell;
    }

    private static boolean maybeDamaged(Advice advice) {
        return advice.cautions().stream().anyMatch(caution -> caution.name().equals(DAMAGE));
    }

    /** How a run is driven that is to judge one change. */
    private static void nextRun(Advice advice, Page page) {
        page.heading("How to do the next run");
        if (advice.run().reports().stream().anyMatch(report -> report.occurrence() == Occurrence.EVERY_LAP
                && !report.symptom().ofTyre())) {
            page.paragraph(0, "If it comes on every lap, it looks more like the car than like you.");
            page.blank();
        }
        page.paragraph(0, "Write down how the car is set now. Make this one change and no other. Drive two laps to "
                + "warm the tyres, then three laps as alike as you can, at nine tenths. Look at the same corner each "
                + "time. Come in and read the tyres at once. Keep the change if it is better, put it back if it is "
                + "not, and only then try the next thing.");
    }

    /**
     * A report as one tells a newcomer of it, in whole sentences. That it comes on every lap is what is taken where nobody
     * said how often, and so goes without saying.
     */
    public static String told(Report report, Terms terms) {
        List<String> circumstances = new ArrayList<>();
        report.phase().ifPresent(phase -> circumstances.add(terms.felt(phase)));
        report.speed().ifPresent(speed -> circumstances.add(terms.felt(speed)));
        report.turn().filter(Turn::oneSided).ifPresent(turn -> circumstances.add("only when you turn " + turn.id()));
        if (report.occurrence() != Occurrence.EVERY_LAP) {
            circumstances.add(terms.felt(report.occurrence()));
        }
        return terms.felt(report.symptom()) + report.where().map(place -> " Look at the " + place.spoken()
                + (place.wheel().isPresent() ? " tyre." : " tyres.")).orElse("")
                + (circumstances.isEmpty() ? "" : " This comes " + String.join(", ", circumstances) + ".");
    }

    private static String hedge(Finding finding) {
        return finding.certainty() >= 0.6 ? "" : "It may be this. ";
    }

    /** What the first change rests on: findings, or else readings alone; without a change, the surest findings. */
    private void why(Advice advice, Page page) {
        List<Premise> under = advice.changes().stream().limit(1).flatMap(change -> change.proposals().stream())
                .filter(proposal -> proposal.certainty() > 0).flatMap(proposal -> proposal.premises().stream())
                .filter(premise -> premise instanceof Finding || premise instanceof Reading).distinct().toList();
        List<? extends Premise> told = under.stream().anyMatch(Finding.class::isInstance)
                ? under.stream().filter(Finding.class::isInstance).toList()
                : under.isEmpty() ? advice.findings() : under;
        if (!told.isEmpty()) {
            page.heading("Why");
            told.stream().sorted(Comparator.comparingDouble((Premise premise) -> -premise.certainty()))
                    .limit(MOST_FINDINGS).forEach(premise -> page.point(0, premise instanceof Finding finding
                            ? hedge(finding) + notes.get(finding.id()).fitting(advice.circumstances()).plain()
                            : Words.sentence(premise.statement()) + "."));
        }
    }

    private static void driving(Note note, String heading, Page page) {
        page.heading(heading);
        Note.Practice practice = note.practice().orElseThrow();
        page.paragraph(0, note.statement());
        page.blank().paragraph(0, practice.tryNext());
        page.blank().paragraph(0, "What to feel: " + practice.feel());
        page.blank().paragraph(0, "You or the car? " + practice.carOrDriver());
    }

    private static void change(Advice advice, String heading, Page page) {
        if (advice.changes().isEmpty()) {
            page.heading("The car");
            page.paragraph(0, advice.withheld().isEmpty() && advice.driving().isEmpty() && !maybeDamaged(advice)
                    ? "There is not enough to go on yet. " + Unanswered.more(advice)
                    : "Leave the settings as they are for now. " + advice.withheld().stream().limit(1)
                            .map(withheld -> "Not now: " + Words.change(withheld.change()) + ". "
                                    + Words.sentence(withheld.reason()).replaceFirst("[^.]$", "$0."))
                            .collect(Collectors.joining()));
            return;
        }
        RankedChange change = advice.changes().get(0);
        page.heading(heading);
        page.paragraph(0, Words.sentence(Words.move(change)) + ".");
        if (Words.wheelsDiffer(change.size())) {
            change.size().wheels().forEach(wheel -> page.paragraph(2, Words.sentence(wheel.wheel().spoken()) + ": "
                    + Words.fromTo(wheel.from(), wheel.to()) + "."));
        }
        page.blank().paragraph(0, change.way().plain());
        page.heading("What to feel in the next run");
        page.paragraph(0, change.way().watch());
        page.heading("How to tell that it was wrong");
        page.paragraph(0, "Put it back if you see this: " + change.way().putBack());
    }
}
