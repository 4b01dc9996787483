package camberwell.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The numbers of a log's cells; what they are held against is the Java library's own reading of them. */
@Label("A cell of a log")
class NumberTextTest {

    @Property(tries = 2000)
    @Label("of at most fifteen digits is read to the very double that the library reads")
    void ordinaryNumbersAreExact(@ForAll("ordinary") String text) {
        assertEquals(Double.parseDouble(text), NumberText.parse(text, '.'));
        assertEquals(Double.parseDouble(text), NumberText.parse(" " + text.replace('.', ',') + "\t", ','));
    }

    @Property(tries = 2000)
    @Label("as a program writes any double is read to within a part in 10^14")
    void longNumbersAreNear(@ForAll double value) {
        double read = NumberText.parse(Double.toString(value), '.');
        assertTrue(Math.abs(read - value) <= 1e-14 * Math.abs(value) + Double.MIN_VALUE * 8, value + " is read as " + read);
    }

    @Provide
    Arbitrary<String> ordinary() {
        Arbitrary<String> whole = Arbitraries.strings().numeric().ofMinLength(1).ofMaxLength(9);
        Arbitrary<String> fraction = Arbitraries.strings().numeric().ofMaxLength(6)
                .map(digits -> digits.isEmpty() ? "" : "." + digits);
        return Combinators.combine(Arbitraries.of("", "-", "+"), whole, fraction, Arbitraries.of("", "", "e-3", "E+05"))
                .as((sign, digits, rest, exponent) -> sign + digits + rest + exponent);
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({".5, 0.5", "5., 5", "-0, -0.0", "\u22121.5, -1.5", "00012.50, 12.5", "1e3, 1000",
            "9007199254740993, 9007199254740993"})
    @DisplayName("may be written as loggers write it")
    void otherForms(String text, double value) {
        assertEquals(value, NumberText.parse(text, '.'), 1e-14 * Math.abs(value));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "nan", "-", "n/a", "#N/A", "NaN(ind)"})
    @DisplayName("may be empty, or say that nothing was measured")
    void missing(String text) {
        assertTrue(Double.isNaN(NumberText.parse(text, '.')));
    }

    @ParameterizedTest
    @ValueSource(strings = {".", "1.2.3", "12 5", "1e", "1e9999", "12m", "+-3", "0x10", "eins"})
    @DisplayName("that is no number is told from an empty one")
    void noNumber(String text) {
        assertEquals(NumberText.NONE, NumberText.parse(text, '.'));
    }

    @Test
    @DisplayName("may be a time of day")
    void time() {
        char[] text = "2026-05-03T01:02:03.5".toCharArray();
        assertEquals(3723.5, NumberText.time(text, 0, text.length, '.') % 86400, 1e-6);
    }
}
