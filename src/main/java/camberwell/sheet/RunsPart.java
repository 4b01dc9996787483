package camberwell.sheet;

import camberwell.advice.RankedChange;
import camberwell.history.Course;
import camberwell.history.History;
import camberwell.history.Judgement;
import camberwell.history.Plan;
import camberwell.report.PlanText;
import camberwell.report.RunsText;
import camberwell.run.Case;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import static j2html.TagCreator.br;
import static j2html.TagCreator.div;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h2;
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

/** What the book of runs adds to a sheet: the runs so far with what came of each change, and the plan for the next ones. */
final class RunsPart {

    private static final int MOST_RUNS = 8;

    private RunsPart() {
    }

    /** @param plan for the laps at hand; not shown where nothing is planned */
    static List<DomContent> of(String id, History history, Plan plan) {
        List<DomContent> parts = new ArrayList<>();
        List<Case> runs = history.runs().subList(Math.max(0, history.runs().size() - MOST_RUNS), history.runs().size());
        List<DomContent> rows = new ArrayList<>();
        for (Case run : runs) {
            Optional<Judgement> judged = run.driven().sheet().number()
                    .flatMap(number -> history.judgement(number, Optional.empty()));
            rows.add(tr(th(run.driven().sheet().number().map(String::valueOf).orElse("")).attr("scope", "row"),
                    td(judged.map(it -> it.changes().isEmpty() ? "nothing" : it.changes().stream().map(RunsText::made)
                            .collect(Collectors.joining("; ")).replace("->", "\u2192")).orElse("")),
                    td(run.reports().isEmpty() ? "nothing wrong" : run.reports().stream().map(report -> report.text())
                            .collect(Collectors.joining("; "))),
                    td(judged.filter(it -> !it.changes().isEmpty()).map(RunsPart::came).orElse(""))));
        }
        parts.add(section(h2("The runs so far"),
                div(each(LapFigure.of(id + "-laps", Course.of(history, MOST_RUNS)).stream())).withClass("drawings"),
                div(table(thead(tr(heading("Run"), heading("Changed before it"), heading("Felt"),
                        heading("What came of the change"))),
                        tbody(each(rows.stream())))).withClass("wide")));
        if (!plan.steps().isEmpty() || plan.stop().isPresent()) {
            parts.add(section(h2("The plan"), plan.stop().map(stop -> (DomContent) p("Before anything else: " + stop + "."))
                    .orElseGet(() -> span()), each(plan.optima(), best -> p(PlanText.best(best))),
                    ul(each(plan.steps(), step -> li(step(plan, step))))));
        }
        return parts;
    }

    private static String came(Judgement judgement) {
        List<String> came = new ArrayList<>();
        if (judgement.run().driven().judged().isEmpty()) {
            judgement.shifts().forEach(shift -> came.add(RunsText.shift(shift)));
        } else {
            // What the driver said came of it stands above what the grades would make of it.
            judgement.outcomes().stream().map(it -> (it.on().text().isEmpty() ? "" : it.on().text() + ": ") + it.outcome().told())
                    .distinct().forEach(came::add);
        }
        judgement.laps().filter(it -> it.difference().isPresent())
                .ifPresent(laps -> came.add("lap time " + RunsText.difference(laps)
                + ": " + laps.verdict().told()));
        return String.join("; ", came).replace("->", "\u2192");
    }

    private static DomContent step(Plan plan, Plan.Step step) {
        return span(span("Run " + step.run() + ": ").withClass("label"),
                span(PlanText.title(step).replace("->", "\u2192") + "."),
                step.change().map(RankedChange::way).map(way -> way.watch()).filter(watch -> !watch.isEmpty())
                        .map(watch -> (DomContent) span(br(), span("Watch: " + watch))).orElseGet(() -> span()),
                PlanText.clock(plan, step).map(clock -> (DomContent) span(br(),
                        span("Clock: " + clock.replace(" x ", " \u00d7 ") + ".")))
                        .orElseGet(() -> span()));
    }

    private static DomContent heading(String text) {
        return th(text).attr("scope", "col");
    }
}
