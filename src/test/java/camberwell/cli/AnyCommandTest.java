package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;

/** What holds for every command, told from a folder of a driver's own. */
class AnyCommandTest {

    private static final Path HOME = Path.of(System.getProperty("camberwell.home", "."));
    private static final Engine ENGINE = InProcess.ENGINE;
    private static final String CAR = "cars/corvane-coupe.yaml";

    @TempDir
    private Path folder;

    @BeforeEach
    void fill() throws IOException {
        Files.createDirectories(folder.resolve("cars"));
        Files.copy(HOME.resolve("demo-cases").resolve(CAR), folder.resolve(CAR));
        Files.copy(HOME.resolve("demo-cases/pushes-in-snaps-out.yaml"), folder.resolve("case.yaml"));
        Files.writeString(folder.resolve("slip.yaml"), """
                title: A slip of the keyboard
                car: cars/corvane-coupe.yaml
                reports:
                  - {symptom: understeeer, phase: entry}
                """);
    }

    private Typed run(String typed, String... arguments) {
        Ran ran = Ran.in(folder, 80, typed, ENGINE, arguments);
        return new Typed(ran.code(), ran.out(), ran.err());
    }

    private Typed line(String line) {
        return run("", line.split(" +"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"advise case.yaml", "explain case.yaml", "read case.yaml"})
    @DisplayName("JSON names a case as it was typed, not by where the folder lies on this computer")
    void asTyped(String line) {
        Typed typed = line(line + " --format json");
        assertEquals("case.yaml", typed.json().path("file").asText());
        assertFalse(typed.out().contains(folder.toString()), typed.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"advise slip.yaml", "advise csae.yaml", "explain slip.yaml", "read slip.yaml",
        "pressure slip.yaml", "debrief --resume slip.yaml", "debrief --save no/where.yaml",
        "debrief --transcript no/where.md", "quiz --car csae.yaml", "rules check none", "rules try none"})
    @DisplayName("A message names files, and suggests them, as they were typed")
    void messagesAsTyped(String line) {
        Typed typed = line(line);
        assertEquals(ExitCode.WRONG_INPUT, typed.code(), typed.err());
        assertFalse(typed.err().isBlank());
        assertFalse(typed.err().contains(folder.toString()), typed.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"advise case.yaml", "explain case.yaml", "read case.yaml", "pressure case.yaml", "note",
        "note rear-toe", "terms camber", "rules sentences tread", "rules audit",
        "alignment toe --each 2mm --across 18in"})
    @DisplayName("jsonl is the same as json, on one line")
    void oneLine(String line) throws IOException {
        Typed one = line(line + " --format jsonl");
        assertEquals(1, one.out().lines().count(), one.out());
        assertEquals(line(line + " --format json").json(), new ObjectMapper().readTree(one.out()));
    }

    @ParameterizedTest
    @ValueSource(strings = {"advise case.yaml", "explain case.yaml", "read case.yaml", "pressure case.yaml", "note",
        "note rear-toe", "terms camber", "rules sentences tread", "rules audit", "rules list",
        "rules check --list", "rules coverage", "predict --car cars/corvane-coupe.yaml --change rear-wing_more",
        "predict --car cars/corvane-coupe.yaml --change rear-wing_more --manoeuvre corner",
        "alignment toe --each 2mm --across 18in"})
    @DisplayName("yaml says what json says, in the same order, to a reader of YAML that is not the writer's")
    void asYaml(String line) throws IOException {
        String[] words = Arrays.stream((line + " --format json").split(" ")).map(word -> word.replace('_', ' '))
                .toArray(String[]::new);
        Typed json = run("", words);
        words[words.length - 1] = "yaml";
        Typed yaml = run("", words);
        assertEquals(json.code(), yaml.code(), yaml.err());
        Object read = new Yaml().load(yaml.out());
        assertEquals(plain(new ObjectMapper().readValue(json.out(), Object.class)), plain(read));
        assertFalse(yaml.out().contains("\t"), yaml.out());
    }

    /** Keys in their order, and numbers by their value. */
    private static Object plain(Object tree) {
        if (tree instanceof Map<?, ?> map) {
            return map.entrySet().stream().map(entry -> List.of(entry.getKey(), plain(entry.getValue()))).toList();
        }
        if (tree instanceof List<?> list) {
            return list.stream().map(AnyCommandTest::plain).toList();
        }
        return tree instanceof Number number ? number.doubleValue() : tree == null ? "nothing" : tree;
    }

    @Test
    @DisplayName("several cases are as many YAML documents, and one that is wrong is missing among them")
    void severalDocuments() {
        for (String command : List.of("advise", "read")) {
            Typed typed = line(command + " --format yaml case.yaml slip.yaml case.yaml");
            assertEquals(ExitCode.WRONG_INPUT, typed.code());
            List<Object> documents = new ArrayList<>();
            new Yaml().loadAll(typed.out()).forEach(documents::add);
            assertEquals(2, documents.size(), typed.out());
            assertEquals(documents.get(0), documents.get(1));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"advise - case.yaml -", "read - -", "sheet - - -o page.html"})
    @DisplayName("standard input is read once, and is not missed the second time")
    void standardInputTwice(String line) {
        Typed typed = line(line);
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertEquals("-: standard input is one case; name it once", typed.err().strip());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "pressure --cold 0.3bar --hot 6bar --target 1.9bar | --hot 6 bar with --cold 0.3 bar: the gas would have to be twice",
        "rules watch --rounds -1 cars | it is a whole number from 0 to 1000",
        "runs show 0 --book cars | \"0\" is no number of a run",
        "advise --top 0 case.yaml | it is a whole number from 1 to 1000"})
    @DisplayName("a number that makes no sense is refused, not computed with")
    void senseless(String line, String says) {
        Typed typed = line(line);
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertTrue(typed.err().contains(says), typed.err());
    }

    @Test
    @DisplayName("a case without a name is none, and is not taken for what was said")
    void namelessCase() {
        Typed typed = run("", "advise", "case.yaml", "");
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertFalse(typed.err().isBlank());
        assertFalse(typed.err().contains("Exception"), typed.err());
    }

    @Test
    @DisplayName("a talk goes line by line, and a misspelt format is named")
    void formats() {
        assertEquals("--format yaml: a talk with a program goes line by line; give jsonl",
                line("debrief --car " + CAR + " --format yaml").err().strip());
        assertTrue(line("advise case.yaml --format yml").err().contains("did you mean yaml?"));
    }

    @Test
    @DisplayName("One bad case does not hide the good ones, and JSON stays JSON")
    void oneBadCase() {
        for (String command : new String[] {"advise", "read"}) {
            Typed typed = line(command + " --format json slip.yaml case.yaml");
            assertEquals(ExitCode.WRONG_INPUT, typed.code());
            assertTrue(typed.json().isArray(), typed.out());
            assertEquals(1, typed.json().size(), typed.out());
            assertTrue(typed.err().startsWith("slip.yaml:4:"), typed.err());
        }
    }

    @Test
    @DisplayName("A drawing is not written where a folder stands")
    void drawing() {
        Typed typed = run("", "predict", "--car", CAR, "--change", "rear-wing more", "--svg", "cars");
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertEquals("--svg cars: is a folder", typed.err().strip());
    }

    @ParameterizedTest
    @ValueSource(strings = {"advise case.yaml --rules cars", "explain case.yaml --rules cars", "quiz --rules cars",
        "debrief --rules cars", "rules check cars"})
    @DisplayName("A folder without rules and notes is most likely the wrong one, and is not taken in silence")
    void noRules(String line) {
        Typed typed = line(line);
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertTrue(typed.err().startsWith("cars: there are no rules and no notes in it"), typed.err());
    }

    @Test
    @DisplayName("A prompt word that is misspelt in a debrief is known again")
    void promptWord() {
        String talk = run("bak\nquit\n", "debrief", "--car", CAR).out();
        assertTrue(talk.contains("\"bak\" is no answer here; did you mean back?"), talk);
    }
}
