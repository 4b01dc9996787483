package camberwell.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.channel.Limits;
import camberwell.input.CaseReader;
import camberwell.run.Report;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Since;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The runs obey the line that the reading rests on: they test the code; the idea stands on the sources it names. */
@DisplayName("Runs of which it is known what is in them")
class KnownRunsTest {

    private static final Limits LIMITS = VectorsTest.limits();
    private static final Car CAR = new CaseReader().readCar(Path.of("demo-cases", "cars", "corvane-coupe.yaml"));
    private static final ConcurrentMap<String, Observed> OBSERVED = new ConcurrentHashMap<>();
    private static final List<KnownRun> RUNS = KnownRuns.all();

    @BeforeAll
    static void observe() {
        RUNS.parallelStream().forEach(run -> OBSERVED.put(run.name(), run.observe(CAR, LIMITS)));
    }

    private static Report only(String name) {
        List<Report> reports = OBSERVED.get(name).reports();
        assertEquals(1, reports.size(), () -> name + ": " + reports.stream().map(Report::text).toList());
        return reports.get(0);
    }

    @Test
    @DisplayName("nothing is complained of in a clean one")
    void clean() {
        Set<String> wrong = new TreeSet<>();
        RUNS.stream().filter(run -> run.truth().isEmpty()).forEach(run -> OBSERVED.get(run.name()).reports()
                .forEach(report -> wrong.add(run.name() + ": " + report.text())));

        assertEquals(Set.of(), wrong);
    }

    @Test
    @DisplayName("of sixty and more, at least 95 in 100 complaints are right, and 85 in 100 are found")
    void precisionAndRecall() {
        List<String> misses = new ArrayList<>();
        int[] counts = count(misses);

        assertTrue(RUNS.size() >= 60, RUNS.size() + " runs");
        assertTrue(counts[0] >= 0.95 * counts[1], counts[0] + " of " + counts[1] + " told are right\n" + misses);
        assertTrue(counts[0] >= 0.85 * counts[2], counts[0] + " of " + counts[2] + " are found\n" + misses);
    }

    /** Right ones, those that were told, and those that are there. */
    static int[] count(List<String> misses) {
        int right = 0;
        int told = 0;
        int there = 0;
        for (KnownRun run : RUNS) {
            Set<KnownRun.Truth> found = KnownRun.told(OBSERVED.get(run.name()));
            int here = (int) run.truth().stream().filter(found::contains).count();
            right += here;
            told += found.size();
            there += run.truth().size();
            if (!found.equals(run.truth())) {
                misses.add(run.name() + ": told " + KnownRun.listed(found) + "; there " + KnownRun.listed(run.truth()));
            }
        }
        return new int[] {right, told, there};
    }

    @Test
    @DisplayName("seven corners are found, each turning as it does")
    void corners() {
        List<Observed.CornerTold> corners = OBSERVED.get("neutral").corners();

        assertEquals(List.of("left", "right", "left", "left", "left", "right", "right"),
                corners.stream().map(Observed.CornerTold::direction).toList());
        assertEquals(List.of("slow", "medium", "fast", "slow", "medium", "slow", "fast"),
                corners.stream().map(Observed.CornerTold::speed).toList());
    }

    @Test
    @DisplayName("positions tell laps, and left from right whatever the signs are")
    void positions() {
        for (String side : List.of("left", "right")) {
            Observed observed = OBSERVED.get("positions alone, all turns to the " + side + ", signs of another kind");
            assertEquals(List.of(side, side, side, side),
                    observed.corners().stream().map(Observed.CornerTold::direction).toList());
            assertTrue(observed.lapsBy().startsWith("positions"), observed.lapsBy());
            assertTrue(observed.laps().stream().filter(lap -> lap.leftOut().isEmpty()).count() >= 7);
            assertTrue(observed.doubts().stream().noneMatch(doubt -> doubt.contains("left from right")));
        }
    }

    @Test
    @DisplayName("the car's own line is found again: a ratio of 14 and 1.50 deg/g, also where it slides in every lap")
    void line() {
        for (String name : List.of("neutral", "10 Hz", "front slides 3 degrees, exit, slow",
                "oversteer in four of seven corners", "no yaw rate", "no lateral acceleration")) {
            Observed.LineTold line = OBSERVED.get(name).line().orElseThrow();
            assertEquals(14.0, line.ratio(), 0.15, name);
            assertEquals(1.50, line.gradient(), 0.08, name);
        }
    }

    @Test
    @DisplayName("a lap that is slow, and the way out of the pits, are left out")
    void slowLaps() {
        assertEquals(List.of(0, 5), OBSERVED.get("one slow lap").laps().stream().filter(lap -> lap.leftOut().isPresent())
                .map(Observed.LapTold::number).toList());
    }

    @Test
    @DisplayName("late in the run, in the first laps, once: each is told as that")
    void whenItComes() {
        Report late = only("only the last four laps");
        assertEquals(Optional.of(Since.LATE_RUN), late.since());
        assertEquals(Occurrence.EVERY_LAP, late.occurrence(), "on each of the laps in which tyres have faded");
        assertEquals(Optional.of(Since.FIRST_LAPS), only("only the first four laps").since());
        assertEquals(Occurrence.ONCE, only("only lap four").occurrence());
        assertEquals(Optional.of(Since.WHOLE_RUN), only("front slides 3 degrees, exit, slow").since());
    }

    @Test
    @DisplayName("an every-lap slide is as certain as eight laps make it, and the evidence names corner and lap")
    void certainty() {
        Report report = only("front slides 3 degrees, mid-corner, medium");

        assertEquals(8.0 / 9, report.measured().orElseThrow().certainty(), 0.03);
        assertTrue(report.measured().get().evidence().stream().allMatch(place -> place.lap().isPresent()
                && Set.of(2, 5).contains(place.corner().getAsInt()) && Math.abs(place.figure() - 3) < 0.4
                && place.unit().equals("deg")));
    }

    @Test
    @DisplayName("a slide that goes with a faster entry is put down to the driver, in figures")
    void fastEntry() {
        String name = "the driver is fast into one corner in two laps";
        Report report = only(name);

        assertEquals(1, report.measured().orElseThrow().driver(), 0.01);
        assertEquals(Occurrence.SOME_LAPS, report.occurrence());
        assertTrue(OBSERVED.get(name).habits().stream().anyMatch(habit -> habit.note().equals("driver-enters-too-fast")
                && habit.evidence().stream().allMatch(place -> place.figure() - place.reference() > 5)),
                () -> OBSERVED.get(name).habits().toString());
    }

    @Test
    @DisplayName("a pull on the brakes is told in degrees of the steering wheel, with the side it is held to")
    void pull() {
        Report report = only("held to the right on the brakes, noise five times");

        // Seven degrees at full brake; the car brakes at three quarters of that and more.
        assertTrue(report.measured().orElseThrow().evidence().stream().allMatch(it -> it.figure() > 4 && it.figure() < 8));
        assertTrue(report.measured().get().how().contains("held to one side"), "nothing tells left from right in this log");
    }

    @Test
    @DisplayName("a car that weaves on the brakes is told by its yaw rate: 4.5 deg/s to and fro, and the steering against it")
    void weaving() {
        // Standard deviation of a sine is its amplitude over √2; the driver's steering asks for 0.8 of it the other way.
        double expected = 4.5 * 1.8 / Math.sqrt(2);
        Report report = only("weaves on the brakes");

        assertEquals(expected, report.measured().orElseThrow().evidence().get(0).figure(), 0.2 * expected);
        assertTrue(report.measured().get().how().contains("before corners 1, 2, 4 and 6"), report.measured().get().how());
    }

    @Test
    @DisplayName("a car that turns in later than in the run before is told so in milliseconds")
    void later() {
        Report report = OBSERVED.get("the yaw rate comes 70 ms later than before").reports().stream()
                .filter(it -> it.speed().equals(Optional.of(camberwell.vocabulary.CornerSpeed.MEDIUM))).findFirst().orElseThrow();

        assertTrue(report.measured().orElseThrow().evidence().stream().allMatch(it -> Math.abs(it.figure() - 70) < 25),
                () -> report.measured().get().evidence().toString());
    }

    @Test
    @DisplayName("a driver who stabs at the throttle is told so; others are not")
    void stabs() {
        for (KnownRun run : RUNS) {
            boolean told = OBSERVED.get(run.name()).habits().stream().anyMatch(habit -> habit.text().contains("stabbed"));
            assertEquals(run.name().contains("stabs"), told, run.name());
        }
    }
}
