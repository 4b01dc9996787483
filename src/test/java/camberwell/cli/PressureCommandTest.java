package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PressureCommandTest {

    private static final String RUN = "pressure --cold 1.70bar --hot 2.05bar --target 1.90bar ";

    @Test
    @DisplayName("cold 1.70, hot 2.05, wanted 1.90 bar: the setting and the line that computed it")
    void shownComputation() {
        Typed typed = Typed.run(RUN);
        assertEquals("""
                Growth: 0.35 bar
                    2.05 - 1.70 bar, 12.9 % of the absolute pressure (ambient 1.013 bar)
                Cold setting: 1.57 bar
                    (1.90 + 1.013) x (1.70 + 1.013) / (2.05 + 1.013) - 1.013 = 1.567 bar, in
                    steps of 0.01 bar
                Let out now, hot: 0.15 bar
                    2.05 - 1.90 bar; when it has cooled it will read 1.57 bar. Do it when the
                    pressure has stopped rising, after some four or five laps, and read again
                    after the next run
                """, typed.out());
        assertEquals(ExitCode.DONE, typed.code());
    }

    @Test
    @DisplayName("the advice proposes the same setting, by the same line")
    void adviceSaysTheSame() {
        String tyre = "{inner: 90 °C, middle: 96 °C, outer: 88 °C, cold-pressure: 1.70 bar, hot-pressure: 2.05 bar}\n";
        String run = Trackside.text("conditions: {air: 18 °C, track: 27 °C}\ntyres:\n  front-left: " + tyre
                + "  front-right: " + tyre);
        JsonNode change = change(Typed.piped(run, "advise --format json -").json(), "front-pressure");
        assertEquals("lower", change.path("direction").asText());
        assertEquals(1.57, change.path("to").asDouble());
        String line = "(1.90 + 1.013) x (1.70 + 1.013) / (2.05 + 1.013) - 1.013 = 1.567 bar";
        assertTrue(change.path("computation").get(0).asText().contains(line), change.toString());
        assertTrue(Typed.run(RUN + "--format json").json().path("cold-setting").path("computation").asText()
                .contains(line));
    }

    private static JsonNode change(JsonNode advice, String adjuster) {
        for (JsonNode change : advice.path("changes")) {
            if (change.path("adjuster").asText().equals(adjuster)) {
                return change;
            }
        }
        throw new AssertionError("no change of " + adjuster + " in " + advice);
    }

    @Test
    @DisplayName("a spread of 6 K starts nothing; one of 24 K gives a sized camber change that follows from its line")
    void spreads() {
        String six = tread(90, 87, 84);
        for (JsonNode change : Typed.piped(six, "advise --format json -").json().path("changes")) {
            assertFalse(change.path("adjuster").asText().contains("camber"), change.toString());
        }
        JsonNode change = change(Typed.piped(tread(102, 90, 78), "advise --format json -").json(), "front-camber");
        assertEquals("less-negative", change.path("direction").asText());
        assertEquals(-2.5, change.path("to").asDouble());
        assertEquals("loaded front tyres: inner less outer 24 K, 5 K is healthy; 19 K x 0.070 °/K = 1.33°, of "
                + "which half a degree at a time", change.path("computation").get(0).asText());
    }

    @Test
    @DisplayName("the same case written in psi and °F gets the same advice")
    void units() {
        String body = """
                conditions: {air: %s, track: %s}
                tyres:
                  front-left: {inner: %s, middle: %s, outer: %s, cold-pressure: %s, hot-pressure: %s}
                  rear-left: {inner: %s, middle: %s, outer: %s, cold-pressure: %s, hot-pressure: %s}
                reports: [{symptom: understeer, phase: mid-corner, speed: slow}]
                """;
        String metric = Trackside.text(body.formatted("18 °C", "27 °C", "100 °C", "90 °C", "80 °C", "1.70 bar",
                "2.05 bar", "95 °C", "90 °C", "85 °C", "1.70 bar", "1.90 bar"));
        String imperial = Trackside.text(body.formatted("64.4 °F", "80.6 °F", "212 °F", "194 °F", "176 °F",
                "24.656415 psi", "29.732736 psi", "203 °F", "194 °F", "185 °F", "24.656415 psi", "27.557170 psi"));
        JsonNode one = Typed.piped(metric, "advise --format json -").json().path("changes");
        JsonNode other = Typed.piped(imperial, "advise --format json -").json().path("changes");
        assertTrue(one.size() >= 2, one.toString());
        assertEquals(one.size(), other.size());
        for (int i = 0; i < one.size(); i++) {
            for (String key : new String[] {"adjuster", "direction", "from", "to", "unit", "steps"}) {
                assertEquals(one.get(i).path(key).asText(), other.get(i).path(key).asText(), key + " of " + one.get(i));
            }
            assertEquals(one.get(i).path("score").asDouble(), other.get(i).path("score").asDouble(), 1e-4);
        }
    }

    @Test
    @DisplayName("advice tells where tread and gauge contradict each other, and changes no pressure on their word")
    void adviceTellsOfDoubts() {
        String tyre = "{inner: 86 °C, middle: 96 °C, outer: 86 °C, cold-pressure: 1.40 bar, hot-pressure: 1.72 bar}\n";
        String run = Trackside.text("conditions: {air: 18 °C, track: 27 °C}\ntyres:\n  front-left: " + tyre
                + "  front-right: " + tyre);
        JsonNode advice = Typed.piped(run, "advise --format json -").json();
        assertTrue(advice.path("doubts").get(0).asText().contains("trust neither yet"), advice.toString());
        for (JsonNode change : advice.path("changes")) {
            assertFalse(change.path("adjuster").asText().equals("front-pressure"), change.toString());
        }
        assertTrue(Typed.piped(run, "advise -").out().contains("Read again before you trust it"));
    }

    private static String tread(int inner, int middle, int outer) {
        String tyre = "{inner: %d °C, middle: %d °C, outer: %d °C}".formatted(inner, middle, outer);
        return Trackside.text("conditions: {air: 18 °C, track: 27 °C}\ntyres:\n  front-left: " + tyre
                + "\n  front-right: " + tyre + "\n  rear-left: " + tyre.replace("102", "92").replace("78", "88")
                + "\n  rear-right: " + tyre.replace("102", "92").replace("78", "88") + "\n");
    }

    // OpenStax, College Physics, ch. 13, problem 22: 2.50e5 Pa gauge at 35.0 °C, at -40.0 °C 1.64e5 Pa. P. W. Atkins,
    // Physical Chemistry, exercise to ch. 1: 24 lb/in2 at -5 °C with 1 atm = 14.7 lb/in2, at 35 °C 30 lb/in2 (29.77).
    @ParameterizedTest
    @CsvSource({"--cold 2.50bar --set-at 35C --gas -40C, 1.64, 0.005",
        "--cold 24psi --set-at -5C --gas 35C --ambient 14.7psi, 29.77, 0.005",
        "--cold 24psi --set-at 23F --gas 95F --ambient 14.7psi, 29.77, 0.005"})
    @DisplayName("the textbooks' tyres, warmed and cooled")
    void textbooks(String given, double expected, double tolerance) {
        assertEquals(expected, Typed.run("pressure " + given + " --format json").value("hot-pressure"), tolerance);
    }

    // Computed from the law: hot 2.0 bar at 85 °C, set at 20 °C; hot 30 psi at 180 °F, set at 68 °F.
    @ParameterizedTest
    @CsvSource({"--target 2.0bar --gas 85C --set-at 20C --step 0.0001bar, 1.4531, 0.00005",
        "--target 30psi --gas 180F --set-at 68F --step 0.01psi, 22.17, 0.005"})
    @DisplayName("the cold setting follows from the hot target and the gas temperature alone")
    void fromTemperatures(String given, double expected, double tolerance) {
        assertEquals(expected, Typed.run("pressure " + given + " --format json").value("cold-setting"), tolerance);
    }

    // By hand: the gas reaches 291.15 x 3.06325 / 2.71325 = 328.71 K; half of -9 K of air and -16 K of track leave
    // 316.21 K; (1.90 + 1.01325) x 282.15 / 316.21 - 1.01325 = 1.5862 bar, set in tyres at 9 °C.
    @Test
    @DisplayName("the setting for a colder day, in tyres that are colder too when they are set")
    void anotherDay() {
        Typed typed = Typed.run(RUN + "--set-at 18C --air 18C --track 27C --next-air 9C --next-track 11C --format "
                + "json");
        assertEquals(55.56, typed.value("gas-temperature"), 0.01);
        assertEquals(43.06, typed.value("next-gas-temperature"), 0.01);
        assertEquals(1.59, typed.value("next-cold-setting"));
        Typed blankets = Typed.run(RUN + "--set-at 18C --air 18C --next-air 9C --next-set-at 18C --format json");
        assertTrue(blankets.json().path("next-cold-setting").path("computation").asText()
                .contains("set in tyres at 18 °C"));
    }

    @Test
    @DisplayName("another day cannot be compared with a day that was not described")
    void anotherDayNeedsThisOne() {
        Typed typed = Typed.run(RUN + "--set-at 18C --next-air 9C");
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertTrue(typed.err().startsWith("the next air temperature says nothing without the air temperature of "
                + "the run"),
                typed.err());
    }

    @Test
    @DisplayName("below the minimum it refuses: the minimum wins, and what the tyre then grows to is told")
    void refusesBelowMinimum() {
        Typed typed = Typed.run(RUN + "--minimum 1.60bar");
        assertEquals(ExitCode.FOUND_WRONG, typed.code());
        assertTrue(typed.out().contains("Cold setting: 1.60 bar"), typed.out());
        String flat = typed.out().replaceAll("\\s+", " ");
        assertTrue(flat.contains("refused: that is below the minimum of 1.60 bar, and the minimum wins. Hot it "
                + "will be 1.94 bar"), flat);
        assertTrue(flat.contains("down to 1.94 bar and no further; when it has cooled it will read the minimum, "
                + "1.60 bar"),
                flat);
    }

    @Test
    @DisplayName("a tyre below its target is filled, not bled")
    void letIn() {
        assertEquals(0.10, Typed.run("pressure --hot 1.80bar --target 1.90bar --format json").value("let-in"), 1e-9);
    }

    // 10 °F at 68 °F are worth 0.771 psi on a tyre at 26 psi (computed from the law; the rule of thumb says 1 psi per
    // 10 °F). Here per 10 K, so times 1.8.
    @Test
    @DisplayName("what the tyre's own temperature is worth when it is set")
    void perTenKelvin() {
        Typed typed = Typed.run("pressure --cold 26psi --hot 30psi --target 30psi --set-at 68F --format json");
        assertEquals(26, typed.value("cold-setting"), 1e-9);
        assertEquals(1.8 * 0.771, typed.value("ten-kelvin-warmer"), 0.001);
    }

    @Test
    @DisplayName("every tyre of a case, for a colder morning")
    void ofCase() {
        Typed typed = Typed.run("pressure demo-cases/pushes-in-snaps-out.yaml --next-air 9C --format json");
        assertEquals(ExitCode.DONE, typed.code(), typed.err());
        JsonNode tyres = typed.json().path("tyres");
        assertEquals(4, tyres.size());
        // (1.85 + 1.01325) x (1.45 + 1.01325) / (1.86 + 1.01325) - 1.01325 = 1.441, in the car's steps of 0.02 bar
        assertEquals(1.44, tyres.path("front-left").path("cold-setting").path("value").asDouble());
        assertTrue(tyres.path("rear-right").has("next-cold-setting"));
        assertTrue(Typed.run("pressure demo-cases/pushes-in-snaps-out.yaml").out().contains("\nfront-left\n"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--cold 27bar | \"27bar\" is out of range: a pressure lies between 0.3 bar and 6 bar; did you mean \"27 psi\"?",
        "--cold 1.9 | a pressure needs a unit: bar, kPa or psi; did you mean \"1.9 bar\"?",
        "--cold 1,9bar | did you mean \"1.9bar\"?",
        "--cold 1.9deg | a pressure is written in bar, kPa or psi",
        "--set-at 18bar | a temperature is written in °C or °F",
        "--cold 1.9bar | nothing follows from that: give --cold, --hot and --target",
        "--altitude 500m --ambient 0.95bar | mutually exclusive",
        "--colt 1.9bar | has no option --colt; did you mean --cold?"})
    @DisplayName("a wrong word is answered with the right one")
    void wrongCommandLines(String typed, String answer) {
        Typed result = Typed.run("pressure " + typed);
        assertEquals(ExitCode.WRONG_INPUT, result.code());
        assertTrue(result.err().contains(answer), result.err());
        assertEquals("", result.out());
    }

    @Test
    @DisplayName("a hot pressure below the cold one is doubted, and computed with all the same")
    void coolerThanCold() {
        Typed result = Typed.run("pressure --cold 2.5bar --hot 2.15bar --target 1.9bar");
        assertEquals(ExitCode.DONE, result.code());
        assertEquals("--hot 2.15 bar: warning: it is below --cold 2.5 bar, and a tyre gains pressure as it warms; are the two "
                + "swapped, or does it leak?", result.err().strip());
    }

    @Property(tries = 60)
    @Label("a setting in psi is the setting in bar, and cold grows back to the target")
    void roundTrip(@ForAll @DoubleRange(min = 1.3, max = 1.9) double cold,
            @ForAll @DoubleRange(min = 2.0, max = 2.5) double hot, @ForAll @DoubleRange(min = 1.6,
            max = 2.4) double target) {
        double bar = Typed.run(String.format(Locale.ROOT, "pressure --cold %.4fbar --hot %.4fbar --target %.4fbar "
                + "--step 0.0001bar --format json", cold, hot, target)).value("cold-setting");
        double psi = Typed.run(String.format(Locale.ROOT, "pressure --cold %.4fbar --hot %.4fbar --target %.4fbar "
                + "--step 0.002psi --format json", cold, hot, target)).value("cold-setting");
        assertEquals(bar, psi * 0.06894757, 0.00015);
        double back = Typed.run(String.format(Locale.ROOT, "pressure --cold %.4fbar --hot %.4fbar --target %.4fbar "
                + "--step 0.0001bar --format json", hot, cold, bar)).value("cold-setting");
        assertEquals(target, back, 0.0003);
    }
}
