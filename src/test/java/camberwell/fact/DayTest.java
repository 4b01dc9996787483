package camberwell.fact;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.Trackside;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The day, as the rules ask about it")
class DayTest {

    // Below 15 °C a track warms no tyre, above 38 °C it cools none: common practice, no source.
    @ParameterizedTest
    @CsvSource({"14.9, cold", "15, mild", "38, mild", "38.1, hot", "13.5, cold"})
    @DisplayName("a track is cold below 15 °C and hot above 38 °C")
    void track(double celsius, String word) {
        Day day = new Day(Trackside.run("conditions: {track: " + celsius + " °C}\n").conditions());
        assertEquals(word, day.word("track"));
    }
}
