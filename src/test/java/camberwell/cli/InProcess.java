package camberwell.cli;

import camberwell.explain.DemoCases;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;

/** A command line run in this process. */
record InProcess(int code, String out, String err) {

    /** Camberwell without packs, opened once for all that is asked of it in this process. */
    static final Engine ENGINE = engine();

    private static Engine engine() {
        try {
            return new Engine(DemoCases.HOME, Files.createTempDirectory("cache"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Runs a command on a screen of {@code width} characters, with {@code typed} piped in. */
    static InProcess run(int width, String typed, String... arguments) {
        Ran ran = Ran.in(DemoCases.HOME, width, typed, ENGINE, arguments);
        return new InProcess(ran.code(), ran.out(), ran.err());
    }
}
