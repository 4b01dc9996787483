package camberwell.cases;

import static camberwell.cases.PanelCase.advise;
import static camberwell.cases.PanelCase.change;
import static camberwell.cases.PanelCase.changes;
import static camberwell.cases.PanelCase.habits;
import static camberwell.cases.PanelCase.likely;
import static camberwell.cases.PanelCase.moved;
import static camberwell.cases.PanelCase.said;
import static camberwell.cases.PanelCase.told;
import static camberwell.cases.PanelCase.tyres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.explain.DemoCases;
import camberwell.report.AdviceText;
import camberwell.report.NewcomerText;
import camberwell.report.Page;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** More of the panel, likewise written down before the program was asked. Common practice, no source. */
@DisplayName("A race engineer's second panel")
class SecondPanelTest {

    private static final List<String> CARS = List.of("corvane-coupe", "tessel-single-seater", "sandling-tourer",
            "harrow-rally-saloon");
    private static final String DRY = "conditions: {surface: dry, air: 20 °C, track: 30 °C}\n";
    private static final String WET = "conditions: {surface: wet, air: 14 °C}\n";
    private static final String AGAIN = "Drive it again, the same way";
    private static final String FINE = "91 89 87 1.85";
    private static final Set<Adjustment> BALANCE = Set.of(Adjustment.ANTI_ROLL_BAR, Adjustment.SPRINGS, Adjustment.TOE,
            Adjustment.CAMBER, Adjustment.WING, Adjustment.BRAKE_BIAS, Adjustment.DIFFERENTIAL_POWER,
            Adjustment.DIFFERENTIAL_COAST, Adjustment.DIFFERENTIAL_PRELOAD);

    private final List<String> wrong = new ArrayList<>();

    private void none() {
        assertEquals("", String.join("\n", wrong));
    }

    private static String newcomer(Advice advice) {
        Page page = new Page(100_000, false);
        new NewcomerText(DemoCases.NOTES, DemoCases.TERMS).write(advice, page);
        return page.toString();
    }

    private static String engineer(Advice advice, boolean details) {
        Page page = new Page(100_000, false);
        new AdviceText(Paddock.notes(), 5, details).write(advice, page);
        return page.toString();
    }

    @Test
    @DisplayName("a tyre set cold below its maker's minimum: everybody reads of the minimum, though it is on its target hot")
    void coldMinimum() {
        Advice advice = advise("corvane-coupe", DRY + """
                tyres:
                  front-left: {inner: 91 °C, middle: 89 °C, outer: 87 °C, cold-pressure: 1.20 bar, hot-pressure: 1.85 bar}
                  front-right: {inner: 91 °C, middle: 89 °C, outer: 87 °C, cold-pressure: 1.45 bar, hot-pressure: 1.85 bar}
                """);
        for (String text : List.of(newcomer(advice), engineer(advice, false), engineer(advice, true))) {
            assertTrue(text.toLowerCase(Locale.ROOT).contains("minimum"), text);
        }
    }

    @Test
    @DisplayName("a strong snap, rears that lock, a pull on the brakes: nobody is sent out to feel it again, not even if it "
            + "came once")
    void notAgain() {
        for (String when : List.of("occurrence: once", "occurrence: some-laps", "occurrence: every-lap")) {
            for (String report : List.of("snap-oversteer, phase: mid-corner, severity: strong",
                    "snap-oversteer, phase: entry, severity: strong", "rear-locking, phase: braking, severity: strong",
                    "pulling, phase: braking, severity: strong", "pulling, phase: braking, severity: clear")) {
                for (String car : CARS) {
                    Advice advice = advise(car, DRY + said(when, report));
                    if (habits(advice).contains("repeat-the-lap-before-changing") || newcomer(advice).contains(AGAIN)) {
                        wrong.add(car + ", " + when + ", " + report + ": " + habits(advice));
                    }
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("wheels that spin in the wet: a gentler foot and no more locking, since two wheels would let go together")
    void wetWheelspin() {
        for (String car : CARS) {
            for (String severity : List.of("slight", "clear", "strong")) {
                Advice advice = advise(car, WET + told("wheelspin, phase: exit, severity: " + severity));
                if (changes(advice).stream().anyMatch(Set.of("differential-power more", "differential-preload more")::contains)
                        || !habits(advice).contains("squeeze-the-throttle")) {
                    wrong.add(car + " " + severity + ": " + changes(advice) + " " + habits(advice));
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("a car that is driven at the front is not told of a rear that squats, nor to open the throttle for a slide "
            + "on the lift")
    void frontDrive() {
        for (String report : List.of("understeer, phase: exit", "understeer, phase: mid-corner",
                "snap-oversteer, phase: lift-off",
                "oversteer, phase: lift-off", "wheelspin, phase: exit", "oversteer, phase: exit",
                        "snap-oversteer, phase: exit")) {
            for (String car : List.of("sandling-tourer", "larkspur-hatch")) {
                Advice advice = advise(car, DRY + told(report + ", severity: clear"));
                for (String text : List.of(newcomer(advice), engineer(advice, true))) {
                    for (String untrue : List.of("rear sits down", "rear squats", "rear wheels spin", "power oversteer",
                            "snap goes away when", "rear differential")) {
                        if (text.contains(untrue)) {
                            wrong.add(car + " " + report + ": " + untrue);
                        }
                    }
                    if (report.contains("lift-off") && text.matches("(?s).*open(ed|ing)? the throttle earlier.*")) {
                        wrong.add(car + " " + report + ": open the throttle earlier");
                    }
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("whatever comes in the first laps and is better later is cold rubber: the car waits, without a thermometer")
    void firstLaps() {
        for (String report : List.of("understeer, phase: mid-corner", "understeer, phase: entry", "oversteer, phase: exit",
                "oversteer, phase: mid-corner", "snap-oversteer, phase: exit", "snap-oversteer, phase: mid-corner",
                "wheelspin, phase: exit", "front-locking, phase: braking", "rear-locking, phase: braking",
                "unstable-braking, phase: braking", "slow-turn-in, phase: entry", "nervous-turn-in, phase: entry",
                "oversteer, phase: lift-off")) {
            for (String day : List.of("conditions: {surface: dry}\n", DRY, DRY + tyres(FINE, FINE, FINE, FINE))) {
                if (day.contains("tyres:")) {
                    check(advise("corvane-coupe", day + said("occurrence: every-lap, since: first-laps", report
                            + ", severity: clear")), "corvane-coupe read " + report);
                    continue;
                }
                for (String car : CARS) {
                    check(advise(car, day + said("occurrence: every-lap, since: first-laps", report + ", severity: clear")),
                            car + " " + report);
                }
            }
        }
        none();
    }

    private void check(Advice advice, String name) {
        if (!likely(advice, "tyres-not-warm-yet")
                || advice.changes().stream().anyMatch(it -> BALANCE.contains(it.change().adjuster().adjustment()))
                || habits(advice).stream().noneMatch(Set.of("warm-the-tyres", "be-patient-with-cold-tyres")::contains)) {
            wrong.add(name + ": " + changes(advice) + " " + habits(advice) + " " + likely(advice, "tyres-not-warm-yet"));
        }
    }

    @Test
    @DisplayName("overheated fronts and a push: the softer front bar unloads them, and the front is not loaded any more")
    void hotFronts() {
        Advice advice = advise("corvane-coupe", DRY + tyres("112 110 107 1.85", "112 110 107 1.85", FINE, FINE)
                + told("understeer, phase: mid-corner, severity: clear"));
        assertTrue(changes(advice).contains("front-anti-roll-bar softer"), changes(advice) + " " + advice.withheld());
        for (String never : List.of("front-anti-roll-bar stiffer", "rear-anti-roll-bar softer", "front-toe toe-out",
                "front-pressure lower", "front-springs stiffer")) {
            assertFalse(changes(advice).contains(never), changes(advice).toString());
        }
    }

    @Test
    @DisplayName("fronts 0.10 to 0.35 bar over their target on a neutral tread, or hotter in the middle: never more air, and "
            + "from 0.15 on less")
    void overTheTarget() {
        for (double over : new double[] {0.10, 0.15, 0.20, 0.25, 0.30, 0.35}) {
            for (String tread : List.of("91 89 87", "90 93 87")) {
                String front = tread + " " + String.format(Locale.ROOT, "%.2f", 1.85 + over);
                Advice advice = advise("corvane-coupe", DRY + tyres(front, front, FINE, FINE)
                        + told("understeer, phase: mid-corner, severity: clear"));
                if (over > 0.14 && !changes(advice).contains("front-pressure lower")
                        || changes(advice).contains("front-pressure higher")) {
                    wrong.add(front + ": " + changes(advice) + " " + advice.withheld());
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("wheelspin, locking and snaps of every lap: the driver is told what to do with his feet, beside the change")
    void habitBesideTheChange() {
        for (String report : List.of("wheelspin, phase: exit", "front-locking, phase: braking", "front-locking, phase: entry",
                "rear-locking, phase: braking", "rear-locking, phase: entry", "snap-oversteer, phase: braking",
                "snap-oversteer, phase: entry", "snap-oversteer, phase: mid-corner", "snap-oversteer, phase: exit",
                "snap-oversteer, phase: lift-off", "oversteer, phase: lift-off")) {
            for (String severity : List.of("slight", "clear", "strong")) {
                for (String car : CARS) {
                    for (String since : List.of("whole-run", "late-run")) {
                        Advice advice = advise(car, DRY + said("occurrence: every-lap, since: " + since,
                                report + ", severity: " + severity));
                        if (habits(advice).isEmpty()) {
                            wrong.add(car + " " + severity + " " + report + " " + since + ": " + changes(advice));
                        }
                    }
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("rears from just inside their window to 15 K over it: the softer rear bar stays, and no fifth of a kelvin "
            + "tips anything: a tenth at most")
    void noCliff() {
        double last = Double.NaN;
        for (int step = 0; step <= 75; step++) {
            double rear = 98 + step * 0.2;
            String read = String.format(Locale.ROOT, "%.1f %.1f %.1f 1.85", rear + 2, rear, rear - 2);
            Advice advice = advise("corvane-coupe", DRY + tyres(FINE, FINE, read, read)
                    + told("oversteer, phase: mid-corner, severity: clear"));
            double now = change(advice, "rear-anti-roll-bar softer").score().certainty();
            if (Math.abs(now - last) > 0.1) {
                wrong.add(read + ": " + last + " to " + now);
            }
            last = now;
        }
        none();
    }

    @Test
    @DisplayName("fronts on their stops: up they go; that makes nothing worse of it, and no wing presses them further down")
    void onTheStops() {
        for (String car : CARS) {
            Advice advice = advise(car, DRY + told("bottoming, where: front, phase: mid-corner, speed: fast, severity: clear",
                    "understeer, phase: mid-corner, speed: fast, severity: clear"));
            RankedChange up = change(advice, "front-ride-height higher");
            if (up.rank() > 2 || up.score().harmToComplaints() > 0 || changes(advice).stream().anyMatch(Set.of("front-wing more",
                    "front-ride-height lower", "front-springs softer", "rear-ride-height higher",
                    "rear-anti-roll-bar stiffer")::contains)) {
                wrong.add(car + ": " + changes(advice) + " " + up.score().costs());
            }
        }
        none();
    }

    @Test
    @DisplayName("rears on their stops: up they go, no wing presses them further down, and no bar is turned")
    void rearOnTheStops() {
        for (String car : CARS) {
            Advice advice = advise(car, DRY + told("bottoming, where: rear, phase: mid-corner, speed: fast, severity: clear",
                    "oversteer, phase: mid-corner, speed: fast, severity: clear"));
            RankedChange up = change(advice, "rear-ride-height higher");
            if (up.rank() > 2 || changes(advice).stream().anyMatch(id -> id.contains("anti-roll-bar")
                    || Set.of("rear-wing more", "rear-ride-height lower", "rear-springs softer").contains(id))) {
                wrong.add(car + ": " + changes(advice));
            }
        }
        none();
    }

    @Test
    @DisplayName("rear toe-in steadies a car and does next to nothing at the limit: never before the rear bar for a steady slide")
    void toeInAtTheLimit() {
        for (String car : CARS) {
            for (String phase : List.of("entry", "mid-corner", "exit")) {
                for (String speed : List.of("slow", "medium")) {
                    List<String> ranked = changes(advise(car, DRY + told("oversteer, phase: " + phase + ", speed: " + speed
                            + ", severity: clear")));
                    int toe = ranked.indexOf("rear-toe toe-in");
                    int bar = ranked.indexOf("rear-anti-roll-bar softer");
                    if (bar < 0 || toe >= 0 && toe < bar) {
                        wrong.add(car + " " + phase + " " + speed + ": " + ranked);
                    }
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("a tyre that lost its air, or a pull on the brakes: the look for damage is read before any change")
    void damageFirst() {
        for (String name : List.of("the-right-front-went-soft", "a-valve-lets-go", "pulls-under-braking")) {
            Advice advice = Paddock.advise(Paddock.run(name));
            assertTrue(advice.halt().isPresent(), name);
            String look = advice.halt().get().statement();
            for (String text : List.of(engineer(advice, false), engineer(advice, true))) {
                for (RankedChange change : advice.changes()) {
                    assertTrue(text.contains(look) && text.indexOf(look) < text.indexOf(change.why()), name + "\n" + text);
                }
            }
        }
    }

    @Test
    @DisplayName("rear wheels found toed out: that toe, and nothing else until it is put right")
    void toedOutRear() {
        assertEquals(List.of("rear-toe toe-in"), changes(Paddock.advise(Paddock.run("since-the-kerb-strike"))));
    }

    @Test
    @DisplayName("a hundredth of a degree of toe-out is no excess of it, four tenths are")
    void presentToe() {
        for (String report : List.of("nervous-turn-in, phase: entry", "wandering, phase: straight",
                "unstable-braking, phase: braking")) {
            assertFalse(likely(advise("corvane-coupe", DRY + "setup: {front-toe: -0.01 deg}\n"
                    + told(report + ", severity: clear")),
                    "front-toe-out-excess"), report);
            Advice far = advise("sandling-tourer", DRY + "setup: {front-toe: -0.40 deg}\n" + told(report + ", severity: clear"));
            assertTrue(likely(far, "front-toe-out-excess"), report + " " + far.findings());
            assertTrue(changes(far).indexOf("front-toe toe-in") >= 0 && changes(far).indexOf("front-toe toe-in") < 2,
                    report + " " + changes(far));
        }
    }

    @Test
    @DisplayName("caster 3.5° is not taken off for a heavy wheel, and 8.5° is not added to for a car that wanders")
    void presentCaster() {
        String car = "title: a\ncar: {name: a, drive: rear, adjusters: {caster: {now: %s deg, min: 3 deg, max: 10 deg, step: "
                + "0.5 deg},"
                + " rear-toe: {now: 0.35 deg, min: 0 deg, max: 0.6 deg, step: 0.05 deg}}}\n";
        Advice heavy = Paddock.advise(Trackside.yaml(car.formatted("3.5")
                + told("heavy-steering, phase: mid-corner, severity: clear")));
        assertFalse(changes(heavy).contains("caster less"), changes(heavy).toString());
        Advice wanders = Paddock.advise(Trackside.yaml(car.formatted("8.5")
                + told("wandering, phase: straight, severity: clear")));
        assertFalse(changes(wanders).contains("caster more"), changes(wanders).toString());
        assertFalse(changes(wanders).contains("rear-toe toe-in"), changes(wanders).toString());
    }

    @Test
    @DisplayName("a wheel that locked once moves no brake balance, and the driver hears what to try")
    void lockedOnce() {
        for (String car : CARS) {
            for (String end : List.of("front", "rear")) {
                Advice advice = advise(car, DRY + said("occurrence: once", end + "-locking, phase: braking, severity: clear"));
                if (changes(advice).stream().anyMatch(id -> id.startsWith("brake-bias")) || habits(advice).isEmpty()) {
                    wrong.add(car + ", " + end + ": " + changes(advice) + " " + habits(advice));
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("the end that strikes the road is the end that is raised")
    void bottomsInFront() {
        for (String car : CARS) {
            for (String phase : List.of("straight", "braking", "mid-corner", "kerbs")) {
                Advice front = advise(car, DRY + told("bottoming, where: front, phase: " + phase + ", severity: clear"));
                Advice rear = advise(car, DRY + told("bottoming, where: rear, phase: " + phase + ", severity: clear"));
                if (changes(front).contains("rear-ride-height higher") || !changes(front).contains("front-ride-height higher")) {
                    wrong.add(car + " front " + phase + ": " + changes(front));
                }
                if (changes(rear).contains("front-ride-height higher") || !changes(rear).contains("rear-ride-height higher")) {
                    wrong.add(car + " rear " + phase + ": " + changes(rear));
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("a push or a slide of which nobody said how fast the corner was is no matter for a wing first")
    void speedNotSaid() {
        for (String car : CARS) {
            for (String report : List.of("understeer, phase: mid-corner", "oversteer, phase: mid-corner",
                    "snap-oversteer, phase: mid-corner")) {
                Advice advice = advise(car, DRY + told(report + ", severity: clear"));
                if (changes(advice).isEmpty() || changes(advice).get(0).contains("wing")) {
                    wrong.add(car + " " + report + ": " + changes(advice));
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("in the wet: one step of a spring, no stiffer bar, no lower floor, no more camber, no more locking")
    void wetSet() {
        for (String car : CARS) {
            for (String report : List.of("understeer, phase: mid-corner", "understeer, phase: entry",
                    "oversteer, phase: mid-corner",
                    "oversteer, phase: exit", "understeer, phase: exit")) {
                Advice advice = advise(car, WET + told(report + ", severity: strong"));
                for (RankedChange it : advice.changes()) {
                    Adjustment of = it.change().adjuster().adjustment();
                    Direction way = it.change().direction();
                    if (of == Adjustment.SPRINGS && it.size().steps() > 1 || of == Adjustment.ANTI_ROLL_BAR && moved(it) > 1
                            || of == Adjustment.RIDE_HEIGHT && way == Direction.LOWER
                            || of == Adjustment.CAMBER && way == Direction.MORE_NEGATIVE
                            || it.change().id().equals("differential-power more")
                            || it.change().id().equals("differential-preload more")) {
                        wrong.add(car + " " + report + ": " + it.change().id() + " " + it.size());
                    }
                }
                if (advice.changes().isEmpty() && advice.driving().isEmpty()) {
                    wrong.add(car + " " + report + ": nothing");
                }
            }
        }
        none();
    }

    @Test
    @DisplayName("fronts that stay cold: a touch of toe may help to warm them, one step and by a trace, and its wear is told")
    void toeIsNoHeater() {
        for (String car : List.of("larkspur-hatch", "corvane-coupe")) {
            Advice advice = advise(car, DRY + tyres("61 59 57 1.85", "61 59 57 1.85", "85 83 81 1.85", "85 83 81 1.85")
                    + told("slow-warm-up, where: front, severity: clear"));
            for (RankedChange it : advice.changes()) {
                if (it.change().adjuster().adjustment() == Adjustment.TOE) {
                    assertEquals(1, it.size().steps());
                    assertTrue(it.score().helps().stream().allMatch(help -> help.effect() <= 1), it.score().helps().toString());
                    assertFalse(it.score().costs().isEmpty());
                }
            }
        }
    }

    @Test
    @DisplayName("a bar at the end of its range waits for a pressure that the gauge finds wrong, whichever way it is wrong")
    void pressureBeforeWhatStandsOut() {
        String car = """
                title: a
                car:
                  name: Barrow heavy saloon
                  drive: rear
                  kind: saloon
                  adjusters:
                    front-pressure: {now: 32 psi, min: 26 psi, max: 44 psi, step: 1 psi}
                    front-anti-roll-bar: {now: 7, min: 1, max: 7, step: 1}
                  tyres:
                    front: {window: [160 °F, 230 °F], hot-target: %s psi, cold-minimum: 26 psi, rim: 19 in, diameter: 680 mm}
                conditions: {surface: dry, air: 84 °F, track: 100 °F}
                stint: {laps: 14}
                tyres:
                  front-left: {inner: 205 °F, middle: 200 °F, outer: 195 °F, cold-pressure: 32 psi, hot-pressure: 41 psi}
                  front-right: {inner: 205 °F, middle: 200 °F, outer: 195 °F, cold-pressure: 32 psi, hot-pressure: 41 psi}
                """ + told("understeer, phase: mid-corner, speed: medium");
        assertEquals("front-pressure lower", changes(Paddock.advise(Trackside.yaml(car.formatted("39.2")))).get(0));
        assertEquals("front-pressure higher", changes(Paddock.advise(Trackside.yaml(car.formatted("42.8")))).get(0));
        assertEquals("front-anti-roll-bar softer", changes(Paddock.advise(Trackside.yaml(car.formatted("41")))).get(0));
    }

    @Test
    @DisplayName("in the wet a pressure moves towards a target of the dry by 2 psi at the most, and that is said")
    void wetPressure() {
        for (String surface : List.of("wet", "dry")) {
            Advice advice = advise("corvane-coupe", "conditions: {surface: " + surface + ", air: 10 °C, track: 20 °C}\n"
                    + "stint: {compound: medium, laps: 12}\n"
                    + tyres(FINE, FINE, "80 79 78 1.55", "80 79 78 1.55") + said("occurrence: every-lap",
                    "snap-oversteer, phase: entry, speed: medium"));
            RankedChange fill = change(advice, "rear-pressure higher");
            boolean bounded = String.join(" ", fill.size().computation()).contains("the trade's step of 2 psi at once");
            assertEquals(surface.equals("wet"), bounded, surface);
            assertEquals(bounded, moved(fill) <= 0.138, surface + ": " + moved(fill));
        }
    }

    @Test
    @DisplayName("a car that snaps: what keeps it on the road is the first habit for everybody, before surer ones")
    void marginFirst() {
        for (String day : List.of(WET, DRY)) {
            String cold = "40 39 38 1.80";
            Advice advice = advise("corvane-coupe", day + tyres(cold, cold, cold, cold)
                    + told("snap-oversteer, phase: entry, speed: fast"));
            assertEquals("leave-a-margin", habits(advice).get(0), habits(advice).toString());
            assertTrue(advice.drivingFirst());
            assertTrue(newcomer(advice).contains("Drive that place below its limit"));
        }
    }

    @Test
    @DisplayName("a complaint that is entered twice counts once, the heavier; one that comes elsewhere is another")
    void enteredTwice() {
        String slight = "  - {symptom: understeer, phase: entry, speed: slow, severity: slight, occurrence: every-lap}\n";
        String clear = slight.replace("slight", "clear");
        Advice once = advise("corvane-coupe", DRY + "reports:\n" + clear);
        Advice twice = advise("corvane-coupe", DRY + "reports:\n" + slight + clear + slight);
        assertEquals(once.complaints(), twice.complaints());
        assertEquals(changes(once), changes(twice));
        assertEquals(2, advise("corvane-coupe", DRY + "reports:\n" + clear + clear.replace("slow", "fast")).complaints().size());
    }

    @Test
    @DisplayName("a nose that strikes the road is raised; nothing else leans the car further onto it")
    void noseStrikes() {
        Advice advice = advise("tessel-single-seater", DRY + told("bottoming, phase: mid-corner, speed: fast, severity: strong",
                "understeer, phase: mid-corner, speed: fast"));
        assertTrue(changes(advice).contains("front-ride-height higher"), changes(advice).toString());
        assertFalse(changes(advice).contains("rear-ride-height higher"), changes(advice).toString());
        assertFalse(changes(advice).contains("front-wing more"), changes(advice).toString());
    }

    @Test
    @DisplayName("a newcomer reads of what troubles most also where the one change is for something else, and what to tell next")
    void notPassedOver() {
        String text = newcomer(advise("corvane-coupe", WET + tyres(FINE, FINE, "80 79 78 1.55", "80 79 78 1.55")
                + told("snap-oversteer, phase: entry, speed: medium")));
        assertTrue(text.contains("What you told of"), text);
        assertTrue(text.contains("What is for this comes after the change above"), text);
        assertFalse(newcomer(advise("corvane-coupe", DRY + told("understeer, phase: mid-corner, speed: medium")))
                .contains("What you told of"));
    }

    @Test
    @DisplayName("what is told answers in the unit that was read: of treads in Fahrenheit no difference in kelvin")
    void readInFahrenheit() {
        Advice advice = Paddock.advise(Trackside.yaml("""
                title: a
                car:
                  name: b
                  drive: rear
                  adjusters:
                    front-pressure: {now: 32 psi, min: 26 psi, max: 44 psi, step: 1 psi}
                    front-camber: {now: -2.0 deg, min: -4.0 deg, max: 0.0 deg, step: 0.1 deg}
                  tyres:
                    front: {window: [160 °F, 210 °F], hot-target: 38 psi, rim: 19 in, diameter: 680 mm}
                conditions: {surface: dry, air: 84 °F, track: 100 °F}
                tyres:
                  front-left: {inner: 180 °F, middle: 190 °F, outer: 215 °F, hot-pressure: 43 psi}
                  front-right: {inner: 180 °F, middle: 190 °F, outer: 215 °F, hot-pressure: 43 psi}
                """));
        List<String> said = new ArrayList<>(advice.doubts());
        advice.complaints().forEach(complaint -> said.add(complaint.text()));
        advice.changes().stream().filter(change -> change.change().id().contains("pressure"))
                .forEach(change -> said.addAll(change.size().computation()));
        assertTrue(said.stream().anyMatch(text -> text.contains("35 °F hotter than the inner (front-left 180/190/215")),
                said.toString());
        assertTrue(said.stream().anyMatch(text -> text.startsWith("front-left: set to 32.0 psi cold, grew to 43.0")), said.toString());
        assertTrue(said.stream().noneMatch(text -> text.contains("°C") || text.contains(" K ")), said.toString());
    }
}
