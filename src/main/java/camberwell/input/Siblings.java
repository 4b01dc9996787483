package camberwell.input;

import camberwell.vocabulary.Nearest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds the file beside one that is not there. */
final class Siblings {

    private Siblings() {
    }

    /** The path of the file in the same folder that is named most like {@code missing}. */
    static Optional<String> nearest(Path missing) {
        Path folder = Optional.ofNullable(missing.getParent()).orElse(Path.of(""));
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.filter(Files::isRegularFile).map(file -> file.getFileName().toString())
                    .sorted().toList();
            return Nearest.to(missing.getFileName().toString(), names)
                    .map(name -> missing.resolveSibling(name).toString());
        } catch (IOException | UncheckedIOException e) {
            // A folder that cannot be listed has nothing to suggest.
            return Optional.empty();
        }
    }
}
