package camberwell.history;

import camberwell.files.WholeFiles;
import camberwell.input.CaseReader;
import camberwell.input.CaseWriter;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A folder with one case file a run, {@code 0007-corvane-coupe.yaml}: a number that no other run of the book has, and the
 * car, so that the runs of one car are found without reading the others. A file appears whole or not at all; numbers are
 * given out under a lock of the operating system, which it releases itself when a process dies.
 */
public final class Book {

    /** The folder that is looked for where none is named. */
    public static final String USUAL_NAME = "runs";
    private static final String TAKEN_BACK = "taken-back";
    private static final String LOCK = ".lock";
    private static final String ENDING = ".yaml";
    private static final int LEAST_DIGITS = 4;

    private final Path folder;
    private final CaseReader reader = new CaseReader();

    /**
     * A run as it lies in the book.
     *
     * @param number of the run
     * @param car the car's name as file names have it; empty where the file does not say
     * @param file of the run
     */
    public record Page(int number, String car, Path file) {
    }

    private Book(Path folder) {
        this.folder = folder;
    }

    /**
     * The book in {@code folder}.
     *
     * @throws ProblemsException if it is no folder
     */
    public static Book in(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new ProblemsException(Problem.of(folder.toString(), Files.exists(folder)
                    ? "is a file; a book of runs is a folder" : "there is no such book of runs; \"runs add\" begins one",
                    Optional.empty()));
        }
        return new Book(folder);
    }

    /** The book in {@code folder}, which is made where there is none. */
    public static Book begin(Path folder) {
        try {
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(folder);
            }
        } catch (IOException e) {
            throw new ProblemsException(Problem.unwritable(folder.toString(), e));
        }
        return in(folder);
    }

    /** The folder of the nearest book: {@code directory} or a folder above it, itself a book or with one in {@code runs}. */
    public static Optional<Path> nearest(Path directory) {
        for (Path at = directory.toAbsolutePath().normalize(); at != null; at = at.getParent()) {
            for (Path folder : List.of(at.resolve(USUAL_NAME), at)) {
                if (Files.isDirectory(folder) && !new Book(folder).pages().isEmpty()) {
                    return Optional.of(folder);
                }
            }
        }
        return Optional.empty();
    }

    /** The folder. */
    public Path folder() {
        return folder;
    }

    /** Every run, by number. Two files of one number both stand in it, as after a merge of two people's books. */
    public List<Page> pages() {
        List<Page> pages = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : (Iterable<Path>) files::iterator) {
                page(file).ifPresent(pages::add);
            }
        } catch (UncheckedIOException e) {
            throw new ProblemsException(Problem.unreadable(folder.toString(), e.getCause()));
        } catch (IOException e) {
            throw new ProblemsException(Problem.unreadable(folder.toString(), e));
        }
        pages.sort(Comparator.comparingInt(Page::number).thenComparing(page -> page.file().toString()));
        return pages;
    }

    private static Optional<Page> page(Path file) {
        String name = file.getFileName().toString();
        int digits = 0;
        while (digits < name.length() && name.charAt(digits) >= '0' && name.charAt(digits) <= '9') {
            digits++;
        }
        if (digits < LEAST_DIGITS || digits > LEAST_DIGITS + 2 || !name.endsWith(ENDING)) {
            return Optional.empty();
        }
        String rest = name.substring(digits, name.length() - ENDING.length());
        return rest.isEmpty() || rest.startsWith("-") ? Optional.of(new Page(Integer.parseInt(name.substring(0, digits)),
                rest.isEmpty() ? "" : rest.substring(1), file)) : Optional.empty();
    }

    /** Every run that may be one of that car, by number. */
    public List<Page> pages(String carName) {
        String slug = slug(carName);
        return pages().stream().filter(page -> page.car().isEmpty() || page.car().equals(slug)).toList();
    }

    /**
     * The run of that number.
     *
     * @throws ProblemsException if there is none, or more than one
     */
    public Page page(int number) {
        List<Page> found = pages().stream().filter(page -> page.number() == number).toList();
        if (found.size() == 1) {
            return found.get(0);
        }
        throw new ProblemsException(Problem.of(folder.toString(), found.isEmpty() ? "there is no run " + number
                : "run " + number + " stands there more than once: " + String.join(", ", found.stream()
                        .map(page -> page.file().getFileName().toString()).toList()) + "; give one another number",
                Optional.empty()));
    }

    /** Reads a run; its number is that of its file. Safe for several threads. */
    public Case read(Page page) {
        Case run = reader.read(page.file()).run();
        return run.withDriven(run.driven().on(run.driven().sheet().numbered(page.number())));
    }

    /** Enters a run under the next number, which is its title where it has none. */
    public Page add(Case run) {
        return locked(() -> {
            int number = pages().stream().mapToInt(Page::number).max().orElse(0) + 1;
            String digits = String.valueOf(number);
            String name = "0".repeat(Math.max(0, LEAST_DIGITS - digits.length())) + digits + "-"
                    + slug(run.car().name()) + ENDING;
            Path file = folder.resolve(name);
            Case titled = run.title().isBlank() ? run.withTitle("Run " + number) : run;
            new CaseWriter().write(titled.withDriven(run.driven().on(run.driven().sheet().numbered(number))), file);
            return new Page(number, slug(run.car().name()), file);
        });
    }

    /** Writes a run anew. */
    public void replace(Page page, Case run) {
        locked(() -> {
            new CaseWriter().write(run, page.file());
            return page;
        });
    }

    /** Takes a run out of the book. Its file is kept, in {@code taken-back}. */
    public Path takeBack(Page page) {
        return locked(() -> {
            try {
                Path kept = Files.createDirectories(folder.resolve(TAKEN_BACK));
                String name = page.file().getFileName().toString();
                Path target = kept.resolve(name);
                for (int again = 2; Files.exists(target); again++) {
                    target = kept.resolve(name.replace(ENDING, "-" + again + ENDING));
                }
                return move(page.file(), target);
            } catch (IOException e) {
                throw new ProblemsException(Problem.unwritable(page.file().toString(), e));
            }
        });
    }

    private static Path move(Path from, Path to) throws IOException {
        try {
            return Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            return Files.move(from, to);
        }
    }

    /** The car's name as file names have it: {@code corvane-coupe}. */
    public static String slug(String carName) {
        StringBuilder slug = new StringBuilder();
        for (char letter : carName.toLowerCase(Locale.ROOT).toCharArray()) {
            boolean plain = letter >= 'a' && letter <= 'z' || letter >= '0' && letter <= '9';
            if (plain) {
                slug.append(letter);
            } else if (slug.length() > 0 && slug.charAt(slug.length() - 1) != '-') {
                slug.append('-');
            }
        }
        String text = slug.toString().replaceAll("-+$", "");
        return text.isEmpty() ? "car-" + Integer.toHexString(carName.hashCode()) : text;
    }

    /** One process and one thread at a time. What a killed process left half-written is cleared away. */
    private <T> T locked(Supplier<T> work) {
        synchronized (Book.class) {
            try (FileChannel channel = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE); FileLock lock = channel.lock()) {
                WholeFiles.sweep(folder);
                return work.get();
            } catch (IOException e) {
                throw new ProblemsException(Problem.unwritable(folder.toString(), e));
            }
        }
    }
}
