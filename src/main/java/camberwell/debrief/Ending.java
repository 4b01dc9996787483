package camberwell.debrief;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.explain.Explainer;
import camberwell.explain.Reasoning;
import camberwell.explain.WhyNot;
import camberwell.knowledge.Notes;
import camberwell.report.ExplainText;
import camberwell.report.Page;
import camberwell.report.Voices;
import camberwell.report.Words;
import camberwell.run.Report;
import camberwell.saying.Heard;
import camberwell.saying.Listener;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** What stands at the end of a debrief: the card with the one thing to do, and what may be asked of it. */
public final class Ending {

    private final Debrief debrief;
    private final Supplier<Listener> listener;
    private final Supplier<Notes> notes;
    private final Supplier<Explainer> explainers;
    private final Supplier<Voices> voices;
    private final boolean newcomer;

    /**
     * An ending.
     *
     * @param explainers what tells how a change came about
     * @param voices what the authors of rule packs say
     * @param audience a newcomer is told in plain words
     */
    public Ending(Debrief debrief, Supplier<Listener> listener, Supplier<Notes> notes, Supplier<Explainer> explainers,
            Supplier<Voices> voices, Audience audience) {
        this.debrief = debrief;
        this.listener = listener;
        this.notes = notes;
        this.explainers = explainers;
        this.voices = voices;
        this.newcomer = audience == Audience.NEWCOMER;
    }

    /** Whether what was typed after the advice ends the talk: nothing, "done", "that's all", "thanks". */
    public static boolean leaves(String typed) {
        String word = typed.strip();
        return word.isEmpty() || word.equalsIgnoreCase("done") || Reply.no(word) || Reply.closes(word);
    }

    /** The one thing to do, its size, what to feel, and when to put it back. */
    public void card(Page page) {
        Advice advice = debrief.advice();
        page.heading("In short");
        if (advice.drivingFirst()) {
            List<String> packs = voices.get().packs(advice.driving().get(0).rules());
            page.labelled(0, "First", advice.driving().get(0).note().statement() + (packs.isEmpty() ? ""
                    : " (" + String.join("; ", packs) + ")"));
        }
        if (advice.changes().isEmpty()) {
            page.labelled(0, "Change", advice.complaints().isEmpty() ? "nothing; nothing asks for it"
                    : "nothing for now" + missing(advice));
            return;
        }
        RankedChange first = advice.changes().get(0);
        page.labelled(0, advice.drivingFirst() ? "Then" : "Change", Words.move(first));
        List<String> packs = voices.get().packs(first.rules());
        if (!packs.isEmpty()) {
            page.labelled(0, "From", String.join("; ", packs));
        }
        page.labelled(0, "Feel", first.way().watch());
        page.labelled(0, "Put back", first.way().putBack());
        if (!advice.drivingFirst() && !advice.driving().isEmpty()) {
            page.labelled(0, "Driving", advice.driving().get(0).note().statement());
        }
        if (debrief.run().car().simulator()) {
            simulated(first, page);
        }
    }

    /** What a simulator does otherwise; common practice, no source. */
    private void simulated(RankedChange first, Page page) {
        boolean steering = debrief.run().reports().stream().map(Report::symptom)
                .anyMatch(symptom -> symptom == Symptom.HEAVY_STEERING || symptom == Symptom.LIGHT_STEERING);
        if (steering) {
            page.labelled(0, "But",
                    "the weight of a simulator's wheel is set with the force of the wheel itself: set that first, "
                    + "and leave the caster as it comes");
        }
        page.labelled(0, "Simulator", "directions carry over to a real car, sizes do not: its tyres, kerbs and dampers are "
                + "those of its own model");
    }

    private String missing(Advice advice) {
        if (debrief.run().reports().isEmpty()) {
            return "; what the car did is missing";
        }
        boolean open = debrief.run().reports().stream().anyMatch(report -> report.phase().isEmpty());
        return advice.halt().isPresent() || !advice.withheld().isEmpty() || !advice.driving().isEmpty() ? "; see above why"
                : open ? "; where in the corner it happens is missing" : debrief.run().tyres().isEmpty()
                        ? "; what the tyres read is missing" : "";
    }

    /** Why the first change comes first; or how any of them came about, by its rank. */
    public void why(int rank, Page page) {
        Advice advice = debrief.advice();
        if (advice.changes().size() < rank) {
            page.paragraph(0, advice.changes().isEmpty() ? "No change is advised, so there is none to explain."
                    : "There are " + advice.changes().size() + " changes.");
            return;
        }
        RankedChange change = advice.changes().get(rank - 1);
        page.paragraph(0, Words.sentence(Words.change(change.change())) + ": " + (newcomer ? change.way().plain()
                : change.way().rationale()));
        voices.get().of(change.rules()).forEach(words -> page.point(0, words));
        advice.findings().stream().limit(2).forEach(finding -> page.point(0, newcomer
                ? notes.get().get(finding.id()).plain() : notes.get().get(finding.id()).statement()));
    }

    /** Why none of those changes comes first; those of which nothing is to be said stand together. */
    public void whyNot(List<Change> changes, Page page) {
        Explainer explainer = explainers.get();
        Reasoning reasoning = explainer.reason(debrief.run());
        List<String> unasked = new ArrayList<>();
        for (Change change : changes) {
            WhyNot why = explainer.whyNot(reasoning, change);
            if (why.reasons().size() == 1 && why.sum().steps().isEmpty() && why.withholding().isEmpty()) {
                unasked.add(Words.change(change));
            } else {
                page.point(0, Words.sentence(Words.change(why.change())) + ": "
                        + String.join("; ", why.reasons()).replaceFirst("\\.$", "") + ".");
            }
        }
        if (!unasked.isEmpty()) {
            page.point(0, "Nothing that was told asks for " + String.join(", or ", unasked) + ".");
        }
    }

    /** How a change came about, rule by rule. */
    public void explain(int rank, Page page) {
        Advice advice = debrief.advice();
        if (advice.changes().size() < rank) {
            why(rank, page);
            return;
        }
        Explainer explainer = explainers.get();
        Reasoning reasoning = explainer.reason(debrief.run());
        ExplainText text = new ExplainText(notes.get(), false);
        explainer.how(reasoning, advice.changes().get(rank - 1).change()).ifPresent(how -> text.how(reasoning, how, page));
    }

    /** What would come first if that were so as well; nothing is kept of it. */
    public void whatIf(String said, Page page) {
        Optional<Answer> track = TrackWords.of(said);
        Heard heard = listener.get().hear(said);
        if (track.isEmpty() && !heard.anything()) {
            page.paragraph(0, "Not understood: \"" + said + "\". For instance: what if it was wet; what if slow corners.");
            return;
        }
        Advice then = track.isPresent() ? debrief.adviceIf(Topic.of(Field.TRACK), track.get())
                : debrief.adviceIf(Topic.of(Field.ELSE), new Answer.InWords(heard));
        page.paragraph(0, "If also " + track.map(it -> "a track of " + Spoken.text(it)).orElseGet(() -> Spoken.text(heard)) + ": "
                + first(then) + ". As it is: " + first(debrief.advice()) + ".");
    }

    private static String first(Advice advice) {
        Optional<String> change = advice.changes().stream().findFirst().map(Words::move);
        String text = change.orElse("no change to the car");
        return advice.drivingFirst() ? "first for the driver, " + advice.driving().stream().limit(1)
                .map(driving -> driving.note().title()).collect(Collectors.joining()) + "; then " + text : text;
    }
}
