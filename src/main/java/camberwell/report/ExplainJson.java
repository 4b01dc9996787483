package camberwell.report;

import camberwell.advice.RankedChange;
import camberwell.explain.Comparison;
import camberwell.explain.Derived;
import camberwell.explain.How;
import camberwell.explain.Reasoning;
import camberwell.explain.Silent;
import camberwell.explain.Step;
import camberwell.explain.Sum;
import camberwell.explain.WhyNot;
import camberwell.knowledge.Notes;
import camberwell.language.Line;
import camberwell.language.RuleText;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Explanations as JSON: one object with {@code how}, {@code why-not} and {@code what-if}. */
public final class ExplainJson {

    private final Notes notes;

    /** In the words of those notes. */
    public ExplainJson(Notes notes) {
        this.notes = notes;
    }

    /** All explanations of one case: maps are objects of JSON, lists its arrays. */
    public Map<String, Object> write(Reasoning reasoning, List<How> hows, List<WhyNot> whys,
            Optional<Comparison> comparison) {
        Map<String, Object> root = object();
        root.put("case", reasoning.run().title());
        root.put("file", reasoning.run().source());
        root.put("how", hows.stream().map(how -> how(reasoning, how)).toList());
        root.put("why-not", whys.stream().map(ExplainJson::whyNot).toList());
        root.put("what-if", comparison.map(ExplainJson::compare).orElse(null));
        return root;
    }

    private Map<String, Object> how(Reasoning reasoning, How how) {
        Map<String, Object> json = object();
        json.put("change", how.change().id());
        json.put("rank", how.ranked().map(RankedChange::rank).orElse(null));
        json.put("withheld", how.withheld().map(withheld -> withheld.reason()).orElse(null));
        json.put("certainty", number(how.sum().certainty()));
        json.put("typed", how.typed().stream().map(premise -> {
            Map<String, Object> typed = object();
            typed.put("statement", premise.statement());
            typed.put("place", reasoning.place(premise).orElse(null));
            typed.put("certainty", number(premise.certainty()));
            return typed;
        }).toList());
        json.put("findings", how.findings().stream().map(derived -> derived(reasoning, derived)).toList());
        sum(json, how.sum());
        json.put("score", how.ranked().map(ExplainJson::score).orElse(null));
        json.put("note", how.note().name());
        json.put("rationale", how.note().ways().get(how.change().direction()).rationale());
        json.put("prose", how.note().prose().strip());
        json.put("sources", how.note().sources());
        return json;
    }

    private Map<String, Object> derived(Reasoning reasoning, Derived derived) {
        Map<String, Object> json = object();
        json.put("finding", derived.finding());
        json.put("statement", notes.get(derived.finding())
                .fitting(reasoning.advice().circumstances()).statement());
        json.put("certainty", number(derived.sum().certainty()));
        sum(json, derived.sum());
        return json;
    }

    private static Map<String, Object> score(RankedChange ranked) {
        Map<String, Object> json = object();
        json.put("total", number(ranked.score().total()));
        json.put("certainty", number(ranked.score().certainty()));
        json.put("relief", number(ranked.score().relief()));
        json.put("harm-to-complaints", number(ranked.score().harmToComplaints()));
        json.put("harm-to-what-is-fine", number(ranked.score().harmToFine()));
        json.put("effort", number(ranked.score().effort()));
        json.put("risk", number(ranked.score().risk()));
        return json;
    }

    private static Map<String, Object> whyNot(WhyNot why) {
        Map<String, Object> json = object();
        json.put("change", why.change().id());
        json.put("reasons", why.reasons());
        json.put("certainty", why.sum().steps().isEmpty() ? null : number(why.sum().certainty()));
        sum(json, why.sum());
        json.put("held-back-by", why.withholding().stream().map(ExplainJson::step).toList());
        json.put("silent", why.silent().stream().map(ExplainJson::silent).toList());
        json.put("out-of-use", why.gone().stream().map(gone -> {
            Map<String, Object> out = object();
            out.put("rule", gone.rule().name());
            out.put("id", gone.rule().standing().id().orElse(null));
            out.put("fate", gone.fate());
            return out;
        }).toList());
        return json;
    }

    private static Map<String, Object> silent(Silent silent) {
        Map<String, Object> json = rule(silent.rule(), silent.conclusion());
        json.put("conditions", silent.asked().stream().map(asked -> {
            Map<String, Object> condition = object();
            condition.put("holds", asked.holds());
            condition.put("sentences", asked.sentences().stream().map(sentence -> {
                Map<String, Object> line = object();
                line.put("sentence", sentence.line().text());
                line.put("holds", sentence.held());
                line.put("observed", sentence.observed().isEmpty() ? null : sentence.observed());
                return line;
            }).toList());
            asked.doubt().ifPresent(doubt -> {
                Map<String, Object> why = object();
                sum(why, doubt.sum());
                why.put("silent", doubt.silent().stream().map(ExplainJson::silent).toList());
                condition.put("not-found-because", why);
            });
            return condition;
        }).toList());
        return json;
    }

    private static Map<String, Object> compare(Comparison comparison) {
        Map<String, Object> json = object();
        json.put("changes", comparison.changes().stream().map(row -> {
            Map<String, Object> change = object();
            change.put("change", row.change().id());
            change.put("rank-before", row.before().map(RankedChange::rank).orElse(null));
            change.put("rank-after", row.after().map(RankedChange::rank).orElse(null));
            change.put("withheld-before", row.withheldBefore().map(withheld -> withheld.reason()).orElse(null));
            change.put("withheld-after", row.withheldAfter().map(withheld -> withheld.reason()).orElse(null));
            return change;
        }).toList());
        json.put("findings", comparison.findings().stream().map(row -> {
            Map<String, Object> finding = object();
            finding.put("finding", row.finding());
            finding.put("before", number(row.before()));
            finding.put("after", number(row.after()));
            return finding;
        }).toList());
        return json;
    }

    private static void sum(Map<String, Object> json, Sum sum) {
        json.put("rules", sum.steps().stream().map(ExplainJson::step).toList());
        sum.learned().ifPresent(learned -> {
            Map<String, Object> tried = object();
            tried.put("outcome", learned.outcome().id());
            tried.put("text", learned.text());
            tried.put("certainty-before", number(learned.before()));
            tried.put("evidence", number(learned.evidence()));
            tried.put("certainty-after", number(learned.after()));
            json.put("tried", tried);
        });
        json.put("combined", sum.joined().stream().map(ExplainText::joined).toList());
    }

    private static Map<String, Object> step(Step step) {
        Map<String, Object> json = rule(step.rule(), step.conclusion());
        json.put("conditions", step.grounds().stream().map(ground -> {
            Map<String, Object> condition = object();
            condition.put("sentence", ground.condition().head().text());
            condition.put("narrowed-by", ground.condition().narrowings().stream().map(Line::text).toList());
            condition.put("observed", ground.observed());
            return condition;
        }).toList());
        json.put("strength", number(step.strength()));
        json.put("least-premise", number(step.least()));
        json.put("certainty", number(step.certainty()));
        return json;
    }

    private static Map<String, Object> rule(RuleText rule, Line conclusion) {
        Map<String, Object> json = object();
        json.put("rule", rule.name());
        rule.standing().id().ifPresent(id -> json.put("id", id));
        rule.standing().since().ifPresent(since -> json.put("since", since));
        if (rule.standing().trial()) {
            json.put("status", "trial");
        }
        json.put("file", rule.file());
        json.put("line", rule.line());
        json.put("because", rule.because());
        json.put("concludes", conclusion.text());
        return json;
    }

    private static BigDecimal number(double number) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    private static Map<String, Object> object() {
        return new LinkedHashMap<>();
    }
}
