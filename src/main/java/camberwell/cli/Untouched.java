package camberwell.cli;

import camberwell.files.Mark;
import camberwell.pack.Manifest;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the check of the built-in rules and notes found when camberwell was built: nothing, and it need not look again at what
 * nobody has touched since. They are known again by their mark, as their compiled form is.
 *
 * @param home the folder that has {@code rules} and {@code knowledge-notes}
 */
record Untouched(Path home) {

    private static final String FILE = "checked";
    private static final List<String> FOLDERS = List.of("rules", "knowledge-notes");

    /** What was found then; empty where something has been touched, or where nothing was kept. */
    Optional<Checked> found() {
        try {
            String[] kept = Files.readString(file()).strip().split(" ");
            return kept.length == 3 && kept[0].equals(mark())
                    ? Optional.of(new Checked(List.of(), Integer.parseInt(kept[1]), Integer.parseInt(kept[2])))
                    : Optional.empty();
        } catch (IOException | NumberFormatException e) {
            // Whatever is wrong with what was kept, a check finds out anew.
            return Optional.empty();
        }
    }

    /**
     * Keeps what was found, where that is nothing.
     *
     * @throws IOException if it cannot be written
     */
    void keep(Checked checked) throws IOException {
        if (checked.problems().isEmpty()) {
            Files.writeString(file(), mark() + " " + checked.rules() + " " + checked.notes() + "\n");
        }
    }

    private Path file() {
        return home.resolve("lib").resolve(FILE);
    }

    private String mark() throws IOException {
        Mark mark = new Mark().add(Manifest.CAMBERWELL.getBytes(StandardCharsets.UTF_8));
        for (String folder : FOLDERS) {
            Path place = home.resolve(folder);
            List<Path> files;
            try (Stream<Path> all = Files.walk(place)) {
                files = all.filter(Files::isRegularFile).sorted().toList();
            }
            for (Path file : files) {
                mark.add((folder + "/" + place.relativize(file)).replace('\\', '/').getBytes(StandardCharsets.UTF_8))
                        .add(Files.readAllBytes(file));
            }
        }
        return mark.text();
    }
}
