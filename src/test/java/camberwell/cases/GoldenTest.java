package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Golden;
import camberwell.advice.Advice;
import camberwell.report.AdviceJson;
import camberwell.report.AdviceText;
import camberwell.report.Page;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The advice on every demo case, as a reader gets it.
 */
@DisplayName("The advice on every demo case reads as it was last approved")
class GoldenTest {

    private static final Path FOLDER = Path.of("src/test/resources/goldens");
    private static final int TOP = 5;

    static Stream<String> names() {
        return Paddock.cases().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    @DisplayName("as text, 80 characters wide")
    void text(String name) throws IOException {
        Page page = new Page(80, false);
        new AdviceText(Paddock.notes(), TOP, true).write(Paddock.advise(Paddock.run(name)), page);
        Golden.check(FOLDER.resolve(name + ".txt"), page.toString());
        assertTrue(page.toString().lines().allMatch(line -> line.length() <= 80), "no line runs off the screen");
    }

    @ParameterizedTest
    @MethodSource("names")
    @DisplayName("as JSON")
    void json(String name) throws IOException {
        Advice advice = Paddock.advise(Paddock.run(name));
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            DefaultIndenter lines = new DefaultIndenter("  ", "\n");
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines));
            new AdviceJson(Paddock.notes(), TOP).write(advice, json);
        }
        Golden.check(FOLDER.resolve(name + ".json"), text + "\n");
    }

    @Test
    @DisplayName("there is no golden that no case matches")
    void noneLeftOver() throws IOException {
        Set<String> expected = new TreeSet<>();
        names().forEach(name -> {
            expected.add(name + ".txt");
            expected.add(name + ".json");
        });
        if (!Golden.blessing()) {
            assertEquals(expected, files());
        }
    }

    @AfterAll
    static void sweep() throws IOException {
        if (Golden.blessing()) {
            for (String file : files()) {
                if (!Paddock.cases().containsKey(file.replaceFirst("\\.(txt|json)$", ""))) {
                    Files.delete(FOLDER.resolve(file));
                }
            }
        }
    }

    private static Set<String> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString()).collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
