package camberwell.cli;

import java.io.Closeable;
import java.io.IOException;
import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.jline.reader.Candidate;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** Where lines are typed. */
interface Prompter extends Closeable {

    /** The next line; empty when there is none any more, be it by the end of the input or by ^C or ^D. */
    Optional<String> line(String prompt) throws IOException;

    /** Whether the last line was broken off with ^C. */
    default boolean interrupted() {
        return false;
    }

    /** How wide the screen is, at this moment. */
    int width();

    @Override
    void close() throws IOException;

    /** The one for {@code console}: with editing, history and completion where a person sits at it. */
    static Prompter of(Console console, Supplier<List<String>> completions) throws IOException {
        return console.interactive() ? new Typed(console, completions) : new Piped(console);
    }

    /** Lines from a script. What was read is shown after the prompt, so that the output reads like a talk. */
    final class Piped implements Prompter {
        private final TypedLines in;
        private final PrintStream out;
        private final int width;

        Piped(Console console) {
            in = new TypedLines(console.in());
            out = console.out();
            width = console.width();
        }

        @Override
        public Optional<String> line(String prompt) throws IOException {
            out.print(prompt);
            Optional<String> line = in.next();
            out.println(line.orElse(""));
            return line;
        }

        @Override
        public int width() {
            return width;
        }

        @Override
        public void close() {
            // The process's input is not this one's to close.
        }
    }

    /** A person at a terminal. */
    final class Typed implements Prompter {
        private final Terminal terminal;
        private final LineReader reader;
        private final PrintStream out;
        private final Console console;
        private boolean interrupted;

        Typed(Console console, Supplier<List<String>> completions) throws IOException {
            terminal = TerminalBuilder.builder().system(true).dumb(true).build();
            reader = LineReaderBuilder.builder().terminal(terminal)
                    .completer((read, line, candidates) -> completions.get().stream().map(Candidate::new)
                            .forEach(candidates::add))
                    .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
                    .option(LineReader.Option.CASE_INSENSITIVE, true)
                    .option(LineReader.Option.COMPLETE_MATCHER_TYPO, false).build();
            out = console.out();
            this.console = console;
        }

        @Override
        public Optional<String> line(String prompt) {
            out.flush();
            try {
                return Optional.of(reader.readLine(prompt));
            } catch (UserInterruptException e) {
                interrupted = true;
                return Optional.empty();
            } catch (EndOfFileException e) {
                return Optional.empty();
            }
        }

        @Override
        public boolean interrupted() {
            return interrupted;
        }

        @Override
        public int width() {
            int columns = terminal.getWidth();
            return columns > 0 ? Math.min(columns, Console.WIDEST) : console.width();
        }

        @Override
        public void close() throws IOException {
            terminal.close();
        }
    }
}
