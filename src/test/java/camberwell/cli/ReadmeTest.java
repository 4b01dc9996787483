package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Golden;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Runs the README's commands as they are written. A block that starts with a dollar sign shows a command and what it
 * prints; a line of three dots stands for the rest. Outputs are written
 * anew like all texts that were approved.
 */
@DisplayName("The README")
class ReadmeTest {

    private static final Path README = Path.of("README.md");

    @Test
    @DisplayName("opens with the job in one paragraph")
    void opening() throws IOException {
        List<String> lines = Files.readAllLines(README);
        assertEquals("# camberwell", lines.get(0));
        assertTrue(lines.get(2).startsWith("A driver climbs out"), lines.get(2));
    }

    @Test
    @DisplayName("shows what its commands really print")
    void outputs() throws IOException {
        List<String> lines = Files.readAllLines(README);
        List<String> written = new ArrayList<>();
        int shown = 0;
        for (int i = 0; i < lines.size(); i++) {
            written.add(lines.get(i));
            if (!lines.get(i).startsWith("$ camberwell ")) {
                continue;
            }
            shown++;
            List<String> expected = new ArrayList<>();
            int end = i + 1;
            while (!lines.get(end).equals("```")) {
                expected.add(lines.get(end++));
            }
            List<String> printed = run(lines.get(i).substring("$ camberwell ".length()));
            boolean whole = expected.isEmpty() || !expected.get(expected.size() - 1).equals("...");
            int count = whole ? printed.size() : Math.min(printed.size(), asked(expected));
            List<String> actual = new ArrayList<>(printed.subList(0, count));
            if (!whole) {
                actual.add("...");
            }
            if (!Golden.blessing()) {
                assertEquals(String.join("\n", expected), String.join("\n", actual), lines.get(i));
            }
            written.addAll(actual);
            i = end - 1;
        }
        assertFalse(shown == 0);
        if (Golden.blessing()) {
            Files.writeString(README, String.join("\n", written) + "\n");
        }
    }

    @Test
    @DisplayName("shows a case and a car that can be read as they stand")
    void examples(@TempDir Path folder) throws IOException {
        String readme = Files.readString(README);
        List<String> blocks = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL).matcher(readme).results()
                .map(block -> block.group(1)).toList();
        assertEquals(2, blocks.size());
        CaseFile file = new CaseReader().read("README.md", new ByteArrayInputStream(blocks.get(0)
                .getBytes(StandardCharsets.UTF_8)), Path.of("demo-cases"));
        assertEquals(1, file.run().reports().size());
        Path car = Files.writeString(folder.resolve("car.yaml"), blocks.get(1));
        assertEquals(2, new CaseReader().readCar(car).adjusters().size());
    }

    /** How many lines to show: as many as stand there, or the number after a question mark. */
    private static int asked(List<String> expected) {
        return expected.get(0).startsWith("?") ? Integer.parseInt(expected.get(0).substring(1)) : expected.size() - 1;
    }

    private static List<String> run(String command) {
        Ran ran = Ran.in(Path.of(""), 80, "", InProcess.ENGINE, words(command));
        assertEquals(0, ran.code(), command + "\n" + ran.err());
        return ran.out().stripTrailing().lines().toList();
    }

    /** Splits at spaces, but not inside double quotes. */
    private static String[] words(String command) {
        List<String> words = new ArrayList<>();
        for (String part : command.split(" (?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)")) {
            words.add(part.replace("\"", ""));
        }
        return words.toArray(String[]::new);
    }
}
