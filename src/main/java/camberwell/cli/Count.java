package camberwell.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How many on the command line: a whole number from 1. */
final class Count implements ITypeConverter<Integer> {

    private static final int MOST = 1000;

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
        throw new TypeConversionException("\"" + typed + "\" will not do: it is a whole number from 1 to " + MOST);
    }
}
