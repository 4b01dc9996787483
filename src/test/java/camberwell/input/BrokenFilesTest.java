package camberwell.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import camberwell.Golden;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A table of broken files, each with the exact messages that it must give. Files that begin with {@code car-} and are
 * no case are read as a car.
 */
class BrokenFilesTest {

    private static final Path FOLDER = Path.of("src/test/resources/input");
    private static final List<String> CARS =
            List.of("car-adjusters.yaml", "car-tyres-and-dimensions.yaml", "car-window-with-decimal-comma.yaml");

    static Stream<Path> brokenFiles() throws IOException {
        return named(".yaml").stream().map(FOLDER::resolve);
    }

    @ParameterizedTest
    @MethodSource("brokenFiles")
    @DisplayName("every problem of a broken file is told with its place, and as it was written down")
    void messages(Path file) throws IOException {
        Path expected = Path.of(file.toString().replaceFirst("yaml$", "expected"));
        String actual = messagesOf(file);
        assertFalse(actual.isBlank(), "a file in this table must have a problem");
        Golden.check(expected, actual);
    }

    @Test
    @DisplayName("each broken file has its messages, and no messages are left without their file")
    void noOrphans() throws IOException {
        assertEquals(named(".yaml").stream().map(name -> name.replace(".yaml", ".expected")).toList(),
                named(".expected"));
    }

    private static String messagesOf(Path file) {
        List<Problem> problems;
        try {
            if (CARS.contains(file.getFileName().toString())) {
                new CaseReader().readCar(file);
                problems = List.of();
            } else {
                problems = new CaseReader().read(file).warnings();
            }
        } catch (ProblemsException e) {
            problems = e.problems();
        }
        String folder = FOLDER.toString().replace('\\', '/') + "/";
        return problems.stream().map(problem -> problem.text().replace('\\', '/').replace(folder, ""))
                .map(line -> line + "\n").collect(Collectors.joining());
    }

    private static List<String> named(String ending) throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(ending)).sorted()
                    .toList();
        }
    }
}
