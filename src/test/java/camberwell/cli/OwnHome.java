package camberwell.cli;

import camberwell.explain.DemoCases;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** The program's own folders, copied to where a test may break them. */
final class OwnHome {

    private OwnHome() {
    }

    /** Copies rules, notes and demo cases below {@code home}. */
    static void copyTo(Path home) throws IOException {
        for (String folder : new String[] {"rules", "knowledge-notes", "demo-cases"}) {
            try (Stream<Path> all = Files.walk(DemoCases.HOME.resolve(folder))) {
                for (Path path : all.toList()) {
                    Path to = home.resolve(DemoCases.HOME.relativize(path).toString());
                    if (Files.isDirectory(path)) {
                        Files.createDirectories(to);
                    } else {
                        Files.copy(path, to);
                    }
                }
            }
        }
    }
}
