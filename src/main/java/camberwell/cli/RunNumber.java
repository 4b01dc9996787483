package camberwell.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** The number of a run, with or without the zeros of its file. */
final class RunNumber implements ITypeConverter<Integer> {

    private static final int MOST = 999_999;

    @Override
    public Integer convert(String typed) {
        try {
            int number = Integer.parseInt(typed.strip());
            if (number >= 1 && number <= MOST) {
                return number;
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new TypeConversionException("\"" + typed + "\" is no number of a run");
    }
}
