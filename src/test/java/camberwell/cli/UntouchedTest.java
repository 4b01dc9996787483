package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.problem.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Built-in rules that nobody has touched are not checked again")
class UntouchedTest {

    /** Figures that no check would find, so that what was kept can be told from what is found anew. */
    private static final Checked KEPT = new Checked(List.of(), 3, 2);

    @TempDir
    private Path home;
    private Untouched untouched;

    @BeforeEach
    void install() throws IOException {
        for (String folder : List.of("rules", "knowledge-notes")) {
            try (Stream<Path> files = Files.walk(Bench.home().resolve(folder))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Path copy = home.resolve(folder).resolve(Bench.home().resolve(folder).relativize(file).toString());
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy);
                }
            }
        }
        Files.createDirectories(home.resolve("lib"));
        untouched = new Untouched(home);
    }

    private Ran check() {
        return Ran.in(home, 100, "", new Engine(home, home.resolve("cache")), "rules", "check");
    }

    private static void append(Path file, String text) throws IOException {
        Files.writeString(file, text, StandardOpenOption.APPEND);
    }

    @Test
    @DisplayName("what was found when camberwell was built is told as long as every file is the one that was checked")
    void kept() throws IOException {
        assertEquals(Optional.empty(), untouched.found(), "nothing is known before anything was kept");
        untouched.keep(KEPT);
        assertEquals(Optional.of(KEPT), untouched.found());
        assertTrue(check().out().startsWith("3 rules and 2 notes checked: all is well"), check().out());
    }

    @Test
    @DisplayName("one line more in a rule file, one note more or a file by another name, and everything is checked anew")
    void touched() throws IOException {
        untouched.keep(KEPT);
        Path dictionary = home.resolve("rules/dictionary.dsl");
        byte[] before = Files.readAllBytes(dictionary);
        append(dictionary, "\n");
        assertEquals(Optional.empty(), untouched.found());
        Files.write(dictionary, before);
        assertEquals(Optional.of(KEPT), untouched.found(), "put back, it is the one that was checked");
        Path terms = home.resolve("knowledge-notes/terms.yaml");
        Files.move(terms, terms.resolveSibling("words.yaml"));
        assertEquals(Optional.empty(), untouched.found());
    }

    @Test
    @DisplayName("a rule that somebody breaks afterwards is found")
    void broken() throws IOException {
        untouched.keep(KEPT);
        try (Stream<Path> files = Files.walk(home.resolve("rules"))) {
            append(files.filter(file -> file.toString().endsWith(".dslr")).sorted().findFirst().orElseThrow(),
                    "\nrule \"Half a rule\"\nwhen\n    the moon is full\nthen\nend\n");
        }
        Ran ran = check();
        assertEquals(ExitCode.FOUND_WRONG, ran.code());
        assertTrue(ran.out().contains("the moon is full"), ran.out());
    }

    @Test
    @DisplayName("a check that found something is not kept, and what was kept badly is as if it were not there")
    void badlyKept() throws IOException {
        untouched.keep(new Checked(List.of(Problem.of("rules/a.dslr", "is wrong", Optional.empty())), 3, 2));
        assertEquals(Optional.empty(), untouched.found());
        for (String text : List.of("", "1 2 3", "x", "0-0 3 two", "\u0000")) {
            Files.writeString(home.resolve("lib/checked"), text);
            assertEquals(Optional.empty(), untouched.found(), text);
        }
    }
}
