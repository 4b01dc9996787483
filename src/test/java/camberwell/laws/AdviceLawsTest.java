package camberwell.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.advice.Answer;
import camberwell.advice.RankedChange;
import camberwell.advice.Size;
import camberwell.advice.Withheld;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.cases.Paddock;
import camberwell.fact.Certainty;
import camberwell.knowledge.Matter;
import camberwell.knowledge.Note;
import camberwell.run.Background;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.run.Stint;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What holds of every advice, over generated runs: the numbers of the runs are their seeds, so an offender can be made
 * again. {@code -Dcamberwell.laws=20000} takes more of them.
 */
@DisplayName("Whatever the run")
class AdviceLawsTest {

    private static final int RUNS = Integer.getInteger("camberwell.laws", 5000);
    /** Of each law that needs a second advice. */
    private static final int PAIRS = RUNS / 10;
    private static final int TOLD = 8;
    private static final double HAIR = 1e-9;

    private static Advice advice(Case run) {
        return Paddock.advise(run);
    }

    private static void each(int runs, BiConsumer<Case, List<String>> law) {
        List<String> offenders = new ArrayList<>();
        for (int number = 0; number < runs && offenders.size() < TOLD; number++) {
            law.accept(AnyRun.of(number), offenders);
        }
        assertEquals("", String.join("\n", offenders));
    }

    private static String order(Advice advice) {
        return advice.changes().stream().map(change -> change.change().id()).collect(Collectors.joining(", "));
    }

    @Test
    @DisplayName("every complaint is answered, no size is beyond its bound, and nobody is sent out before a halt")
    void always() {
        each(RUNS, (run, offenders) -> {
            Advice advice = advice(run);
            if (advice.answers().size() != run.reports().size()
                    || advice.answers().stream().map(Answer::by).anyMatch(List::isEmpty)) {
                offenders.add(run.title() + ": not answered: " + advice.answers());
            }
            if (advice.halt().isPresent() && (!advice.driving().isEmpty() || advice.drivingFirst()
                    || advice.changes().stream().anyMatch(change -> change.change().adjuster().wheel().isEmpty()
                    || change.change().adjuster().adjustment() != Adjustment.PRESSURE))) {
                offenders.add(run.title() + ": sent out before " + advice.halt().get().name());
            }
            for (RankedChange change : advice.changes()) {
                outOfBounds(change, run).ifPresent(why -> offenders.add(run.title() + ": " + why));
                if (!Double.isFinite(change.score().total()) || change.why().isBlank()) {
                    offenders.add(run.title() + ": " + change.change() + " has no score or no reason");
                }
            }
            if (advice.changes().stream().map(change -> change.change().adjuster()).distinct().count()
                    < advice.changes().size()) {
                offenders.add(run.title() + ": one adjuster twice: " + order(advice));
            }
        });
    }

    /** The bounds as an engineer would set them, apart from how they are computed. */
    private static Optional<String> outOfBounds(RankedChange change, Case run) {
        Size size = change.size();
        Adjuster adjuster = change.change().adjuster();
        Setting setting = run.car().setting(adjuster).or(() -> adjuster.wheel().flatMap(run.car()::pressureSetting))
                .orElseThrow();
        double from = size.from().orElseThrow().value();
        double to = size.to().orElseThrow().value();
        double moved = Math.abs(to - from);
        double most = switch (adjuster.adjustment()) {
            case TOE -> 0.2;
            case CAMBER -> 0.5;
            case CASTER -> 1;
            case PRESSURE -> 0.5;
            case SPRINGS -> Math.max(from * 0.1, setting.step().value() <= 0.15 * from ? setting.step().value() : 0);
            case RIDE_HEIGHT -> 0.1 * from;
            case BRAKE_BIAS -> 1;
            case DIFFERENTIAL_PRELOAD -> Math.max(15, 0.25 * from);
            default -> 2 * setting.step().value();
        };
        if (moved > most + HAIR) {
            return Optional.of(change.change() + " goes " + from + " to " + to + ", more than " + most);
        }
        if (moved < HAIR || size.steps() < 1) {
            return Optional.of(change.change() + " goes nowhere");
        }
        if (to < setting.min().value() - HAIR || to > setting.max().value() + HAIR) {
            return Optional.of(change.change() + " goes beyond its stop to " + to);
        }
        double least = run.car().tyres(adjuster.axle().orElse(Axle.FRONT)).coldMinimum()
                .map(Quantity::value).orElse(0.0);
        if (adjuster.adjustment() == Adjustment.PRESSURE && (to < least - HAIR || size.wheels().stream()
                .anyMatch(wheel -> wheel.to().value() < least - HAIR))) {
            return Optional.of(change.change() + " goes below the minimum to " + to);
        }
        // Found toed out, it may be brought back in part of the way; it is never set there.
        return adjuster == Adjuster.REAR_TOE && to < Math.min(from, 0) - HAIR ? Optional.of("rear toe-out to " + to)
                : Optional.empty();
    }

    @Test
    @DisplayName("no text stands against its condition")
    void texts() {
        each(RUNS, (run, offenders) -> {
            Advice advice = advice(run);
            advice.driving().forEach(driving -> driving.note().variants().forEach(variant -> {
                boolean shown = List.of(driving.note().statement(), driving.note().plain(),
                        driving.note().practice().orElseThrow().tryNext()).contains(variant.text());
                if (shown && !variant.when().holds(advice.circumstances())) {
                    offenders.add(run.title() + ": " + driving.note().name() + " is shown for "
                            + variant.when().text());
                }
            }));
            for (RankedChange change : advice.changes()) {
                change.note().variants().stream().filter(variant -> variant.way()
                        .filter(way -> way == change.change().direction()).isPresent()).forEach(variant -> {
                    boolean shown = List.of(change.way().rationale(), change.way().plain(), change.way().watch(),
                            change.way().putBack()).contains(variant.text());
                    List<String> drives = variant.when().of(Matter.DRIVE);
                    if (shown && !drives.isEmpty() && !drives.contains(run.car().drive().orElseThrow().id())) {
                        offenders.add(run.title() + ": " + change.change() + " is worded for " + variant.when().text());
                    }
                });
            }
            advice.cautions().stream().filter(note -> run.car().simulator()
                    && note.when().of(Matter.SIMULATOR).contains("no"))
                    .forEach(note -> offenders.add(run.title() + ": in a simulator " + note.name()));
        });
    }

    /**
     * What must not be said beside a caution, as an engineer would put it: who is to set the minimum before the car moves, or
     * to look for damage before it goes out again, is not sent out with nothing changed, nor told to work the tyres.
     */
    private static final Map<String, List<String>> FORBIDDEN = Map.of(
            "below-the-cold-minimum", List.of("repeat-the-lap-before-changing", "warm-the-tyres"),
            "check-for-damage", List.of("repeat-the-lap-before-changing", "warm-the-tyres"),
            "rear-wheels-toed-out", List.of("repeat-the-lap-before-changing"),
            "bottoming-on-track", List.of(),
            "look-for-play", List.of(),
            "compare-both-directions", List.of(),
            "wet-track-pressure", List.of(),
            "read-off-a-fast-lap", List.of(),
            "read-the-hot-tyres", List.of(),
            "come-in-and-look", List.of("repeat-the-lap-before-changing", "warm-the-tyres"));

    /** A run long enough that its tyres had time to come in; of most runs nobody says how long they were. */
    private static final Background TWELVE_LAPS = new Background(new Stint(Optional.empty(), Optional.empty(), Optional.of(12),
            Optional.empty()), Background.UNKNOWN.pupil(), Map.of(), Optional.empty());

    @Test
    @DisplayName("no driving advice contradicts a caution")
    void cautions() {
        Set<String> drawn = new TreeSet<>();
        each(RUNS, (run, offenders) -> {
            Advice advice = advice(run.title().hashCode() % 2 == 0 ? run : run.withBackground(TWELVE_LAPS));
            List<String> habits = advice.driving().stream().map(driving -> driving.note().name()).toList();
            for (Note caution : advice.cautions()) {
                List<String> forbidden = FORBIDDEN.getOrDefault(caution.name(), List.of());
                drawn.add(caution.name());
                habits.stream().filter(forbidden::contains).forEach(habit -> offenders.add(run.title() + ": " + habit
                        + " beside " + caution.name()));
            }
        });
        Set<String> told = new TreeSet<>(Paddock.notes().names(Note.Kind.CAUTION));
        told.removeIf(name -> Paddock.notes().get(name).goesWithChanges());
        told.removeAll(FORBIDDEN.keySet());
        assertEquals(Set.of(), told, "cautions of which nobody has said what they forbid");
        assertTrue(drawn.containsAll(FORBIDDEN.keySet()), "drawn in some run: " + drawn);
    }

    @Test
    @DisplayName("the mirrored run gets the mirrored advice")
    void mirrored() {
        each(PAIRS, (run, offenders) -> {
            String here = order(advice(run));
            String there = order(advice(mirror(run)));
            if (!here.replace("-left-", "-?-").replace("-right-", "-left-").replace("-?-", "-right-").equals(there)) {
                offenders.add(run.title() + ": " + here + "\n    mirrored: " + there);
            }
        });
    }

    private static Case mirror(Case run) {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        run.tyres().forEach((wheel, tyre) -> tyres.put(Word.of(Wheel.class, other(wheel.id())), tyre));
        List<Report> reports = run.reports().stream().map(report -> new Report(report.symptom(),
                report.where().map(place -> Word.of(Place.class, other(place.id()))), report.phase(), report.speed(),
                report.severity(), report.occurrence(), report.since(), report.turn().map(AdviceLawsTest::other)))
                .toList();
        Conditions day = run.conditions();
        return new Case(run.title(), run.source(), mirror(run.car()), new Conditions(day.said(), day.air(), day.track(),
                day.coldTyres(), day.altitude(), other(day.turns())), tyres, reports, List.of());
    }

    private static Car mirror(Car car) {
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        car.adjusters().forEach((adjuster, setting) -> adjusters.put(adjuster.wheel().isEmpty() ? adjuster
                : Word.of(Adjuster.class, other(adjuster.id())), setting));
        return new Car(car.name(), car.drive(), adjusters, car.tyres(), car.dimensions(), false);
    }

    private static Turn other(Turn turn) {
        return turn == Turn.LEFT ? Turn.RIGHT : turn == Turn.RIGHT ? Turn.LEFT : Turn.BOTH;
    }

    private static String other(String place) {
        return place.contains("left") ? place.replace("left", "right") : place.replace("right", "left");
    }

    @Test
    @DisplayName("the order of the complaints, the car's name and the units of the readings change nothing")
    void invariant() {
        each(PAIRS, (run, offenders) -> {
            List<Report> shuffled = new ArrayList<>(run.reports());
            Collections.shuffle(shuffled, new Random(run.title().hashCode()));
            Map<Wheel, TyreReading> imperial = new EnumMap<>(Wheel.class);
            run.tyres().forEach((wheel, tyre) -> imperial.put(wheel, new TyreReading(to(tyre.inner(), Unit.FAHRENHEIT),
                    to(tyre.middle(), Unit.FAHRENHEIT), to(tyre.outer(), Unit.FAHRENHEIT),
                    to(tyre.coldPressure(), Unit.PSI), to(tyre.hotPressure(), Unit.PSI))));
            Car named = new Car("Another name", run.car().drive(), run.car().adjusters(), run.car().tyres(),
                    run.car().dimensions(), false);
            Case other = new Case("Another title", run.source(), named, run.conditions(), imperial, shuffled, List.of());
            String here = order(advice(run));
            String there = order(advice(other));
            if (!here.equals(there)) {
                offenders.add(run.title() + ": " + here + "\n    told otherwise: " + there);
            }
        });
    }

    private static Optional<Quantity> to(Optional<Quantity> quantity, Unit unit) {
        return quantity.map(it -> it.to(unit));
    }

    @Test
    @DisplayName("a complaint that is worse, or comes more often, never makes the advice less certain")
    void stronger() {
        each(PAIRS, (run, offenders) -> {
            Report report = run.reports().get(0);
            // By itself: beside a reading or a wet road, which ask for something else, it may well take certainty from that.
            Case alone = run.withReports(List.of(report)).withTyres(Map.of()).withConditions(Conditions.UNKNOWN);
            double last = -1;
            for (Severity severity : Severity.values()) {
                double now = surest(advice(alone.withReports(List.of(of(report, severity, report.occurrence())))));
                if (now < last - HAIR) {
                    offenders.add(run.title() + ": " + severity.id() + " " + report.text() + ": " + last + " to " + now);
                }
                last = now;
            }
            last = -1;
            for (Occurrence occurrence : List.of(Occurrence.ONCE, Occurrence.SOME_LAPS, Occurrence.EVERY_LAP)) {
                double now = surest(advice(alone.withReports(List.of(of(report, report.severity(), occurrence)))));
                if (now < last - HAIR) {
                    offenders.add(run.title() + ": " + occurrence.id() + " " + report.text() + ": " + last + " to "
                            + now);
                }
                last = now;
            }
        });
    }

    private static Report of(Report report, Severity severity, Occurrence occurrence) {
        return new Report(report.symptom(), report.where(), report.phase(), report.speed(), severity, occurrence,
                report.since(), report.turn());
    }

    /**
     * The certainty of the surest change by the rules that speak for it, advised or held back: a fault that comes every lap
     * may well hold more back.
     */
    private static double surest(Advice advice) {
        return Stream.concat(advice.changes().stream().map(RankedChange::proposals),
                advice.withheld().stream().map(Withheld::proposals)).mapToDouble(Certainty::ofRules).max().orElse(0);
    }

    @Test
    @DisplayName("an adjuster taken away leaves the rest in their order")
    void takenAway() {
        each(PAIRS, (run, offenders) -> {
            Advice whole = advice(run);
            if (whole.changes().size() < 2) {
                return;
            }
            Adjuster gone = whole.changes().get(0).change().adjuster();
            Map<Adjuster, Setting> left = new EnumMap<>(run.car().adjusters());
            left.remove(gone);
            gone.wheel().ifPresent(wheel -> left.remove(Adjuster.pressureOf(wheel.axle())));
            Car car = new Car(run.car().name(), run.car().drive(), left, run.car().tyres(), run.car().dimensions(), false);
            Advice rest = advice(new Case(run.title(), run.source(), car, run.conditions(), run.tyres(), run.reports(),
                    List.of()));
            // A rule may put something in the place of what the car lacks, which then has another certainty.
            List<Change> same = rest.changes().stream().filter(change -> whole.changes().stream()
                    .anyMatch(other -> other.change().equals(change.change())
                            && other.score().certainty() == change.score().certainty()))
                    .map(RankedChange::change).toList();
            List<Change> before = whole.changes().stream().map(RankedChange::change).filter(same::contains).toList();
            if (!before.equals(same)) {
                offenders.add(run.title() + " without " + gone.id() + ": " + before + "\n    became " + same);
            }
        });
    }

    @Test
    @DisplayName("in the wet nothing is moved by more steps than in the dry")
    void wet() {
        each(PAIRS, (run, offenders) -> {
            Advice dry = advice(on(Surface.DRY, run));
            Advice wet = advice(on(Surface.WET, run));
            for (RankedChange change : wet.changes()) {
                dry.changes().stream().filter(other -> other.change().equals(change.change())
                        && change.change().adjuster().adjustment() != Adjustment.PRESSURE
                        && change.change().adjuster().adjustment() != Adjustment.CAMBER
                        && other.size().steps() < change.size().steps()).forEach(other -> offenders.add(run.title() + ": "
                        + change.change() + " " + other.size().steps() + " in the dry, " + change.size().steps()
                        + " in the wet"));
            }
        });
    }

    private static Case on(Surface surface, Case run) {
        Conditions day = run.conditions();
        return new Case(run.title(), run.source(), run.car(), new Conditions(Optional.of(surface), day.air(), day.track(),
                day.coldTyres(), day.altitude(), day.turns()), run.tyres(), run.reports(), List.of());
    }

    @Test
    @DisplayName("a reading that agrees with another never takes a cure away")
    void agreeing() {
        each(PAIRS, (run, offenders) -> {
            double off = 0.1 + (run.title().hashCode() & 7) * 0.05;
            for (Axle axle : Axle.values()) {
                for (boolean high : new boolean[] {true, false}) {
                    Case gauge = run.withReports(List.of()).withTyres(read(axle, high ? 1.9 + off : 1.9 - off, 0, 4));
                    Case both = run.withReports(List.of()).withTyres(read(axle, high ? 1.9 + off : 1.9 - off, high ? 7 : -7, 4));
                    Change cure = Change.parse(axle.id() + "-pressure " + (high ? "lower" : "higher")).orElseThrow();
                    if (advised(cure, gauge) && !advised(cure, both)) {
                        offenders.add(run.title() + ": " + cure + " at " + off + " bar is gone with an agreeing tread");
                    }
                }
            }
        });
    }

    @Test
    @DisplayName("a word that agrees with the pyrometer never takes the camber that it asks for away")
    void agreeingWord() {
        each(PAIRS, (run, offenders) -> {
            for (Axle axle : Axle.values()) {
                for (boolean inner : new boolean[] {true, false}) {
                    Case pyrometer = run.withReports(List.of()).withTyres(read(axle, 1.9, 0, inner ? 22 : -14));
                    Case both = pyrometer.withReports(List.of(new Report(inner ? Symptom.HOT_INNER_EDGE : Symptom.HOT_OUTER_EDGE,
                            Optional.of(axle == Axle.FRONT ? Place.FRONT : Place.REAR), Optional.empty(), Optional.empty(),
                            Severity.CLEAR, Occurrence.EVERY_LAP, Optional.empty(), Optional.empty())));
                    Direction way = inner ? Direction.LESS_NEGATIVE : Direction.MORE_NEGATIVE;
                    if (camber(axle, way, pyrometer) && !camber(axle, way, both)) {
                        offenders.add(run.title() + ": " + axle.id() + " camber " + way.id() + " is gone with an agreeing word");
                    }
                }
            }
        });
    }

    /** Of an axle, or of the one of its wheels that is loaded where each has a camber of its own. */
    private static boolean camber(Axle axle, Direction way, Case run) {
        return advice(run).changes().stream().map(RankedChange::change)
                .anyMatch(change -> change.adjuster().adjustment() == Adjustment.CAMBER
                        && change.adjuster().axle().equals(Optional.of(axle)) && change.direction() == way);
    }

    private static boolean advised(Change change, Case run) {
        return advice(run).changes().stream().anyMatch(ranked -> ranked.change().equals(change));
    }

    private static Map<Wheel, TyreReading> read(Axle axle, double hot, double middle, double innerOverOuter) {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            if (wheel.axle() == axle) {
                tyres.put(wheel, new TyreReading(Optional.of(new Quantity(88 + innerOverOuter / 2, Unit.CELSIUS)),
                        Optional.of(new Quantity(88 + middle, Unit.CELSIUS)),
                        Optional.of(new Quantity(88 - innerOverOuter / 2, Unit.CELSIUS)),
                        Optional.of(new Quantity(1.55, Unit.BAR)), Optional.of(new Quantity(hot, Unit.BAR))));
            }
        }
        return tyres;
    }
}
