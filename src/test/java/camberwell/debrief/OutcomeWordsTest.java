package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.vocabulary.Outcome;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("What came of a change")
class OutcomeWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "gone | GONE", "it's gone | GONE", "never came back | GONE", "no longer there | GONE", "almost gone | BETTER",
        "not gone | SAME", "still there but less | BETTER", "better but still there | BETTER", "helped a bit | BETTER",
        "a touch better maybe | BETTER", "gone in the slow corners, still there in the fast ones | BETTER",
        "no different to be honest | SAME", "hardly any better | SAME", "not any worse | SAME", "about the same | SAME",
        "I didn't notice a difference | SAME", "it came back after five laps | SAME", "a bit worse | WORSE",
        "no better, if anything worse | WORSE", "worse than ever | WORSE", "better at first but it came back | UNCLEAR",
        "it helped, but only on the first lap | UNCLEAR", "only on the first lap | UNCLEAR", "couldn't tell, traffic | UNCLEAR",
        "better in the slow ones, worse in the fast ones | UNCLEAR", "hard to say, too few laps | UNCLEAR",
        "it was better until the tyres went off | UNCLEAR", "better, but now it snaps on exit | ", "it pushes now | "})
    @DisplayName("what qualifies it counts, and where something else is said as well it is no answer by itself")
    void came(String typed, String expected) {
        assertEquals(expected == null ? "" : expected, Came.said(typed).map(Came::name).orElse(""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"tried a softer rear bar, better at first but it came back | UNCLEAR",
        "softened the rear bar, no better, if anything worse | WORSE", "tried a softer rear bar, helped a bit | BETTER",
        "tried a softer rear bar, not any worse | SAME", "tried a softer rear bar, couldn't tell, traffic | UNCLEAR"})
    @DisplayName("the same is heard of a change that was tried before")
    void tried(String typed, Outcome expected) {
        assertEquals(expected, TriedWords.of(typed).get(0).outcome());
    }
}
