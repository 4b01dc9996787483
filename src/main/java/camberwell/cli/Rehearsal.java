package camberwell.cli;

import camberwell.engine.RuleBase;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * Runs what people run most, to nobody's eyes. The build starts it once so that the Java machine can archive the classes
 * that it loads; every later start then maps them instead of reading them from the jars. What the check of the built-in rules
 * finds is kept beside the jars.
 */
public final class Rehearsal {

    private Rehearsal() {
    }

    /** Run in the folder of the distribution. */
    public static void main(String[] arguments) throws IOException {
        Path home = Path.of("");
        Path scratch = Files.createTempDirectory("camberwell-rehearsal");
        try {
            PrintStream nobody = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
            Console console = new Console(nobody, nobody, new ByteArrayInputStream(new byte[0]), home, 80, true, false);
            for (List<String> line : lines(home)) {
                Main.run(console, new Engine(home, scratch), line.toArray(String[]::new));
            }
            RuleBase.rehearseCompilation(home);
            new Untouched(home).keep(Checked.builtIn(new Engine(home, scratch).builtIn()));
        } finally {
            remove(scratch);
        }
    }

    private static List<List<String>> lines(Path home) throws IOException {
        List<String> cases;
        try (Stream<Path> files = Files.list(home.resolve("demo-cases"))) {
            cases = files.map(Path::toString).filter(file -> file.endsWith(".yaml")).sorted().toList();
        }
        String first = cases.get(0);
        List<String> all = new ArrayList<>(List.of("advise"));
        all.addAll(cases);
        return List.of(List.of("--help"), List.of("advise", first), all, List.of("advise", "--format", "json", first),
                List.of("advise", "--for", "newcomer", first), List.of("read", first), List.of("rules", "check"),
                List.of("advise", "no-such-file.yaml"));
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
