package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Lines that are piped in, none of them longer than a person types: an input without an end is not kept. */
final class TypedLines {

    private static final int LONGEST = 10_000;

    private final BufferedReader in;

    TypedLines(InputStream in) {
        this.in = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
    }

    /**
     * The next line; empty at the end of the input.
     *
     * @throws ProblemsException if it is too long for an answer
     */
    Optional<String> next() throws IOException {
        StringBuilder line = new StringBuilder();
        int read = in.read();
        if (read < 0) {
            return Optional.empty();
        }
        while (read >= 0 && read != '\n') {
            if (line.length() == LONGEST) {
                throw new ProblemsException(Problem.of("-", "a line of more than " + LONGEST
                        + " characters is no answer", Optional.empty()));
            }
            line.append((char) read);
            read = in.read();
        }
        int end = line.length() > 0 && line.charAt(line.length() - 1) == '\r' ? line.length() - 1 : line.length();
        return Optional.of(line.substring(0, end));
    }
}
