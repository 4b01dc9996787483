package camberwell.debrief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.input.CaseReader;
import camberwell.run.TyreReading;
import camberwell.vocabulary.Wheel;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("What a pyrometer and a gauge showed, as it is typed")
class TyreLineTest {

    private static final List<Wheel> WHEELS = List.of(Wheel.values());
    private final Car bar = new CaseReader().readCar(Path.of("demo-cases/cars/corvane-coupe.yaml"));

    private String read(String typed) throws Reply.NoAnswer {
        TyreLine.Read read = TyreLine.of(typed, WHEELS, bar);
        return read.tyres().entrySet().stream().map(it -> it.getKey().id() + " " + Spoken.text(it.getValue()))
                .collect(Collectors.joining("; ")) + read.taken().stream().map(unit -> " as " + unit.symbol())
                .collect(Collectors.joining());
    }

    @ParameterizedTest
    @ValueSource(strings = {"92 84 78", "92, 84, 78", "92/84/78", "  92  84 78 ", "92-84-78", "92 °C 84 °C 78 °C", "fl 92 84 78",
        "front left 92 84 78", "yes, 92 84 78"})
    @DisplayName("three figures go from the inner edge to the outer one, of the front left unless another is named")
    void tread(String typed) throws Reply.NoAnswer {
        assertEquals("front-left 92 / 84 / 78 °C", read(typed));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "rr 90 85 80 | rear-right 90 / 85 / 80 °C",
        "195 185 175 | front-left 195 / 185 / 175 °F as °F",
        "92 84 78 27 | front-left 92 / 84 / 78 °C, 27 psi hot as psi",
        "92 84 78 195 kPa | front-left 92 / 84 / 78 °C, 195 kPa hot",
        "27 psi | front-left 27 psi hot",
        "1.45/1.86 | front-left 1.45 bar cold, 1.86 bar hot",
        "1.86 1.85 1.84 1.83 | front-left 1.86 bar hot; front-right 1.85 bar hot; rear-left 1.84 bar hot; rear-right 1.83 bar "
                + "hot",
        "rear 90 85 80 88 84 81 | rear-left 90 / 85 / 80 °C; rear-right 88 / 84 / 81 °C",
        "fronts 92 84 78 | front-left 92 / 84 / 78 °C; front-right 92 / 84 / 78 °C",
        "fl 92 84 78 rr 80 80 80 | front-left 92 / 84 / 78 °C; rear-right 80 / 80 / 80 °C"})
    @DisplayName("a figure without a unit is taken by its size, and that is said")
    void forms(String typed, String expected) throws Reply.NoAnswer {
        assertEquals(expected, read(typed));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1.50 cold all round | 1.5 bar cold", "cold pressures 1.50 | 1.5 bar cold", "cold was 1.5 everywhere | 1.5 bar cold",
        "all four 1.8 | 1.8 bar hot", "1,8 all round | 1.8 bar hot", "28 psi all round | 28 psi hot",
        "each tyre 1.9 | 1.9 bar hot", "hot pressures 1.85 | 1.85 bar hot", "185 kpa on the lot | 185 kPa hot", "85/80/75 on the lot | 85 / 80 / 75 °C",
        "1.50 cold, 1.85 hot all round | 1.5 bar cold, 1.85 bar hot",
        "cold pressures 1.5 1.5 1.5 1.5, hot 1.8 1.8 1.8 1.8 | 1.5 bar cold, 1.8 bar hot"})
    @DisplayName("a figure that is said of all counts for each of them, cold or hot")
    void allRound(String typed, String each) throws Reply.NoAnswer {
        assertEquals(WHEELS.stream().map(wheel -> wheel.id() + " " + each).collect(Collectors.joining("; ")),
                read(typed).replaceAll(" as .*", ""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "1.9 front, 1.8 rear | 1.9 bar hot | 1.9 bar hot | 1.8 bar hot", "fronts 1,9, rears 1,8 | 1.9 bar hot | 1.9 bar hot "
                + "| 1.8 bar hot", "1.9 at the front and 1.8 at the back | 1.9 bar hot | 1.9 bar hot | 1.8 bar hot",
        "1.9f 1.8r | 1.9 bar hot | 1.9 bar hot | 1.8 bar hot", "front 1.9/1.7 rear 1.8/1.8 | 1.9 bar hot | 1.7 bar hot "
                + "| 1.8 bar hot", "27 psi cold front, 26 rear | 27 psi cold | 27 psi cold | 26 psi cold",
        "85 80 75 fronts and 78 76 74 rears | 85 / 80 / 75 °C | 85 / 80 / 75 °C | 78 / 76 / 74 °C",
        "85, 80, 75 on the fronts; 80 78 76 on the rears | 85 / 80 / 75 °C | 85 / 80 / 75 °C | 80 / 78 / 76 °C"})
    @DisplayName("an axle may stand before its figures or behind them")
    void behind(String typed, String left, String right, String rear) throws Reply.NoAnswer {
        assertEquals("front-left " + left + "; front-right " + right + "; rear-left " + rear + "; rear-right " + rear,
                read(typed).replaceAll(" as .*", ""));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"1,8 | 1.8 bar hot", "92,5 84,1 78,2 1,95 | 92.5 / 84.1 / 78.2 °C, 1.95 bar hot",
        "92,84,78 | 92 / 84 / 78 °C", "fl 92 84 78 hot 1.9 cold 1.5 | 92 / 84 / 78 °C, 1.5 bar cold, 1.9 bar hot",
        "we started at 1.50 and came back at 1.85 | 1.5 bar cold, 1.85 bar hot", "only cold: 1.5 | 1.5 bar cold"})
    @DisplayName("a decimal comma stands in one figure, and what was read before and after the run is told apart")
    void oneTyre(String typed, String expected) throws Reply.NoAnswer {
        assertEquals("front-left " + expected, read(typed));
    }

    @Test
    @DisplayName("four wheels stand on one line: sixteen figures, or twelve")
    void wholeCar() throws Reply.NoAnswer {
        Map<Wheel, TyreReading> tyres = TyreLine.of("92 84 78 1.45/1.86  90 84 80 1.85  88 86 85 1.84  89 86 84 1.84",
                WHEELS, bar).tyres();
        assertEquals(4, tyres.size());
        assertEquals("1.45 bar", tyres.get(Wheel.FRONT_LEFT).coldPressure().orElseThrow().toString());
        assertEquals("84 °C", tyres.get(Wheel.REAR_RIGHT).outer().orElseThrow().toString());
        assertEquals(4, TyreLine.of("92 84 78 90 84 80 88 86 85 89 86 84", WHEELS, bar).tyres().size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"92 84", "92 84 780", "1.95/1.70", "hot", "92 84 78 1.95 90", "9.5 bar", "fl", "92 84 bananas"})
    @DisplayName("half a reading and figures that no instrument shows are refused")
    void refused(String typed) {
        assertThrows(Reply.NoAnswer.class, () -> TyreLine.of(typed, WHEELS, bar));
    }

    @Test
    @DisplayName("a track is between freezing hard and a griddle, and a figure that only °F can be is °F")
    void track() throws Reply.NoAnswer {
        assertEquals("27 °C", ((Answer.Measured) Reply.track("27")).quantity().toString());
        assertEquals("80 °F", ((Answer.Measured) Reply.track("80 F")).quantity().toString());
        assertEquals("95 °F", ((Answer.Measured) Reply.track("95")).quantity().toString());
        assertThrows(Reply.NoAnswer.class, () -> Reply.track("270"));
    }

    @Test
    @DisplayName("only what has a digit can be a line of figures")
    void figures() {
        assertTrue(TyreLine.figures("fl 92"));
        assertTrue(!TyreLine.figures("no"));
    }
}
