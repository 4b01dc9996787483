package camberwell.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/** The cases that lie in a folder: its YAML files, and those of its subfolders other than {@code cars}. */
final class CaseFolder {

    private CaseFolder() {
    }

    static List<Path> cases(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder, 4)) {
            return files.filter(Files::isRegularFile).filter(file -> file.toString().endsWith(".yaml"))
                    .filter(file -> !below("cars", folder.relativize(file))).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean below(String name, Path file) {
        return file.getParent() != null && Stream.iterate(file.getParent(), Objects::nonNull, Path::getParent)
                .anyMatch(part -> part.endsWith(name));
    }
}
