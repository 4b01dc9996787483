package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.advice.Size;
import camberwell.car.Car;
import camberwell.reading.CamberByWheel;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Turn;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Cars whose camber is set wheel by wheel. That the loaded wheel is judged, and that cars for ovals stand unlike left and
 * right on purpose, is common practice, no source.
 */
@DisplayName("Where each wheel has a camber of its own")
class CamberByWheelTest {

    private static Quantity degrees(double value) {
        return new Quantity(value, Unit.DEGREE);
    }

    private static Advice advice(Case run) {
        return Paddock.advise(run);
    }

    private static List<String> cambers(Advice advice) {
        return advice.changes().stream().map(RankedChange::change).map(Change::id)
                .filter(change -> change.contains("camber")).toList();
    }

    private static Case turning(Turn turns, Case run) {
        return run.withConditions(new Conditions(run.conditions().said(), run.conditions().air(),
                run.conditions().track(), run.conditions().coldTyres(), run.conditions().altitude(), turns));
    }

    @Test
    @DisplayName("the outer wheel of a circuit that turns one way is the one to work on, whichever way that is")
    void outerWheel() {
        Case push = Paddock.run("pushes-with-a-camber-for-each-wheel");
        assertEquals(List.of("front-camber more-negative"), cambers(advice(push)));
        Case oneWay = push.withReports(push.reports().stream().map(report -> new Report(report.symptom(),
                report.where(), report.phase(), report.speed(), report.severity(), report.occurrence(), report.since(),
                Optional.empty())).toList());
        assertEquals(List.of("front-right-camber more-negative"), cambers(advice(turning(Turn.LEFT, oneWay))));
        assertEquals(List.of("front-left-camber more-negative"), cambers(advice(turning(Turn.RIGHT, oneWay))));
    }

    @Test
    @DisplayName("a change of both wheels moves each by as much from where it stands")
    void bothWheels() {
        RankedChange change = advice(Paddock.run("pushes-with-a-camber-for-each-wheel")).changes().get(0);
        assertEquals(List.of("front-left -2.0 deg to -2.3 deg", "front-right -2.6 deg to -2.9 deg"), change.size().wheels()
                .stream().map(CamberByWheelTest::text).toList());
    }

    private static String text(Size.WheelSize wheel) {
        return wheel.wheel().id() + " " + wheel.from().text(1) + " to " + wheel.to().text(1);
    }

    @Test
    @DisplayName("both wheels moved alike are one change of the axle, and what came of it is remembered")
    void movedTogether() {
        Case push = Paddock.run("pushes-with-a-camber-for-each-wheel");
        List<Tried> tried = List.of(tried("front-left-camber more-negative"), tried("front-right-camber more-negative"));
        Advice advice = advice(push.withTried(tried));
        assertTrue(advice.experience().of(Change.parse("front-camber more-negative").orElseThrow()).isPresent());
        assertFalse(cambers(advice).contains("front-camber more-negative"), "it made it worse");
    }

    private static Tried tried(String change) {
        return new Tried(Change.parse(change).orElseThrow(), Tried.Moved.UNNOTED, Outcome.WORSE, Tried.On.ALL,
                new Tried.Trial(Optional.of(1), Optional.empty(), Optional.empty(), 2, Optional.empty(), Optional.empty(),
                        false));
    }

    @Test
    @DisplayName("the camber of an axle is set on each of its wheels, and they stand apart as they stood")
    void setTogether() {
        Case run = Paddock.run("pushes-with-a-camber-for-each-wheel");
        assertEquals(-2.3, run.car().setting(Adjuster.FRONT_CAMBER).orElseThrow().now().value(), 1e-9);
        Case set = run.withSetup(Map.of(Adjuster.FRONT_CAMBER, degrees(-2.7)));
        assertEquals(Map.of(Adjuster.FRONT_LEFT_CAMBER, degrees(-2.4), Adjuster.FRONT_RIGHT_CAMBER, degrees(-3.0)),
                set.setup());
        assertEquals(degrees(-2.4), set.car().setting(Adjuster.FRONT_LEFT_CAMBER).orElseThrow().now());
        assertEquals(degrees(-3.0), set.car().setting(Adjuster.FRONT_RIGHT_CAMBER).orElseThrow().now());
    }

    @Test
    @DisplayName("together they go no further than the one that is nearer to its stop")
    void asFarAsBothGo() {
        Car car = Paddock.run("pushes-with-a-camber-for-each-wheel").car();
        var both = car.setting(Adjuster.FRONT_CAMBER).orElseThrow();
        assertEquals(-3.7, both.min().value(), 1e-9);
        assertEquals(-0.8, both.max().value(), 1e-9);
    }

    @Test
    @DisplayName("a car with one camber an axle knows nothing of it")
    void others() {
        Case run = Paddock.run("pushes-in-snaps-out");
        assertTrue(CamberByWheel.of(run).isEmpty());
        assertTrue(CamberByWheel.judged(run) == run);
    }
}
