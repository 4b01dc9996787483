package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Against the weather data of J. R. Quinlan, "Induction of Decision Trees", Machine Learning 1, 1986, pp. 81-106 (the
 * same data in T. Mitchell, "Machine Learning", 1997, chapter 3), and the figures printed there: entropy 0.940, gain of
 * outlook 0.246, temperature 0.029, humidity 0.151, wind 0.048. Two of them come from three-digit intermediates.
 */
class InformationTest {

    private static final double PRINTED = 1e-3;
    private static final List<String> DAYS = List.of("sunny hot high weak no", "sunny hot high strong no",
            "overcast hot high weak yes", "rain mild high weak yes", "rain cool normal weak yes",
            "rain cool normal strong no", "overcast cool normal strong yes", "sunny mild high weak no",
            "sunny cool normal weak yes", "rain mild normal weak yes", "sunny mild normal strong yes",
            "overcast mild high strong yes", "overcast hot normal weak yes", "rain mild high strong no");

    @Test
    @DisplayName("nine days of play and five without are worth 0.940 bit")
    void entropy() {
        assertEquals(0.940, Information.entropy(List.of(9.0, 5.0)), PRINTED);
        assertEquals(0, Information.entropy(List.of(4.0)), 0);
        assertEquals(0, Information.entropy(List.of()), 0);
    }

    @Test
    @DisplayName("asking for the outlook tells most about play, then humidity, wind and temperature")
    void gain() {
        assertEquals(0.246, gain(DAYS, 0), PRINTED);
        assertEquals(0.029, gain(DAYS, 1), PRINTED);
        assertEquals(0.151, gain(DAYS, 2), PRINTED);
        assertEquals(0.048, gain(DAYS, 3), PRINTED);
    }

    @Test
    @DisplayName("on sunny days humidity tells all there is to know")
    void secondLevel() {
        List<String> sunny = DAYS.stream().filter(day -> day.startsWith("sunny")).toList();
        // Printed in the same places: gains 0.970, 0.570 and 0.019.
        assertEquals(0.970, gain(sunny, 2), PRINTED);
        assertEquals(0.570, gain(sunny, 1), PRINTED);
        assertEquals(0.019, gain(sunny, 3), PRINTED);
    }

    @Test
    @DisplayName("a question whose every answer leaves the same ranking tells nothing")
    void nothing() {
        assertEquals(0, Information.gain(List.of(1.0, 2.0), List.of(Map.of("a", 0.3, "b", 0.7),
                Map.of("a", 0.3, "b", 0.7))), 1e-12);
    }

    private static double gain(List<String> days, int attribute) {
        Map<String, List<String>> branches =
                days.stream().collect(Collectors.groupingBy(day -> day.split(" ")[attribute]));
        List<List<String>> each = List.copyOf(branches.values());
        return Information.gain(each.stream().map(branch -> (double) branch.size()).toList(),
                each.stream().map(InformationTest::distribution).toList());
    }

    private static Map<String, Double> distribution(List<String> days) {
        return IntStream.range(0, days.size()).boxed().collect(Collectors.groupingBy(
                day -> days.get(day).split(" ")[4], Collectors.summingDouble(day -> 1.0 / days.size())));
    }
}
