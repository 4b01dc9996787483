package camberwell.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import camberwell.problem.ProblemsException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever stands in a file, reading it ends with a case or with problems a person can act on. */
class AnyInputTest {

    private static final Path RESOURCES = Path.of("src/test/resources/input");
    private static final String[] PIECES = {"\n", "  ", "\t", ":", ": ", "{", "}", "[", "]", ",", "&a", "*a", "!!x",
        "#", "\"", "'", "|", ">", "- ", "? ", "---\n", "...\n", "%YAML 1.1\n", "<<: ", "~", "\uFEFF", "\u0085",
        "\uD83C\uDFCE", "9", "°C", "=", "@", "`", "\0"};

    @Property(tries = 1500)
    @Label("a car damaged anywhere, as any case, never ends in a stack trace")
    void damagedFiles(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        StringBuilder text = new StringBuilder("title: Damaged\ncar:\n");
        Files.readAllLines(Path.of("demo-cases/cars/larkspur-hatch.yaml"))
                .forEach(line -> text.append("  ").append(line).append('\n'));
        text.append("tyres: {front-left: {inner: 92 °C, hot-pressure: 1.9 bar}}\nreports:\n- {symptom: understeer}\n");
        for (int i = random.nextInt(4); i >= 0; i--) {
            int at = random.nextInt(text.length());
            switch (random.nextInt(3)) {
                case 0 -> text.insert(at, PIECES[random.nextInt(PIECES.length)]);
                case 1 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(30)));
                default -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(60))));
            }
        }
        try {
            read(text.toString().getBytes(StandardCharsets.UTF_8));
        } catch (ProblemsException e) {
            e.problems().forEach(problem -> {
                assertEquals("-", problem.file());
                assertFalse(problem.withExcerpt().isBlank());
                assertFalse(problem.text().contains("\n"), problem::text);
            });
        }
    }

    @ParameterizedTest
    @DisplayName("a mebibyte of the same few letters is refused without being unfolded")
    @ValueSource(strings = {"[", "{", "- ", "? ", "a: ", "!!a ", "&a ", "\"", "a\n", "- a\n", "#", " ", "{a: ",
        "a: {b: 1}\n", "- &a [*a]\n", "9,", "x"})
    void repeated(String piece) {
        byte[] bytes = piece.repeat((1 << 20) / piece.length()).getBytes(StandardCharsets.UTF_8);
        assertThrows(ProblemsException.class, () -> read(bytes));
    }

    private static CaseFile read(byte[] bytes) {
        return new CaseReader().read("-", new ByteArrayInputStream(bytes), RESOURCES);
    }
}
