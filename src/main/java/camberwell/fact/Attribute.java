package camberwell.fact;

import camberwell.units.Measure;
import camberwell.units.Unit;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;

/**
 * Something that a fact can be asked, declared once, with the fact: a word of a closed list, a name, or a number.
 *
 * @param name as it is written in the dictionary
 * @param type the closed list; null for a list that stands here, a name and a number
 * @param list the words, where they are no vocabulary of their own
 * @param unit of a number; empty for words and names
 * @param measure what is plausible of the number; empty where anything is
 */
public record Attribute(String name, Class<? extends Word> type, List<String> list, Optional<Unit> unit,
        Optional<Measure> measure) {

    /** One that is answered by a word of the vocabulary. */
    static Attribute of(String name, Class<? extends Word> type) {
        return new Attribute(name, type, List.of(), Optional.empty(), Optional.empty());
    }

    /** One that is answered by one of these words. */
    static Attribute of(String name, String... words) {
        return new Attribute(name, null, List.of(words), Optional.empty(), Optional.empty());
    }

    /** One that is answered by the name of a note, which no list closes. */
    static Attribute named(String name) {
        return new Attribute(name, null, List.of(), Optional.empty(), Optional.empty());
    }

    /** One that is answered by a number. */
    static Attribute number(String name, Unit unit) {
        return new Attribute(name, null, List.of(), Optional.of(unit), Optional.empty());
    }

    /** One that is answered by a number, of which not every one makes sense. */
    static Attribute measured(String name, Unit unit, Measure measure) {
        return new Attribute(name, null, List.of(), Optional.of(unit), Optional.of(measure));
    }

    /** Whether it is answered by a number. */
    public boolean isNumber() {
        return unit.isPresent();
    }

    /** Whether its words are a closed list. */
    public boolean isClosed() {
        return type != null || !list.isEmpty();
    }

    /** The words that may answer, in their order; none for a number and for a name. */
    public List<String> words() {
        return type == null ? list : Word.ids(type);
    }
}
