package camberwell.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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
                    .filter(file -> Stream.iterate(folder.relativize(file).getParent(), part -> part != null, Path::getParent)
                            .noneMatch(part -> part.endsWith("cars"))).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
