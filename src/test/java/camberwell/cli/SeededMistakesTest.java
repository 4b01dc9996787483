package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.language.RuleFileReader;
import camberwell.language.Stage;
import camberwell.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Lines that an author may well write: one fault, one message, and no suggestion turns the rule round")
class SeededMistakesTest {

    private static final Path MISTAKES = Path.of("src", "test", "resources", "rules", "mistakes.txt");
    /** A word of the one is never in the place of a word of the other. */
    private static final List<Set<String>> OPPOSITES = List.of(Set.of("not", "no", "nobody"), Set.of("above"),
            Set.of("below"), Set.of("more"), Set.of("less"), Set.of("inner"), Set.of("outer"), Set.of("hotter"),
            Set.of("cooler", "colder"), Set.of("front"), Set.of("rear"), Set.of("propose"), Set.of("oppose"),
            Set.of("withhold"), Set.of("find", "diagnose"), Set.of("higher"), Set.of("lower"), Set.of("softer"),
            Set.of("stiffer"), Set.of("toe-in"), Set.of("toe-out"), Set.of("least"), Set.of("most"), Set.of("longer"),
            Set.of("shorter"), Set.of("hot"), Set.of("cold"), Set.of("left"), Set.of("right"));

    @TempDir
    private Path directory;

    private static Map<String, List<String>> mistakes() throws IOException {
        Map<String, List<String>> mistakes = new LinkedHashMap<>();
        List<String> told = new ArrayList<>();
        for (String line : Files.readAllLines(MISTAKES)) {
            if (line.startsWith("    ")) {
                told.add(line.strip());
            } else if (!line.isBlank() && !line.startsWith("#")) {
                told = new ArrayList<>();
                mistakes.put(line, told);
            }
        }
        return mistakes;
    }

    private List<Problem> told(String line, Engine engine) {
        boolean condition = line.startsWith("W ");
        String rule = Bench.rule("A rule", condition ? line.substring(2) : "the driver reports bottoming",
                condition ? "propose front-bump softer with certainty 0.5" : line.substring(2));
        RuleFileReader reader = new RuleFileReader(engine.dictionary(), Engine.names(engine.notes()), "rule.dslr",
                Stage.CHANGES);
        reader.read(rule);
        return reader.problems();
    }

    @TestFactory
    Stream<DynamicTest> eachHasItsMessage() throws IOException {
        Engine engine = new Engine(Bench.home(), directory);
        return mistakes().entrySet().stream().map(mistake -> DynamicTest.dynamicTest(mistake.getKey(), () -> {
            List<Problem> problems = told(mistake.getKey(), engine);
            List<String> told = problems.stream().map(problem -> problem.message()
                    + problem.suggestion().map(other -> " -> " + other).orElse("")).toList();
            assertEquals(mistake.getValue().stream().sorted().toList(),
                    told.isEmpty() ? List.of("is read") : told.stream().sorted().toList());
            problems.forEach(problem -> problem.suggestion().ifPresent(meant ->
                    assertNotTurned(mistake.getKey().substring(2), meant)));
        }));
    }

    /** Whole sentences are compared; a suggestion of a single word takes the place of one that is in no list. */
    private static void assertNotTurned(String written, String meant) {
        if (meant.contains(" ")) {
            List<String> before = List.of(written.replace("doesn't", "not").split("[ ,]+"));
            List<String> after = List.of(meant.split("[ ,]+"));
            OPPOSITES.forEach(side -> assertTrue(after.stream().noneMatch(side::contains)
                    || before.stream().anyMatch(word -> side.stream().anyMatch(word::contains)), written + " -> " + meant));
        }
    }

    @Test
    @DisplayName("there are at least 150 of them")
    void many() throws IOException {
        assertTrue(mistakes().values().stream().filter(told -> !told.equals(List.of("is read"))).count() >= 150);
    }
}
