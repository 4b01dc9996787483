package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A few kills of each kind; the measurement profile has a thousand ({@code camberwell.cli.ThousandKills}). */
class KilledTest {

    private static final int KILLS = 3;

    @TempDir
    private Path folder;

    @ParameterizedTest(name = "{0}")
    @EnumSource(Killed.Work.class)
    @DisplayName("whenever it is killed, every file is whole, every rule has its note, and the next start cleans up")
    void killed(Killed.Work work) throws IOException, InterruptedException {
        Killing killing = new Killing(folder, work);
        Random random = new Random();
        List<String> defects = new ArrayList<>();
        for (int i = 0; i < KILLS; i++) {
            defects.addAll(killing.kill(random));
        }
        defects.addAll(killing.cleanedUp());
        assertEquals(List.of(), defects);
    }
}
