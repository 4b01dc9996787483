package camberwell.input;

import camberwell.car.Car;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import camberwell.saying.Heard;
import camberwell.yaml.Document;
import camberwell.yaml.Problems;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Reads case and car files. Every method throws an {@link ProblemsException} with all that is wrong with the file, and
 * with the files that it points to, when it cannot be used. A car's file is read once in the life of a reader. Safe for
 * use by several threads.
 */
public final class CaseReader {

    /** Cars that were read without a word against them: many cases share a few cars. */
    private final Map<Path, Car> cars = new ConcurrentHashMap<>();

    private final Function<String, Heard> ear;
    /** The follow-up questions that are asked, each with its answers. */
    private final Map<String, Set<String>> questions;
    /** Where it reads; anywhere if empty. */
    private final List<Path> bounds;

    /** One that leaves a driver's own words alone: for whoever wants the car or the tyres only. */
    public CaseReader() {
        this(null, Map.of());
    }

    /**
     * @param ear what understands a driver's own words
     * @param questions the follow-up questions that are asked, each with its answers
     */
    public CaseReader(Function<String, Heard> ear, Map<String, Set<String>> questions) {
        this(ear, questions, List.of());
    }

    private CaseReader(Function<String, Heard> ear, Map<String, Set<String>> questions, List<Path> bounds) {
        this.ear = ear;
        this.questions = questions;
        this.bounds = List.copyOf(bounds);
    }

    /**
     * One for the cases of a stranger: it reads what lies in {@code folders}, and says of nothing else what is in it or
     * whether it is there.
     */
    public CaseReader within(List<Path> folders) {
        return new CaseReader(ear, questions, folders);
    }

    /** Reads a case and the car that it points to. */
    public CaseFile read(Path file) {
        return read(file, List.of());
    }

    /** Reads a case with some of its values replaced; problems with those are told at their place. */
    public CaseFile read(Path file, List<Substitution> substitutions) {
        Problems problems = new Problems();
        if (!Bounds.hold(bounds, file)) {
            throw new ProblemsException(Problem.of(file.toString(), Bounds.OUTSIDE, Optional.empty()));
        }
        Optional<Document> document = Document.load(file, problems);
        return finish(document, folderOf(file), substitutions, problems);
    }

    /**
     * Reads a case from a stream, to its end.
     *
     * @param name how problems name it, {@code -} for standard input
     * @param baseDir the folder that its paths start from
     */
    public CaseFile read(String name, InputStream in, Path baseDir) {
        return read(name, in, baseDir, List.of());
    }

    /** Reads a case from a stream with some of its values replaced. */
    public CaseFile read(String name, InputStream in, Path baseDir, List<Substitution> substitutions) {
        Problems problems = new Problems();
        try {
            return finish(Document.load(name, in, problems), baseDir, substitutions, problems);
        } catch (IOException e) {
            throw new ProblemsException(Problem.unreadable(name, e));
        }
    }

    /** Reads a car's file. */
    public Car readCar(Path file) {
        Problems problems = new Problems();
        Optional<Car> car = Document.load(file, problems).flatMap(it -> CarReader.read(it.root(), it));
        problems.warningsOrFail();
        return car.orElseThrow();
    }

    /** A date as a case has it, {@code 2026-05-03} or {@code 2026-05-03T10:20}; empty when it is none. */
    public static Optional<LocalDateTime> date(String text) {
        return DrivenReader.date(text);
    }

    private CaseFile finish(Optional<Document> document, Path folder, List<Substitution> substitutions,
            Problems problems) {
        Optional<Case> run = document.isEmpty() ? Optional.empty()
                : new OneCase(document.get(), folder, substitutions, problems, cars, ear, questions, bounds).read(true);
        List<Problem> warnings = problems.warningsOrFail();
        return new CaseFile(run.orElseThrow(), warnings);
    }

    static Path folderOf(Path file) {
        return Optional.ofNullable(file.getParent()).orElse(Path.of(""));
    }
}
