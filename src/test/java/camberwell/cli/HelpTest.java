package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

class HelpTest {

    private static final String NAME = "camberwell";
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    /** Every command and subcommand as it is typed. */
    static Stream<String> commands() {
        return below(all(), NAME);
    }

    private static Stream<String> below(CommandLine command, String name) {
        return Stream.concat(Stream.of(name), command.getSubcommands().entrySet().stream()
                .flatMap(each -> below(each.getValue(), name + " " + each.getKey())));
    }

    private static CommandLine all(String... arguments) {
        PrintStream nowhere = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        return Main.line(new Console(nowhere, nowhere, new ByteArrayInputStream(new byte[0]), Path.of(""), 80, false,
                false), InProcess.ENGINE, arguments);
    }

    private static CommandSpec spec(String command) {
        CommandLine found = all();
        for (String word : words(command)) {
            found = found.getSubcommands().get(word);
        }
        return found.getCommandSpec();
    }

    /** What stands after the program's name. */
    private static String[] words(String line) {
        List<String> words = new ArrayList<>();
        Matcher matcher = WORD.matcher(line.substring(line.indexOf(NAME) + NAME.length()));
        while (matcher.find() && !matcher.group().equals("<")) {
            words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
        }
        return words.toArray(String[]::new);
    }

    private static List<String> examples(CommandSpec spec) {
        String footer = String.join("\n", spec.usageMessage().footer()).replaceAll("\\\\\n *", "").replace("%%", "%");
        return footer.lines().filter(line -> line.startsWith("  ") && line.contains(NAME + " ")).toList();
    }

    @Test
    @DisplayName("On a narrow screen an example can still be copied")
    void narrow() {
        String help = Typed.on(40, "", "predict", "--help").out().replace(System.lineSeparator(), "\n");
        assertTrue(help.contains("  camberwell predict --car my-car.yaml \\\n      --change \"rear-wing more 2\" \\\n"
                + "      --speed \"170 km/h\" --phase exit \\\n      --svg steer.svg\n"), help);
    }

    @Test
    @DisplayName("The walk meets commands at all three depths")
    void walk() {
        List<String> known = commands().toList();
        assertTrue(known.containsAll(List.of(NAME, "camberwell advise", "camberwell rules audit",
                "camberwell alignment drag")), known.toString());
    }

    @ParameterizedTest
    @MethodSource("commands")
    @DisplayName("Every command says what it does, shows an example, and says what each option and word is")
    void saysWhatItDoes(String command) {
        CommandSpec spec = spec(command);
        assertTrue(Arrays.stream(spec.usageMessage().description()).anyMatch(line -> !line.isBlank()), command);
        assertTrue(Arrays.stream(spec.usageMessage().footer()).anyMatch(line -> line.startsWith("Example")), command);
        assertFalse(examples(spec).isEmpty(), command);
        assertAll(spec.options().stream().map(option -> () -> assertTrue(option.description().length > 0,
                command + " " + option.longestName())));
        assertAll(spec.positionalParameters().stream().map(word -> () -> assertTrue(word.description().length > 0,
                command + " " + word.paramLabel())));
    }

    @ParameterizedTest
    @MethodSource("commands")
    @DisplayName("An example can be typed as it stands: its options are there and its values can be read")
    void examplesCanBeTyped(String command) {
        for (String example : examples(spec(command))) {
            String[] words = words(example);
            assertTrue((NAME + " " + String.join(" ", words) + " ").startsWith(command + " "), example);
            assertDoesNotThrow(() -> all(words).parseArgs(words), example);
        }
    }

    @ParameterizedTest
    @MethodSource("commands")
    @DisplayName("--help fits the screen, its examples unbroken, and is no failure; --version tells the version")
    void fits(String command) {
        String[] help = words(command + " --help");
        Typed wide = Typed.on(80, "", help);
        assertEquals(ExitCode.DONE, wide.code(), wide.err());
        wide.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
        for (String line : spec(command).usageMessage().footer()) {
            if (line.startsWith("  ")) {
                assertTrue(wide.out().contains(String.format(line) + System.lineSeparator()), line);
            }
        }
        Typed.on(55, "", help).out().lines().forEach(line -> assertTrue(line.length() <= 55, line));
        // A word that is too long by itself stands on a line of its own.
        Typed.on(40, "", help).out().lines().forEach(line -> assertTrue(line.length() <= 40
                || line.strip().replaceAll("\"[^\"]*\"", "").replaceAll(" \\\\$", "").indexOf(' ') < 0, line));
        assertTrue(Typed.on(80, "", words(command + " --version")).out().startsWith("camberwell "), command);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "adivse my.yaml              | camberwell has no command \"adivse\"; did you mean advise?",
        "rules chek                  | camberwell rules has no command \"chek\"; did you mean check?",
        "alignment rol --toe 1deg    | camberwell alignment has no command \"rol\"; did you mean roll?",
        "advise --fromat json a.yaml | camberwell advise has no option --fromat; did you mean --format?",
        "advise --fromat=json a.yaml | camberwell advise has no option --fromat; did you mean --format?",
        "note rear-toe front-toe     | \"front-toe\" is one word too many for camberwell note",
        "advise --format jsn a.yaml  | \"jsn\" is not known here; did you mean json?",
        "read --format xml a.yaml    | \"xml\" is not known here; it is one of text, json, jsonl",
        "rules sentences --stage chnges | did you mean changes?",
        "advise --for newcommer a.yaml  | did you mean newcomer?",
        "debrief --for newcommer     | did you mean newcomer?",
        "advise --top -1 a.yaml      | \"-1\" will not do: it is a whole number from 1 to 1000",
        "quiz --count 0              | \"0\" will not do: it is a whole number from 1 to 1000",
        "pressure --altitude 500m --ambient 1bar --cold 1.7bar | --altitude=HEIGHT, --ambient=PRESSURE are mutually"})
    @DisplayName("What is typed wrongly is answered in one line with what was most likely meant, and exit code 2")
    void typedWrongly(String line, String said) {
        Typed typed = Typed.run(line);
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertTrue(typed.err().contains(said), typed.err());
        assertEquals(2, typed.err().lines().count(), typed.err());
        assertTrue(typed.err().contains("See: camberwell "), typed.err());
        assertEquals("", typed.out());
    }
}
