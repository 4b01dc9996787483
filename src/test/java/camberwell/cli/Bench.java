package camberwell.cli;

import camberwell.pack.Shelf;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;

/** A working directory in which commands are run in-process, as a person would run them. */
final class Bench {

    final Path directory;
    final Path cache;
    private final Shelf shelf;

    Bench(Path directory) {
        this.shelf = new Shelf(directory.resolve(".shelf-of-the-test"));
        this.directory = directory;
        // Not below the folder that a test leaves behind: rules may still be being compiled ahead when a command has ended.
        this.cache = Path.of("target", "caches-of-the-tests", UUID.randomUUID().toString()).toAbsolutePath();
    }

    record Run(int code, String out, String err) {
        String all() {
            return out + err;
        }
    }

    static Path home() {
        return Path.of(System.getProperty("camberwell.home", "."));
    }

    Bench file(String path, String text) {
        try {
            Path file = directory.resolve(path);
            Files.createDirectories(file.getParent());
            // There whole or not at all: somebody may be watching it.
            Path draft = Files.writeString(Files.createTempFile("bench", null), text);
            Files.move(draft, file, StandardCopyOption.REPLACE_EXISTING);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Run run(String... arguments) {
        return runWith("", arguments);
    }

    Run runWith(String input, String... arguments) {
        Ran ran = Ran.in(directory, 100, input, new Engine(home(), cache).withShelf(shelf), arguments);
        return new Run(ran.code(), ran.out(), ran.err());
    }

    /** Whether anything was compiled: everything that is compiled is kept. */
    boolean compiled() {
        return Files.exists(cache);
    }

    /** A sound rule. */
    static String rule(String name, String when, String then) {
        return rule(name, "front-bump", when, then);
    }

    static String rule(String name, String note, String when, String then) {
        return "rule \"" + name + "\"\n    @because(\"The kerb comes faster than the damper lets the wheel move.\")\n"
                + "    @note(\"" + note + "\")\nwhen\n    " + when.replace("\n", "\n    ") + "\nthen\n    "
                + then.replace("\n", "\n    ") + "\nend\n";
    }

    static String note(String kind) {
        return "---\ntitle: Hot rims\nkind: " + kind + "\nstatement: The rims are hot.\nplain: The rims are hot.\n"
                + "sources:\n  - common practice, no source\n---\nThe brakes heat the rims.\n";
    }

    /** A case in which the car is upset by kerbs. */
    static String kerbCase() {
        return """
                title: Kerbs
                car:
                  name: Practice car
                  drive: rear
                  adjusters:
                    front-bump: {now: 4, min: 1, max: 7, step: 1}
                    rear-bump: {now: 4, min: 1, max: 7, step: 1}
                conditions: {surface: dry}
                reports:
                  - {symptom: kerb-instability, severity: strong, occurrence: every-lap}
                """;
    }
}
