package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.fact.Caution;
import camberwell.fact.Certainty;
import camberwell.fact.Conclusion;
import camberwell.fact.Driving;
import camberwell.fact.Evidence;
import camberwell.fact.Preference;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import camberwell.knowledge.Note;
import camberwell.language.RuleText;
import camberwell.run.Case;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Rules, reasons, notes and demo cases hold together")
class WholeRuleBaseTest {

    @Test
    @DisplayName("every rule fires in some demo case, and draws each of its conclusions there")
    void everyRuleFires() {
        Map<String, Set<String>> drawn = new TreeMap<>();
        for (Case run : Paddock.cases().values()) {
            for (Conclusion conclusion : Paddock.all(Paddock.conclude(Paddock.premises(run)))) {
                drawn.computeIfAbsent(conclusion.rule(), rule -> new TreeSet<>()).add(conclusion.getClass().getName());
            }
        }
        Set<String> silent = new TreeSet<>(Paddock.rules().rules().keySet());
        silent.removeAll(drawn.keySet());
        assertTrue(silent.isEmpty(), () -> silent.size() + " rules fire in no demo case:\n" + String.join("\n", silent));
    }

    @Test
    @DisplayName("every rule has a note, and every note a source or the words \"common practice, no source\"")
    void everyRuleHasASource() {
        assertEquals(List.of(), Paddock.notes().problems());
        List<String> offenders = new ArrayList<>();
        for (RuleText rule : Paddock.rules().rules().values()) {
            Note note = Paddock.notes().find(rule.note()).orElse(null);
            if (note == null || note.sources().isEmpty()) {
                offenders.add(rule.name());
            }
            if (rule.because().isBlank()) {
                offenders.add(rule.name() + " has no reason");
            }
        }
        assertEquals(List.of(), offenders);
    }

    @Test
    @DisplayName("every note is used by some rule, or is one of the cautions that always hold")
    void everyNoteIsUsed() {
        Set<String> unused = new TreeSet<>(Paddock.notes().names());
        for (RuleText rule : Paddock.rules().rules().values()) {
            unused.remove(rule.note());
            rule.statements().forEach(statement -> unused.removeAll(statement.notes()));
        }
        Paddock.advise(Paddock.run("pushes-in-snaps-out")).cautions().forEach(note -> unused.remove(note.name()));
        assertEquals(Set.of(), unused);
    }

    @Test
    @DisplayName("every rule has an id of its own that stays when its title changes, and says since when it is there")
    void everyRuleHasAnId() {
        Map<String, Integer> last = new TreeMap<>();
        List<String> without = new ArrayList<>();
        for (RuleText rule : Paddock.rules().rules().values()) {
            rule.standing().id().ifPresentOrElse(id -> last.merge(id.substring(0, id.indexOf('-')),
                    Integer.parseInt(id.substring(id.indexOf('-') + 1).replaceAll("[FR]?[a-l]?$", "")), Math::max),
                    () -> without.add(rule.file() + ":" + rule.line() + " has no id"));
            if (rule.standing().since().isEmpty()) {
                without.add(rule.file() + ":" + rule.line() + " has no @since");
            }
        }
        assertEquals(List.of(), without, "the last id of each topic: " + last);
    }

    @Test
    @DisplayName("no two rules of one stage say the same")
    void nothingIsSaidTwice() {
        Map<String, List<String>> said = new TreeMap<>();
        for (RuleText rule : Paddock.rules().rules().values()) {
            String conditions = rule.conditions().stream().map(it -> it.text()).sorted().toList().toString();
            String conclusions = rule.conclusions().stream().map(it -> it.text().replaceAll("\\d\\.\\d+", "")).sorted()
                    .toList().toString();
            said.computeIfAbsent(conditions + conclusions, key -> new ArrayList<>()).add(rule.name());
        }
        assertEquals(List.of(), said.values().stream().filter(names -> names.size() > 1).toList());
    }

    @Test
    @DisplayName("drop any one rule, and some case concludes something else: no rule only repeats what others say")
    void everyRuleIsMissed() {
        Set<String> idle = new TreeSet<>(Paddock.rules().rules().keySet());
        for (Case run : Paddock.cases().values()) {
            List<Conclusion> all = Paddock.all(Paddock.conclude(Paddock.premises(run)));
            Map<String, Double> together = essence(all);
            all.stream().map(Conclusion::rule).distinct().filter(idle::contains).toList().forEach(rule -> {
                if (!together.equals(essence(all.stream().filter(it -> !it.rule().equals(rule)).toList()))) {
                    idle.remove(rule);
                }
            });
        }
        assertTrue(idle.isEmpty(), () -> idle.size() + " rules are missed by no case:\n" + String.join("\n", idle));
    }

    /** What is concluded and how certain it is, without the reasons. */
    private static Map<String, Double> essence(List<Conclusion> conclusions) {
        Map<String, List<Conclusion>> byTopic = new TreeMap<>();
        conclusions.forEach(conclusion -> byTopic.computeIfAbsent(topic(conclusion), key -> new ArrayList<>())
                .add(conclusion));
        Map<String, Double> essence = new TreeMap<>();
        byTopic.forEach((topic, about) -> essence.put(topic, topic.startsWith("caution") || topic.startsWith("withhold")
                ? 1 : Certainty.ofRules(about)));
        return essence;
    }

    private static String topic(Conclusion conclusion) {
        if (conclusion instanceof Evidence evidence) {
            return "finding " + evidence.finding();
        } else if (conclusion instanceof Proposal proposal) {
            return "change " + proposal.change();
        } else if (conclusion instanceof Withholding withholding) {
            return "withhold " + withholding.change();
        } else if (conclusion instanceof Driving driving) {
            return "driving " + driving.note();
        } else if (conclusion instanceof Preference preference) {
            return "first " + preference.change();
        }
        return "caution " + ((Caution) conclusion).note();
    }

    @Test
    @DisplayName("there are more than 150 rules, and each stage has its share")
    void size() {
        assertTrue(Paddock.rules().rules().size() >= 150);
        assertTrue(Paddock.cases().size() >= 34);
    }
}
