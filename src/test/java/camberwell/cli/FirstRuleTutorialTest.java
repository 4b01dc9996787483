package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The README's first rule")
class FirstRuleTutorialTest {

    private static final String HEADING = "## Write your first rule in five minutes";
    private static final Pattern FILE = Pattern.compile("`(my-rules/[^`]+\\.(dslr|md|yaml))`[^`]*\\z");

    @TempDir
    private Path directory;

    @Test
    @DisplayName("works as it is written: files are saved, commands run, and what it promises is what is answered")
    void worksAsWritten() throws IOException {
        Bench bench = new Bench(directory);
        List<String> commands = new ArrayList<>();
        List<String> files = new ArrayList<>();
        StringBuilder answers = new StringBuilder();
        StringBuilder prose = new StringBuilder();
        StringBuilder everySaid = new StringBuilder();
        StringBuilder block = null;
        for (String line : section()) {
            if (line.startsWith("```") && block == null) {
                block = new StringBuilder();
            } else if (line.startsWith("```")) {
                Matcher file = FILE.matcher(prose.toString().strip());
                if (block.toString().startsWith("camberwell ")) {
                    for (String command : block.toString().lines().toList()) {
                        Bench.Run run = bench.run(words(command));
                        assertEquals(0, run.code(), () -> command + "\n" + run.all());
                        commands.add(command);
                        answers.append(run.out().replaceAll("\\s+", " "));
                    }
                } else {
                    assertTrue(file.find(), () -> "no file is named before a block of text: " + prose);
                    bench.file(file.group(1), block.toString());
                    files.add(file.group(1));
                }
                prose.setLength(0);
                block = null;
            } else if (block != null) {
                block.append(line).append('\n');
            } else {
                prose.append(line).append('\n');
                everySaid.append(line).append('\n');
            }
        }
        assertEquals(List.of("my-rules/3-changes/kerbs.dslr", "my-rules/knowledge-notes/causes/tall-kerbs.md",
                "my-rules/demo-cases/kerbs.yaml", "my-rules/pack.yaml", "my-rules/symptoms.yaml",
                "my-rules/questions.yaml", "my-rules/thresholds.yaml", "my-rules/quiz-cases/kerbs.yaml"), files);
        assertEquals(18, commands.size(), commands::toString);
        for (String promise : List.of("1 rule and 1 note checked: all is well",
                "Front bump softer moved from number 2 to 1")) {
            assertTrue(everySaid.toString().replaceAll("\\s+", " ").contains("`" + promise + "`"), promise);
            assertTrue(answers.toString().contains(promise), () -> promise + " in\n" + answers);
        }
    }

    private static List<String> section() throws IOException {
        List<String> lines = Files.readAllLines(Bench.home().resolve("README.md"));
        int from = lines.indexOf(HEADING);
        assertTrue(from >= 0, "the README has the heading " + HEADING);
        List<String> rest = lines.subList(from + 1, lines.size());
        List<String> section = new ArrayList<>();
        boolean inBlock = false;
        for (String line : rest) {
            inBlock ^= line.startsWith("```");
            if (!inBlock && line.startsWith("## ")) {
                break;
            }
            section.add(line);
        }
        return section;
    }

    /** The words of a command line without its first; a quoted text is one word. */
    private static String[] words(String command) {
        List<String> words = new ArrayList<>();
        Matcher matcher = Pattern.compile("\"([^\"]*)\"|(\\S+)").matcher(command);
        while (matcher.find()) {
            words.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
        }
        return words.subList(1, words.size()).toArray(String[]::new);
    }
}
