package camberwell.upkeep;

import camberwell.fact.Reported;
import camberwell.language.Condition;
import camberwell.language.Question;
import camberwell.language.RuleText;
import camberwell.pack.OwnSymptom;
import camberwell.pack.RulePack;
import camberwell.pack.RuleSet;
import camberwell.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words for complaints that a pack brings and no rule asks for: who complains of one gets no answer. */
public final class Unasked {

    private Unasked() {
    }

    /** A warning for each, at its line. */
    public static List<Problem> in(RulePack pack, RuleSet set) {
        List<Problem> warnings = new ArrayList<>();
        for (OwnSymptom symptom : pack.symptoms()) {
            if (set.rules().values().stream().noneMatch(rule -> asksFor(symptom.id(), rule))) {
                warnings.add(new Problem(pack.name() + "/" + RulePack.SYMPTOMS, line(pack, symptom.id()), 1, "no rule asks for \""
                        + symptom.id() + "\", so that a complaint of it gets no answer" + (symptom.helpedBy().isEmpty() ? ""
                        : ": what it is helped by only weighs what a rule proposes"), Optional.empty(), true, ""));
            }
        }
        return warnings;
    }

    private static boolean asksFor(String symptom, RuleText rule) {
        return rule.conditions().stream().map(Condition::question).anyMatch(question -> of(symptom, question));
    }

    private static boolean of(String symptom, Question question) {
        return question.isAbout(Reported.KIND) && !question.negative()
                && question.passing("symptom").filter(passing -> passing.words().contains(symptom)).isPresent();
    }

    private static int line(RulePack pack, String symptom) {
        List<String> lines = pack.files().get(RulePack.SYMPTOMS).lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(symptom + ":")) {
                return i + 1;
            }
        }
        return 1;
    }
}
