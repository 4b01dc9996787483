package camberwell.history;

import camberwell.run.Case;
import java.nio.file.Path;
import java.util.List;

/** Another process that writes into a book until it is killed, and tells each number once the run is in it. */
public final class Writer {

    private Writer() {
    }

    /** Writes into the book at the first argument, as often as the second says. */
    public static void main(String[] arguments) {
        Book book = Book.in(Path.of(arguments[0]));
        int most = Integer.parseInt(arguments[1]);
        Case run = Runs.run(1, Runs.car(4, 4, 4), List.of(), 92.1, 92.2, 92.3);
        for (int i = 0; i < most; i++) {
            System.out.println(book.add(run).number());
            System.out.flush();
        }
    }
}
