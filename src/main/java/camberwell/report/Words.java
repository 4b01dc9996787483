package camberwell.report;

import camberwell.advice.Learned;
import camberwell.advice.RankedChange;
import camberwell.advice.Score;
import camberwell.advice.Size;
import camberwell.fact.Day;
import camberwell.fact.Setup;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.Locale;

/** How things are said to a person, in one place. */
public final class Words {

    /** What advice lacks on a car of which nobody knows the driven wheels. */
    public static final String UNKNOWN_DRIVE = "Nobody knows which wheels are driven, so whatever hangs on that is "
            + "left out: what the throttle does to the balance, and every effect that a change has with one drive "
            + "only.";

    private Words() {
    }

    /** With a capital first letter. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A change in words: {@code front camber less negative}. Taking off rear toe-in is not called toe-out. */
    public static String change(Change change) {
        return change.adjuster().adjustment() == Adjustment.TOE
                ? change.adjuster().spoken() + (change.adjuster() == Adjuster.REAR_TOE ? ", " : " towards ")
                + direction(change) : change.adjuster().spoken() + " " + direction(change);
    }

    /** The way of a change in words. */
    public static String direction(Change change) {
        return change.adjuster() == Adjuster.REAR_TOE && change.direction() == Direction.TOE_OUT
                ? "less toe-in" : change.adjuster() == Adjuster.REAR_TOE ? "more toe-in" : change.direction().spoken();
    }

    /** A change and how far it goes: {@code rear toe: 0.10 deg more toe-in a wheel, 0.15 -> 0.25 deg}. */
    public static String move(RankedChange change) {
        return alone(change) + change.beside().map(it -> "; with it " + it.change().adjuster().spoken() + ": "
                + amount(it.change(), it.size().from().orElseThrow(), it.size().to().orElseThrow()) + ", "
                + fromTo(it.size().from().get(), it.size().to().get())).orElse("");
    }

    private static String alone(RankedChange change) {
        Size size = change.size();
        if (size.from().isEmpty() || size.to().isEmpty()) {
            return change(change.change()) + ", one common step";
        }
        String adjuster = change.change().adjuster().spoken();
        if (wheelsDiffer(size) && change.change().adjuster().adjustment() == Adjustment.CAMBER) {
            return adjuster + ": " + amount(change.change(), size.from().get(), size.to().get()) + ", each wheel";
        }
        if (wheelsDiffer(size)) {
            return adjuster + ": " + change.change().direction().spoken() + ", each wheel by its own reading";
        }
        return adjuster + ": " + amount(change.change(), size.from().get(), size.to().get()) + ", "
                + size(change);
    }

    /** Whether the wheels of an axle are set to different figures, which then have to be shown one by one. */
    public static boolean wheelsDiffer(Size size) {
        return size.wheels().stream().map(wheel -> fromTo(wheel.from(), wheel.to())).distinct().count() > 1;
    }

    /** Where a setting stands and where it goes: {@code 0.15 -> 0.25 deg}. */
    public static String size(RankedChange change) {
        Size size = change.size();
        if (size.from().isEmpty() || size.to().isEmpty()) {
            return "one common step";
        }
        return fromTo(size.from().get(), size.to().get()) + cold(change);
    }

    /** Where one wheel stands and where it goes. */
    public static String size(RankedChange change, Size.WheelSize wheel) {
        return fromTo(wheel.from(), wheel.to()) + cold(change);
    }

    private static String cold(RankedChange change) {
        return change.change().adjuster().adjustment() == Adjustment.PRESSURE ? " cold" : "";
    }

    /** Two quantities of one unit: {@code 0.15 -> 0.25 deg}. */
    public static String fromTo(Quantity from, Quantity to) {
        int decimals = decimals(from, to);
        String unit = from.unit().symbol();
        String start = from.text(decimals);
        return (unit.isEmpty() ? start : start.substring(0, start.length() - unit.length() - 1)) + " -> "
                + to.text(decimals);
    }

    private static int decimals(Quantity from, Quantity to) {
        int needed = Math.max(Quantity.decimalsOf(from.value()), Quantity.decimalsOf(to.value()));
        return from.unit() == Unit.BAR ? Math.max(2, needed) : needed;
    }

    private static String amount(Change change, Quantity from, Quantity to) {
        Adjuster adjuster = change.adjuster();
        String by = from.unit() == Unit.POSITION ? counted(adjuster, from, to)
                : from.withValue(Math.abs(to.value() - from.value())).text(decimals(from, to));
        // Clicks count from nowhere in particular: they do not tell whether the wheels point in or out.
        return by + " " + (adjuster.adjustment() == Adjustment.TOE ? (from.unit() == Unit.POSITION
                ? "towards " + change.direction().spoken() : toe(change.direction(), from, to)) + " a wheel"
                : change.direction().spoken());
    }

    /** As the car counts: from 12 to 14 are two clicks, whatever the file calls a step. */
    private static String counted(Adjuster adjuster, Quantity from, Quantity to) {
        Quantity by = from.withValue(Math.rint(Math.abs(to.value() - from.value()) * 1e6) / 1e6);
        return by + " " + adjuster.adjustment().stepWord() + (by.value() == 1 ? "" : "s");
    }

    /** Taking toe-out off is less toe-out, not toe-in. */
    private static String toe(Direction direction, Quantity from, Quantity to) {
        boolean in = direction == Direction.TOE_IN;
        if (from.value() >= 0 && to.value() >= 0) {
            return in ? "more toe-in" : "less toe-in";
        }
        return from.value() <= 0 && to.value() <= 0 ? in ? "less toe-out" : "more toe-out"
                : in ? "towards toe-in" : "towards toe-out";
    }

    /** The car and the day, as an answer begins: {@code Corvane coupe, rear-wheel drive, dry track at 27 °C}. */
    public static String carAndDay(Case run) {
        return new Setup(run.car()).statement() + day(run);
    }

    /** The day after a comma; nothing where nobody told anything of it. */
    static String day(Case run) {
        Conditions day = run.conditions();
        return day.said().isEmpty() && day.track().isEmpty() ? "" : ", " + new Day(day).statement();
    }

    /** Every term of a score. */
    public static String score(Score score) {
        return two(score.total()) + " = certainty " + two(score.certainty()) + " x (relief "
                + two(score.relief()) + " - harm to complaints " + two(score.harmToComplaints())
                + " - harm to what is fine " + two(score.harmToFine()) + ") - effort " + two(score.effort())
                + " - risk " + two(score.risk());
    }

    /** What came of a change before, and what that did to its certainty. */
    public static String learned(Learned learned) {
        return learned.text() + shift(learned);
    }

    /** {@code ; certainty 0.65 -> 0.31}; nothing of the way back, which rests on what came of the way there. */
    public static String shift(Learned learned) {
        return learned.undo() ? "" : learned.evidence() == 0 ? "; it leaves the certainty of " + two(learned.before())
                : "; certainty " + two(learned.before()) + " -> " + two(learned.after());
    }

    /** A certainty for people. */
    public static String certainty(double certainty) {
        return certainty >= 0.8 ? "almost certain" : certainty >= 0.6 ? "very likely"
                : certainty >= 0.4 ? "likely" : "possible";
    }

    /** A number with two decimals. */
    public static String two(double number) {
        return Figures.fill("%.2f", number);
    }

    /** A number with its sign, one decimal where it needs it. */
    public static String signed(double number) {
        return number == Math.rint(number) ? Figures.fill("%+.0f", number)
                : Figures.fill("%+.1f", number);
    }
}
