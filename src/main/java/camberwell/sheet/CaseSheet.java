package camberwell.sheet;

import camberwell.advice.Advice;
import camberwell.advice.DrivingAdvice;
import camberwell.advice.RankedChange;
import camberwell.advice.Score;
import camberwell.advice.Withheld;
import camberwell.fact.Finding;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.knowledge.Terms;
import camberwell.report.NewcomerText;
import camberwell.report.Voices;
import camberwell.report.Words;
import camberwell.run.Report;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Axle;
import j2html.tags.DomContent;
import j2html.tags.specialized.ArticleTag;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import static j2html.TagCreator.article;
import static j2html.TagCreator.caption;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.h3;
import static j2html.TagCreator.li;
import static j2html.TagCreator.p;
import static j2html.TagCreator.section;
import static j2html.TagCreator.span;
import static j2html.TagCreator.table;
import static j2html.TagCreator.tbody;
import static j2html.TagCreator.td;
import static j2html.TagCreator.th;
import static j2html.TagCreator.thead;
import static j2html.TagCreator.tr;
import static j2html.TagCreator.ul;

/** The part of the sheet that is about one case: said, measured, to be changed, to be watched, what came of it. */
final class CaseSheet {

    private static final int LATER_CHANGES = 4;
    private static final int MOST_WITHHELD = 4;
    private static final int MOST_FINDINGS = 3;
    private static final int RUNS_TO_WRITE = 3;

    private final Advice advice;
    private final Notes notes;
    private final Terms terms;
    private final Audience audience;
    private final Voices voices;
    private final String id;
    private final List<DomContent> runs;

    /** @param runs what a book of runs adds; empty for none */
    CaseSheet(Advice advice, Notes notes, Terms terms, Audience audience, Voices voices, String id,
            List<DomContent> runs) {
        this.advice = advice;
        this.notes = notes;
        this.terms = terms;
        this.audience = audience;
        this.voices = voices;
        this.id = id;
        this.runs = runs;
    }

    ArticleTag whole() {
        List<DomContent> parts = new ArrayList<>();
        parts.add(h1(advice.run().title()));
        parts.add(p(Words.carAndDay(advice.run())).withClass("quiet"));
        said(parts);
        measured(parts);
        findings(parts);
        if (advice.drivingFirst()) {
            driving("First, for the driver", parts);
        }
        first(parts);
        later(parts);
        if (!advice.drivingFirst()) {
            driving("For the driver", parts);
        }
        withheld(parts);
        parts.addAll(runs);
        outcome(parts);
        cautions(parts);
        if (audience == Audience.NEWCOMER) {
            parts.addAll(WordList.of(parts, terms));
        }
        parts.add(footer("Made by camberwell. One change at a time; what the series and the makers of car and tyres say "
                + "stands above this sheet."));
        return article().withId(id).with(each(parts.stream()));
    }

    private void said(List<DomContent> parts) {
        List<Report> reports = advice.run().reports().stream().filter(report -> report.measured().isEmpty()).toList();
        parts.add(section(h2("What was said"), reports.isEmpty() ? p("Nobody complained of anything.")
                : ul(each(reports, report -> li(newcomer() ? told(report) : Words.sentence(report.text()))))));
    }

    /** In whole sentences, with the word to say to a coach; the list at the end of the page explains it. */
    private String told(Report report) {
        return NewcomerText.told(report, terms) + " Drivers call it " + report.symptom().spoken() + ".";
    }

    private void measured(List<DomContent> parts) {
        List<DomContent> drawings = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            TreadFigure.of(id + "-tread-" + axle.id(), axle, advice.tyres(), advice.run().car().tyres(axle))
                    .ifPresent(drawings::add);
        }
        PressureFigure.of(id + "-pressures", advice.tyres()).ifPresent(drawings::add);
        List<Report> shown = advice.run().reports().stream().filter(report -> report.measured().isPresent()).toList();
        if (!shown.isEmpty()) {
            parts.add(section(h2("What the log shows"), ul(each(shown, report -> li((newcomer() ? told(report)
                    : Words.sentence(report.text())) + ": " + report.measured().orElseThrow().how())))));
        }
        parts.add(section(h2("What was measured"), drawings.isEmpty() ? p("No tyre was read.")
                : div(each(drawings.stream())).withClass("drawings"), doubts()));
    }

    private DomContent doubts() {
        return advice.tyres().doubts().isEmpty() ? span() : div(p("Read again before you trust it:"),
                ul(each(advice.tyres().doubts(), doubt -> li(Words.sentence(doubt)))));
    }

    private void findings(List<DomContent> parts) {
        if (advice.findings().isEmpty()) {
            return;
        }
        Stream<Finding> shown = advice.findings().stream()
                .limit(audience == Audience.ENGINEER ? advice.findings().size() : MOST_FINDINGS);
        parts.add(section(h2("What is going on"), ul(each(shown.map(finding -> li(
                newcomer() ? notes.get(finding.id()).plain() : notes.get(finding.id()).statement() + " ("
                        + Words.certainty(finding.certainty()) + ", " + Words.two(finding.certainty()) + ")"))))));
    }

    private void first(List<DomContent> parts) {
        if (advice.changes().isEmpty()) {
            parts.add(section(h2("The car"), p(advice.complaints().isEmpty()
                    ? "Nothing asks for a change. Leave the car as it is." : "No change to the car for now.")));
            return;
        }
        RankedChange change = advice.changes().get(0);
        List<DomContent> why = new ArrayList<>();
        why.add(h3(arrow(Words.sentence(Words.move(change)))));
        if (Words.wheelsDiffer(change.size())) {
            why.add(ul(each(change.size().wheels(), wheel -> li(Words.sentence(wheel.wheel().spoken()) + ": "
                    + arrow(Words.fromTo(wheel.from(), wheel.to()))))));
        }
        List<String> heard = newcomer() ? List.of() : voices.of(change.rules());
        if (heard.stream().noneMatch(words -> words.startsWith(change.why()))) {
            why.add(labelled("Why", newcomer() ? change.way().plain() : change.why()));
        }
        heard.forEach(words -> why.add(labelled("Why", words)));
        List<String> packs = newcomer() ? voices.packs(change.rules()) : List.of();
        if (!packs.isEmpty()) {
            why.add(labelled("From", String.join("; ", packs)));
        }
        if (audience == Audience.ENGINEER && !change.way().rationale().equals(change.why())) {
            why.add(labelled("Behind it", change.way().rationale()));
        }
        if (!newcomer()) {
            why.add(labelled("Helps", String.join("; ", change.score().helps().stream()
                    .map(help -> help.complaint().text()).toList())));
            why.add(labelled("Costs", String.join("; ", change.score().costs().stream().limit(LATER_CHANGES)
                    .map(Score.Cost::told).toList())));
            change.size().computation().forEach(line -> why.add(labelled("Size", Words.sentence(line) + ".")));
        }
        why.add(labelled("Watch in the next run", change.way().watch()));
        why.add(labelled("Put it back if", change.way().putBack()));
        parts.add(section(h2(advice.drivingFirst() ? "If that does not help, change this" : "The next change"),
                each(why.stream()), div(each(ChangeFigures.of(id, change, advice, audience).stream()))
                        .withClass("drawings")));
    }

    /** A page has the arrow that a screen may lack. */
    private static String arrow(String move) {
        return move.replace("->", "\u2192");
    }

    private static DomContent labelled(String label, String text) {
        return text.isEmpty() ? span() : p(span(label + ": ").withClass("label"), span(text));
    }

    private void later(List<DomContent> parts) {
        List<RankedChange> rest = advice.changes().stream().skip(1).limit(LATER_CHANGES).toList();
        if (rest.isEmpty() || newcomer()) {
            return;
        }
        parts.add(section(h2("If that is not enough"), div(table(
                caption("One at a time, in this order").withClass("quiet"),
                thead(tr(heading("No."), heading("Change"), heading("Watch"), heading("Put it back if"))),
                tbody(each(rest, change -> tr(td(String.valueOf(change.rank())),
                        th(arrow(Words.sentence(Words.move(change)))).attr("scope", "row"), td(change.way().watch()),
                        td(change.way().putBack())))))).withClass("wide")));
    }

    private static DomContent heading(String text) {
        return th(text).attr("scope", "col");
    }

    private void driving(String heading, List<DomContent> parts) {
        if (advice.driving().isEmpty()) {
            return;
        }
        DrivingAdvice habit = advice.driving().get(0);
        Note.Practice practice = habit.note().practice().orElseThrow();
        parts.add(section(h2(heading), p(habit.note().statement()), labelled("Try", practice.tryNext()),
                labelled("Feel", practice.feel()), labelled("Car or you", practice.carOrDriver())));
    }

    private void withheld(List<DomContent> parts) {
        List<Withheld> held = advice.withheld();
        if (held.isEmpty() && advice.conflicts().isEmpty() || newcomer()) {
            return;
        }
        parts.add(section(h2("Not now"), ul(
                each(advice.conflicts(), conflict -> li(Words.sentence(conflict.statement()) + ".")),
                each(held.stream().limit(audience == Audience.ENGINEER ? held.size() : MOST_WITHHELD)
                        .map(change -> li(Words.sentence(Words.change(change.change())) + ": " + change.reason()))))));
    }

    /** Lines to be filled in by hand: a sheet is printed and taken to the car. */
    private void outcome(List<DomContent> parts) {
        List<DomContent> rows = new ArrayList<>();
        for (int i = 0; i < RUNS_TO_WRITE; i++) {
            rows.add(tr(td().withClass("write"), td(), td(), td()));
        }
        parts.add(section(h2("What came of it"), div(table(
                caption("To be filled in by hand after each run").withClass("quiet"),
                thead(tr(heading("Run"), heading("Changed"), heading("Best lap"), heading("Better, same or worse"))),
                tbody(each(rows.stream())))).withClass("wide")));
    }

    private void cautions(List<DomContent> parts) {
        if (!advice.cautions().isEmpty()) {
            parts.add(section(h2("Before you touch the car"), ul(each(advice.cautions(), caution -> li(
                    newcomer() && !caution.plain().isBlank() ? caution.plain() : caution.statement())))));
        }
    }

    private boolean newcomer() {
        return audience == Audience.NEWCOMER;
    }
}
