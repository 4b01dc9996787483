package camberwell.cli;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How many on the command line: a whole number from 1 to 1000, or in the range of one of the kinds below. */
class Count implements ITypeConverter<Integer> {

    private static final int MOST = 1000;
    private static final int MOST_RUNS = 999_999;

    private final int least;
    private final int most;
    private final String otherwise;

    Count() {
        this(1, MOST, " will not do: it is a whole number from 1 to " + MOST);
    }

    private Count(int least, int most, String otherwise) {
        this.least = least;
        this.most = most;
        this.otherwise = otherwise;
    }

    @Override
    public Integer convert(String typed) {
        try {
            int number = Integer.parseInt(typed.strip());
            if (number >= least && number <= most) {
                return number;
            }
        } catch (NumberFormatException e) {
            // Said below.
        }
        throw new TypeConversionException("\"" + typed + "\"" + otherwise);
    }

    /** The number of a run, with or without the zeros of its file. */
    static final class OfRun extends Count {
        OfRun() {
            super(1, MOST_RUNS, " is no number of a run");
        }
    }

    /** How often, where 0 stands for without an end. */
    static final class Rounds extends Count {
        Rounds() {
            super(0, MOST, " will not do: it is a whole number from 0 to " + MOST);
        }
    }
}
