package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A short run of damaged files and lines, the same ones every time, so that it says whether a change broke something; the
 * measurement profile has the long run, with others each time ({@code camberwell.cli.LongHardship}).
 */
class HardshipTest {

    private static final int TRIES = 60;

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "{0}")
    @EnumSource(Hardship.Kind.class)
    @DisplayName("no damage ends in a stack trace, in Java's words, in silence or never")
    void damaged(Hardship.Kind kind) throws IOException {
        Hardship hardship = new Hardship(folder);
        List<String> defects = LongStream.range(0, TRIES).boxed()
                .flatMap(seed -> hardship.defect(kind, seed).map(what -> "seed " + seed + ": " + what).stream()).toList();
        assertEquals(List.of(), defects);
    }
}
