package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.run.Tried;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What a driver says to have tried already")
class TriedWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            i tried the softer rear bar already, no difference               | rear-anti-roll-bar softer: same
            we've already softened the rear bar and it made no difference    | rear-anti-roll-bar softer: same
            tried one click less rear wing, got worse                        | rear-wing less: worse
            I already lowered the rear pressures, it helped a bit            | rear-pressure lower: better
            tried softer rear springs yesterday but it was no better         | rear-springs softer: same
            it got worse when I softened the rear bar                        | rear-anti-roll-bar softer: worse
            already tried more rear wing, a softer rear bar, did nothing | rear-anti-roll-bar softer: same, rear-wing more: same
            moved the bias rearward already. better                          | brake-bias rearward: better
            tried more front camber, did nothing                             | front-camber more-negative: same
            """)
    @DisplayName("is taken with what came of it, in whatever words")
    void taken(String said, String expected) {
        assertEquals(expected, TriedWords.of(said).stream().map(TriedWordsTest::text).collect(Collectors.joining(", ")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"i tried a softer rear bar", "tried everything, no difference",
            "already changed the bar, no difference",
        "the rear bar is softer now", "it was better last year", "tried front and rear springs softer and more wing, no better",
        "fine", "no difference"})
    @DisplayName("is left alone where the change, its way or what came of it was not said")
    void notPlain(String said) {
        assertEquals("", TriedWords.of(said).stream().map(TriedWordsTest::text).collect(Collectors.joining(", ")));
    }

    private static String text(Tried tried) {
        return tried.change().id() + ": " + tried.outcome().id();
    }
}
