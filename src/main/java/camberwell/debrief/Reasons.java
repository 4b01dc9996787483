package camberwell.debrief;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.knowledge.Notes;
import camberwell.report.Page;
import camberwell.report.Words;
import camberwell.vocabulary.Audience;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;

/** Says why something is asked, what was answered so far and what it shows. A newcomer is told without figures. */
final class Reasons {

    private static final int SO_FAR = 5;
    private static final int SAMPLES = 4;
    private static final int MOST_OUTCOMES = 5;

    private final Supplier<Notes> notes;
    private final Audience audience;

    Reasons(Supplier<Notes> notes, Audience audience) {
        this.notes = notes;
        this.audience = audience;
    }

    /** What hangs on the answer to a question. */
    void why(Question asked, Debrief debrief, Page page) {
        switch (asked.topic().field()) {
            case CAR, DRIVE -> page.paragraph(0, "What a change does depends on which wheels are driven, and a car can only be "
                    + "changed where it can be adjusted.");
            case DOING -> page.paragraph(0, "Everything hangs on it: without a complaint nothing asks for a change.");
            case SIMULATOR -> page.paragraph(0, "In a simulator some things are set otherwise, and no jack is needed.");
            case ELSE -> page.paragraph(0, "A second complaint may turn the advice round, and so may what is taken for granted.");
            case CHANGED -> page.paragraph(0, "What came of a change tells whether it goes on, goes back or goes further.");
            case CAME -> page.paragraph(0, "A change that did nothing is not advised again, and one that harmed is put back.");
            case DOUBT -> page.paragraph(0, "One of the two leads the advice astray.");
            default -> hangs(asked, page);
        }
    }

    private void hangs(Question asked, Page page) {
        page.paragraph(0, "The answer decides what comes first. Now: " + first(asked.now()) + ".");
        Map<String, List<String>> byFirst = new LinkedHashMap<>();
        for (Question.Choice choice : asked.choices()) {
            if (choice.single()) {
                byFirst.computeIfAbsent(first(choice.outcome()), key -> new ArrayList<>())
                        .add(choice.label().isEmpty() ? Spoken.text(choice.answer())
                                : audience == Audience.NEWCOMER ? plain(choice.label()) : choice.label());
            }
        }
        byFirst.entrySet().stream().limit(MOST_OUTCOMES).forEach(outcome -> page.point(2, Words.sentence(outcome.getKey())
                + ", if: " + String.join("; ", outcome.getValue().subList(0, Math.min(SAMPLES, outcome.getValue().size())))
                + (outcome.getValue().size() > SAMPLES ? "; …" : "")));
        if (byFirst.size() == 1) {
            page.paragraph(0, "By itself no answer changes that; together with the answer to another question "
                    + "one may.");
        }
        if (audience == Audience.ENGINEER) {
            page.paragraph(0, "The answer is expected to tell " + Words.two(asked.gain()) + " bit of the ranking.");
        }
    }

    /** What tyres may read, for somebody who has not learned to read them. */
    private static String plain(String label) {
        return label.replaceFirst("^(front|rear) ", "$1 tyres ")
                .replace("inner edge hot", "hottest at the edge that faces the car")
                .replace("outer edge hot", "hottest at the edge that faces away").replace("middle hot", "hottest in the middle")
                .replace("middle cool", "coolest in the middle");
    }

    private String first(Outcome outcome) {
        return outcome.driving().map(name -> "for the driver, " + decapitalised(notes.get().get(name).title()))
                .or(() -> outcome.first().map(Words::change)).orElse("no change to the car");
    }

    private static String decapitalised(String title) {
        return title.isEmpty() ? title : title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
    }

    /** The answers, what they show, and the ranking now. */
    void soFar(Debrief debrief, List<String> names, Page page) {
        Advice advice = debrief.advice();
        List<Entry> entries = debrief.entries();
        if (!entries.isEmpty()) {
            page.heading("Answered");
            for (int i = 0; i < entries.size(); i++) {
                page.point(0, names.get(i) + said(entries.get(i)));
            }
        }
        page.heading("Found so far");
        if (advice.findings().isEmpty()) {
            page.point(0, "nothing yet");
        }
        advice.findings().forEach(finding -> page.point(0, audience == Audience.NEWCOMER
                ? notes.get().get(finding.id()).plain() : notes.get().get(finding.id()).statement() + " ("
                + Words.certainty(finding.certainty()) + ")"));
        page.heading(audience == Audience.NEWCOMER ? "What would be advised now" : "The ranking now");
        if (advice.drivingFirst()) {
            page.point(0, "before any change, for the driver: " + advice.driving().get(0).note().statement());
        }
        if (advice.changes().isEmpty()) {
            page.point(0, "no change to the car");
        }
        advice.changes().stream().limit(audience == Audience.NEWCOMER ? 1 : SO_FAR)
                .forEach(change -> page.numbered(0, change.rank(), ranked(change)));
        page.blank();
    }

    /** What was answered to an entry's question. */
    static String said(Entry entry) {
        return (entry.complaint().isEmpty() ? "" : " (" + entry.complaint() + ")") + ": " + Spoken.text(entry.answer());
    }

    private String ranked(RankedChange ranked) {
        return Words.change(ranked.change()) + (audience == Audience.NEWCOMER ? "" : ", score "
                + Words.two(ranked.score().total()));
    }
}
