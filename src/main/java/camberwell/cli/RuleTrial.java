package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.advice.AdviceComparison;
import camberwell.advice.RankedChange;
import camberwell.engine.Firing;
import camberwell.fact.Premise;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.language.RuleText;
import camberwell.pack.RulePack;
import camberwell.report.Page;
import camberwell.report.Words;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Rule folders tried on cases: what fires, and the advice without and with them. */
final class RuleTrial {

    private final Engine without;
    private final Engine with;
    /** So many rules that did not fire in a case are named; more say nothing about it. */
    private static final int MOST_SILENT = 8;

    private final String name;
    private final Set<String> own;

    RuleTrial(List<RulePack> packs, Engine engine) {
        without = engine;
        with = engine.withRules(packs);
        name = packs.stream().map(RulePack::name).collect(Collectors.joining(", "));
        own = with.rules().rules().values().stream()
                .filter(rule -> packs.stream().anyMatch(pack -> rule.file().startsWith(pack.name() + "/")))
                .map(RuleText::name).collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * One case.
     *
     * @param fired the rules that fired, in order, each with what it fired on
     * @param before the advice without the folders
     * @param after the advice with them
     */
    record Tried(Map<String, Set<String>> fired, Advice before, Advice after) {
    }

    /** What reads cases with the words of the folders. */
    CaseReader cases() {
        return with.cases();
    }

    List<Tried> of(List<CaseFile> cases) {
        List<Tried> tried = new ArrayList<>();
        for (CaseFile file : cases) {
            Map<String, Set<String>> fired = new LinkedHashMap<>();
            Advice after = with.advisor().advise(file.run(), firing -> note(firing, fired));
            tried.add(new Tried(fired, without.advisor().advise(file.run()), after));
        }
        return tried;
    }

    private static void note(Firing firing, Map<String, Set<String>> fired) {
        fired.computeIfAbsent(firing.rule(), key -> new LinkedHashSet<>()).add(firing.premises().isEmpty()
                ? "something that was not said or read"
                : firing.premises().stream().map(Premise::statement).distinct().collect(Collectors.joining("; ")));
    }

    private List<String> silent(Tried tried) {
        return own.stream().filter(rule -> !tried.fired().containsKey(rule)).toList();
    }

    /** Names the folders' rules that fired in none of several cases: each is told of its own case already. */
    void never(List<Tried> tried, Page page) {
        List<String> nowhere = own.stream().filter(rule -> tried.stream().noneMatch(one -> one.fired().containsKey(rule)))
                .toList();
        if (tried.size() > 1 && !nowhere.isEmpty()) {
            page.heading("Rules of " + name + " that fired in no case");
            nowhere.forEach(rule -> page.point(0, rule));
        }
    }

    void write(Tried tried, Page page) {
        page.heading(tried.after().run().title());
        page.paragraph(0, "Rules that fired, in order; those of " + name + " are marked with *:");
        int number = 0;
        for (Map.Entry<String, Set<String>> rule : tried.fired().entrySet()) {
            number++;
            page.paragraph(2, (own.contains(rule.getKey()) ? "* " : "") + number + ". " + rule.getKey());
            rule.getValue().forEach(premises -> page.paragraph(6, "on " + premises));
        }
        List<String> silent = silent(tried);
        if (silent.size() <= MOST_SILENT) {
            silent.forEach(rule -> page.paragraph(2, "* did not fire: " + rule));
        } else {
            page.paragraph(2, "* did not fire: " + silent.size() + " others of " + name);
        }
        changes("Without " + name, tried.before(), page);
        changes("With " + name, tried.after(), page);
        page.heading("What " + name + " changes");
        ComparisonText.write(AdviceComparison.of(tried.before(), tried.after()), with.notes(), page);
    }

    private static void changes(String heading, Advice advice, Page page) {
        page.heading(heading);
        if (advice.changes().isEmpty()) {
            page.paragraph(2, "no change to the car");
        }
        advice.changes().forEach(change -> page.paragraph(2, change.rank() + ". " + Words.change(change.change()) + ", "
                + Words.size(change) + " (score " + Words.two(change.score().total()) + ", certainty "
                + Words.two(change.score().certainty()) + ")"));
    }

    void write(Tried tried, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("case", tried.after().run().title());
        json.writeArrayFieldStart("fired");
        for (Map.Entry<String, Set<String>> rule : tried.fired().entrySet()) {
            json.writeStartObject();
            json.writeStringField("rule", rule.getKey());
            json.writeBooleanField("own", own.contains(rule.getKey()));
            json.writeArrayFieldStart("on");
            for (String premises : rule.getValue()) {
                json.writeString(premises);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("did-not-fire");
        for (String rule : silent(tried)) {
            json.writeString(rule);
        }
        json.writeEndArray();
        changes(json, "without", tried.before());
        changes(json, "with", tried.after());
        json.writeObjectFieldStart("difference");
        ComparisonText.write(AdviceComparison.of(tried.before(), tried.after()), json);
        json.writeEndObject();
        json.writeEndObject();
    }

    private static void changes(JsonGenerator json, String field, Advice advice) throws IOException {
        json.writeArrayFieldStart(field);
        for (RankedChange change : advice.changes()) {
            json.writeStartObject();
            json.writeNumberField("rank", change.rank());
            json.writeStringField("adjuster", change.change().adjuster().id());
            json.writeStringField("direction", change.change().direction().id());
            json.writeStringField("size", Words.size(change));
            json.writeNumberField("certainty", Math.rint(change.score().certainty() * 1000) / 1000);
            json.writeNumberField("score", Math.rint(change.score().total() * 1000) / 1000);
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
