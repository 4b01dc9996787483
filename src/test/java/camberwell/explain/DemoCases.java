package camberwell.explain;

import camberwell.advice.Advisor;
import camberwell.advice.Weights;
import camberwell.car.Car;
import camberwell.engine.RuleBase;
import camberwell.input.CaseReader;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.knowledge.Terms;
import camberwell.language.Names;
import camberwell.run.Case;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The demo cases, and as many drawn from the rules, with all that is needed to reason about them; opened once. */
public final class DemoCases {

    public static final Path HOME = Path.of(System.getProperty("camberwell.home", ""));
    public static final Notes NOTES = reading(() -> Notes.in(List.of(HOME.resolve("knowledge-notes"))));
    public static final Terms TERMS = reading(() -> Terms.read(HOME.resolve("knowledge-notes/terms.yaml")));
    public static final RuleBase RULES =
            reading(() -> RuleBase.open(HOME, names(), Files.createTempDirectory("cache")));
    public static final Advisor ADVISOR =
            new Advisor(RULES, NOTES, reading(() -> Weights.read(HOME.resolve("rules/weights.yaml"))));
    public static final Explainer EXPLAINER = new Explainer(RULES, NOTES, ADVISOR);

    private DemoCases() {
    }

    private static Names names() {
        Set<String> findings = new TreeSet<>(NOTES.names(Note.Kind.READING));
        findings.addAll(NOTES.names(Note.Kind.CAUSE));
        return new Names(Set.copyOf(NOTES.names(Note.Kind.ADJUSTMENT)), findings,
                Set.copyOf(NOTES.names(Note.Kind.DRIVING)), Set.copyOf(NOTES.names(Note.Kind.CAUTION)));
    }

    /** Every demo case. */
    public static Stream<Case> demo() {
        return files(HOME.resolve("demo-cases")).stream().map(file -> new CaseReader().read(file).run());
    }

    /** Every demo case, reasoned about. */
    public static Stream<Reasoning> reasoned() {
        return demo().map(EXPLAINER::reason);
    }

    /** The cars of the demo paddock. */
    public static List<Car> cars() {
        return files(HOME.resolve("demo-cases/cars")).stream().map(new CaseReader()::readCar).toList();
    }

    /** Cases drawn from the rules, three on each topic, so that many rules fire in one or the other. */
    public static Stream<Reasoning> drawn() {
        List<Reasoning> drawn = new ArrayList<>();
        for (String topic : Quiz.topics(RULES)) {
            Quiz quiz = new Quiz(EXPLAINER, RULES, cars(), 1923);
            for (int i = 1; i <= 3; i++) {
                drawn.add(quiz.draw(topic + " " + i, Optional.of(topic)).orElseThrow());
            }
        }
        return drawn.stream();
    }

    private static List<Path> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Reading<T> {
        T read() throws IOException;
    }

    private static <T> T reading(Reading<T> reading) {
        try {
            return reading.read();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
