package camberwell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.advice.RankedChange;
import camberwell.advice.Size;
import camberwell.units.Quantity;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "rear-toe toe-in | 0.15 deg | 0.25 deg | rear toe: 0.10 deg more toe-in a wheel, 0.15 -> 0.25 deg",
        "rear-toe toe-out | 0.25 deg | 0.20 deg | rear toe: 0.05 deg less toe-in a wheel, 0.25 -> 0.20 deg",
        "front-toe toe-out | -0.5 mm | -1 mm | front toe: 0.5 mm more toe-out a wheel, -0.5 -> -1.0 mm",
        "front-toe toe-in | -0.10 deg | -0.05 deg | front toe: 0.05 deg less toe-out a wheel, -0.10 -> -0.05 deg",
        "front-toe toe-in | -0.1 deg | 0.1 deg | front toe: 0.2 deg towards toe-in a wheel, -0.1 -> 0.1 deg",
        "front-camber more-negative | -3 deg | -3.3 deg | front camber: 0.3 deg more negative, -3.0 -> -3.3 deg",
        "front-pressure lower | 1.5 bar | 1.46 bar | front pressure: 0.04 bar lower, 1.50 -> 1.46 bar cold",
        "rear-bump softer | 7 | 5 | rear bump: 2 clicks softer, 7 -> 5",
        "front-anti-roll-bar softer | 4 | 2 | front anti-roll bar: 2 steps softer, 4 -> 2",
        "brake-bias forward | 62 % | 62.5 % | brake bias: 0.5 % forward, 62.0 -> 62.5 %"})
    @DisplayName("A change is told as one tells a mechanic: how much, which way, from where to where")
    void move(String change, String from, String to, String told) {
        Size size = new Size(Quantity.parse(from), Quantity.parse(to), 2, List.of(), List.of());
        assertEquals(told, Words.move(ranked(change, size)));
    }

    @Test
    @DisplayName("For a class of car there is a way to go and no figure")
    void classOfCar() {
        assertEquals("rear toe, less toe-in, one common step", Words.move(ranked("rear-toe toe-out",
                new Size(Optional.empty(), Optional.empty(), 1, List.of(), List.of()))));
    }

    private static RankedChange ranked(String change, Size size) {
        return new RankedChange(1, Change.parse(change).orElseThrow(), size, null, List.of(), Optional.empty(), List.of(), null,
                null);
    }
}
