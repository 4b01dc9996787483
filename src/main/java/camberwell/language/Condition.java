package camberwell.language;

import java.util.List;
import java.util.stream.Collectors;

/**
 * One condition of a rule: a sentence, and the dashes that narrow it. To Drools it is one pattern on one fact.
 *
 * @param head the sentence
 * @param narrowings the lines with a dash under it
 */
public record Condition(Line head, List<Line> narrowings) {

    /** What it asks, dashes and all. */
    public Question question() {
        Question question = head.question();
        for (Line narrowing : narrowings) {
            question = question.narrowedBy(narrowing.question().asks());
        }
        return question;
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
