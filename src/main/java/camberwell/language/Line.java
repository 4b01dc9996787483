package camberwell.language;

import java.util.Map;
import java.util.stream.Collectors;

/**
 * A sentence as it stands in a rule.
 *
 * @param sentence the dictionary's sentence
 * @param words what fills its gaps
 * @param meaning what it asks or says
 * @param text as it was written
 * @param line in the file, from 1
 * @param column of the first letter, from 1
 */
public record Line(Sentence sentence, Map<String, String> words, Meaning meaning, String text, int line, int column) {

    /**
     * The line with what it means.
     *
     * @throws IllegalArgumentException if the sentence makes no sense with these words, with the reason
     */
    public static Line of(Sentence sentence, Map<String, String> words, String text, int line, int column) {
        return new Line(sentence, words, sentence.mapping().filled(words), text, line, column);
    }

    /** The word in a gap. */
    public String word(String gap) {
        return words.get(gap);
    }

    /**
     * What it asks.
     *
     * @throws ClassCastException if it is a conclusion
     */
    public Question question() {
        return (Question) meaning;
    }

    /**
     * What a narrowing asks for, in words: {@code entry or mid-corner}, {@code anything but exit},
     * {@code late in the run}.
     */
    public String wish() {
        if (words.isEmpty()) {
            return text.substring(1).strip();
        }
        String wished = words.values().stream().map(word -> word.equals("mid-corner") ? word : word.replace('-', ' '))
                .collect(Collectors.joining(" or "));
        return switch (((Mapping.Pattern) sentence.mapping()).calls().get(0).operator()) {
            case IS -> wished;
            case IS_NOT -> "anything but " + wished;
            case AT_LEAST -> "at least " + wished;
            case AT_MOST -> "at most " + wished;
            case ABOVE -> "more than " + wished;
            case BELOW -> "less than " + wished;
        };
    }

    /**
     * What it says.
     *
     * @throws ClassCastException if it is a condition
     */
    public Statement statement() {
        return (Statement) meaning;
    }
}
