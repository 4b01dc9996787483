package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packs that are always in use. */
class RulesShelfTest {

    private static final String RULE = """
            rule "%s"
                @because("A tall kerb lifts the wheel faster than a stiff damper lets it move.")
                @note("front-bump")
            when
                the driver reports kerb-instability
                    - on every lap
            then
                propose front-bump softer with certainty %s
            end
            """;
    private static final String CASE = """
            title: Thrown about by the kerbs
            car:
              name: Practice car
              drive: rear
              adjusters:
                front-bump: {now: 4, min: 1, max: 7, step: 1}
            reports:
              - {symptom: kerb-instability, severity: strong, occurrence: every-lap}
            """;

    @TempDir
    private Path scratch;
    private Path kerbs;

    @BeforeEach
    void packs() throws IOException {
        kerbs = pack("tall-kerbs", "1.0", "camberwell 0.1.0", "Tall kerbs: softer front bump first", "0.95");
        Files.writeString(scratch.resolve("case.yaml"), CASE);
    }

    private Path pack(String name, String version, String needs, String rule, String certainty) throws IOException {
        Path folder = scratch.resolve(name + "-" + version);
        Files.createDirectories(folder.resolve("3-changes"));
        Files.writeString(folder.resolve("pack.yaml"), "name: " + name + "\nversion: " + version
                + "\nauthor: A. Tutor\nneeds: [" + needs + "]\n");
        Files.writeString(folder.resolve("3-changes/kerbs.dslr"), RULE.formatted(rule, certainty));
        return folder;
    }

    private Bench.Run run(String... arguments) {
        return new Bench(scratch).run(arguments);
    }

    private double certainty() throws IOException {
        Bench.Run advice = run("advise", "--format", "json", "case.yaml");
        assertEquals(0, advice.code(), advice.err());
        return new ObjectMapper().readTree(advice.out()).path("changes").get(0).path("certainty").asDouble();
    }

    @Test
    @DisplayName("a pack on the shelf is heard without being named; switched off or taken away it is not")
    void always() throws IOException {
        double before = certainty();
        assertEquals(0, run("rules", "shelf", "add", kerbs.toString()).code());
        double with = certainty();
        run("rules", "shelf", "off", "tall-kerbs");
        double off = certainty();
        run("rules", "shelf", "on", "tall-kerbs");
        double on = certainty();
        run("rules", "shelf", "remove", "tall-kerbs");
        assertAll(() -> assertTrue(with > before, before + " -> " + with), () -> assertEquals(before, off),
                () -> assertEquals(with, on), () -> assertEquals(before, certainty()));
    }

    @Test
    @DisplayName("another version of a pack takes its place, and the packs are read in the order that is asked for")
    void order() throws IOException {
        run("rules", "shelf", "add", kerbs.toString());
        run("rules", "shelf", "add", pack("wet-days", "2.0", "camberwell", "Wet days: softer bump", "0.5").toString());
        run("rules", "shelf", "add", pack("tall-kerbs", "1.10", "camberwell", "Tall kerbs: softer", "0.5").toString());
        assertEquals("wet-days, tall-kerbs", run("rules", "shelf", "order", "wet-days").out().strip());
        String list = run("rules", "list").out();
        assertAll(() -> assertTrue(list.contains("tall-kerbs 1.10, A. Tutor"), list),
                () -> assertFalse(list.contains("tall-kerbs 1.0,"), list),
                () -> assertTrue(list.indexOf("wet-days") < list.indexOf("tall-kerbs"), list));
    }

    @Test
    @DisplayName("the list says what a pack replaces and overrides, and that it needs a newer camberwell")
    void list() throws IOException {
        Path folder = pack("wide-wheels", "1.0", "camberwell 9.0", "A new rule", "0.5");
        Files.createDirectories(folder.resolve("knowledge-notes/adjustments"));
        Files.copy(DemoCases.HOME.resolve("knowledge-notes/adjustments/front-bump.md"),
                folder.resolve("knowledge-notes/adjustments/front-bump.md"));
        Bench.Run list = run("rules", "list", "--rules", folder.toString());
        assertAll(() -> assertEquals(1, list.code()),
                () -> assertTrue(list.out().replaceAll("\\s+", " ").contains("Overrides the note front-bump of"),
                        list.out()),
                () -> assertTrue(list.out().replaceAll("\\s+", " ").contains(
                        "needs camberwell 9.0, and this is 0.1.0; install a newer camberwell"), list.out()));
    }

    @Test
    @DisplayName("what is not there is told with what is, and a pack that fails its check does not come on the shelf")
    void refused() throws IOException {
        run("rules", "shelf", "add", kerbs.toString());
        Bench.Run unknown = run("rules", "shelf", "off", "tal-kerbs");
        Files.writeString(kerbs.resolve("3-changes/kerbs.dslr"), "rule \"broken\"\nwhen\n  nothing of the kind\n");
        Bench.Run broken = run("rules", "shelf", "add", kerbs.toString());
        assertAll(() -> assertEquals(2, unknown.code()), () -> assertTrue(unknown.err().contains("tall-kerbs")),
                () -> assertEquals(1, broken.code(), broken.err()));
    }
}
