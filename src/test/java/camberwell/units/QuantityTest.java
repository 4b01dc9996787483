package camberwell.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    @ParameterizedTest
    @DisplayName("people write quantities in many ways")
    @CsvSource({
        "1.90 bar,    1.9,  BAR",
        "1.90bar,     1.9,  BAR",
        "' 27 psi ',  27,   PSI",
        "-2.5 deg,   -2.5,  DEGREE",
        "\u22122.5 °,     -2.5,  DEGREE",
        "+0.1 deg,    0.1,  DEGREE",
        ".5 mm,       0.5,  MILLIMETRE",
        "92 C,        92,   CELSIUS",
        "200 °F,      200,  FAHRENHEIT",
        "62.5%,       62.5, PERCENT",
        "4,           4,    POSITION",
        "010,         10,   POSITION",
    })
    void written(String text, double value, Unit unit) {
        assertEquals(Optional.of(new Quantity(value, unit)), Quantity.parse(text));
    }

    @ParameterizedTest
    @DisplayName("what is no number with a known unit is not guessed at")
    @ValueSource(strings = {"", "bar", "1,9 bar", "1.9 Bar", "1e3 bar", "1.9 bar bar", "NaN", "Infinity", "0x10",
        "1. bar", "--1 bar", "1.9.1 bar"})
    void notWritten(String text) {
        assertEquals(Optional.empty(), Quantity.parse(text));
    }

    @Test
    @DisplayName("a number too large for a computer is no quantity")
    void tooLarge() {
        assertEquals(Optional.empty(), Quantity.parse("9".repeat(400) + " bar"));
    }

    @Property
    @Label("what is printed with up to four decimals is read back as the same quantity")
    void thereAndBack(@ForAll @IntRange(min = -9_999_999, max = 9_999_999) int digits,
            @ForAll @IntRange(max = 4) int scale, @ForAll Unit unit) {
        Quantity quantity = new Quantity(BigDecimal.valueOf(digits, scale).doubleValue(), unit);
        assertEquals(Optional.of(quantity), Quantity.parse(quantity.toString()));
        assertTrue(Quantity.decimalsOf(quantity.value()) <= scale);
    }

    @Property
    @Label("the order of two quantities is the same in any unit")
    void order(@ForAll @IntRange(min = 1, max = 600) int one, @ForAll @IntRange(min = 1, max = 600) int other) {
        Quantity first = new Quantity(one / 100.0, Unit.BAR);
        Quantity second = new Quantity(other / 100.0, Unit.BAR);
        int expected = Integer.compare(one, other);
        if (expected != 0) {
            assertEquals(expected, Integer.signum(first.to(Unit.PSI).compareTo(second)));
            assertEquals(expected, Integer.signum(first.compareTo(second.to(Unit.KILOPASCAL))));
        }
    }

    @Test
    @DisplayName("printed: halves are rounded away from zero, and nothing is ever minus zero")
    void text() {
        assertEquals("1.90 bar", new Quantity(1.9, Unit.BAR).text(2));
        assertEquals("-2.3 deg", new Quantity(-2.25, Unit.DEGREE).text(1));
        assertEquals("0.0 deg", new Quantity(-0.04, Unit.DEGREE).text(1));
        assertEquals("4", new Quantity(4, Unit.POSITION).toString());
        assertEquals("62.5 %", new Quantity(62.5, Unit.PERCENT).toString());
        assertEquals("0 deg", new Quantity(-0.0, Unit.DEGREE).toString());
    }

    @Test
    @DisplayName("a pressure is never turned into an angle")
    void mixedDimensions() {
        assertEquals("a pressure is not an angle", assertThrows(IllegalArgumentException.class,
                () -> new Quantity(1, Unit.BAR).to(Unit.DEGREE)).getMessage());
        for (double bad : List.of(Double.NaN, Double.POSITIVE_INFINITY)) {
            assertThrows(IllegalArgumentException.class, () -> new Quantity(bad, Unit.BAR));
        }
    }
}
