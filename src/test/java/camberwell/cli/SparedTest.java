package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("--overwrite never means a file that the command itself reads")
class SparedTest {

    private static final String REFUSED = "is what is read here, and is not written over; take another name\n";

    @TempDir
    private Path directory;

    private Bench bench() throws IOException {
        return new Bench(directory).file("mc.yaml", Files.readString(Bench.home().resolve("demo-cases/cars/corvane-coupe.yaml")))
                .file("case.yaml", "title: Third run\ncar: mc.yaml\nearlier-runs: [first.yaml]\n"
                        + "reports:\n  - {symptom: understeer, phase: entry}\n")
                .file("first.yaml", "title: First run\ncar: mc.yaml\nreports:\n  - {symptom: understeer, phase: entry}\n")
                .file("page.html", "old");
    }

    private void spared(String file, String option, String... line) throws IOException {
        Bench bench = bench();
        String before = Files.readString(directory.resolve(file));
        Bench.Run run = bench.run(line);
        assertEquals(option + " " + file + ": " + REFUSED, run.err(), String.join(" ", line));
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        assertEquals(before, Files.readString(directory.resolve(file)));
    }

    @Test
    @DisplayName("be it named as the car, as a case or as a log")
    void named() throws IOException {
        spared("mc.yaml", "--save", "debrief", "--car", "mc.yaml", "--save", "mc.yaml", "--overwrite");
        spared("mc.yaml", "--transcript", "debrief", "--car", "mc.yaml", "--transcript", "mc.yaml", "--overwrite");
        spared("mc.yaml", "--svg", "predict", "--car", "mc.yaml", "--change", "rear-toe toe-in 1", "--svg", "mc.yaml",
                "--overwrite");
        spared("case.yaml", "-o", "sheet", "case.yaml", "-o", "case.yaml", "--overwrite");
        Files.writeString(directory.resolve("run.csv"), "time,speed\n");
        spared("run.csv", "-o", "observe", "run.csv", "--car", "mc.yaml", "-o", "run.csv", "--overwrite");
        spared("mc.yaml", "--svg", "observe", "run.csv", "--car", "mc.yaml", "--svg", "mc.yaml", "--overwrite");
    }

    @Test
    @DisplayName("or by another name")
    void link() throws IOException {
        bench();
        Files.createSymbolicLink(directory.resolve("other.yaml"), directory.resolve("mc.yaml"));
        spared("other.yaml", "--save", "debrief", "--car", "mc.yaml", "--save", "other.yaml", "--overwrite");
    }

    @Test
    @DisplayName("or pointed to by a case")
    void pointedTo() throws IOException {
        for (String file : List.of("mc.yaml", "first.yaml")) {
            spared(file, "-o", "sheet", "case.yaml", "-o", file, "--overwrite");
            spared(file, "--save", "debrief", "--resume", "case.yaml", "--save", file, "--overwrite");
        }
    }

    @Test
    @DisplayName("or a run of the book, whether the book is named or the nearest")
    void book() throws IOException {
        Bench bench = bench();
        assertEquals(ExitCode.DONE, bench.run("runs", "add", "case.yaml", "--book", "runs").code());
        String run;
        try (var files = Files.list(directory.resolve("runs"))) {
            run = "runs/" + files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml")).findFirst()
                    .orElseThrow();
        }
        spared(run, "-o", "runs", "draw", "--book", "runs", "-o", run, "--overwrite");
        spared(run, "-o", "runs", "draw", "-o", run, "--overwrite");
        spared(run, "-o", "sheet", "-o", run, "--overwrite");
    }

    @Test
    @DisplayName("while what is not read is written over, and a case that is resumed is saved in its place")
    void meant() throws IOException {
        Bench bench = bench();
        Bench.Run sheet = bench.run("sheet", "case.yaml", "-o", "page.html", "--overwrite");
        assertEquals("", sheet.err());
        assertEquals(ExitCode.DONE, sheet.code());
        Bench.Run talk = bench.runWith("snap\nquit\n", "debrief", "--resume", "first.yaml", "--save", "first.yaml",
                "--overwrite");
        assertEquals("", talk.err());
        assertEquals(ExitCode.DONE, talk.code());
    }
}
