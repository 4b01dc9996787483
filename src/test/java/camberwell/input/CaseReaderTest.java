package camberwell.input;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CaseReaderTest {

    private static final Path RESOURCES = Path.of("src/test/resources/input");
    private static final String THIRD_RUN = """
            title: Third run, cold morning
            car: cars/plain.yaml
            conditions: {surface: dry, air: 9 °C, track: 11 °C}
            setup: {front-camber: -3.0 deg, front-pressure: 25 psi}
            tyres:
              front-left: {inner: 92 °C, middle: 84 °C, outer: 78 °C, cold-pressure: 1.70 bar, hot-pressure: 1.95 bar}
            reports:
              - {symptom: understeer, phase: entry, speed: slow, severity: strong, since: whole-run}
              - {symptom: hot-inner-edge, where: front-left}
            """;

    @TempDir
    private Path folder;

    @Test
    @DisplayName("a case is a car as it ran, the day, the tyres and the complaints")
    void wholeCase() {
        Case run = read(THIRD_RUN).run();
        assertEquals("Third run, cold morning", run.title());
        assertEquals(Surface.DRY, run.conditions().surface());
        assertEquals(Optional.of(new Quantity(11, Unit.CELSIUS)), run.conditions().track());
        assertEquals(Optional.of(new Quantity(84, Unit.CELSIUS)), run.tyres().get(Wheel.FRONT_LEFT).middle());
        Report first = run.reports().get(0);
        assertEquals(Symptom.UNDERSTEER, first.symptom());
        assertEquals(Optional.of(Phase.ENTRY), first.phase());
        assertEquals(Severity.STRONG, first.severity());
        assertEquals(Severity.CLEAR, run.reports().get(1).severity(), "what is not said is clear");
    }

    @Test
    @DisplayName("the case's own setup stands over the car's file, in the unit of the car")
    void setupOverCar() {
        Case run = read(THIRD_RUN).run();
        assertEquals(new Quantity(-3.0, Unit.DEGREE), run.car().setting(Adjuster.FRONT_CAMBER).orElseThrow().now());
        // 25 psi = 1.723 69 bar (NIST Special Publication 811, appendix B.8), rounded to a tenth of the car's step.
        Quantity pressure = run.car().setting(Adjuster.FRONT_PRESSURE).orElseThrow().now();
        assertEquals(Unit.BAR, pressure.unit());
        assertEquals(1.725, pressure.value(), 1e-9);
        assertEquals(new Quantity(-0.05, Unit.DEGREE), run.car().setting(Adjuster.FRONT_TOE).orElseThrow().now());
    }

    @Test
    @DisplayName("a case without a title is called by its file")
    void titleFromFile() throws IOException {
        Path file = folder.resolve("third-run.yaml");
        Files.writeString(file, "car: {name: A, drive: rear}\nreports: [{symptom: pulling}]\n");
        assertEquals("third-run", new CaseReader().read(file).run().title());
    }

    @Test
    @DisplayName("a cold pressure above the hot one is a warning, and both are kept: a tyre that loses air reads so")
    void coldAboveHot() {
        CaseFile file = new CaseReader().read(RESOURCES.resolve("cold-above-hot.yaml"));
        assertEquals(2, file.warnings().size());
        assertTrue(file.warnings().stream().allMatch(Problem::warning));
        assertEquals(Optional.of(new Quantity(1.95, Unit.BAR)),
                file.run().tyres().get(Wheel.FRONT_LEFT).coldPressure());
        assertEquals(Optional.of(new Quantity(1.70, Unit.BAR)),
                file.run().tyres().get(Wheel.FRONT_LEFT).hotPressure());
    }

    @Test
    @DisplayName("earlier runs of the same car come with the case, and theirs are not followed")
    void earlierRuns() throws IOException {
        String car = "car: {name: A, drive: rear}\nreports: [{symptom: pulling}]\n";
        Files.writeString(folder.resolve("first.yaml"), car + "earlier-runs: [second.yaml]\n");
        Files.writeString(folder.resolve("second.yaml"), car + "earlier-runs: [first.yaml]\n");
        Case run = new CaseReader().read(folder.resolve("second.yaml")).run();
        assertEquals(List.of("first"), run.earlier().stream().map(Case::title).toList());
        assertEquals(List.of(), run.earlier().get(0).earlier());
    }

    @Test
    @DisplayName("a value can be read otherwise than it stands in the file")
    void substitution() {
        Case run = read(THIRD_RUN, "tyres.front-left.inner=96 °C", "setup.front-camber=-2.0 deg",
                "reports[0].severity=slight", "tyres.rear-left.hot-pressure = 1.8 bar",
                "car.adjusters.front-toe.now=0.10 deg").run();
        assertEquals(Optional.of(new Quantity(96, Unit.CELSIUS)), run.tyres().get(Wheel.FRONT_LEFT).inner());
        assertEquals(-2.0, run.car().setting(Adjuster.FRONT_CAMBER).orElseThrow().now().value());
        assertEquals(Severity.SLIGHT, run.reports().get(0).severity());
        assertEquals(Optional.of(new Quantity(1.8, Unit.BAR)), run.tyres().get(Wheel.REAR_LEFT).hotPressure());
        assertEquals(0.10, run.car().setting(Adjuster.FRONT_TOE).orElseThrow().now().value());
        assertEquals(1.725, run.car().setting(Adjuster.FRONT_PRESSURE).orElseThrow().now().value(), 1e-9);
    }

    @ParameterizedTest
    @DisplayName("what is wrong with a substitution is told at the substitution")
    @CsvSource(delimiter = '|', value = {
        "tyres.front-lef.inner=96 °C | unknown wheel \"front-lef\"; did you mean \"front-left\"?",
        "tyres.rear-left.outer=900 °C | \"900 °C\" is out of range: a tread temperature lies between -20 °C and 200 °C",
        "tyres.front-left.inner=96 | a tread temperature needs a unit: °C or °F",
        "tyres.front-left.inner= | should be PATH=VALUE, like tyres.front-left.inner=96 °C",
        "tyres=hot | \"tyres\" should be keys with values, not \"hot\"",
        "title.first=x | \"title\" is \"Third run, cold morning\" and has no \"first\" in it",
        "reports[2].severity=strong | there is no [2]: the list has 2, counted from 0",
        "tyres[0].inner=90 °C | \"tyres\" is no list in this file",
        "reports.severity=strong | \"reports\" is a list and has no \"severity\" in it",
        "car.dimensions.mass=1 kg | \"1 kg\" is out of range: the mass lies between 200 kg and 4000 kg",
        "tyres.front-left.inner | should be PATH=VALUE, like tyres.front-left.inner=96 °C",
        "tyres..inner=1 | should be PATH=VALUE, like tyres.front-left.inner=96 °C",
        "=1 | should be PATH=VALUE, like tyres.front-left.inner=96 °C",
    })
    void wrongSubstitution(String text, String message) {
        assertEquals("--if \"" + text + "\": " + message,
                assertThrows(ProblemsException.class, () -> read(THIRD_RUN, text)).getMessage());
    }

    @Test
    @DisplayName("a file that is not there is named, with the one that was most likely meant")
    void noSuchFile() throws IOException {
        Files.createFile(folder.resolve("third-run.yaml"));
        assertEquals(folder.resolve("thrid-run.yaml") + ": there is no such file; did you mean \""
                + folder.resolve("third-run.yaml") + "\"?", messageOf(folder.resolve("thrid-run.yaml")));
        assertEquals(folder + ": this is a folder, not a file", messageOf(folder));
    }

    @Test
    @DisplayName("a file larger than a mebibyte is refused after the first mebibyte, however long it is")
    void endlessFile() {
        InputStream endless = new InputStream() {
            private int read;

            @Override
            public int read() {
                assertTrue(read++ <= 1 << 20, "no more is read than what is needed to see that it is too long");
                return ' ';
            }
        };
        assertEquals("-: larger than 1 MiB, so this is no file written by hand",
                assertThrows(ProblemsException.class, () -> new CaseReader().read("-", endless, folder)).getMessage());
    }

    @Test
    @DisplayName("a problem is shown in its line, with a caret under its column")
    void excerpt() {
        ProblemsException e = assertThrows(ProblemsException.class, () -> read("""
                car: cars/plain.yaml
                reports:
                  - {symptom: understeer, pahse: entry}
                """));
        assertEquals("""
                -:3:27: unknown key "pahse"; did you mean "phase"?
                  3 |   - {symptom: understeer, pahse: entry}
                    |                           ^""", e.problems().get(0).withExcerpt());
    }

    @Test
    @DisplayName("a long line is cut around the problem, so that the caret is under it")
    void longExcerpt() {
        ProblemsException e = assertThrows(ProblemsException.class, () -> read(
                "{car: cars/plain.yaml, title: '" + "long ".repeat(60) + "', pahse: entry, reports: []}"));
        String[] lines = e.problems().get(0).withExcerpt().split("\n");
        assertEquals('p', lines[1].charAt(lines[2].indexOf('^')));
        assertTrue(lines[1].length() < 120);
    }

    @Test
    @DisplayName("a file full of mistakes is told of in part")
    void manyProblems() {
        String text = "car: cars/plain.yaml\nreports:\n" + "  - {symptom: understear}\n".repeat(70);
        List<Problem> problems = assertThrows(ProblemsException.class, () -> read(text)).problems();
        assertEquals(51, problems.size());
        assertEquals("-: and 20 problems more", problems.get(50).text());
    }

    private String messageOf(Path file) {
        return assertThrows(ProblemsException.class, () -> new CaseReader().read(file)).getMessage();
    }

    private static CaseFile read(String text, String... substitutions) {
        return new CaseReader().read("-", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)), RESOURCES,
                List.of(substitutions).stream().map(it -> Substitution.parse("--if", it)).toList());
    }
}
