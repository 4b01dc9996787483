package camberwell.explain;

import camberwell.car.Car;
import camberwell.car.TyreSpec;
import camberwell.engine.RuleBase;
import camberwell.fact.Reading.State;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.RuleText;
import camberwell.language.Trial;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * A case made up so that a rule's conditions come true: backwards from the rule through findings to what a driver would
 * report and a pyrometer would read. Whether the rule then really fires is for the rules to say.
 */
final class Imagined {

    /** Used where a car's file says nothing of its tyres: common practice, no source. */
    private static final double WINDOW_LOW_CELSIUS = 75;
    private static final double WINDOW_HIGH_CELSIUS = 95;
    private static final double HOT_TARGET_BAR = 1.9;
    private static final int DEEPEST = 4;

    private final RuleBase rules;
    private final Car car;
    private final Random random;
    private final List<Report> reports = new ArrayList<>();
    private final Map<Place, Set<State>> shown = new EnumMap<>(Place.class);
    private Surface surface = Surface.DRY;
    private double track = 27;
    private boolean measured = true;

    private Imagined(RuleBase rules, Car car, Random random) {
        this.rules = rules;
        this.car = car;
        this.random = random;
    }

    /** A case on {@code car} for {@code rule}, or empty where the car is not one that the rule speaks of. */
    static Optional<Case> caseFor(RuleText rule, String title, RuleBase rules, Car car, Random random) {
        Imagined imagined = new Imagined(rules, car, random);
        if (!imagined.makeTrue(rule, 0)) {
            return Optional.empty();
        }
        Conditions conditions = new Conditions(imagined.surface, Optional.of(celsius(imagined.track - 6)),
                Optional.of(celsius(imagined.track)), Optional.empty(), Optional.empty(), Turn.BOTH);
        return Optional.of(new Case(title, "quiz", car, conditions, imagined.tyres(), imagined.reports, List.of()));
    }

    private boolean makeTrue(RuleText rule, int depth) {
        return depth <= DEEPEST && rule.conditions().stream().allMatch(condition -> makeTrue(condition, depth));
    }

    private boolean makeTrue(Condition condition, int depth) {
        Line head = condition.head();
        String type = Trial.type(condition);
        if (condition.negative()) {
            measured &= !(type.equals("Reading"));
            return true;
        }
        return switch (type) {
            case "Finding" -> find(head.word("finding"), depth);
            case "Reported" -> report(condition);
            case "Reading" -> read(head);
            case "Day" -> day(head);
            default -> Trial.of(condition, List.of(new Setup(car))).holds();
        };
    }

    private boolean find(String finding, int depth) {
        List<RuleText> finders = rules.rules().values().stream().filter(rule -> rule.conclusions().stream()
                .anyMatch(line -> line.text().startsWith("find ") && finding.equals(line.word("finding")))).toList();
        return !finders.isEmpty() && makeTrue(finders.get(random.nextInt(finders.size())), depth + 1);
    }

    private boolean report(Condition condition) {
        if (Trial.of(condition, reports.stream().map(said -> new Reported(said, 1)).toList()).holds()) {
            return true;
        }
        Symptom symptom = Word.of(Symptom.class, condition.head().word("symptom"));
        Optional<Phase> phase = Optional.empty();
        Optional<CornerSpeed> speed = Optional.empty();
        Optional<Place> where = Optional.empty();
        Severity severity = Severity.CLEAR;
        Occurrence occurrence = Occurrence.EVERY_LAP;
        Optional<Since> since = Optional.empty();
        Optional<Turn> turn = Optional.empty();
        for (Line dash : condition.narrowings()) {
            Optional<String> word = dash.words().values().stream().findFirst();
            String text = dash.text();
            if (dash.words().containsKey("phase") && !text.contains("- not ")) {
                phase = word.map(id -> Word.of(Phase.class, id));
            } else if (dash.words().containsKey("phase")) {
                phase = Optional.of(word.get().equals("entry") ? Phase.EXIT : Phase.ENTRY);
            } else if (dash.words().containsKey("speed")) {
                speed = word.map(id -> Word.of(CornerSpeed.class, id));
            } else if (dash.words().containsKey("severity")) {
                severity = Word.of(Severity.class, word.get());
            } else if (!dash.words().isEmpty()) {
                where = word.map(id -> Word.of(Place.class, id));
            } else if (text.contains("direction")) {
                turn = Optional.of(random.nextBoolean() ? Turn.LEFT : Turn.RIGHT);
            } else if (text.contains("first laps")) {
                since = Optional.of(Since.FIRST_LAPS);
            } else if (text.contains("not late") || text.contains("whole run")) {
                since = Optional.of(Since.WHOLE_RUN);
            } else if (text.contains("late")) {
                since = Optional.of(Since.LATE_RUN);
            } else if (text.contains("once")) {
                occurrence = Occurrence.ONCE;
            } else if (text.contains("not on every lap")) {
                occurrence = Occurrence.SOME_LAPS;
            }
        }
        Report report = new Report(symptom, where, phase, speed, severity, occurrence, since, turn);
        reports.add(report);
        return Trial.of(condition, List.of(new Reported(report, 1))).holds();
    }

    private boolean read(Line head) {
        String drl = head.sentence().drl();
        String state = drl.substring(drl.indexOf("shows(\"") + 7, drl.lastIndexOf('"'));
        Place place = Word.of(Place.class, Optional.ofNullable(head.word("axle")).orElseGet(() -> head.word("wheel")));
        shown.computeIfAbsent(place, key -> EnumSet.noneOf(State.class)).add(Word.of(State.class, state));
        return true;
    }

    private boolean day(Line head) {
        String drl = head.sentence().drl();
        if (drl.contains("surfaceIsNot")) {
            Surface not = Word.of(Surface.class, head.word("surface"));
            surface = surface == not ? not == Surface.DRY ? Surface.DAMP : Surface.DRY : surface;
        } else if (drl.contains("surfaceIs")) {
            surface = Word.of(Surface.class, head.word("surface"));
        } else {
            track = drl.contains("cold") ? 10 : 42;
        }
        return true;
    }

    private Map<Wheel, TyreReading> tyres() {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            if (measured) {
                tyres.put(wheel, tyre(wheel));
            }
        }
        return tyres;
    }

    /** A tyre as a run leaves it in health, but for what it is to show. The shifts are those of a clear reading. */
    private TyreReading tyre(Wheel wheel) {
        TyreSpec spec = car.tyres(wheel.axle());
        double low = spec.windowLow().map(at -> at.in(Unit.CELSIUS)).orElse(WINDOW_LOW_CELSIUS);
        double high = spec.windowHigh().map(at -> at.in(Unit.CELSIUS)).orElse(WINDOW_HIGH_CELSIUS);
        double middle = (low + high) / 2 + random.nextInt(3) - 1;
        middle = shows(wheel, State.BELOW_WINDOW) ? low - 10 : shows(wheel, State.ABOVE_WINDOW) ? high + 10
                : shows(wheel, State.HOTTER_AXLE) ? high - 2 : middle;
        middle += wheel.left() && shows(wheel, State.SIDES_DIFFER) ? 16 : 0;
        double inner = middle + (shows(wheel, State.INNER_EDGE_HOT) ? 11 : shows(wheel, State.OUTER_EDGE_HOT) ? -6 : 3);
        double outer = middle + (shows(wheel, State.OUTER_EDGE_HOT) ? 6 : shows(wheel, State.INNER_EDGE_HOT) ? -7 : -2);
        middle += shows(wheel, State.MIDDLE_HOT) ? 9 : shows(wheel, State.MIDDLE_COLD) ? -9 : 0;
        double hot = spec.hotTarget().map(at -> at.in(Unit.BAR)).orElse(HOT_TARGET_BAR);
        hot += shows(wheel, State.ABOVE_TARGET) || shows(wheel, State.ABOVE_TARGET_ALONE) ? 0.14
                : shows(wheel, State.BELOW_TARGET) || shows(wheel, State.BELOW_TARGET_ALONE) ? -0.14 : 0;
        return new TyreReading(Optional.of(celsius(inner)), Optional.of(celsius(middle)), Optional.of(celsius(outer)),
                Optional.empty(), Optional.of(gauge(hot, spec.hotTarget().map(Quantity::unit).orElse(Unit.BAR))));
    }

    /** As a gauge reads in that unit: to a hundredth of a bar, to a tenth of any other. */
    private static Quantity gauge(double bar, Unit unit) {
        double fine = unit == Unit.BAR ? 100 : 10;
        return new Quantity(Math.rint(new Quantity(bar, Unit.BAR).in(unit) * fine) / fine, unit);
    }

    private boolean shows(Wheel wheel, State state) {
        return shown.entrySet().stream().anyMatch(entry -> entry.getValue().contains(state)
                && (entry.getKey().is(wheel.id()) || entry.getKey().is(wheel.axle().id())));
    }

    private static Quantity celsius(double degrees) {
        return new Quantity(Math.rint(degrees), Unit.CELSIUS);
    }
}
