package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A debrief beside a book of runs")
class DebriefInBookTest {

    private static final Path HOME = Path.of(System.getProperty("camberwell.home"));
    private static final Engine ENGINE = InProcess.ENGINE;
    private static final String CASE = HOME.resolve("demo-cases/pushes-in-snaps-out.yaml").toString();

    @TempDir
    private Path folder;

    private Ran run(String typed, String... arguments) {
        Ran ran = Ran.in(folder, 80, typed, ENGINE, arguments);
        assertEquals("", ran.err());
        return ran;
    }

    private String file(int number) throws IOException {
        return Files.readString(folder.resolve("runs/000" + number + "-corvane-coupe.yaml"));
    }

    @BeforeEach
    void firstRun() {
        run("", "runs", "add", CASE, "--driver", "Ada", "--track", "Home");
    }

    @Test
    @DisplayName("goes on from the last run: what was changed, then what became of each complaint; then it is the next run")
    void goesOn() throws IOException {
        Ran ran = run("rear toe in 2 steps\nbetter\nno difference\nreal car\nno\nno\n\n", "debrief");
        assertTrue(ran.out().replaceAll("\\s+", " ")
                .contains("Run 2 of the Corvane coupe. Carried on from run 1: the settings, dry "
                + "track, Home, driver Ada."), ran.out());
        assertTrue(ran.out().contains("Heard: rear toe, more toe-in, 0.15 -> 0.25 deg."), ran.out());
        assertTrue(ran.out().contains("What became of it? (understeer at entry in slow corners)"), ran.out());
        assertFalse(ran.out().contains("What was the car doing"), ran.out());
        String second = file(2);
        assertTrue(second.contains("rear-toe: 0.25 deg"), second);
        assertTrue(second.contains("- {change: rear-toe toe-in, steps: 2, from: 0.15 deg, to: 0.25 deg}"), second);
        assertTrue(second.contains("outcome: better, on: understeer, phase: entry"), second);
        assertTrue(second.contains("outcome: same, on: snap-oversteer, phase: exit"), second);
        assertTrue(second.contains("symptom: understeer, phase: entry, speed: slow, severity: slight"), second);
    }

    @Test
    @DisplayName("advises as advise does on the run in the book, and what did nothing is not the first thing again")
    void learns() {
        String first = run("", "advise", "runs/0001-corvane-coupe.yaml", "--book", "runs").out();
        assertTrue(first.contains("1. Rear toe"), first);
        String out = run("rear toe in 2 steps\nsame\nsame\nreal car\nno\nno\n\n", "debrief", "--book", "runs").out();
        assertFalse(out.contains("1. Rear toe"), out);
        String advise = run("", "advise", "runs/0002-corvane-coupe.yaml", "--book", "runs").out();
        assertEquals(line(advise, "1. "), line(out, "1. "));
    }

    @Test
    @DisplayName("a change that made it worse is put back before all else")
    void undoes() {
        String out = run("rear toe in 2 steps\nworse\nworse\nreal car\nno\nno\n\n", "debrief").out();
        assertTrue(line(out, "1. ").startsWith("1. Rear toe"), out);
        assertTrue(line(out, "1. ").contains("0.25 -> 0.15"), out);
    }

    @Test
    @DisplayName("what was changed is told in one's own words: back, by steps, where it stands now")
    void inOwnWords() throws IOException {
        run("rear toe in 2 steps\nworse\nworse\nquit\n", "debrief");
        Ran ran = run("we put the rear toe back and softened the front bar\nbetter\nquit\n", "debrief");
        assertTrue(ran.out().replaceAll("\\s+", " ")
                .contains("Heard: rear toe, less toe-in, 0.25 -> 0.15 deg; front anti-roll bar "
                + "softer, 4 -> 3."), ran.out());
        Ran set = run("rear wing 6, front camber to -2.5 deg\nquit\n", "debrief");
        assertTrue(set.out().replaceAll("\\s+", " ").contains("front camber less negative, -3.0 -> -2.5 deg"), set.out());
    }

    @Test
    @DisplayName("where each wheel has a camber of its own, a change of one wheel or of both is told in one's own words")
    void camberOfOneWheel() throws IOException {
        String oval = HOME.resolve("demo-cases/pushes-with-a-camber-for-each-wheel.yaml").toString();
        Path book = folder.resolve("oval");
        run("", "runs", "add", oval, "--driver", "Ada", "--book", book.toString());
        String one = run("right front camber more negative 2 steps\nquit\n", "debrief", "--book", book.toString()).out();
        assertTrue(one.replaceAll("\\s+", " ").contains("front right camber more negative, -2.6 -> -2.8 deg"), one);
        assertFalse(one.contains("front left camber"), one);
        String both = run("", "runs", "add", "--changed", "front camber more negative 1", "--book", book.toString()).out();
        assertTrue(both.replaceAll("\\s+", " ").contains("front left camber more negative, -2.0 -> -2.1 deg; front right camber "
                + "more negative, -2.8 -> -2.9 deg"), both);
    }

    @Test
    @DisplayName("when all is gone it asks whether there is anything new; back and change work as everywhere")
    void allGone() throws IOException {
        Ran ran = run("nothing\nback\nfront bar softer\ngone\ncured\nnothing\n", "debrief");
        assertTrue(ran.out().contains("What was the car doing"), ran.out());
        assertTrue(file(2).contains("front-anti-roll-bar softer"), file(2));
        assertFalse(file(2).contains("reports:"), file(2));
    }

    @Test
    @DisplayName("settings of the car's file that differ from the last run's are what was changed")
    void byTheFile() throws IOException {
        String car = Files.readString(HOME.resolve("demo-cases/cars/corvane-coupe.yaml"));
        Files.writeString(folder.resolve("mine.yaml"), car.replaceFirst("rear-wing: \\{now: 4,", "rear-wing: {now: 5,"));
        Ran ran = run("same\nsame\nquit\n", "debrief", "--car", "mine.yaml");
        assertTrue(ran.out().replaceAll("\\s+", " ").contains("Changed since, by the car's file: rear wing more, 4 -> 5."),
                ran.out());
        assertFalse(ran.out().contains("What was changed"), ran.out());
        assertTrue(file(2).contains("rear-wing more"), file(2));
    }

    @Test
    @DisplayName("another car begins anew, --save keeps out of the book, and an impossible change is told")
    void besides() {
        String other = HOME.resolve("demo-cases/cars/larkspur-hatch.yaml").toString();
        assertTrue(run("quit\n", "debrief", "--car", other).out().contains("What was the car doing"));
        run("oversteer exit slow\nquit\n", "debrief", "--car", HOME.resolve("demo-cases/cars/corvane-coupe.yaml").toString(),
                "--save",
                "a.yaml");
        assertFalse(Files.exists(folder.resolve("runs/0002-corvane-coupe.yaml")));
        Ran wrong = run("front bar softer 9\nfront flaps more\nquit\n", "debrief");
        assertTrue(wrong.out().replaceAll("\\s+", " ").contains("steps that way"), wrong.out());
        assertFalse(Files.exists(folder.resolve("runs/0002-corvane-coupe.yaml")));
    }

    private static String line(String text, String beginning) {
        return text.lines().filter(line -> line.startsWith(beginning)).findFirst().orElse("");
    }
}
