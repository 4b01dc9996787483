package camberwell.cli;

import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A word of a closed list on the command line, in capitals or not. A misspelt one is answered with what was most likely
 * meant, in the words that the help uses.
 *
 * @param <E> the words
 */
class TypedWord<E extends Enum<E>> implements ITypeConverter<E> {

    private final List<E> known;
    private final Function<E, String> name;

    /** The words of {@code type}, each written as {@code name} has it. */
    TypedWord(Class<E> type, Function<E, String> name) {
        known = Arrays.asList(type.getEnumConstants());
        this.name = name;
    }

    /** Words that are written as Java has them, in small letters. */
    TypedWord(Class<E> type) {
        this(type, word -> word.name().toLowerCase(Locale.ROOT));
    }

    @Override
    public E convert(String typed) {
        return known.stream().filter(word -> name.apply(word).equalsIgnoreCase(typed.strip())).findFirst()
                .orElseThrow(() -> new TypeConversionException("\"" + typed + "\" is not known here"
                        + hint(typed, known.stream().map(name).toList())));
    }

    /** What was most likely meant, or all that could be. */
    static String hint(String typed, List<String> known) {
        return Nearest.to(typed, known).map(near -> "; did you mean " + near + "?")
                .orElse("; it is one of " + String.join(", ", known));
    }

    /** Whom the advice is for. */
    static final class ForWhom extends TypedWord<Audience> {
        ForWhom() {
            super(Audience.class, Word::id);
        }
    }
}
