package camberwell.fact;

import java.util.List;

/**
 * One rule's caution.
 *
 * @param note the name of the caution's note
 */
public record Caution(String note, double certainty, String rule, List<Premise> premises) implements Conclusion {

    @Override
    public String about() {
        return note;
    }

    @Override
    public int hashCode() {
        return rule.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Caution caution && Conclusion.sameWord(this, caution) && note.equals(caution.note);
    }
}
