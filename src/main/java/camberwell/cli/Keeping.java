package camberwell.cli;

import camberwell.debrief.Debrief;
import camberwell.debrief.Talk;
import camberwell.history.Book;
import camberwell.history.Changes;
import camberwell.input.CaseWriter;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.vocabulary.Audience;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Keeps what is said in a debrief: in the file that was named, or in one that is made up when the talk breaks off. */
final class Keeping {

    private static final int TRANSCRIPT_WIDTH = 80;
    private static final String ENDING = ".yaml";

    private final Console console;
    private Optional<Book> book;
    private String file;
    /** Whether the talk is kept in another file, as the one that was asked for could not be written. */
    private boolean elsewhere;
    /** What the file held when this talk last saw it; null where it was not there. */
    private byte[] known;
    private boolean kept;
    private Book.Page page;

    /**
     * @param file where the case is written; null for nowhere
     * @param book where it is entered as the next run, if it is
     */
    Keeping(Console console, String file, Optional<Book> book) {
        this.console = console;
        this.file = file;
        this.book = book;
        this.known = file == null ? null : content();
    }

    /** The run of the book that it was entered as, if it was. */
    Optional<Integer> number() {
        return Optional.ofNullable(page).map(Book.Page::number);
    }

    private void enter(Case run) {
        if (page == null) {
            Driven driven = run.driven();
            page = book.orElseThrow().add(run.withDriven(driven.on(driven.sheet().begun(LocalDateTime.now()
                    .truncatedTo(ChronoUnit.MINUTES)))));
            file = page.file().toString();
        } else {
            Driven.Sheet then = book.orElseThrow().read(page).driven().sheet();
            book.orElseThrow().replace(page, run.withDriven(run.driven().on(then)));
        }
    }

    /** The file that the case is written to, if there is one. */
    Optional<String> file() {
        return Optional.ofNullable(file);
    }

    /** Whether all that was last to be kept was written. */
    boolean kept() {
        return kept;
    }

    /** Whether what was to be kept in a file or book that was named is not there. */
    boolean missed() {
        return elsewhere;
    }

    /** Writes what was written once more if it is gone by now. */
    void settle(Case run) {
        if (kept && !Files.exists(console.path(file))) {
            keep(run);
        }
    }

    /** Puts a case into words that nobody reads, so that the first that is kept is not the first that is written. */
    static void rehearse(Case run, Console console) {
        new CaseWriter().text(run, console.path("case" + ENDING));
    }

    /**
     * Writes the case, if a file or a book was named. Where it cannot be written this is said, and the talk is kept in a file of
     * its own from then on, so that nothing is lost; what cannot be written there either is tried again at the next answer.
     */
    void keep(Case run) {
        if (file == null && book.isEmpty()) {
            return;
        }
        if (written(run) || elsewhere) {
            return;
        }
        elsewhere = true;
        book = Optional.empty();
        page = null;
        file = free(made(), ENDING);
        known = null;
        if (written(run)) {
            console.err().println("This talk is kept in " + file);
        }
    }

    /** Writes the case; false, having said why, where it cannot be written. */
    private boolean written(Case run) {
        try {
            if (book.isPresent()) {
                enter(run.withSetup(Changes.setup(run.car())));
            } else {
                giveWay();
                new CaseWriter().write(run, console.path(file));
                known = content();
            }
            kept = true;
        } catch (ProblemsException e) {
            kept = false;
            tell(e);
        }
        return kept;
    }

    private void tell(ProblemsException e) {
        e.problems().forEach(problem -> console.err().println(console.shown(problem.text())));
    }

    /** Takes another name where another talk or program has written to the file meanwhile: neither is lost. */
    private void giveWay() {
        byte[] now = content();
        if (now != null && !Arrays.equals(now, known)) {
            String other = free(file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file, ENDING);
            console.err().println(file + ": somebody else has written to it meanwhile; this talk is kept in " + other);
            file = other;
        }
    }

    private byte[] content() {
        try {
            Path path = console.path(file);
            return Files.isRegularFile(path) ? Files.readAllBytes(path) : null;
        } catch (IOException e) {
            // What cannot be read cannot be written either, which is told then.
            return null;
        }
    }

    /** The first name that no file has. */
    private String free(String stem, String ending) {
        String name = stem + ending;
        for (int i = 2; Files.exists(console.path(name)); i++) {
            name = stem + "-" + i + ending;
        }
        return name;
    }

    /** What a file is called that nobody named, without its ending. */
    private static String made() {
        return "debrief-" + LocalDateTime.now().format(DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmm"));
    }

    /** Writes the case to another file from now on; empty, or why not. */
    Optional<String> moveTo(String other, Case run) {
        Path path = console.path(other);
        Optional<String> wrong = NewFiles.obstacle(path.toAbsolutePath(), console)
                .or(() -> Files.exists(path) && !other.equals(file) ? Optional.of("stands there already; take another name")
                        : Optional.empty());
        if (wrong.isPresent()) {
            return wrong;
        }
        if (book.isPresent()) {
            // The run stays in its book; this is a copy.
            return copied(run, path) ? Optional.empty() : Optional.of("not saved");
        }
        String before = file;
        known = other.equals(file) ? known : null;
        file = other;
        if (!written(run)) {
            file = before;
            return Optional.of("not saved");
        }
        elsewhere = false;
        return Optional.empty();
    }

    private boolean copied(Case run, Path path) {
        try {
            new CaseWriter().write(run, path);
            return true;
        } catch (ProblemsException e) {
            tell(e);
            return false;
        }
    }

    /** Writes the case to a file of its own where none was named, so that nothing is lost; its name. */
    Optional<String> rescue(Case run) {
        if (file != null || book.isPresent()) {
            return Optional.empty();
        }
        file = free(made(), ENDING);
        return written(run) ? Optional.of(file) : Optional.empty();
    }

    /**
     * Writes questions, answers and the advice, where it was given.
     *
     * @param overwrite whether the file may take the place of one that is there
     */
    void transcript(String name, boolean overwrite, Talk talk, Debrief debrief, Audience audience,
            Optional<BiConsumer<Debrief, Page>> advice) {
        StringBuilder text = new StringBuilder("# Debrief: ").append(debrief.run().car().name()).append("\n\n");
        for (Talk.Written entry : talk.written(audience)) {
            String said = entry.said().replaceAll("\\p{Cntrl}+", " ");
            text.append("- ").append(entry.question()).append('\n')
                    .append(said.matches("\\d*") || said.equalsIgnoreCase(entry.heard()) ? "" : "  \"" + said + "\"\n")
                    .append("  **").append(entry.heard()).append("**\n");
        }
        advice.ifPresent(it -> {
            Page page = new Page(TRANSCRIPT_WIDTH, false);
            it.accept(debrief, page);
            text.append("\n## Advice\n\n```text\n").append(page).append("```\n");
        });
        byte[] written = text.toString().getBytes(StandardCharsets.UTF_8);
        String file = name;
        try {
            write(name, overwrite, written);
        } catch (ProblemsException e) {
            tell(e);
            elsewhere = true;
            file = free(made(), ".md");
            write(file, false, written);
        }
        console.out().println();
        console.out().println("Transcript: " + file);
    }

    private void write(String name, boolean overwrite, byte[] content) {
        // The folder of a new file is made; one that is gone since the talk began was taken away by somebody.
        Optional<String> wrong = NewFiles.obstacle(console.path(name), console);
        if (wrong.isPresent()) {
            throw new ProblemsException(Problem.of(name, "cannot be written: " + wrong.get(), Optional.empty()));
        }
        NewFiles files = new NewFiles();
        if (overwrite) {
            files.replace(console.path(name), content);
        } else {
            files.add(console.path(name), content);
        }
        files.write();
    }
}
