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
    /** Of which one in the place of the other turns a rule round. */
    private static final String[][] OPPOSITES = {{"above", "below"}, {"more", "less"}, {"inner", "outer"}, {"hotter", "cooler"},
        {"hotter", "colder"}, {"front", "rear"}, {"propose", "oppose"}, {"propose", "withhold"}, {"oppose", "withhold"},
        {"find", "speak against"}, {"higher", "lower"}, {"softer", "stiffer"}, {"toe-in", "toe-out"}, {"least", "most"},
        {"longer", "shorter"}, {"hot", "cold"}, {"left", "right"}, {"better", "worse"}, {"over", "below"}, {"under", "above"},
        {"by", "to"}};
    private static final Set<String> DENYING = Set.of("not", "no", "nobody", "never", "neither");

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
        RuleFileReader reader = new RuleFileReader(engine.dictionary(), Home.names(engine.notes()), "rule.dslr",
                Stage.CHANGES);
        reader.read(rule);
        return reader.problems();
    }

    private static List<String> texts(List<Problem> problems) {
        List<String> told = problems.stream().map(problem -> problem.message()
                + problem.suggestion().map(other -> " -> " + other).orElse("")).sorted().toList();
        return told.isEmpty() ? List.of("is read") : told;
    }

    /** Writes down what is told now, where the texts are to be approved anew. */
    private void bless(Engine engine) throws IOException {
        Map<String, List<String>> before = mistakes();
        List<String> lines = new ArrayList<>();
        for (String line : Files.readAllLines(MISTAKES)) {
            if (!line.startsWith("    ")) {
                lines.add(line);
                if (before.containsKey(line)) {
                    texts(told(line, engine)).forEach(told -> lines.add("    " + told));
                }
            }
        }
        Files.write(MISTAKES, lines);
    }

    @TestFactory
    Stream<DynamicTest> eachHasItsMessage() throws IOException {
        Engine engine = new Engine(Bench.home(), directory);
        if (Boolean.getBoolean("camberwell.bless")) {
            bless(engine);
        }
        return mistakes().entrySet().stream().map(mistake -> DynamicTest.dynamicTest(mistake.getKey(), () -> {
            List<Problem> problems = told(mistake.getKey(), engine);
            assertEquals(mistake.getValue().stream().sorted().toList(), texts(problems));
            problems.forEach(problem -> problem.suggestion().ifPresent(meant ->
                    assertNotTurned(mistake.getKey().substring(2), meant)));
        }));
    }

    /**
     * Whole sentences are compared; a suggestion of a single word takes the place of one that is in no list. What is turned twice
     * is as it was: cooler at the inner edge is hotter at the outer one.
     */
    private static void assertNotTurned(String written, String meant) {
        if (meant.contains(" ")) {
            List<String> before = words(written);
            List<String> after = words(meant);
            int turned = 0;
            for (String[] pair : OPPOSITES) {
                turned += turns(before, after, pair[0], pair[1]) || turns(before, after, pair[1], pair[0]) ? 1 : 0;
            }
            turned += turnedRound(before, after) ? 1 : 0;
            assertEquals(0, turned % 2, written + " -> " + meant);
            assertEquals(denies(before), denies(after), written + " -> " + meant);
        }
    }

    private static List<String> words(String line) {
        return List.of(line.replace("doesn't", "not").replace("unlikely", "not likely").replace("not slight", "clear")
                .replace("no difference", "same").replace("can not go", "is at its stop towards").split("[ ,]+"));
    }

    private static boolean turns(List<String> before, List<String> after, String from, String to) {
        return before.contains(from) && !before.contains(to) && after.contains(to) && !after.contains(from);
    }

    /** Whether two places stand in the other order. */
    private static boolean turnedRound(List<String> before, List<String> after) {
        return before.contains("front") && before.contains("rear") && after.contains("front") && after.contains("rear")
                && before.indexOf("front") < before.indexOf("rear") != after.indexOf("front") < after.indexOf("rear");
    }

    private static boolean denies(List<String> words) {
        return words.stream().anyMatch(DENYING::contains);
    }

    @Test
    @DisplayName("there are at least 150 of them")
    void many() throws IOException {
        assertTrue(mistakes().values().stream().filter(told -> !told.equals(List.of("is read"))).count() >= 150);
    }
}
