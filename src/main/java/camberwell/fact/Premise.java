package camberwell.fact;

import java.util.List;

/**
 * A fact that a rule can rest on. Rules ask it by the names of its attributes; a question about something that nobody
 * said or measured is answered no, whichever way it is put.
 */
public sealed interface Premise permits Reported, Reading, Setup, Day, Outing, Finding {

    /** How sure it is, in [-1, 1]; facts of the car and the day are sure. */
    double certainty();

    /** The fact in words, for an explanation. */
    String statement();

    /** What tells it from every other fact of a case, for an order that is always the same. */
    default String mark() {
        return statement();
    }

    /** What kind of fact it is, and so what it can be asked. */
    Kind kind();

    /**
     * What it answers with a word; null where it leaves that open.
     *
     * @throws IllegalArgumentException if it cannot be asked that
     */
    String word(String attribute);

    /**
     * What it answers with a number, in the attribute's unit; NaN where it leaves that open.
     *
     * @throws IllegalArgumentException if it cannot be asked that
     */
    double number(String attribute);

    /**
     * What it says about an attribute, in words, and be it that it says nothing.
     *
     * @throws IllegalArgumentException if it cannot be asked that
     */
    String says(String attribute);

    /** Whether it answers with that word. */
    default boolean is(String attribute, String word) {
        return word.equals(word(attribute));
    }

    /** Whether it answers with one of those words. */
    default boolean is(String attribute, String word, String other) {
        return is(attribute, word) || is(attribute, other);
    }

    /** Whether it answers with one of those words. */
    default boolean is(String attribute, String word, String other, String third) {
        return is(attribute, word, other) || is(attribute, third);
    }

    /** Whether it answers, and with another word. */
    default boolean isNot(String attribute, String word) {
        String said = word(attribute);
        return said != null && !said.equals(word);
    }

    /** Whether it answers, and with neither of those words. */
    default boolean isNot(String attribute, String word, String other) {
        return isNot(attribute, word) && isNot(attribute, other);
    }

    /** Whether the word stands there or further on in its list. */
    default boolean atLeast(String attribute, String word) {
        String said = word(attribute);
        List<String> words = kind().attribute(attribute).orElseThrow().words();
        return said != null && words.indexOf(said) >= words.indexOf(word);
    }

    /** Whether it answers with that number or a larger one. */
    default boolean atLeast(String attribute, double number) {
        return number(attribute) >= number;
    }

    /** Whether the word stands there or before it in its list. */
    default boolean atMost(String attribute, String word) {
        String said = word(attribute);
        List<String> words = kind().attribute(attribute).orElseThrow().words();
        return said != null && words.indexOf(said) <= words.indexOf(word);
    }

    /** Whether it answers with that number or a smaller one. */
    default boolean atMost(String attribute, double number) {
        return number(attribute) <= number;
    }

    /** Whether it answers with a larger number. */
    default boolean above(String attribute, double number) {
        return number(attribute) > number;
    }

    /** Whether it answers with a smaller number. */
    default boolean below(String attribute, double number) {
        return number(attribute) < number;
    }

    /** What is thrown at who asks for something that this kind of fact has no answer to. */
    default IllegalArgumentException unasked(String attribute) {
        return new IllegalArgumentException("a " + kind().name() + " cannot be asked for \"" + attribute + "\"");
    }
}
