package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Eight processes start at once on an empty cache")
class ManyAtOnceTest {

    private static final int PROCESSES = 8;

    @TempDir
    private Path directory;

    @Test
    @DisplayName("each gives the same advice, and what they keep together is whole")
    void emptyCache() throws Exception {
        Bench bench = new Bench(directory).file("case.yaml", Bench.kerbCase()).file("mine/3-changes/kerbs.dslr",
                Bench.rule("Kerbs: softer", "the driver reports kerb-instability",
                        "propose front-bump softer with certainty 0.6"));
        Path cache = directory.resolve("cache");
        List<Process> processes = new ArrayList<>();
        for (int i = 0; i < PROCESSES; i++) {
            processes.add(start(cache, i));
        }
        Set<String> said = new HashSet<>();
        for (int i = 0; i < PROCESSES; i++) {
            assertEquals(ExitCode.DONE, processes.get(i).waitFor(), Files.readString(directory.resolve("err" + i)));
            assertEquals("", Files.readString(directory.resolve("err" + i)));
            said.add(Files.readString(directory.resolve("out" + i)));
        }
        assertEquals(1, said.size(), said.toString());
        assertTrue(said.iterator().next().contains("\"front-bump\""), said.toString());
        List<String> kept = kept(cache);
        assertTrue(!kept.isEmpty() && kept.stream().allMatch(file -> file.endsWith(".compiled-rules")), kept.toString());
        Process later = start(cache, PROCESSES);
        assertEquals(ExitCode.DONE, later.waitFor());
        assertEquals(said, Set.of(Files.readString(directory.resolve("out" + PROCESSES))));
        assertEquals(kept, kept(cache), "what was kept is taken, not made again");
    }

    private Process start(Path cache, int number) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Dcamberwell.home=" + DemoCases.HOME.toAbsolutePath(),
                "-Dcamberwell.directory=" + directory, "-cp", System.getProperty("java.class.path"), Main.class.getName(),
                "advise", "--rules", "mine", "--format", "json", "case.yaml");
        builder.environment().put("XDG_CACHE_HOME", cache.toString());
        builder.environment().put("XDG_CONFIG_HOME", directory.resolve("config").toString());
        return builder.directory(directory.toFile()).redirectOutput(directory.resolve("out" + number).toFile())
                .redirectError(directory.resolve("err" + number).toFile()).start();
    }

    private static List<String> kept(Path cache) throws IOException {
        try (Stream<Path> files = Files.walk(cache)) {
            return files.filter(Files::isRegularFile).map(file -> cache.relativize(file).toString()).sorted().toList();
        }
    }
}
