package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * One car, its brake bias written down twice. Of the pressure in both lines 61 % is at the front, whose brakes give three
 * times the force of the rear ones at the same pressure: 61 x 3 / (61 x 3 + 39) = 82.4 % of the force. That a share of
 * pressure becomes one of force by the brakes of both axles is arithmetic; the expectations are common practice, no source.
 */
@DisplayName("Brake bias by pressure and by force is the same bias")
class BrakeBiasMeaningTest {

    @TempDir
    private Path folder;

    private Advice advise(boolean force, String symptom) throws IOException {
        String text = Files.readString(Path.of(System.getProperty("camberwell.home"), "demo-cases/cars",
                "harrow-rally-saloon.yaml"));
        String car = !force ? text : text.replaceFirst("brake-bias-of: pressure[^\n]*", "brake-bias-of: force")
                .replaceFirst("brake-bias: \\{[^}]*}", "brake-bias: {now: 82.4 %, min: 78.4 %, max: 86.4 %, step: 0.5 %}")
                .replaceFirst("  front-brakes:[^\n]*\n", "");
        Path file = Files.writeString(folder.resolve(force ? "force.yaml" : "pressure.yaml"), car);
        return Paddock.advise(Trackside.yaml("title: a\ncar: " + file + "\nreports:\n  - {symptom: " + symptom
                + ", phase: braking, severity: clear, occurrence: every-lap, since: whole-run}\n"));
    }

    private static RankedChange bias(Advice advice) {
        return advice.changes().stream().filter(it -> it.change().adjuster().id().equals("brake-bias")).findFirst()
                .orElseThrow(() -> new AssertionError(advice.changes() + " " + advice.withheld()));
    }

    @Test
    @DisplayName("fronts that lock: the same changes in the same order, and rearward by no more than 1 %")
    void front() throws IOException {
        same("front-locking", "brake-bias rearward");
    }

    @Test
    @DisplayName("rears that lock: the same changes in the same order, and forward by no more than 1 %")
    void rear() throws IOException {
        same("rear-locking", "brake-bias forward");
    }

    private void same(String symptom, String change) throws IOException {
        Advice pressure = advise(false, symptom);
        Advice force = advise(true, symptom);
        assertEquals(ids(pressure), ids(force));
        for (Advice advice : List.of(pressure, force)) {
            RankedChange bias = bias(advice);
            assertEquals(change, bias.change().id());
            double moved = bias.size().to().orElseThrow().value() - bias.size().from().orElseThrow().value();
            assertEquals(change.endsWith("forward"), moved > 0);
            assertTrue(Math.abs(moved) <= 1 + 1e-9, "moved " + moved);
            assertTrue(bias.size().computation().get(0).endsWith("gives 82 % of the braking force"),
                    bias.size().computation().toString());
        }
        assertEquals(bias(pressure).size().computation().get(0), bias(force).size().computation().get(0));
    }

    private static List<String> ids(Advice advice) {
        return advice.changes().stream().map(it -> it.change().id()).toList();
    }
}
