package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.function.Function;

/** Questions on {@code out}, answers from {@code in}, typed or piped. */
final class Dialogue {

    private static final int MOST_TRIES = 20;

    private final Console console;
    private final TypedLines in;

    Dialogue(Console console) {
        this.console = console;
        this.in = new TypedLines(console.in());
    }

    void say(String line) {
        console.out().println(line);
    }

    /**
     * Asks until there is an answer that will do.
     *
     * @param accept the answer's meaning; empty, having said why, when it will not do
     * @throws ProblemsException if the answers end before
     */
    <T> T ask(String question, Function<String, Optional<T>> accept) {
        for (int tries = 0; tries < MOST_TRIES; tries++) {
            console.out().print(question + " ");
            console.out().flush();
            String line = readLine();
            if (line == null) {
                console.out().println();
                throw new ProblemsException(Problem.of("-", "the answers ended at: " + question, Optional.empty()));
            }
            if (!console.interactive()) {
                console.out().println(line);
            }
            Optional<T> answer = accept.apply(line.strip());
            if (answer.isPresent()) {
                return answer.get();
            }
        }
        throw new ProblemsException(Problem.of("-", "no answer would do: " + question, Optional.empty()));
    }

    private String readLine() {
        try {
            return in.next().orElse(null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
