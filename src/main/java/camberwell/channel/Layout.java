package camberwell.channel;

import java.nio.charset.Charset;
import java.util.List;
import java.util.OptionalDouble;

/**
 * How a log is written.
 *
 * @param charset of its text
 * @param delimiter between its columns
 * @param decimal the decimal mark of its numbers
 * @param comment the character that lines to be passed over begin with
 * @param headings of its columns
 * @param headingLine the line that they stand in, counted from 1
 * @param firstRow the line of the first row of numbers, counted from 1
 * @param sampleRate rows a second, where the lines above the headings say so, Hz
 */
record Layout(Charset charset, char delimiter, char decimal, char comment, List<Heading> headings, int headingLine,
        int firstRow, OptionalDouble sampleRate) {

    /** How it is written, in words: {@code ";" between columns, decimal comma}. */
    String text() {
        String between = delimiter == '\t' ? "tabs" : "\"" + delimiter + "\"";
        return between + " between columns, decimal " + (decimal == ',' ? "comma" : "point")
                + (charset.name().equals("UTF-8") ? "" : ", " + charset.name());
    }
}
