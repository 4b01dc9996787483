package camberwell.report;

import camberwell.advice.RankedChange;
import camberwell.advice.Size;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.Locale;

/** How things are said to a person, in one place. */
public final class Words {

    private Words() {
    }

    /** With a capital first letter. */
    public static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** A change in words: {@code front camber less negative}. Taking off rear toe-in is not called toe-out. */
    public static String change(Change change) {
        return change.adjuster().spoken() + " " + direction(change);
    }

    /** The way of a change in words. */
    public static String direction(Change change) {
        return change.adjuster() == Adjuster.REAR_TOE && change.direction() == Direction.TOE_OUT
                ? "less toe-in" : change.direction().spoken();
    }

    /** How far a change goes: {@code from -2.5 deg to -2.0 deg}. */
    public static String size(RankedChange change) {
        Size size = change.size();
        if (size.from().isEmpty() || size.to().isEmpty()) {
            return "one common step";
        }
        String text = fromTo(size.from().get(), size.to().get());
        return change.change().adjuster().kind() == Adjuster.Kind.PRESSURE ? text + " cold"
                : change.change().adjuster().kind() == Adjuster.Kind.TOE ? text + " a wheel" : text;
    }

    /** Two settings with the same number of digits: {@code from 1.50 bar to 1.36 bar}. */
    public static String fromTo(Quantity from, Quantity to) {
        int decimals = Math.max(Quantity.decimalsOf(from.value()), Quantity.decimalsOf(to.value()));
        return "from " + from.text(decimals) + " to " + to.text(decimals);
    }

    /** A certainty for people. */
    public static String certainty(double certainty) {
        return certainty >= 0.8 ? "almost certain" : certainty >= 0.6 ? "very likely"
                : certainty >= 0.4 ? "likely" : "possible";
    }

    /** A number with two decimals. */
    public static String two(double number) {
        return String.format(Locale.ROOT, "%.2f", number);
    }

    /** A number with its sign, one decimal where it needs it. */
    public static String signed(double number) {
        return number == Math.rint(number) ? String.format(Locale.ROOT, "%+.0f", number)
                : String.format(Locale.ROOT, "%+.1f", number);
    }
}
