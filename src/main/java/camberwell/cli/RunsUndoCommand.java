package camberwell.cli;

import camberwell.history.Book;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** {@code camberwell runs undo}: the last entry out of the book. */
@Command(name = "undo", addMethodSubcommands = false,
        description = {"Takes the last run out of the book. Its file is kept, in the folder taken-back of the book, and "
            + "can be added again."},
        footer = {"", "Example:", "  camberwell runs undo"})
final class RunsUndoCommand implements Callable<Integer> {

    private final Console console;

    @Mixin
    private BookOption book;

    RunsUndoCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        Book runs = book.open(console);
        List<Book.Page> pages = runs.pages();
        if (pages.isEmpty()) {
            throw new ProblemsException(Problem.of(runs.folder().toString(), "has no runs yet", Optional.empty()));
        }
        Book.Page last = pages.get(pages.size() - 1);
        Path kept = runs.takeBack(last);
        console.out().println("Run " + last.number() + " is out of the book; it is kept as "
                + console.shown(kept.toString()));
        return ExitCode.DONE;
    }
}
