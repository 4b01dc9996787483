package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The drawing of the answer over time, read back from the page. */
class SheetOverTimeTest {

    private static final Pattern DRAWING = Pattern.compile("<figure id=\"[^\"]*-motion\">.*?</figure>", Pattern.DOTALL);
    private static final Pattern TOLD = Pattern.compile(
            "after ([\\d.]+) s: (-?[\\d.]+)(?:°/s| kN) now and (-?[\\d.]+)(°/s| kN) next\\.");
    private static final Map<String, String> MANOEUVRES = Map.of("ISO 7401", "step-steer", "ISO 7975", "braking-in-a-turn",
            "ISO 9816", "power-off", "throttle opened", "power-on", "a kerb", "kerb", "bumps", "bumps");

    @TempDir
    private Path folder;

    private String sheet(String audience, Path file) throws IOException {
        Path page = folder.resolve("page.html");
        InProcess run = InProcess.run(80, "", "sheet", file.toString(), "-o", page.toString(), "--overwrite", "--for", audience);
        assertEquals(0, run.code(), run.err());
        return Files.readString(page);
    }

    @ParameterizedTest
    @ValueSource(strings = {"pushes-in-snaps-out", "loose-fast-and-slow", "hatch-spins-at-the-apex"})
    @DisplayName("its figures are those that predict gives as JSON for the same change in the same manoeuvre")
    void sameFigures(String name) throws IOException {
        Path file = DemoCases.HOME.resolve("demo-cases").resolve(name + ".yaml");
        Matcher drawing = DRAWING.matcher(sheet("club", file));
        assertTrue(drawing.find(), "the change told first is drawn over time");
        String figure = drawing.group();
        Matcher told = TOLD.matcher(figure);
        assertTrue(told.find(), figure);
        JsonNode change = new ObjectMapper().readTree(InProcess.run(80, "", "advise", "--format", "json", "--top", "1",
                file.toString()).out()).get("changes").get(0);
        String manoeuvre = MANOEUVRES.entrySet().stream().filter(it -> figure.contains(it.getKey())).findFirst().orElseThrow()
                .getValue();
        Path car = file.resolveSibling(Files.readString(file).replaceFirst("(?s).*?\\ncar: *(\\S+).*", "$1"));
        JsonNode run = new ObjectMapper().readTree(InProcess.run(80, "", "predict", "--car", car.toString(), "--change",
                change.get("adjuster").asText() + " " + change.get("direction").asText() + " " + change.get("steps").asInt(),
                "--manoeuvre", manoeuvre, "--speed", "110km/h", "--format", "json").out());
        boolean load = told.group(4).contains("kN");

        assertEquals(at(run.get("history-before"), told, load), Double.parseDouble(told.group(2)), 0.006, "now");
        assertEquals(at(run.get("history-after"), told, load), Double.parseDouble(told.group(3)), 0.006, "next");
    }

    private static double at(JsonNode history, Matcher told, boolean load) {
        double time = Double.parseDouble(told.group(1));
        JsonNode nearest = history.get(0);
        for (JsonNode moment : history) {
            if (Math.abs(moment.get("time-s").asDouble() - time) < Math.abs(nearest.get("time-s").asDouble() - time)) {
                nearest = moment;
            }
        }
        return load ? nearest.get("front-left-load-n").asDouble() / 1000 : nearest.get("yaw-rate-deg-per-s").asDouble();
    }

    @Test
    @DisplayName("a newcomer's page is spared it")
    void notForNewcomers() throws IOException {
        assertFalse(DRAWING.matcher(sheet("newcomer", DemoCases.HOME.resolve("demo-cases/pushes-in-snaps-out.yaml"))).find());
    }
}
