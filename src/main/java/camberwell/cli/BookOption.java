package camberwell.cli;

import camberwell.history.Book;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;

/** The option {@code --book} of every command that knows the book of runs. */
final class BookOption {

    @Option(names = "--book", paramLabel = "DIR",
            description = "The book of runs, a folder. By default the nearest one: this folder or one above it, or the "
                    + "folder runs in one of them.")
    private String folder;

    /** Whether a book was named. */
    boolean named() {
        return folder != null;
    }

    /**
     * The book that was named, or the nearest one.
     *
     * @throws ProblemsException if there is none
     */
    Book open(Console console) {
        return folder != null ? Book.in(console.path(folder))
                : Book.in(Book.nearest(console.directory()).orElseThrow(() -> new ProblemsException(Problem.of("--book",
                        "there is no book of runs here; name one with --book DIR, or begin one with camberwell runs "
                        + "add", Optional.empty()))));
    }

    /** The same, to be read with the words for complaints of the packs that {@code engine} has. */
    Book open(Console console, Engine engine) {
        engine.packs();
        return open(console);
    }

    /** The same, begun where there is none: in the folder that was named, or in {@code runs} below this one. */
    Book begin(Console console) {
        return Book.begin(folder != null ? console.path(folder)
                : Book.nearest(console.directory()).orElse(console.path(Book.USUAL_NAME)));
    }

    /** The last run, of the car of that name or its beginning if one is given. */
    static Optional<Case> last(Book book, Optional<String> car) {
        List<Book.Page> pages = book.pages();
        for (int i = pages.size() - 1; i >= 0; i--) {
            Book.Page page = pages.get(i);
            if (car.isEmpty() || page.car().isEmpty() || page.car().startsWith(Book.slug(car.get()))) {
                Case run = book.read(page);
                if (car.isEmpty() || Book.slug(run.car().name()).startsWith(Book.slug(car.get()))) {
                    return Optional.of(run);
                }
            }
        }
        return Optional.empty();
    }

    /** The same; @throws ProblemsException if there is none */
    static Case lastOf(Book book, Optional<String> car) {
        return last(book, car).orElseThrow(() -> new ProblemsException(Problem.of(book.folder().toString(),
                car.map(name -> "has no run of a car called \"" + name + "\"").orElse("has no runs yet"),
                Optional.empty())));
    }

    /** The folder as it was typed, or none. */
    Optional<Path> typed() {
        return Optional.ofNullable(folder).map(Path::of);
    }
}
