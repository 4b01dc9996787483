package camberwell.fact;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/**
 * The answers that a condition lets pass: some words, or the numbers of an open range. What a fact leaves open never
 * passes.
 *
 * @param words the words; none for a range
 * @param above every number that passes is larger
 * @param below every number that passes is smaller
 */
public record Passing(Set<String> words, double above, double below) {

    /** Those words alone. */
    public static Passing words(Collection<String> words) {
        return new Passing(new TreeSet<>(words), Double.NaN, Double.NaN);
    }

    /** The numbers between two others, which do not pass themselves. */
    public static Passing between(double above, double below) {
        return new Passing(Set.of(), above, below);
    }

    /** The numbers from {@code least} on. */
    public static Passing from(double least) {
        return between(Math.nextDown(least), Double.MAX_VALUE);
    }

    /** The numbers up to {@code most}. */
    public static Passing upTo(double most) {
        return between(-Double.MAX_VALUE, Math.nextUp(most));
    }

    /** Whether it is about a number. */
    public boolean isRange() {
        return !Double.isNaN(above);
    }

    /** Whether that word passes; none does where it is open. */
    public boolean lets(String word) {
        return word != null && words.contains(word);
    }

    /** Whether that number passes; none does where it is NaN. */
    public boolean lets(double number) {
        return number > above && number < below;
    }

    /** Whether nothing passes. */
    public boolean nothing() {
        return isRange() ? Math.nextUp(above) >= below : words.isEmpty();
    }

    /** What passes both. */
    public Passing and(Passing other) {
        if (isRange()) {
            return between(Math.max(above, other.above), Math.min(below, other.below));
        }
        Set<String> both = new TreeSet<>(words);
        both.retainAll(other.words);
        return words(both);
    }

    /** Whether all that passes here passes there too. */
    public boolean within(Passing other) {
        return isRange() ? above >= other.above && below <= other.below : other.words.containsAll(words);
    }

    /** Stated, since the one that a record has of itself is put together at its first use, which every check would wait for. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Passing passing && words.equals(passing.words) && Double.compare(above, passing.above) == 0
                && Double.compare(below, passing.below) == 0;
    }

    @Override
    public int hashCode() {
        return 31 * (31 * words.hashCode() + Double.hashCode(above)) + Double.hashCode(below);
    }
}
