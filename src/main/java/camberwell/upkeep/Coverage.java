package camberwell.upkeep;

import camberwell.advice.Advisor;
import camberwell.advice.RankedChange;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.engine.RuleBase;
import camberwell.knowledge.Notes;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Typical;
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
        return new Coverage(List.copyOf(cells), never(Statement.Propose.class, rules),
                never(Statement.Oppose.class, rules),
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
        if (symptom.ofTyre()) {
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

    /** Why a complaint makes no sense in that phase, or rightly leads to no change of the setup. */
    private static Optional<String> without(Symptom symptom, Phase phase, Drive drive) {
        if (symptom == Symptom.PULLING && !(phase == Phase.EXIT && drive == Drive.FRONT)) {
            return Optional.of("a car that is not the same left and right is mended, not adjusted");
        }
        if (symptom == Symptom.MECHANICAL_FAULT) {
            return Optional.of("what is loose, worn or broken is mended, not adjusted");
        }
        return symptom.senseless(phase);
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
            Typical typical = adjuster.typical();
            adjusters.put(adjuster, new Setting(typical.now(), typical.min(), typical.max(), typical.step(), false));
        }
        return new Car("a car with everything", Optional.of(drive), adjusters, Map.of(), Map.of(), false);
    }

    private static List<Change> never(Class<? extends Statement> said, RuleBase rules) {
        List<Change> never = new ArrayList<>(Change.all());
        rules.rules().values().forEach(rule -> rule.statements().stream().filter(said::isInstance)
                .forEach(statement -> statement.aboutChange().ifPresent(never::remove)));
        return List.copyOf(never);
    }

    private static List<String> unused(RuleBase rules, Notes notes) {
        Set<String> unused = new TreeSet<>(notes.names());
        unused.removeAll(Advisor.generalCautions(notes));
        for (RuleText rule : rules.rules().values()) {
            unused.remove(rule.note());
            rule.statements().forEach(statement -> unused.removeAll(statement.notes()));
        }
        return List.copyOf(unused);
    }
}
