package camberwell.language;

import camberwell.fact.Attribute;
import camberwell.fact.Finding;
import camberwell.fact.Kind;
import camberwell.fact.Passing;
import camberwell.fact.Premise;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;

/**
 * What a condition asks of one fact, on a line that is soon read back: a rule that has to be judged before it is loaded has no
 * sentence yet. {@code Setup&drive=front|rear&rear toe~-1.0~0.1}; with {@code !} before it where there must be no such fact.
 * Of findings it tells nothing, since they follow only when the rules fire.
 */
final class AskedOfFact {

    private static final char NO = '!';
    private static final String AND = "&";
    private static final char IS = '=';
    private static final char RANGE = '~';
    private static final String OR = "|";

    private AskedOfFact() {
    }

    /** Whether there is more to ask than by the words of {@link Needs#needed}: a number, an absence, two answers of one fact. */
    static boolean tells(Question question) {
        return question.kind() != Finding.KIND
                && (question.negative() || question.asks().size() > 1 || question.asks().stream().anyMatch(
                        ask -> ask.passing().isRange()));
    }

    /** The line of a question. */
    static String write(Question question) {
        StringBuilder line = new StringBuilder();
        if (question.negative()) {
            line.append(NO);
        }
        line.append(question.kind().name());
        for (Question.Ask ask : question.asks()) {
            Passing passing = ask.passing();
            line.append(AND).append(ask.attribute().name());
            if (passing.isRange()) {
                line.append(RANGE).append(passing.above()).append(RANGE).append(passing.below());
            } else {
                line.append(IS).append(String.join(OR, passing.words()));
            }
        }
        return line.toString();
    }

    /**
     * The question of a line.
     *
     * @throws IllegalArgumentException if {@link #write} did not write it
     */
    static Question read(String line) {
        boolean negative = line.charAt(0) == NO;
        String[] parts = line.substring(negative ? 1 : 0).split(AND);
        Kind kind = Kind.named(parts[0]).orElseThrow(() -> new IllegalArgumentException(line));
        List<Question.Ask> asks = new ArrayList<>();
        for (int i = 1; i < parts.length; i++) {
            asks.add(ask(kind, parts[i]));
        }
        return new Question(kind, negative, asks);
    }

    private static Question.Ask ask(Kind kind, String part) {
        int range = part.indexOf(RANGE);
        int end = range < 0 ? part.indexOf(IS) : range;
        Attribute attribute = kind.attribute(part.substring(0, end)).orElseThrow(() -> new IllegalArgumentException(part));
        if (range < 0) {
            return new Question.Ask(attribute, Passing.words(Arrays.asList(part.substring(end + 1).split("\\|"))));
        }
        int below = part.indexOf(RANGE, range + 1);
        return new Question.Ask(attribute, Passing.between(Double.parseDouble(part.substring(range + 1, below)),
                Double.parseDouble(part.substring(below + 1))));
    }

    /** Whether {@code premises} are as asked, sign and all. */
    static boolean met(Question question, Collection<? extends Premise> premises) {
        for (Premise premise : premises) {
            if (question.holdsOf(premise)) {
                return !question.negative();
            }
        }
        return question.negative();
    }
}
