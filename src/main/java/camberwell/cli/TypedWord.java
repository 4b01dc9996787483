package camberwell.cli;

import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Word;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A word of a closed list on the command line, in capitals or not. A misspelt one is answered with what was most likely
 * meant, in the words that the help uses.
 * Loops rather than lambdas: picocli's interface is of an old class version, and no class-data archive keeps the lambdas
 * of a class that has it.
 *
 * @param <E> the words
 */
class TypedWord<E extends Enum<E>> implements ITypeConverter<E> {

    private final Map<String, E> known = new LinkedHashMap<>();

    /** The words of {@code type}, each as camberwell writes it, or else in small letters. */
    TypedWord(Class<E> type) {
        for (E word : type.getEnumConstants()) {
            known.put(word instanceof Word written ? written.id() : word.name().toLowerCase(Locale.ROOT).replace('_', '-'), word);
        }
    }

    @Override
    public E convert(String typed) {
        E word = known.get(typed.strip().toLowerCase(Locale.ROOT));
        if (word == null) {
            throw new TypeConversionException("\"" + typed + "\" is not known here"
                    + hint(typed, List.copyOf(known.keySet())));
        }
        return word;
    }

    /** What was most likely meant, or all that could be. */
    static String hint(String typed, List<String> known) {
        return Nearest.to(typed, known).map(near -> "; did you mean " + near + "?")
                .orElse("; it is one of " + String.join(", ", known));
    }

    /** Whom the advice is for. */
    static final class ForWhom extends TypedWord<Audience> {
        ForWhom() {
            super(Audience.class);
        }
    }

    /** What came of a change. */
    static final class OfOutcome extends TypedWord<Outcome> {
        OfOutcome() {
            super(Outcome.class);
        }
    }
}
