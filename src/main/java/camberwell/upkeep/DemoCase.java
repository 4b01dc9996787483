package camberwell.upkeep;

import camberwell.fact.Finding;
import camberwell.fact.Outing;
import camberwell.fact.Passing;
import camberwell.fact.Setup;
import camberwell.language.Asked;
import camberwell.language.Condition;
import camberwell.language.Question;
import camberwell.language.RuleGraph;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Aid;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Typical;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Makes up a case in which a rule should fire: a car, a day, tyres and reports that pass what its conditions ask. For a
 * finding it takes the conditions of the strongest rule that finds it.
 */
public final class DemoCase {

    private static final int DEEPEST = 6;
    /** What a case says where the rule lets it choose; a case should look like one that somebody wrote. */
    private static final List<String> LIKED = List.of("rear", "entry", "slow", "clear", "every-lap", "some-laps",
            "whole-run", "front", "front-left", "left", "dry");
    /** Bar off the target, and kelvin, at which a reading is clear beyond doubt. */
    private static final double CLEARLY = 0.15;
    private static final double CLEAR_KELVIN = 16;

    private final Collection<RuleText> rules;
    private final List<Map<String, String>> reports = new ArrayList<>();
    private final Map<String, Passing> car = new TreeMap<>();
    /** What the rule itself changes: a car without it would not show what the rule does. */
    private final Set<Adjuster> changed = new HashSet<>();
    private final Map<String, Passing> day = new TreeMap<>();
    private final Map<String, String> readings = new TreeMap<>();
    private final DemoFigures figures = new DemoFigures();
    private final DemoBackground background = new DemoBackground();
    /** Complaints that must not be there. */
    private final Set<String> unreported = new HashSet<>();

    private DemoCase(Collection<RuleText> rules) {
        this.rules = rules;
    }

    /** The text of a case file for {@code rule}; {@code rules} are those that may find what it asks for. */
    public static String of(RuleText rule, Collection<RuleText> rules) {
        DemoCase made = new DemoCase(rules);
        rule.statements().forEach(said -> said.aboutChange().ifPresent(change -> made.changed.add(change.adjuster())));
        made.meet(rule, new HashSet<>(), 0);
        return made.text("A case for the rule: " + rule.name());
    }

    private void meet(RuleText rule, Set<String> met, int depth) {
        for (Condition condition : rule.conditions()) {
            Asked asked = Asked.of(condition);
            if (asked.ofReport() && !asked.negative()) {
                report(asked);
            } else if (asked.ofReport() && asked.passes().size() == 1) {
                unreported.addAll(symptoms(asked));
            } else if (asked.ofCar()) {
                asked.passes().forEach((key, passing) -> car.merge(key, passing, Passing::and));
            } else if (asked.ofDay()) {
                asked.passes().forEach((key, passing) -> day.merge(key, passing, Passing::and));
            } else if (condition.question().isAbout(Outing.KIND) && !asked.negative()) {
                asked.passes().forEach((key, passing) -> {
                    figures.enter(key, passing);
                    background.enter(key, passing);
                });
            } else if (asked.ofReadings()) {
                asked.passes().forEach((key, passing) ->
                        readings.put(key, passing.words().stream().findFirst().orElse("")));
            }
        }
        for (Condition condition : rule.conditions()) {
            Question question = condition.question();
            if (question.isAbout(Finding.KIND) && !question.negative() && depth < DEEPEST) {
                question.word("finding").filter(met::add).flatMap(this::strongest)
                        .ifPresent(by -> meet(by, met, depth + 1));
            }
        }
    }

    /** Of the rules that go with this car and day; one that asks for no other finding is the easiest to meet. */
    private Optional<RuleText> strongest(String finding) {
        return rules.stream().filter(rule -> certainty(rule, finding) > 0).filter(this::possible).min(Comparator
                .comparing((RuleText rule) -> !RuleGraph.asked(rule).isEmpty())
                .thenComparing(rule -> -certainty(rule, finding)).thenComparing(RuleText::name));
    }

    private boolean possible(RuleText rule) {
        return rule.conditions().stream().map(Asked::of).allMatch(asked -> !asked.ofCar() && !asked.ofDay()
                || goesWith(asked, asked.ofCar() ? car : day))
                && rule.conditions().stream().map(Asked::of).filter(asked -> asked.ofReport() && !asked.negative())
                .allMatch(asked -> symptoms(asked).isEmpty() || !unreported.containsAll(symptoms(asked)));
    }

    private static Set<String> symptoms(Asked asked) {
        return asked.passes().containsKey("symptom") ? Set.copyOf(asked.passes().get("symptom").words()) : Set.of();
    }

    private static boolean goesWith(Asked asked, Map<String, Passing> so) {
        return asked.passes().entrySet().stream().noneMatch(entry -> so.containsKey(entry.getKey())
                && so.get(entry.getKey()).and(entry.getValue()).nothing());
    }

    private static double certainty(RuleText rule, String finding) {
        return rule.statements().stream().filter(said -> said instanceof Statement.Find find
                && find.finding().equals(finding)).mapToDouble(Statement::certainty).max().orElse(0);
    }

    private void report(Asked asked) {
        Map<String, String> report = new LinkedHashMap<>();
        for (String key : List.of("symptom", "where", "phase", "speed", "severity", "occurrence", "since", "turn",
                "corner")) {
            Passing passing = asked.passes().get(key);
            if (passing != null) {
                report.put(key, chosen(passing));
            } else if (key.equals("symptom")) {
                report.put(key, "understeer");
            } else if (key.equals("severity")) {
                report.put(key, "clear");
            } else if (key.equals("occurrence")) {
                report.put(key, "every-lap");
            } else if (key.equals("where") && Word.of(Symptom.class, report.get("symptom")).ofTyre()) {
                report.put(key, "front");
            }
        }
        if (!reports.contains(report)) {
            reports.add(report);
        }
    }

    private static String chosen(Passing passing) {
        return LIKED.stream().filter(passing.words()::contains).findFirst()
                .orElseGet(() -> passing.words().stream().findFirst().orElse(""));
    }

    private String text(String title) {
        StringBuilder text = new StringBuilder("title: '" + title.replace("'", "''") + "'\n");
        String drive = car.containsKey("drive") ? chosen(car.get("drive")) : "rear";
        text.append("car:\n  name: Practice car\n  drive: ").append(drive).append(carWords()).append("\n  adjusters:\n");
        adjusters().forEach((adjuster, setting) ->
                text.append("    ").append(adjuster.id()).append(": {").append(setting).append("}\n"));
        text.append("  tyres:\n");
        for (String axle : List.of("front", "rear")) {
            text.append("    ").append(axle).append(": {window: [75 °C, 95 °C], hot-target: 1.90 bar, ")
                    .append("cold-minimum: 1.30 bar, rim: 17 in, diameter: 630 mm}\n");
        }
        text.append("conditions: {surface: ").append(day.containsKey("surface") ? chosen(day.get("surface")) : "dry")
                .append(", air: ").append(two(warmth("air", 18))).append(" °C, track: ")
                .append(two(warmth("track", track()))).append(" °C").append(turns()).append("}\n");
        text.append(background.text());
        tyres(text);
        if (!reports.isEmpty()) {
            text.append("reports:\n");
            reports.forEach(report -> text.append("  - ").append(report.toString().replace("=", ": ")).append('\n'));
        }
        return text.toString();
    }

    /** The kind of car, whether it is one of a simulator, its aids and its mass, where they are asked. */
    private String carWords() {
        StringBuilder words = new StringBuilder();
        if (car.containsKey("kind")) {
            words.append("\n  kind: ").append(chosen(car.get("kind")));
        }
        if (car.containsKey("simulator")) {
            words.append("\n  simulator: ").append(chosen(car.get("simulator")));
        }
        List<String> aids = Word.ids(Aid.class).stream().filter(aid -> car.containsKey("aid " + aid)).toList();
        if (!aids.isEmpty()) {
            words.append("\n  aids: ").append(aids);
        }
        String mass = car.containsKey("mass in kg") ? "mass: " + two(beyond(car.get("mass in kg"), 1200, 50)) + " kg" : "";
        String air = car.containsKey("wings") && car.get("wings").lets("yes") ? "rear-downforce: 400 N" : "";
        if (!mass.isEmpty() || !air.isEmpty()) {
            words.append("\n  dimensions: {").append(mass).append(mass.isEmpty() || air.isEmpty() ? "" : ", ").append(air)
                    .append("}");
        }
        return words.toString();
    }

    private int track() {
        return !day.containsKey("track") ? 27 : day.get("track").lets("mild") ? 27
                : day.get("track").words().contains("cold") ? 8 : 45;
    }

    /** A temperature that passes what is asked of it in figures. */
    private double warmth(String of, double usual) {
        double value = usual;
        for (Unit unit : List.of(Unit.CELSIUS, Unit.FAHRENHEIT)) {
            Passing passing = day.get(of + " in " + unit.symbol());
            if (passing != null) {
                value = Unit.CELSIUS.fromSi(unit.toSi(beyond(passing, new Quantity(value, Unit.CELSIUS).in(unit), 3)));
            }
        }
        return Math.rint(value * 10) / 10;
    }

    private String turns() {
        if (day.containsKey("turns")) {
            return ", turns: " + chosen(day.get("turns"));
        }
        return day.containsKey("circuit") && day.get("circuit").lets("one-way") ? ", turns: left" : "";
    }

    /** A figure that passes, {@code by} away from the border; the usual one where it passes. */
    private static double beyond(Passing passing, double usual, double by) {
        if (usual > passing.above() && usual < passing.below()) {
            return usual;
        }
        boolean open = passing.below() == Double.MAX_VALUE || passing.above() == -Double.MAX_VALUE;
        double away = open ? by : (passing.below() - passing.above()) / 2;
        return usual <= passing.above() ? passing.above() + away : passing.below() - away;
    }

    private Map<Adjuster, String> adjusters() {
        Map<Adjuster, String> settings = new EnumMap<>(Adjuster.class);
        for (Adjuster adjuster : Adjuster.values()) {
            Passing adjustable = car.get(Setup.adjustable(adjuster));
            boolean lacks = adjustable != null && adjustable.words().contains("no");
            boolean wanted = adjustable != null && !lacks || changed.contains(adjuster)
                    || adjuster.wheel().isPresent() && byWheel(adjuster);
            boolean usual = adjuster.wheel().isEmpty() && adjuster.adjustment() != Adjustment.WING && !byWheel(adjuster);
            if (!lacks && (usual || wanted)) {
                settings.put(adjuster, setting(adjuster));
            }
        }
        return settings;
    }

    /** Whether it is one of an axle that the rule asks for, or changes, wheel by wheel. */
    private boolean byWheel(Adjuster adjuster) {
        return camberByWheel(adjuster) || changed.stream().anyMatch(other -> other.wheel().isPresent()
                && other.adjustment() == adjuster.adjustment() && other.axle().equals(adjuster.axle()));
    }

    /** Whether it is a camber of an axle that the rule asks for wheel by wheel. */
    private boolean camberByWheel(Adjuster adjuster) {
        return adjuster.adjustment() == Adjustment.CAMBER && Arrays.stream(Wheel.values())
                .filter(wheel -> wheel.axle() == adjuster.axle().orElseThrow()).anyMatch(wheel ->
                readings.containsKey(wheel.id() + " edges") || car.containsKey(Setup.adjustable(Adjuster.camberOf(wheel)))
                        && !car.get(Setup.adjustable(Adjuster.camberOf(wheel))).words().contains("no"));
    }

    private String setting(Adjuster adjuster) {
        Typical typical = adjuster.typical();
        double usual = typical.now().value();
        double now = switch (adjuster.adjustment()) {
            case TOE -> value(adjuster, usual, 0.1);
            case CAMBER -> value(adjuster, usual, 0.4);
            case CASTER -> value(adjuster, usual, 0.5);
            default -> usual;
        };
        return car.keySet().stream().filter(key -> key.contains(":in ") || key.startsWith("steps left of "))
                .filter(key -> Setup.adjusterOf(key).equals(Optional.of(adjuster))).findFirst()
                .map(key -> asked(adjuster, key, now)).orElseGet(() -> range(now, typical));
    }

    /** A setting that passes what is asked of it in figures: of where it stands, or of the steps that are left. */
    private String asked(Adjuster adjuster, String key, double usual) {
        Typical typical = adjuster.typical();
        double step = typical.step().value();
        if (key.startsWith("steps left of ")) {
            Direction towards = Word.of(Direction.class, key.substring(key.lastIndexOf(' ') + 1));
            double left = beyond(car.get(key), 3, 1);
            double end = usual + (towards.raises() ? 1 : -1) * Math.max(0, Math.floor(left)) * step;
            double min = Math.min(usual, towards.raises() ? typical.min().value() : end);
            double max = Math.max(usual, towards.raises() ? end : typical.max().value());
            return "now: " + setting(usual, typical.now().unit()) + ", min: " + setting(min, typical.now().unit())
                    + ", max: " + setting(max, typical.now().unit()) + ", step: " + setting(step, typical.now().unit());
        }
        String symbol = key.substring(key.indexOf(":in ") + ":in ".length());
        Unit unit = symbol.equals("position") ? Unit.POSITION : Unit.withSymbol(symbol).orElseThrow();
        boolean own = unit.dimension() == typical.now().unit().dimension();
        double by = own ? new Quantity(step, typical.step().unit()).unit().differenceToSi(step) / unit.differenceToSi(1) : 1;
        double now = beyond(car.get(key), own ? new Quantity(usual, typical.now().unit()).in(unit) : 0, by);
        double range = own ? 8 * by : 8;
        return "now: " + setting(now, unit) + ", min: " + setting(now - range, unit) + ", max: "
                + setting(now + range, unit) + ", step: " + setting(by, unit) + (unit == Unit.POSITION
                && !adjuster.adjustment().countedEitherWay() ? ", larger-is: " + adjuster.directions().get(1).id() : "");
    }

    /** A figure that passes, {@code by} away from the border; the usual one where it passes. */
    private double value(Adjuster adjuster, double usual, double by) {
        Passing passing = car.get(adjuster.id());
        return passing == null ? usual : beyond(passing, usual, by);
    }

    private static String range(double now, Typical typical) {
        Unit unit = typical.now().unit();
        return "now: " + setting(now, unit) + ", min: " + setting(Math.min(now, typical.min().value()), unit)
                + ", max: " + setting(Math.max(now, typical.max().value()), unit) + ", step: "
                + setting(typical.step().value(), unit);
    }

    private static String setting(double value, Unit unit) {
        return (two(value) + " " + unit.symbol()).trim();
    }

    private static String two(double number) {
        return String.format(Locale.ROOT, "%.2f", number).replaceAll("\\.?0+$", "");
    }

    private void tyres(StringBuilder text) {
        List<String> wheels = List.of("front-left", "front-right", "rear-left", "rear-right");
        if (!readings.containsValue("yes") && wheels.stream().noneMatch(wheel -> figures.hasTread(wheel)
                || figures.hasPressure(wheel))) {
            return;
        }
        text.append("tyres:\n");
        for (String wheel : wheels) {
            String axle = wheel.substring(0, wheel.indexOf('-'));
            List<String> read = new ArrayList<>();
            if (figures.hasTread(wheel)) {
                read.add(figures.tread(wheel));
            } else if ("yes".equals(readings.get(axle + " pyrometer read")) || axle.equals(otherOfHotter())) {
                read.add(tread(axle, wheel));
            }
            if (figures.hasPressure(wheel)) {
                read.add(figures.pressure(wheel));
            } else if ("yes".equals(readings.get(axle + " gauge read"))) {
                read.add("cold-pressure: " + (readings.containsKey(axle + " below-minimum") ? "1.20" : "1.40")
                        + " bar, hot-pressure: " + (readings.containsKey(axle + " no-growth") ? "1.35"
                        : two(1.9 + overTarget(axle, wheel))) + " bar");
            }
            if (!read.isEmpty()) {
                text.append("  ").append(wheel).append(": {").append(String.join(", ", read)).append("}\n");
            }
        }
    }

    /** That one axle is hotter shows only when both were read. */
    private String otherOfHotter() {
        String hotter = readings.getOrDefault("hotter axle", "");
        return hotter.equals("front") ? "rear" : hotter.equals("rear") ? "front" : "";
    }

    private String tread(String axle, String wheel) {
        boolean left = wheel.endsWith("left");
        double mean = switch (readings.getOrDefault(axle + " window", "")) {
            case "below-window" -> 60;
            case "above-window" -> 112;
            default -> axle.equals(readings.get("hotter axle")) ? 94 : axle.equals(otherOfHotter()) ? 77 : 85;
        };
        boolean differ = readings.containsKey(axle + " sides-differ");
        mean += !differ ? 0 : left ? CLEAR_KELVIN : -CLEAR_KELVIN;
        double inner = 4;
        double outer = -2;
        switch (readings.getOrDefault(wheel + " edges", readings.getOrDefault(axle + " edges", ""))) {
            case "inner-edge-hot", "inner-edge-hot-alone" -> inner = CLEAR_KELVIN;
            case "outer-edge-hot", "outer-edge-hot-alone" -> outer = CLEAR_KELVIN;
            default -> { }
        }
        double middle = (inner + outer) / 2;
        middle += switch (readings.getOrDefault(axle + " middle", "")) {
            case "middle-hot" -> CLEAR_KELVIN;
            case "middle-cold" -> -CLEAR_KELVIN;
            default -> 0;
        };
        double shift = mean - (inner + middle + outer) / 3;
        return "inner: " + Math.round(inner + shift) + " °C, middle: " + Math.round(middle + shift) + " °C, outer: "
                + Math.round(outer + shift) + " °C";
    }

    private double overTarget(String axle, String wheel) {
        String alone = readings.getOrDefault(axle + " alone", "");
        if (!alone.isEmpty()) {
            return !alone.startsWith(wheel + " ") ? 0 : alone.contains("above") ? CLEARLY : -CLEARLY;
        }
        return switch (readings.getOrDefault(axle + " target", "")) {
            case "above-target" -> CLEARLY;
            case "below-target" -> -CLEARLY;
            default -> 0;
        };
    }
}
