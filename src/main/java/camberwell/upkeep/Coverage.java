package camberwell.upkeep;

import camberwell.advice.Advisor;
import camberwell.advice.RankedChange;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.engine.RuleBase;
import camberwell.knowledge.Notes;
import camberwell.language.Line;
import camberwell.language.RuleText;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the rules have an answer to: each complaint is put to them alone, as a clear one on every lap, on a car that can
 * have everything adjusted.
 *
 * @param cells every complaint that makes sense, and those that do not, with the reason
 * @param neverProposed directions that no rule proposes
 * @param neverOpposed directions that no rule opposes
 * @param unusedNotes notes that no rule rests on, points to or concludes
 */
public record Coverage(List<Cell> cells, List<Change> neverProposed, List<Change> neverOpposed,
        List<String> unusedNotes) {

    /**
     * One complaint on one kind of car.
     *
     * @param where front or rear, for what belongs to a tyre
     * @param without why there is rightly no change, if so
     * @param changes what is advised, best first
     */
    public record Cell(Symptom symptom, Optional<Phase> phase, Optional<CornerSpeed> speed, Optional<Axle> where,
            Drive drive, Optional<String> without, List<Change> changes) {

        /** Whether the rules owe an answer here. */
        public boolean gap() {
            return without.isEmpty() && changes.isEmpty();
        }
    }

    private static final Set<Phase> CORNER = EnumSet.of(Phase.ENTRY, Phase.LIFT_OFF, Phase.MID_CORNER, Phase.EXIT);
    private static final Set<Phase> BRAKES = EnumSet.of(Phase.BRAKING, Phase.ENTRY);

    /** Covers the rules of {@code advisor}. */
    public static Coverage of(Advisor advisor, RuleBase rules, Notes notes) {
        List<Cell> cells = new ArrayList<>();
        for (Symptom symptom : Symptom.values()) {
            for (Drive drive : Drive.values()) {
                Car car = car(drive);
                for (Cell asked : asked(symptom, drive)) {
                    List<Change> changes = asked.without().isPresent() ? List.of() : advisor.advise(run(asked, car))
                            .changes().stream().map(RankedChange::change).toList();
                    cells.add(new Cell(symptom, asked.phase(), asked.speed(), asked.where(), drive, asked.without(),
                            changes));
                }
            }
        }
        return new Coverage(List.copyOf(cells), never("propose", rules), never("oppose", rules),
                unused(rules, notes));
    }

    /** The cells that the rules owe an answer to and have none. */
    public List<Cell> gaps() {
        return cells.stream().filter(Cell::gap).toList();
    }

    /** Whether nothing is missing. */
    public boolean complete() {
        return gaps().isEmpty() && neverProposed.isEmpty() && neverOpposed.isEmpty() && unusedNotes.isEmpty();
    }

    private static List<Cell> asked(Symptom symptom, Drive drive) {
        List<Cell> asked = new ArrayList<>();
        if (ofTyre(symptom)) {
            for (Axle axle : Axle.values()) {
                asked.add(new Cell(symptom, Optional.empty(), Optional.empty(), Optional.of(axle), drive,
                        Optional.empty(), List.of()));
            }
            return asked;
        }
        for (Phase phase : Phase.values()) {
            Optional<String> without = without(symptom, phase, drive);
            if (CORNER.contains(phase) && without.isEmpty()) {
                for (CornerSpeed speed : CornerSpeed.values()) {
                    asked.add(new Cell(symptom, Optional.of(phase), Optional.of(speed), Optional.empty(), drive,
                            without, List.of()));
                }
            } else {
                asked.add(new Cell(symptom, Optional.of(phase), Optional.empty(), Optional.empty(), drive, without,
                        List.of()));
            }
        }
        return asked;
    }

    private static boolean ofTyre(Symptom symptom) {
        return switch (symptom) {
            case SLOW_WARM_UP, OVERHEATING, GRAINING, HOT_INNER_EDGE, HOT_OUTER_EDGE, HOT_MIDDLE, COLD_MIDDLE -> true;
            default -> false;
        };
    }

    /** Why a complaint makes no sense in that phase, or rightly leads to no change of the setup. */
    private static Optional<String> without(Symptom symptom, Phase phase, Drive drive) {
        return Optional.ofNullable(switch (symptom) {
            case UNDERSTEER, OVERSTEER, SNAP_OVERSTEER -> phase == Phase.STRAIGHT
                    ? "on the straight nothing is turned: that is wandering, pulling or wheelspin" : null;
            case WHEELSPIN -> BRAKES.contains(phase) || phase == Phase.LIFT_OFF ? "without power no wheel spins" : null;
            case FRONT_LOCKING, REAR_LOCKING, UNSTABLE_BRAKING -> BRAKES.contains(phase) ? null
                    : "off the brakes no wheel locks";
            case SLOW_TURN_IN, NERVOUS_TURN_IN -> phase == Phase.ENTRY ? null : "turn-in is the entry";
            case WANDERING -> phase == Phase.STRAIGHT || phase == Phase.BRAKING ? null
                    : "wandering is what a car does while nobody turns it";
            case PULLING -> phase == Phase.EXIT && drive == Drive.FRONT ? null
                    : "a car that is not the same left and right is mended, not adjusted";
            case HEAVY_STEERING, LIGHT_STEERING -> phase == Phase.KERBS
                    ? "over a kerb the wheel kicks; that is instability over kerbs" : null;
            case KERB_INSTABILITY -> phase == Phase.KERBS ? null : "a kerb is a kerb, wherever it lies";
            default -> null;
        });
    }

    private static Case run(Cell cell, Car car) {
        Report report = new Report(cell.symptom(), cell.where().map(axle -> Word.of(Place.class, axle.id())),
                cell.phase(), cell.speed(), Severity.CLEAR, Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
        return new Case("coverage", "-", car, Conditions.UNKNOWN, Map.of(), List.of(report), List.of());
    }

    /** A car on which everything can be adjusted, and stands half-way. */
    private static Car car(Drive drive) {
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        for (Adjuster adjuster : Adjuster.values()) {
            adjusters.put(adjuster, switch (adjuster.kind()) {
                case TOE -> adjuster == Adjuster.REAR_TOE ? setting(0.2, 0, 0.4, 0.05, Unit.DEGREE)
                        : setting(-0.1, -0.3, 0.2, 0.05, Unit.DEGREE);
                case CAMBER -> setting(-2.6, -4, -1, 0.1, Unit.DEGREE);
                case CASTER -> setting(6, 3, 9, 0.5, Unit.DEGREE);
                case PRESSURE -> setting(1.6, 1.4, 2.2, 0.05, Unit.BAR);
                case STIFFNESS, WING, DIFFERENTIAL -> setting(5, 1, 9, 1, Unit.POSITION);
                case HEIGHT -> setting(80, 60, 100, 2, Unit.MILLIMETRE);
                case BRAKE_BIAS -> setting(60, 50, 70, 1, Unit.PERCENT);
            });
        }
        return new Car("a car with everything", Optional.of(drive), adjusters, Map.of(), Map.of(), false);
    }

    private static Setting setting(double now, double min, double max, double step, Unit unit) {
        return new Setting(new Quantity(now, unit), new Quantity(min, unit), new Quantity(max, unit),
                new Quantity(step, unit), false);
    }

    private static List<Change> never(String verb, RuleBase rules) {
        List<Change> never = new ArrayList<>(Change.all());
        for (RuleText rule : rules.rules().values()) {
            for (Line line : rule.conclusions()) {
                if (line.text().startsWith(verb + " ")) {
                    never.remove(new Change(Word.of(Adjuster.class, line.word("adjuster")),
                            Word.of(Direction.class, line.word("direction"))));
                }
            }
        }
        return List.copyOf(never);
    }

    private static List<String> unused(RuleBase rules, Notes notes) {
        Set<String> unused = new TreeSet<>(notes.names());
        Advisor.generalCautions().forEach(unused::remove);
        for (RuleText rule : rules.rules().values()) {
            unused.remove(rule.note());
            rule.conclusions().forEach(line -> unused.removeAll(line.words().values()));
        }
        return List.copyOf(unused);
    }
}
