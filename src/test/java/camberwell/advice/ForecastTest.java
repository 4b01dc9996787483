package camberwell.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.car.Setting;
import camberwell.cases.Paddock;
import camberwell.reading.TyreReader;
import camberwell.run.Case;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Surface;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Which way a bar moves the balance: T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE, 1992, ch. 6, from memory. That
 * dampers hold what moves and not what has settled is common practice, no source.
 */
@DisplayName("What is left of the complaints after a change")
class ForecastTest {

    private static final Path TOURER = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/sandling-tourer.yaml");
    private static final Path LOOSE = Path.of(System.getProperty("camberwell.home"), "rules/reference-cars",
            "loose-rear-drive.yaml");
    private static final String PUSH = "understeer, phase: mid-corner, speed: medium, severity: clear";

    private static Case run(Path car, String more, String... reports) {
        StringBuilder text = new StringBuilder("title: a\ncar: " + car + "\nreports:\n");
        for (String report : reports) {
            text.append("  - {symptom: ").append(report).append(", occurrence: every-lap}\n");
        }
        return Trackside.yaml(text + more);
    }

    private static Forecast forecast(Case run) {
        return new Predictions(run.car(), Surface.DRY).forecast(run, Complaint.of(run, TyreReader.read(run), Paddock.weights()))
                .orElseThrow();
    }

    private static double gain(Case run, String change, int steps) {
        Change made = Change.parse(change).orElseThrow();
        return forecast(run).gain(made, run.car().setting(made.adjuster()).orElseThrow().moved(made.direction(), steps))
                .orElseThrow();
    }

    @Test
    @DisplayName("a softer front bar takes from a push, a stiffer one adds to it")
    void bar() {
        Case run = run(TOURER, "", PUSH);
        assertTrue(gain(run, "front-anti-roll-bar softer", 1) > 0);
        assertTrue(gain(run, "front-anti-roll-bar stiffer", 1) < 0);
    }

    @Test
    @DisplayName("nothing is gained by no step, and a push is worth the words of its grade")
    void nothing() {
        Case run = run(TOURER, "", PUSH);
        assertEquals(0, gain(run, "front-anti-roll-bar softer", 0), 1e-9);
        assertEquals(3, forecast(run).told(), 1e-9);
    }

    @Test
    @DisplayName("a damper is not worth a run for a corner that has settled")
    void damper() {
        Case run = run(TOURER, "", PUSH);
        Change damper = Change.parse("front-rebound softer").orElseThrow();
        assertFalse(forecast(run).worthARun(damper, run.car().setting(damper.adjuster()).orElseThrow()
                .moved(damper.direction(), 1)));
    }

    @Test
    @DisplayName("of a slight push, steps that turn the car round leave more than they take")
    void turnedRound() {
        Case run = run(LOOSE, "", "understeer, phase: mid-corner, speed: medium, severity: slight");
        assertTrue(gain(run, "front-anti-roll-bar softer", 3) < 0);
    }

    @Test
    @DisplayName("what turns a loose car round harms, what is fine does not")
    void harms() {
        Case run = run(LOOSE, "", "understeer, phase: mid-corner, speed: medium, severity: slight");
        LookAhead ahead = new LookAhead(run, forecast(run));
        assertTrue(ahead.harms(ranked(run, "front-anti-roll-bar softer", 3)));
        assertFalse(ahead.harms(ranked(run, "front-toe toe-out", 1)));
    }

    @Test
    @DisplayName("after a run that told the same with a stiffer front bar, less is taken to be left, and a second step does less")
    void earlierRun() {
        Case run = run(TOURER, "", PUSH);
        Change softer = Change.parse("front-anti-roll-bar softer").orElseThrow();
        Setting bar = run.car().setting(softer.adjuster()).orElseThrow();
        Case stiffer = run.withSetup(Map.of(softer.adjuster(), bar.moved(softer.direction().opposite(), 2)));
        assertTrue(gain(run.withEarlier(List.of(stiffer)), "front-anti-roll-bar softer", 2)
                < gain(run, "front-anti-roll-bar softer", 2));
    }

    @Test
    @DisplayName("the model does not show tyres and weight at the wheel, nor what has no place in the corner: it is not asked")
    void notShown() {
        assertTrue(forecast(run(TOURER, "", PUSH)).shows());
        assertFalse(forecast(run(TOURER, "", PUSH, "heavy-steering, phase: mid-corner, severity: clear")).shows());
        assertFalse(forecast(run(TOURER, "", "understeer, severity: clear")).shows());
    }

    @Test
    @DisplayName("after a trial the first of the rules' changes that would be felt comes first, and says why")
    void lookedAhead() {
        Case run = run(TOURER, "", "understeer, phase: mid-corner, severity: clear");
        LookAhead ahead = new LookAhead(run, forecast(run));
        RankedChange bar = named(Paddock.advise(run(TOURER, "", PUSH)).changes(), "front-anti-roll-bar softer").orElseThrow();
        RankedChange damper = ranked(run, "front-rebound softer", 1);
        assertEquals(Optional.empty(), ahead.worthARun(List.of(bar, damper)));
        RankedChange found = ahead.worthARun(List.of(damper, bar)).orElseThrow();
        assertEquals(bar.change(), found.change());
        assertTrue(found.size().computation().stream().anyMatch(line -> line.contains("noticeably less is left")));
        assertEquals(Optional.empty(), ahead.worthARun(List.of(damper)), "where nothing would be felt the order stands");
    }

    @Test
    @DisplayName("a push told without a speed is told of slow, medium and fast corners, what locks of one place")
    void places() {
        String slow = "understeer, phase: mid-corner, speed: slow, severity: clear";
        assertEquals(3, Forecast.words(run(TOURER, "", slow).reports()), 1e-9);
        assertEquals(9, Forecast.words(run(TOURER, "", "understeer, phase: mid-corner, severity: clear").reports()), 1e-9);
        assertEquals(3, Forecast.words(run(TOURER, "", "front-locking, phase: braking, severity: clear").reports()), 1e-9);
    }

    private static RankedChange ranked(Case run, String named, int steps) {
        Change change = Change.parse(named).orElseThrow();
        Setting setting = run.car().setting(change.adjuster()).orElseThrow();
        RankedChange like = named(Paddock.advise(run(TOURER, "", PUSH)).changes(), "front-anti-roll-bar softer").orElseThrow();
        return new RankedChange(1, change, new Size(Optional.of(setting.now()), Optional.of(setting.moved(change.direction(),
                steps)), steps, List.of(), List.of()), like.score(), like.proposals(), like.because(), like.firstBy(),
                like.note(), like.way());
    }

    private static Optional<RankedChange> named(List<RankedChange> ranked, String change) {
        return ranked.stream().filter(it -> it.change().id().equals(change)).findFirst();
    }
}
