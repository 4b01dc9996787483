package camberwell.cli;

import camberwell.advice.Weights;
import camberwell.car.Car;
import camberwell.channel.Limits;
import camberwell.engine.RuleProblemException;
import camberwell.input.CaseReader;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.knowledge.Terms;
import camberwell.language.Dictionary;
import camberwell.language.Names;
import camberwell.problem.Problem;
import camberwell.saying.Sayings;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * What lies beside the program, and where.
 *
 * @param folder the one that has {@code rules} and {@code knowledge-notes}
 */
record Home(Path folder) {

    private static final List<String> FOLDERS = List.of("rules", "knowledge-notes");

    /** Where the launcher says, or where the jar lies. */
    static Path find() {
        String said = System.getProperty("camberwell.home", "");
        if (!said.isEmpty()) {
            // The launcher says it as seen from where it went itself; the person is elsewhere.
            return Path.of(said).toAbsolutePath().normalize();
        }
        try {
            Path place = Path.of(Home.class.getProtectionDomain().getCodeSource().getLocation().toURI());
            for (Path folder = place; folder != null; folder = folder.getParent()) {
                if (Files.isRegularFile(folder.resolve("rules").resolve("dictionary.dsl"))) {
                    return folder;
                }
            }
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
        throw new IllegalStateException("camberwell's own rules are not where they were installed");
    }

    private Path rules(String name) {
        return folder.resolve("rules").resolve(name);
    }

    private Path notes(String name) {
        return folder.resolve("knowledge-notes").resolve(name);
    }

    Dictionary dictionary() {
        return reading(() -> Dictionary.read(rules("dictionary.dsl")));
    }

    Weights weights() {
        return reading(() -> Weights.read(rules("weights.yaml")));
    }

    /** The file that shows the thresholds. */
    Path thresholds() {
        return rules("thresholds.yaml");
    }

    Limits limits() {
        return Limits.read(rules("observation.yaml"));
    }

    Notes notes() {
        return reading(() -> Notes.in(List.of(folder.resolve("knowledge-notes"))));
    }

    Terms terms() {
        return reading(() -> Terms.read(notes("terms.yaml")));
    }

    /** The phrases of drivers, by the file that has them; others may be added. */
    Map<String, String> sayings() {
        Map<String, String> texts = new LinkedHashMap<>();
        Path file = notes(Sayings.FILE);
        texts.put(file.toString(), reading(() -> Files.readString(file)));
        return texts;
    }

    /** The cars that come with camberwell, by the names of their files. */
    List<Car> demoCars() {
        return cars("demo-cases/cars");
    }

    /** The cars that claims are held against: the demo's, and those of handbooks. */
    List<Car> referenceCars() {
        return Stream.of(demoCars(), cars("rules/reference-cars")).flatMap(List::stream).toList();
    }

    /** The kinds of cars, for whoever has no car's file. */
    List<Car> carClasses() {
        return cars("rules/car-classes");
    }

    private List<Car> cars(String below) {
        return reading(() -> {
            try (Stream<Path> files = Files.list(folder.resolve(below))) {
                return files.filter(file -> file.toString().endsWith(".yaml")).sorted().map(new CaseReader()::readCar)
                        .toList();
            }
        });
    }

    /** A problem of one of these files by its whole name, where it goes by one that leads there from this folder alone. */
    Problem placed(Problem problem, Console console) {
        return problem.inFile(placed(problem.file(), console));
    }

    private String placed(String file, Console console) {
        boolean own = FOLDERS.stream().anyMatch(below -> file.startsWith(below + "/"))
                && !Files.exists(console.path(file)) && Files.exists(folder.resolve(file));
        return own ? folder.resolve(file).toString() : file;
    }

    /** The same of a message that begins with the name of a file and a colon. */
    String placed(RuleProblemException wrong, Console console) {
        String message = wrong.getMessage();
        int end = message.indexOf(':');
        return end < 0 ? message : placed(message.substring(0, end), console) + message.substring(end);
    }

    /** The names that rules may use: those of the notes. */
    static Names names(Notes notes) {
        Set<String> findings = new TreeSet<>(notes.names(Note.Kind.READING));
        findings.addAll(notes.names(Note.Kind.CAUSE));
        return new Names(Set.copyOf(notes.names(Note.Kind.ADJUSTMENT)), findings,
                Set.copyOf(notes.names(Note.Kind.DRIVING)), Set.copyOf(notes.names(Note.Kind.CAUTION)));
    }

    /** Something that reads files. */
    interface Reading<T> {
        T read() throws IOException;
    }

    /** What {@code reading} reads; what lies beside the program is taken to be there. */
    static <T> T reading(Reading<T> reading) {
        try {
            return reading.read();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
