package camberwell.explain;

import camberwell.car.Car;
import camberwell.car.TyreSpec;
import camberwell.engine.RuleBase;
import camberwell.fact.Day;
import camberwell.fact.Finding;
import camberwell.fact.Reading;
import camberwell.fact.Reading.State;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.language.Condition;
import camberwell.language.Question;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.CornerKind;
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
        Conditions conditions = new Conditions(Optional.of(imagined.surface), Optional.of(celsius(imagined.track - 6)),
                Optional.of(celsius(imagined.track)), Optional.empty(), Optional.empty(), Turn.BOTH);
        return Optional.of(new Case(title, "quiz", car, conditions, imagined.tyres(), imagined.reports, List.of()));
    }

    private boolean makeTrue(RuleText rule, int depth) {
        return depth <= DEEPEST && rule.conditions().stream().allMatch(condition -> makeTrue(condition, depth));
    }

    private boolean makeTrue(Condition condition, int depth) {
        Question question = condition.question();
        if (question.negative()) {
            measured &= !question.isAbout(Reading.KIND);
            return true;
        }
        if (question.isAbout(Finding.KIND)) {
            return find(question.word("finding").orElseThrow(), depth);
        }
        if (question.isAbout(Reported.KIND)) {
            return report(question);
        }
        if (question.isAbout(Reading.KIND)) {
            State state = Word.of(State.class, question.word("shows").orElseThrow());
            Place place = Word.of(Place.class, question.word("place").orElseThrow());
            if ((state == State.INNER_EDGE_HOT_ALONE || state == State.OUTER_EDGE_HOT_ALONE)
                    && !car.camberByWheel(place.axle())) {
                return false;
            }
            shown.computeIfAbsent(place, key -> EnumSet.noneOf(State.class)).add(state);
            return true;
        }
        return question.isAbout(Day.KIND) ? day(question) : question.holdsOf(new Setup(car));
    }

    private boolean find(String finding, int depth) {
        List<RuleText> finders = rules.rules().values().stream().filter(rule -> rule.statements().stream()
                .anyMatch(said -> said instanceof Statement.Find find && find.finding().equals(finding))).toList();
        return !finders.isEmpty() && makeTrue(finders.get(random.nextInt(finders.size())), depth + 1);
    }

    private boolean report(Question question) {
        if (reports.stream().anyMatch(said -> question.holdsOf(new Reported(said, 1)))) {
            return true;
        }
        Report plain = new Report(one(Symptom.class, question, "symptom").orElse(Symptom.UNDERSTEER),
                one(Place.class, question, "where"), one(Phase.class, question, "phase"),
                one(CornerSpeed.class, question, "speed"),
                one(Severity.class, question, "severity").orElse(Severity.CLEAR),
                one(Occurrence.class, question, "occurrence").orElse(Occurrence.EVERY_LAP),
                one(Since.class, question, "since"), one(Turn.class, question, "turn"));
        Optional<CornerKind> kind = one(CornerKind.class, question, "corner");
        Report report = kind.map(plain::withCorner).orElse(plain);
        reports.add(report);
        return question.holdsOf(new Reported(report, 1));
    }

    /** One of the words that pass; none where it is not asked. */
    private <W extends Word> Optional<W> one(Class<W> type, Question question, String attribute) {
        return question.passing(attribute).map(passing -> {
            List<W> words = Word.all(type).stream().filter(word -> passing.lets(word.id())).toList();
            return words.get(random.nextInt(words.size()));
        });
    }

    private boolean day(Question question) {
        question.passing("surface").filter(passing -> !passing.lets(surface.id()))
                .ifPresent(passing -> surface = one(Surface.class, question, "surface").orElseThrow());
        question.word("track").ifPresent(warmth -> track = warmth.equals("cold") ? 10 : 42);
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
        boolean inside = shows(wheel, State.INNER_EDGE_HOT) || shows(wheel, State.INNER_EDGE_HOT_ALONE);
        boolean outside = shows(wheel, State.OUTER_EDGE_HOT) || shows(wheel, State.OUTER_EDGE_HOT_ALONE);
        double inner = middle + (inside ? 11 : outside ? -6 : 3);
        double outer = middle + (outside ? 6 : inside ? -7 : -2);
        middle += shows(wheel, State.MIDDLE_HOT) ? 9 : shows(wheel, State.MIDDLE_COLD) ? -9 : 0;
        double hot = spec.hotTarget(wheel).map(at -> at.in(Unit.BAR)).orElse(HOT_TARGET_BAR);
        hot += shows(wheel, State.ABOVE_TARGET) || shows(wheel, State.ABOVE_TARGET_ALONE) ? 0.14
                : shows(wheel, State.BELOW_TARGET) || shows(wheel, State.BELOW_TARGET_ALONE) ? -0.14 : 0;
        return new TyreReading(Optional.of(celsius(inner)), Optional.of(celsius(middle)), Optional.of(celsius(outer)),
                Optional.empty(), Optional.of(gauge(hot, spec.hotTarget(wheel).map(Quantity::unit).orElse(Unit.BAR))));
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
