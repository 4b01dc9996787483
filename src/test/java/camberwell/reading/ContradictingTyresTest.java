package camberwell.reading;

import static camberwell.Trackside.tread;
import static camberwell.Trackside.tyre;
import static camberwell.Trackside.tyres;
import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.Trackside;
import camberwell.fact.Reading.State;
import camberwell.run.Case;
import camberwell.vocabulary.Wheel;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits of the reader: common practice, no source. */
@DisplayName("Tyres whose figures do not go together")
class ContradictingTyresTest {

    @ParameterizedTest
    @CsvSource({"11, false", "13, true"})
    @DisplayName("two tyres of an axle whose edges differ by more than 12 K have cambers of their own")
    void unlikeEdges(double more, boolean doubted) {
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, tread(85, 85, 85),
                Wheel.FRONT_RIGHT, tread(85 + more, 85 + more / 2, 85))));
        assertEquals(doubted, read.doubts().stream().anyMatch(doubt -> doubt.contains("measure the camber of each")),
                read.doubts().toString());
    }

    @ParameterizedTest
    @CsvSource({"left, 2, false", "left, 6, true", "left, -6, false", "right, -6, true", "both, 6, false",
        "both, 12, true"})
    @DisplayName("the side that the circuit works less is not to be the hotter one: from 3 K on, not from 8")
    void wrongSide(String turns, double leftHotter, boolean told) {
        Case run = Trackside.run("conditions: {turns: " + turns + "}\n").withTyres(Map.of(
                Wheel.FRONT_LEFT, tread(85 + leftHotter, 85 + leftHotter, 85 + leftHotter),
                Wheel.FRONT_RIGHT, tread(85, 85, 85)));
        assertEquals(told, TyreReader.read(run).find("front", State.SIDES_DIFFER).isPresent());
    }

    // A soft right front drags to the right; a left front brake that does more heats its tyre and pulls to the left.
    @ParameterizedTest
    @CsvSource({"left, braking, true, true", "left, straight, true, false", "right, braking, false, false",
        "right, straight, false, false"})
    @DisplayName("a car that pulls away from its soft tyre is not pulled by that; on the brakes the hotter side's brake is named")
    void pull(String turn, String phase, boolean notTheAir, boolean brake) {
        Case run = Trackside.run("conditions: {air: 16 °C}\nreports:\n  - {symptom: pulling, phase: " + phase + ", turn: " + turn
                + "}\n").withTyres(Map.of(Wheel.FRONT_LEFT, tyre(88, 86, 84, 1.70, 2.00), Wheel.FRONT_RIGHT,
                tyre(81, 79, 77, 1.50, 1.75)));
        String doubts = String.join("; ", TyreReader.read(run).doubts());
        assertEquals(notTheAir, doubts.contains("pulls to the " + turn + ": the front-right tyre, which is the softer by 0.25 bar, "
                + "would pull to the other side"), doubts);
        assertEquals(brake, doubts.contains("the front-left tyre is hotter than its partner by 7 K: its brake does more"), doubts);
    }

    // p V = n R T at constant volume: 1.70 bar cold at 18 °C and gas at T: (hot + 1.01325) = 2.71325 (T / 291.15 K).
    // A tread of 60 °C is 333.15 K; gas at 75 °C needs 2.231 bar hot, gas at 68 °C 2.166 bar.
    @ParameterizedTest
    @CsvSource({"2.166, false", "2.231, true"})
    @DisplayName("gas hotter than its tread by more than 10 K comes of a wrong figure")
    void gasOverTread(double hot, boolean doubted) {
        TyreReadings read = TyreReader.read(tyres(Trackside.front(tyre(60, 60, 60, 1.70, hot))));
        assertEquals(doubted, read.doubts().stream().anyMatch(doubt -> doubt.contains("hotter than its tread")),
                read.doubts().toString());
    }
}
