package camberwell.engine;

import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.CanonicalRules;
import camberwell.language.Names;
import camberwell.language.RuleFileReader;
import camberwell.language.RuleText;
import camberwell.pack.RuleSet;
import camberwell.pack.Source;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.drools.model.Model;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;


@DisplayName("What Drools compiled is held against what was read")
class CompiledNamesTest {

    private static final Path HOME = Path.of(System.getProperty("camberwell.home"));

    @TempDir
    private Path cache;

    private static Names names() throws IOException {
        Notes notes = Notes.in(List.of(HOME.resolve("knowledge-notes")));
        Set<String> findings = new TreeSet<>(notes.names(Note.Kind.READING));
        findings.addAll(notes.names(Note.Kind.CAUSE));
        return new Names(Set.copyOf(notes.names(Note.Kind.ADJUSTMENT)), findings,
                Set.copyOf(notes.names(Note.Kind.DRIVING)), Set.copyOf(notes.names(Note.Kind.CAUTION)));
    }

    @Test
    @DisplayName("a compiler that swallows or swaps a rule is found out")
    void namesMustBeTheSame() throws IOException {
        RuleSet set = RuleSet.read(HOME, names(), List.of());
        ModelLoader swapping = new ModelLoader(set.dictionary(), new RuleCache(cache)) {
            @Override
            List<Model> load(List<Source> sources) {
                List<Model> models = new ArrayList<>(super.load(sources));
                Collections.swap(models, 1, 2);
                return models;
            }
        };
        RuleProblemException thrown =
                assertThrows(RuleProblemException.class, () -> RuleBase.open(set, swapping).consult());
        assertEquals(set.sources().get(1).name() + ": Drools compiled other rules than were read", thrown.getMessage());
    }

    @Test
    @DisplayName("every built-in rule, written anew, is still the same rule")
    void canonicalRulesReadTheSame() throws IOException {
        RuleSet set = RuleSet.read(HOME, names(), List.of());
        for (RuleText rule : set.rules().values()) {
            // A way of a rule with "either" is named by its number, which nobody writes.
            String name = rule.name().replaceFirst(" \\[[0-9]+]$", "");
            String anew = CanonicalRules.of(List.of(rule)).replace(rule.name(), name).replaceFirst("when\n",
                    "@because(\"x\")\n@note(\"" + rule.note() + "\")\nwhen\n");
            RuleFileReader reader = new RuleFileReader(set.dictionary(), names(), "anew", rule.stage());
            List<RuleText> read = reader.read(anew).rules();
            assertEquals(List.of(), reader.problems());
            RuleText again = read.get(0);
            assertEquals(name, again.name());
            assertEquals(said(rule), said(again));
        }
    }

    private static List<String> said(RuleText rule) {
        List<String> said = new ArrayList<>();
        rule.conditions().forEach(condition -> {
            said.add(condition.head().sentence().template() + condition.head().words());
            condition.narrowings().forEach(line -> said.add(line.sentence().template() + line.words()));
        });
        rule.conclusions().forEach(line -> said.add(line.sentence().template() + line.words()));
        return said;
    }
}
