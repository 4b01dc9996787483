package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Golden;
import camberwell.observe.MadeLogs;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.GZIPOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("camberwell observe: from a log to a case")
class ObserveCommandTest {

    private static final Path GOLDENS = Path.of("src/test/resources/observe");
    private static final String CAR = Bench.home().resolve("demo-cases/cars/corvane-coupe.yaml").toAbsolutePath().toString();
    private static String slides;
    private static String[] rows;

    @TempDir
    private Path folder;
    private Bench bench;

    @BeforeAll
    static void logs() {
        slides = MadeLogs.pushesAndSlides();
        rows = slides.split("\n");
    }

    @BeforeEach
    void bench() {
        bench = new Bench(folder).file("run.csv", slides);
    }

    private static void golden(String name, String text) throws IOException {
        Golden.check(GOLDENS.resolve(name), text);
    }

    @Test
    @DisplayName("pushes in fast corners, slides out of slow ones: the page, the JSON and the case, as they were written down")
    void goldens() throws IOException {
        Bench.Run text = bench.run("observe", "run.csv", "--car", CAR, "-o", "found.yaml", "--svg", "corner.svg");
        assertEquals(0, text.code(), text.err());
        golden("pushes-and-slides.txt", text.out());
        golden("pushes-and-slides.yaml", Files.readString(folder.resolve("found.yaml")).replaceFirst("car: .*", "car: CAR"));
        golden("pushes-and-slides.json", bench.run("observe", "--format", "json", "run.csv", "--car", CAR).out());
    }

    @Test
    @DisplayName("the drawing is a well-formed SVG that says what it shows without colour")
    void drawing() throws Exception {
        bench.run("observe", "run.csv", "--car", CAR, "--svg", "corner.svg");
        String svg = Files.readString(folder.resolve("corner.svg"));

        DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        for (String word : List.of("this lap (solid)", "median of the laps (dashed)", "complained of here", "km/h", "degrees")) {
            assertTrue(svg.contains(word), word);
        }
    }

    @Test
    @DisplayName("the case it writes is advised on, and the reasons lead back to corner and lap")
    void advised() throws IOException {
        bench.run("observe", "run.csv", "--car", CAR, "-o", "found.yaml");
        Bench.Run advice = bench.run("advise", "--format", "json", "found.yaml");

        assertEquals(0, advice.code(), advice.err());
        JsonNode tree = new ObjectMapper().readTree(advice.out());
        assertFalse(tree.get("changes").isEmpty());
        assertTrue(advice.out().contains("corners 1, 4 and 6"), "the evidence names the corners");
        assertTrue(advice.out().matches("(?s).*most in corner [146] of lap \\d.*"), "and the clearest place");
    }

    @Test
    @DisplayName("an earlier run to hold it against is named, with its understeer gradient; one that is not there is an error")
    void against() throws IOException {
        bench.file("before.csv", MadeLogs.clean());
        Bench.Run run = bench.run("observe", "run.csv", "--against", "before.csv", "--car", CAR);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("held against before.csv"), run.out());
        JsonNode tree = new ObjectMapper().readTree(bench.run("observe", "--format", "json", "run.csv", "--against",
                "before.csv", "--car", CAR).out());
        assertEquals(1.5, tree.get("against").get("understeer-gradient").asDouble(), 0.1, "deg/g, as the log was made");

        bench.file("elsewhere.csv", MadeLogs.elsewhere());
        run = bench.run("observe", "run.csv", "--against", "elsewhere.csv", "--car", CAR);
        assertTrue(run.out().contains("is it the same circuit?") && !run.out().contains("pulling are held against"), run.out());

        Bench.Run none = bench.run("observe", "run.csv", "--against", "befor.csv", "--car", CAR);
        assertEquals(2, none.code());
        assertTrue(none.err().startsWith("befor.csv: ") && none.err().contains("before.csv"), none.err());
    }

    @Test
    @DisplayName("packed with gzip, or through a pipe, it says the same")
    void packed() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(bytes)) {
            out.write(slides.getBytes(StandardCharsets.UTF_8));
        }
        Files.write(folder.resolve("run.csv.gz"), bytes.toByteArray());
        String plain = bench.run("observe", "run.csv", "--car", CAR).out();

        assertEquals(plain.replace("run.csv", "LOG"),
                bench.run("observe", "run.csv.gz", "--car", CAR).out().replace("run.csv.gz", "LOG"));
        assertEquals(plain.replace("run.csv", "LOG"),
                bench.runWith(slides, "observe", "-", "--car", CAR).out().replace("\n-:", "\nLOG:"));
    }

    @Test
    @DisplayName("beside the driver's own words it says where the two agree and where they do not")
    void beside() throws IOException {
        bench.file("said.yaml", "title: Said\ncar: " + CAR + "\nreports:\n"
                + "  - {symptom: oversteer, phase: exit, speed: slow}\n"
                + "  - {symptom: oversteer, phase: mid-corner, speed: fast}\n"
                + "  - {symptom: understeer, phase: entry, speed: medium}\n");
        Bench.Run run = bench.run("observe", "--format", "json", "run.csv", "--with", "said.yaml", "-o", "both.yaml");

        assertEquals(0, run.code(), run.err());
        List<String> kinds = new ArrayList<>();
        new ObjectMapper().readTree(run.out()).get("agreement").forEach(it -> kinds.add(it.get("log").asText()));
        assertEquals(List.of("agrees", "contradicts", "not-shown"), kinds);
        String both = Files.readString(folder.resolve("both.yaml"));
        assertTrue(both.contains("{symptom: oversteer, phase: exit, speed: slow") && both.contains("measured:"));
        assertEquals(0, bench.run("advise", "both.yaml").code());
    }

    @Test
    @DisplayName("a clean run has no complaint, and that is said")
    void clean() {
        Bench.Run run = bench.file("clean.csv", MadeLogs.clean()).run("observe", "clean.csv", "--car", CAR, "--svg", "none.svg");

        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("None: nothing goes beyond the car's own moderate running."), run.out());
        assertFalse(Files.exists(folder.resolve("none.svg")));
    }

    @ParameterizedTest(name = "{0} characters")
    @ValueSource(ints = {40, 60, 80})
    @DisplayName("no line is wider than the screen, but for names that are there to be copied")
    void widths(int width) {
        InProcess run = InProcess.run(width, slides, "observe", "-", "--car", CAR);

        assertEquals(0, run.code(), run.err());
        run.out().lines().filter(line -> line.length() > width && !line.contains("\""))
                .forEach(line -> assertEquals("", line));
    }

    private void refused(String log, String place, String message) {
        Bench.Run run = bench.file("bad.csv", log).run("observe", "bad.csv", "--car", CAR);

        assertEquals(2, run.code(), run.all());
        assertTrue(run.err().startsWith("bad.csv" + place), run.err());
        assertTrue(run.err().contains(message), run.err());
        assertFalse(run.all().contains("Exception"), run.all());
    }

    private static String with(int line, String row) {
        String[] changed = rows.clone();
        changed[line - 1] = row;
        return String.join("\n", changed);
    }

    @Test
    @DisplayName("a broken log is refused with its place and what to do")
    void broken() {
        refused("", ":1:1:", "the log is empty");
        refused(rows[0] + "\n", ":2:1:", "below the headings there are no rows");
        refused(String.join("\n", List.of(rows).subList(1, 900)), ":1:1:", "without a line of headings");
        refused("a letter\nand no log\n", ":1:1:", "no rows of numbers");
        refused("PK\u0003\u0004 and so on", ":1:1:", "zip archive");
        refused(rows[0] + "\n1,2,\0\n", ":2:5:", "no text");
        refused(with(500, rows[499].replaceFirst("^[^,]*,[^,]*,", "12.0,1,abc")), ":500:8:", "no number");
        refused(with(700, rows[699].substring(0, rows[699].lastIndexOf(','))), ":700:", "this row has 15 cells");
        refused(with(700, rows[699] + ",1"), ":700:", "this row has 17 cells");
        refused(with(900, '"' + rows[899]), ":900:1:", "quotation mark");
        refused(with(rows.length - 20, rows[rows.length - 21].replaceFirst(",", ",\"")), ":" + (rows.length - 20) + ":1:",
                "quotation mark");
        refused(slides.replace("Throttle [%]", "Lat Acc [g]"), ":1:", "could each be the lateral acceleration");
        refused(slides.replace("Speed [km/h],Steer", "Rate of climb,Steer").replace("Wheel Speed", "Wheel Torque"), ":1:1:",
                "speed of the car");
        refused(slides.replace("Lateral", "Oil").replace("Yaw", "Oil"), ":1:1:", "lateral acceleration");
        refused(slides.replace("Time [s]", "Counter").replace("Distance", "Fuel"), ":1:1:", "sample-rate: 100 Hz");
        StringBuilder slow = new StringBuilder(rows[0]).append('\n');
        for (int i = 1; i < rows.length; i += 10) {
            slow.append(rows[i]).append('\n');
        }
        refused(slow.toString(), ":2:1:", "1.00 s apart");
        refused(String.join("\n", List.of(rows).subList(0, 45)), ":1:1:", "shorter than five seconds");
    }

    @Test
    @DisplayName("a decimal comma in a log with decimal points is named")
    void decimalComma() {
        bench.file("bad.csv", slides.replace(',', ';').replaceFirst("(?m)^(100\\.10[^;]*;[^;]*;)([^;.]*)\\.", "$1$2,"));
        Bench.Run run = bench.run("observe", "bad.csv", "--car", CAR);

        assertEquals(2, run.code());
        assertTrue(run.err().contains("did you mean \""), run.err());
    }

    @Test
    @DisplayName("a last line that is cut off is left out, and said")
    void cutOff() {
        Bench.Run run = bench.file("cut.csv", slides.substring(0, slides.length() - 60)).run("observe", "cut.csv", "--car", CAR);

        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("the last line is cut off and left out"));
    }

    @Test
    @DisplayName("a map names columns, units and signs, and what is wrong with it is told at its place")
    void maps() {
        bench.file("odd.csv", slides.replace("Speed [km/h],Steer", "Alpha,Steer").replace("Yaw Rate [deg/s]", "Beta")
                .replace("Wheel Speed", "Wheel Torque"));
        bench.file("map.yaml", "speed: {column: Alpha, unit: km/h}\nyaw-rate: {column: Beta, unit: deg/s, sign: 1}\n"
                + "steering: {column: \"Steering Angle [deg]\", ratio: 14}\nlap: none\n");
        Bench.Run run = bench.run("observe", "odd.csv", "--channels", "map.yaml", "--car", CAR);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("speed: \"Alpha\" in km/h") && run.out().contains("steering 14.0 : 1"), run.out());
        assertTrue(run.out().contains("Laps by the distance"), run.out());

        bench.file("map.yaml", "speed: {column: Alpa}\n");
        run = bench.run("observe", "odd.csv", "--channels", "map.yaml", "--car", CAR);
        assertEquals(2, run.code());
        assertTrue(run.err().contains("map.yaml:1:8: odd.csv has no column \"Alpa\"; did you mean \"Alpha\"?"), run.err());

        bench.file("map.yaml", "sped: {column: Alpha}\nyaw-rate: {column: Beta, unit: bar}\n");
        run = bench.run("observe", "odd.csv", "--channels", "map.yaml", "--car", CAR);
        assertTrue(run.err().contains("map.yaml:1:1: unknown channel \"sped\"; did you mean \"speed\"?"), run.err());
        assertTrue(run.err().contains("map.yaml:2:32: \"bar\" is no unit of the yaw rate"), run.err());
    }

    @Test
    @DisplayName("a ratio that yaw rate and speed speak against is doubted; one that cannot be makes no slip angles")
    void ratio() {
        bench.file("map.yaml", "steering: {column: \"Steering Angle [deg]\", ratio: 20}\n");
        Bench.Run run = bench.run("observe", "run.csv", "--channels", "map.yaml", "--car", CAR, "--format", "json");
        assertTrue(run.out().contains("the steering does not go with a ratio of 20.0") && run.out().contains("stated one stands")
                && run.out().contains("it would be 14 : 1"), run.out());

        bench.file("map.yaml", "steering: {column: \"Steering Angle [deg]\", unit: rad, ratio: 14}\n");
        run = bench.run("observe", "run.csv", "--channels", "map.yaml", "--car", CAR);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("None, of what could be judged") && run.out().contains("Not judged: understeer and over"),
                run.out());

        bench.file("map.yaml", "steering: {column: \"Steering Angle [deg]\", ratio: 14}\n");
        run = bench.run("observe", "run.csv", "--channels", "map.yaml", "--car", CAR);
        assertFalse(run.out().contains("does not go with a ratio"), run.out());
    }

    @Test
    @DisplayName("columns that nothing is read from are listed, with what they could have been")
    void unused() {
        bench.file("more.csv", slides.replace("Steering Angle [deg]", "Pinion").replace("Throttle [%]", "GPS Speed [km/h]"));
        Bench.Run run = bench.run("observe", "more.csv", "--car", CAR);

        assertEquals(0, run.code(), run.err());
        String out = run.out().replaceAll("\\s+", " ");
        assertTrue(out.contains("Not used: \"Pinion\", \"GPS Speed [km/h]\" (could be the speed, as \"Speed [km/h]\" was taken"),
                out);
        assertTrue(out.contains("Not judged: understeer and oversteer"), out);
    }

    @Test
    @DisplayName("all that is missing is named at once, in one line that can be copied from")
    void missing() {
        refused(slides.replace("Speed [km/h],Steering Angle [deg]", "Wert1,Wert2").replace("Lateral", "Oil")
                .replace("Yaw Rate", "Oil2").replace("Wheel Speed", "Wheel Torque"), ":1:1:",
                "none of the columns was recognized as the speed of the car, and none as the lateral acceleration or the yaw "
                        + "rate, one of which is needed. Name each in a file for --channels, with the lines  speed: {column: "
                        + "NAME, unit: km/h}  and  lateral-acceleration: {column: NAME, unit: g}; no column yet for: steering, "
                        + "yaw rate, lateral acceleration; columns not used: \"Wert1\", \"Wert2\"");
    }

    @Test
    @DisplayName("of what the driver says and no log could show, that is said")
    void cannotTell() {
        bench.file("said.yaml", "title: Said\ncar: " + CAR + "\nreports:\n- {symptom: heavy-steering}\n"
                + "- {symptom: wheelspin, phase: exit}\n");
        Bench.Run run = bench.run("observe", "run.csv", "--with", "said.yaml");

        assertEquals(0, run.code(), run.err());
        String out = run.out().replaceAll("\\s+", " ");
        assertTrue(out.contains("\"heavy steering\" this log shows nothing, and could hardly"), out);
        assertTrue(out.contains("\"wheelspin at exit\", and the log does not show it, though it could"), out);
    }

    @Test
    @DisplayName("without a car, without a log, or with a file that cannot be written, it says so")
    void commandLine() {
        assertEquals(2, bench.run("observe", "run.csv").code());
        assertEquals(2, bench.run("observe", "none.csv", "--car", CAR).code());
        Bench.Run run = bench.run("observe", "run.csv", "--car", CAR, "-o", "nowhere/found.yaml");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("there is no folder"), run.err());
    }

    @Test
    @DisplayName("two logs are two runs of one session")
    void two() throws IOException {
        int half = rows.length / 2;
        bench.file("one.csv", String.join("\n", List.of(rows).subList(0, half)));
        bench.file("two.csv", rows[0] + "\n" + String.join("\n", List.of(rows).subList(half, rows.length)));
        JsonNode tree = new ObjectMapper()
                .readTree(bench.run("observe", "--format", "json", "one.csv", "two.csv", "--car", CAR).out());

        assertEquals(rows.length - 1, tree.get("rows").asInt());
        assertEquals("oversteer", tree.get("reports").get(1).get("symptom").asText());
        assertEquals(2, tree.get("reports").size());
    }
}
