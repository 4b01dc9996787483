package camberwell.language;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One condition of a rule: a sentence, and the dashes that narrow it. To Drools it is one pattern on one fact.
 *
 * @param head the sentence
 * @param narrowings the lines with a dash under it
 * @param question what it asks, dashes and all
 */
public record Condition(Line head, List<Line> narrowings, Question question) {

    /** Copies the list. */
    public Condition {
        narrowings = List.copyOf(narrowings);
    }

    /**
     * The sentence with what narrows it.
     *
     * @throws ClassCastException if one of them is a conclusion
     */
    public static Condition of(Line head, List<Line> narrowings) {
        Question question = head.question();
        for (Line narrowing : narrowings) {
            question = question.narrowedBy(narrowing.question().asks());
        }
        return new Condition(head, narrowings, question);
    }

    /** The same with one more dash under it. */
    Condition narrowedBy(Line narrowing) {
        List<Line> more = new ArrayList<>(narrowings);
        more.add(narrowing);
        return new Condition(head, more, question.narrowedBy(narrowing.question().asks()));
    }

    /** Whether it asks that something is not so. */
    public boolean negative() {
        return head.sentence().mapping() instanceof Mapping.Pattern pattern && pattern.negative();
    }

    /** As it was written, on one line. */
    public String text() {
        return head.text() + narrowings.stream().map(line -> " " + line.text().substring(1).trim())
                .collect(Collectors.joining());
    }
}
