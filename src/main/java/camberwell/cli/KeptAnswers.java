package camberwell.cli;

import camberwell.files.WholeFiles;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The answers of a talk in a file, one a line, so that one which breaks off goes on from there. */
final class KeptAnswers {

    private static final String FIRST_LINE = "# answers to camberwell rules new";
    private static final long MOST_BYTES = 256 * 1024;

    private final Path file;
    private final String name;

    /** @param name of the file, as a person wrote it */
    KeptAnswers(Path file, String name) {
        this.file = file;
        this.name = name;
    }

    /**
     * What was answered before; nothing where there is no such file.
     *
     * @throws ProblemsException if the file is something else, or cannot be read
     */
    List<String> read() {
        if (!Files.exists(file)) {
            return List.of();
        }
        try {
            List<String> lines = Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES ? Files.readAllLines(file)
                    : List.of();
            if (lines.isEmpty() || !lines.get(0).equals(FIRST_LINE)) {
                throw new ProblemsException(Problem.of(name, "is there already, and holds no answers", Optional.empty()));
            }
            return lines.subList(1, lines.size());
        } catch (IOException e) {
            throw new ProblemsException(Problem.unreadable(name, e));
        }
    }

    /** @throws ProblemsException if the file cannot be written */
    void write(List<String> answers) {
        List<String> lines = new ArrayList<>(List.of(FIRST_LINE));
        lines.addAll(answers);
        try {
            WholeFiles.write(file, (String.join("\n", lines) + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new ProblemsException(Problem.unwritable(name, e));
        }
    }

    /** Leaves nothing behind: the talk has come to its end. */
    void forget() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new ProblemsException(Problem.unwritable(name, e));
        }
    }
}
