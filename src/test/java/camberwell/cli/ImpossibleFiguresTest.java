package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Figures that no car, tyre or day has")
class ImpossibleFiguresTest {

    @TempDir
    private Path directory;

    private Bench.Run advise(String adjusters, String tyres, String rest) {
        return new Bench(directory).file("case.yaml", "title: A\ncar:\n  name: A\n  drive: rear\n  adjusters: {" + adjusters
                + "}\n" + (tyres.isEmpty() ? "" : "  tyres: {" + tyres + "}\n") + rest
                + "reports: [{symptom: understeer, phase: mid-corner}]\n").run("advise", "case.yaml");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "front-camber: {now: -2 deg, min: -4 deg, max: 0 deg, step: 1e-301 deg} | '' | is no number: a step of front camber",
        "front-camber: {now: -2 deg, min: -4 deg, max: 0 deg, step: 0.0000001 deg} | '' "
            + "| so small a step makes more than 2000 of them from -4 deg to 0 deg; is its unit right?",
        "brake-bias: {now: 56 %, min: 50 %, max: 60 %, step: 40 %} | '' "
            + "| a step of 40 % is more than the whole way from 50 % to 60 %",
        "front-anti-roll-bar: {now: 3, min: 1, max: 5, step: 1} | front: {rim: 26 in, diameter: 250 mm} "
            + "| a rim of 26 in does not go into a tyre of 250 mm",
        "front-anti-roll-bar: {now: 3, min: 1, max: 5, step: 1} | front: {hot-target: 1.2 bar, cold-minimum: 1.4 bar} "
            + "| the hot target of 1.2 bar is below the cold minimum of 1.4 bar",
        "front-pressure: {now: 1.7 bar, min: 0.1 bar, max: 2.5 bar, step: 0.05 bar} | '' "
            + "| a pressure lies between 0.3 bar and 6 bar"})
    @DisplayName("of a car are refused where they stand")
    void car(String adjusters, String tyres, String message) {
        Bench.Run run = advise(adjusters, tyres, "");
        assertTrue(run.err().startsWith("case.yaml:"), run.err());
        assertTrue(run.err().contains(message), run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        assertEquals("", run.out());
    }

    @Test
    @DisplayName("a wet track of -20 °C is asked about, and the case is read all the same")
    void ice() {
        Bench.Run run = advise("front-anti-roll-bar: {now: 3, min: 1, max: 5, step: 1}", "",
                "conditions: {surface: wet, track: -20 °C}\n");
        assertTrue(run.err().contains("warning: a track at -20 °C that is wet is ice; is the sign right?"), run.err());
        assertEquals(ExitCode.DONE, run.code());
    }

    @Test
    @DisplayName("a camber is not moved by 2 degrees nor a pressure by 0.64 bar because the car's file knows no smaller step")
    void coarseSteps() {
        Bench.Run run = advise("front-camber: {now: -2 deg, min: -4 deg, max: 0 deg, step: 2 deg}, front-pressure: "
                + "{now: 1.7 bar, min: 1.2 bar, max: 2.9 bar, step: 0.64 bar}", "front: {hot-target: 1.9 bar}", """
                tyres:
                  front-left: {cold-pressure: 1.5 bar, hot-pressure: 1.6 bar, inner: 80 °C, middle: 80 °C, outer: 99 °C}
                  front-right: {cold-pressure: 1.5 bar, hot-pressure: 1.6 bar, inner: 80 °C, middle: 80 °C, outer: 99 °C}
                """);
        String said = run.out().replaceAll("\\s+", " ");
        assertFalse(said.contains("1. "), run.out());
        assertTrue(said.contains("one step of 2 deg is more than the 0.5 deg that are sensible at once"), run.out());
        assertTrue(said.contains("one step of 0.64 bar is more than 2 psi"), run.out());
    }

    @Test
    @DisplayName("a tyre that reads 0.30 bar cold and hot is looked at before anything is pumped into it")
    void flat() {
        Bench.Run run = advise("front-pressure: {now: 1.7 bar, min: 0.3 bar, max: 2.9 bar, step: 0.05 bar}",
                "front: {hot-target: 1.9 bar}", """
                tyres:
                  front-left: {cold-pressure: 0.3 bar, hot-pressure: 0.3 bar}
                  front-right: {cold-pressure: 0.3 bar, hot-pressure: 0.3 bar}
                """);
        assertTrue(run.out().contains("Stop: Look for damage"), run.out());
        assertTrue(run.out().contains("No change to the car before that is done."), run.out());
    }

    @Test
    @DisplayName("a pressure that would need gas twice as hot is refused, one below nothing never comes out")
    void growth() {
        Bench.Run run = new Bench(directory).run("pressure", "--cold", "0.3bar", "--hot", "6bar", "--target", "1.9bar");
        assertTrue(run.err().startsWith("--hot 6 bar with --cold 0.3 bar: the gas would have to be twice as hot"), run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
    }

    @Test
    @DisplayName("rounds and laps are counted from nothing up")
    void rounds() {
        Bench.Run run = new Bench(directory).run("rules", "watch", ".", "--rounds", "-1");
        assertTrue(run.err().contains("\"-1\" will not do: it is a whole number from 0 to 1000"), run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
    }

    @Test
    @DisplayName("of several cases the one that is broken is named, and the others are answered")
    void batch() {
        Bench bench = new Bench(directory).file("good.yaml", Bench.kerbCase()).file("broken.yaml", "title: A\ncar: {name: A\n");
        Bench.Run run = bench.run("advise", "good.yaml", "broken.yaml");
        assertTrue(run.err().startsWith("broken.yaml:3:1: "), run.err());
        assertTrue(run.out().startsWith("Kerbs\n"), run.out());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
    }
}
