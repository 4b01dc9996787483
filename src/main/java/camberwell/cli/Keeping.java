package camberwell.cli;

import camberwell.debrief.Debrief;
import camberwell.debrief.Talk;
import camberwell.history.Book;
import camberwell.history.Changes;
import camberwell.input.CaseWriter;
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
    private final Optional<Book> book;
    private String file;
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
        kept = true;
    }

    /** The file that the case is written to, if there is one. */
    Optional<String> file() {
        return Optional.ofNullable(file);
    }

    /** Whether anything was written. */
    boolean kept() {
        return kept;
    }

    /** Puts a case into words that nobody reads, so that the first that is kept is not the first that is written. */
    static void rehearse(Case run, Console console) {
        new CaseWriter().text(run, console.path("case" + ENDING));
    }

    /** Writes the case, if a file was named. What cannot be written is said; the next answer tries again. */
    void keep(Case run) {
        if (file == null && book.isEmpty()) {
            return;
        }
        try {
            if (book.isPresent()) {
                enter(run.withSetup(Changes.setup(run.car())));
                return;
            }
            giveWay();
            new CaseWriter().write(run, console.path(file));
            known = content();
            kept = true;
        } catch (ProblemsException e) {
            e.problems().forEach(problem -> console.err().println(console.shown(problem.text())));
        }
    }

    /** Takes another name where another talk or program has written to the file meanwhile: neither is lost. */
    private void giveWay() {
        byte[] now = content();
        if (now != null && !Arrays.equals(now, known)) {
            String other = free(file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file);
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
    private String free(String stem) {
        String name = stem + ENDING;
        for (int i = 2; Files.exists(console.path(name)); i++) {
            name = stem + "-" + i + ENDING;
        }
        return name;
    }

    /** Writes the case to another file from now on; empty, or why not. */
    Optional<String> moveTo(String other, Case run) {
        Path path = console.path(other);
        Optional<String> wrong = NewFiles.obstacle(path.toAbsolutePath(), console)
                .or(() -> Files.exists(path) && !other.equals(file) ? Optional.of("stands there already; take another name")
                        : Optional.empty());
        if (wrong.isEmpty()) {
            known = other.equals(file) ? known : null;
            file = other;
            keep(run);
        }
        return wrong;
    }

    /** Writes the case to a file of its own where none was named, so that nothing is lost; its name. */
    Optional<String> rescue(Case run) {
        if (file != null || book.isPresent()) {
            return Optional.empty();
        }
        String stem = "debrief-" + LocalDateTime.now().format(DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmm"));
        file = free(stem);
        keep(run);
        return kept ? Optional.of(file) : Optional.empty();
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
        NewFiles files = new NewFiles();
        byte[] written = text.toString().getBytes(StandardCharsets.UTF_8);
        if (overwrite) {
            files.replace(console.path(name), written);
        } else {
            files.add(console.path(name), written);
        }
        files.write();
        console.out().println();
        console.out().println("Transcript: " + name);
    }
}
