package camberwell.cli;

import camberwell.vocabulary.Change;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A change as a person types it and how far it goes: {@code rear-toe toe-in 2}.
 *
 * @param steps of the car's own, from 1 to 99; 1 where none are said
 */
record TypedChange(Change change, int steps) {

    /**
     * Reads {@code typed}.
     *
     * @throws IllegalArgumentException with what is wrong, and what was most likely meant
     */
    static TypedChange of(String typed) {
        String words = typed.strip();
        int space = words.lastIndexOf(' ');
        String last = words.substring(space + 1);
        boolean counted = space > 0 && !last.isEmpty() && last.chars().allMatch(it -> it >= '0' && it <= '9' || it == '-');
        if (counted && !last.matches("[1-9][0-9]?")) {
            throw new IllegalArgumentException("steps are a whole number from 1 to 99, not " + last);
        }
        String named = counted ? words.substring(0, space).strip() : words;
        return new TypedChange(ChangeWords.parse(named).orElseThrow(() -> new IllegalArgumentException(
                ChangeWords.problem(named))), counted ? Integer.parseInt(last) : 1);
    }

    /** For an option of a command. */
    static final class Converter implements ITypeConverter<TypedChange> {
        @Override
        public TypedChange convert(String typed) {
            try {
                return of(typed);
            } catch (IllegalArgumentException e) {
                throw new TypeConversionException(e.getMessage());
            }
        }
    }
}
