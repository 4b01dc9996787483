package camberwell.cli;

import camberwell.history.Book;
import camberwell.history.History;
import camberwell.run.Case;
import java.util.Optional;

/** What the book of runs adds to a case, for commands that look at one and were given a book. */
final class RunsOnCase {

    private RunsOnCase() {
    }

    /** The last run of the book, of that car if one is named, as a case to name on the command line. */
    static String lastIn(Console console, String folder, Optional<String> car) {
        Case run = BookOption.lastOf(Book.in(console.path(folder)), car);
        return console.shown(run.source());
    }

    /** The case with what came of earlier changes on the same car. */
    static Case inform(Console console, String folder, Case run) {
        return History.knownTo(Book.in(console.path(folder)), run).inform(run);
    }
}
