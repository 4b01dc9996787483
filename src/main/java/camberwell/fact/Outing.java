package camberwell.fact;

import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Compound;
import camberwell.vocabulary.Level;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Wish;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The run as it was driven, as the rules ask about it: its length, its tyres and fuel, who drove, what the changes before
 * it did, and the bare figures of pyrometer and gauge ({@link TyreFigure}).
 *
 * @param thresholds from what on its words hold
 */
public record Outing(Case run, Thresholds thresholds) implements Premise {

    /**
     * What a run can be asked: words that are listed, and figures: {@code laps}, {@code tyre laps}, {@code fuel in kg},
     * {@code outcome of front-toe:toe-in}, {@code answer to} a pack's question, and those of {@link TyreFigure}.
     */
    public static final Kind KIND = new Kind("Outing", true, attributes(), Outing::figure);

    private static final String WANTS = "wants ";
    private static final String OUTCOME = "outcome of ";
    private static final String ANSWER = "answer to ";
    /** What follows a gap of the dictionary: after a space Drools puts another one. */
    private static final char COLON = ':';
    private static final String LAPS = "laps";
    private static final String TYRE_LAPS = "tyre laps";
    private static final String FUEL = "fuel in kg";
    private static final Measure COUNT = Measure.in("a number of laps", Unit.POSITION, 0, 9999);

    /** With camberwell's own thresholds. */
    public Outing(Case run) {
        this(run, Thresholds.BUILT_IN);
    }

    private static List<Attribute> attributes() {
        List<Attribute> attributes = new ArrayList<>(List.of(Attribute.of("compound", Compound.class),
                Attribute.of("level", Level.class), Attribute.of("last outcome", Outcome.class),
                Attribute.named("last change"), Attribute.of("length", "short", "long"),
                Attribute.of("tyre age", "new", "old")));
        for (Wish wish : Wish.values()) {
            attributes.add(Attribute.of(WANTS + wish.id(), "yes", "no"));
        }
        return List.copyOf(attributes);
    }

    private static Attribute figure(String name) {
        if (name.equals(LAPS) || name.equals(TYRE_LAPS)) {
            return Attribute.measured(name, Unit.POSITION, COUNT);
        }
        if (name.equals(FUEL)) {
            return Attribute.measured(name, Unit.KILOGRAM, Measure.FUEL);
        }
        if (name.startsWith(OUTCOME)) {
            return change(name).isEmpty() ? null : Attribute.of(name, Outcome.class);
        }
        if (name.startsWith(ANSWER)) {
            return Attribute.named(name);
        }
        return TyreFigure.of(name).map(TyreFigure::attribute).orElse(null);
    }

    @Override
    public Kind kind() {
        return KIND;
    }

    @Override
    public String word(String attribute) {
        if (attribute.startsWith(WANTS)) {
            return run.background().pupil().wants().contains(Word.of(Wish.class, attribute.substring(WANTS.length())))
                    ? "yes" : "no";
        }
        if (attribute.startsWith(OUTCOME)) {
            return last(change(attribute).orElseThrow(() -> unasked(attribute))).map(tried -> tried.outcome().id()).orElse(null);
        }
        if (attribute.startsWith(ANSWER)) {
            return run.background().answers().get(attribute.substring(ANSWER.length()));
        }
        return switch (attribute) {
            case "compound" -> Word.idOf(run.background().stint().compound());
            case "level" -> Word.idOf(run.background().pupil().level());
            case "length" -> said(laps(), thresholds.longRun(), "long", "short");
            case "tyre age" -> said(tyreLaps(), thresholds.oldTyres(), "old", "new");
            case "last outcome" -> run.tried().isEmpty() ? null : last().outcome().id();
            case "last change" -> run.tried().isEmpty() ? null : last().change().id().replace(' ', COLON);
            default -> throw unasked(attribute);
        };
    }

    /** One word above a limit, another up to it; null where the number is not known. */
    private static String said(double number, double limit, String above, String upTo) {
        return Double.isNaN(number) ? null : number > limit ? above : upTo;
    }

    /** The last change that was tried, where there is one. */
    private Tried last() {
        return run.tried().get(run.tried().size() - 1);
    }

    /** The change of {@code outcome of front-toe:toe-in}. */
    private static Optional<Change> change(String attribute) {
        return Change.parse(attribute.substring(OUTCOME.length()).replace(COLON, ' '));
    }

    private Optional<Tried> last(Change change) {
        return run.tried().stream().filter(tried -> tried.change().equals(change))
                .reduce((earlier, later) -> later);
    }

    @Override
    public double number(String attribute) {
        return switch (attribute) {
            case LAPS -> laps();
            case TYRE_LAPS -> tyreLaps();
            case FUEL -> run.background().stint().fuel().map(fuel -> fuel.in(Unit.KILOGRAM)).orElse(Double.NaN);
            default -> TyreFigure.of(attribute).orElseThrow(() -> unasked(attribute)).read(run);
        };
    }

    private double laps() {
        Optional<Integer> told = run.background().stint().laps();
        int timed = run.driven().laps().size();
        return told.isPresent() ? told.get() : timed > 0 ? timed : Double.NaN;
    }

    private double tyreLaps() {
        Optional<Integer> told = run.background().stint().tyreLaps();
        return told.isPresent() ? told.get() : Double.NaN;
    }

    @Override
    public String says(String attribute) {
        if (attribute.startsWith(WANTS)) {
            List<Wish> wants = run.background().pupil().wants();
            return wants.isEmpty() ? "nobody said what the driver wants" : "the driver wants "
                    + String.join(", ", wants.stream().map(Wish::spoken).toList());
        }
        if (attribute.startsWith(OUTCOME)) {
            Change change = change(attribute).orElseThrow(() -> unasked(attribute));
            return last(change).map(tried -> change + " was tried: " + tried.outcome().told())
                    .orElse(change + " was not tried");
        }
        if (attribute.startsWith(ANSWER)) {
            String question = attribute.substring(ANSWER.length());
            return Optional.ofNullable(word(attribute)).map(answer -> "the answer to " + question + " was " + answer)
                    .orElse("nobody answered " + question);
        }
        return switch (attribute) {
            case "compound" -> Optional.ofNullable(word(attribute)).map(word -> "the tyres are of the " + word
                    + " compound").orElse("the compound is not given");
            case "level" -> Optional.ofNullable(word(attribute)).map(word -> "the driver is at " + word + " level")
                    .orElse("the driver's level is not given");
            case "last outcome", "last change" -> run.tried().isEmpty() ? "no change was tried yet"
                    : "the last change was " + last().change().id() + ": " + last().outcome().told();
            case "length", LAPS -> counted(laps(), "the run was ", "how long the run was is not given");
            case "tyre age", TYRE_LAPS -> counted(tyreLaps(), "the tyres had done ", "the age of the tyres is not given");
            case FUEL -> run.background().stint().fuel().map(fuel -> "there was " + fuel + " of fuel on board")
                    .orElse("the fuel is not given");
            default -> TyreFigure.of(attribute).orElseThrow(() -> unasked(attribute)).says(run);
        };
    }

    private static String counted(double laps, String begin, String open) {
        return Double.isNaN(laps) ? open : begin + new Quantity(laps, Unit.POSITION) + (laps == 1 ? " lap" : " laps");
    }

    /** By the title alone: every conclusion carries its premises and is hashed when it is inserted. */
    @Override
    public int hashCode() {
        return run.title().hashCode();
    }

    /** Complaints, car and day are facts of their own. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Outing outing && thresholds.equals(outing.thresholds)
                && (run == outing.run || run.tyres().equals(outing.run.tyres())
                && run.background().equals(outing.run.background()) && run.tried().equals(outing.run.tried())
                && run.driven().equals(outing.run.driven()) && run.car().equals(outing.run.car()));
    }

    @Override
    public double certainty() {
        return 1;
    }

    @Override
    public String statement() {
        return "the run as it was driven";
    }
}
