package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.run.Lap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("Laps typed in a row")
class LapWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "out 92.41 92.39 | out; 92.41; 92.39",
        "95.1 out 92.41 92.39 | 95.1 out; 92.41; 92.39",
        "95.1 out, 92.41, 92.39 in | 95.1 out; 92.41; 92.39 in",
        "out, 92.41, 95.87 traffic, in | out; 92.41; 95.87 traffic; in",
        "out 92.41 95.87 traffic 92.30 in | out; 92.41; 95.87 traffic; 92.3 in",
        "out 92.41 in out 92.39 | out; 92.41 in; out; 92.39"})
    @DisplayName("a word belongs to the time before it, and out to where one leaves the pits")
    void laps(String typed, String read) {
        assertEquals(read, LapWords.parse("--laps", typed).stream().map(Lap::text).collect(Collectors.joining("; ")));
    }
}
