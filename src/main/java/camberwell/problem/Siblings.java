package camberwell.problem;

import camberwell.vocabulary.Nearest;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Finds what lies beside a file or folder that is not there. */
public final class Siblings {

    private static volatile Listing last;

    /** A folder as it was when it was listed. */
    private record Listing(Path folder, FileTime changed, List<String> names) {
    }

    private Siblings() {
    }

    /** The name in the same folder most like that of {@code missing}, among what could have been {@code meant}. */
    public static Optional<String> nearest(Path missing, Predicate<Path> meant) {
        Path folder = missing.toAbsolutePath().normalize().getParent();
        if (folder == null || missing.getFileName() == null) {
            return Optional.empty();
        }
        try {
            List<String> names = names(folder);
            // Looking at each of thousands of files would take longer than comparing their names.
            Optional<String> nearest = Nearest.to(missing.getFileName().toString(), names);
            return nearest.isEmpty() || meant.test(folder.resolve(nearest.get())) ? nearest
                    : Nearest.to(missing.getFileName().toString(), names.stream()
                            .filter(name -> meant.test(folder.resolve(name))).toList());
        } catch (IOException | UncheckedIOException e) {
            // A folder that cannot be listed has nothing to suggest.
            return Optional.empty();
        }
    }

    /** What lies in a folder, listed once for all that is missed in it. */
    private static List<String> names(Path folder) throws IOException {
        FileTime changed = Files.getLastModifiedTime(folder);
        Listing known = last;
        if (known == null || !known.folder.equals(folder) || !known.changed.equals(changed)) {
            try (Stream<Path> entries = Files.list(folder)) {
                known = new Listing(folder, changed, entries.map(entry -> entry.getFileName().toString()).sorted().toList());
            }
            last = known;
        }
        return known.names;
    }

    /** The path of the file in the same folder that is named most like {@code missing}. */
    public static Optional<String> nearestFile(Path missing) {
        return nearest(missing, Files::isRegularFile).map(name -> missing.resolveSibling(name).toString());
    }
}
