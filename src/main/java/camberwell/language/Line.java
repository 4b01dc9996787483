package camberwell.language;

import java.util.Map;

/**
 * A sentence as it stands in a rule.
 *
 * @param sentence the dictionary's sentence
 * @param words what fills its gaps
 * @param text as it was written
 * @param line in the file, from 1
 * @param column of the first letter, from 1
 */
public record Line(Sentence sentence, Map<String, String> words, String text, int line, int column) {

    /** The word in a gap. */
    public String word(String gap) {
        return words.get(gap);
    }

    /** Whether it is the sentence with that template. */
    public boolean says(String template) {
        return sentence.template().equals(template);
    }
}
