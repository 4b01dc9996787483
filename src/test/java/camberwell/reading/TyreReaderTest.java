package camberwell.reading;

import static camberwell.Trackside.front;
import static camberwell.Trackside.gauge;
import static camberwell.Trackside.imperial;
import static camberwell.Trackside.mirrored;
import static camberwell.Trackside.run;
import static camberwell.Trackside.tread;
import static camberwell.Trackside.tyre;
import static camberwell.Trackside.tyres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.fact.Reading;
import camberwell.fact.Reading.State;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sources of the reading rules: Northstar Motorsports tech tips (inside clearly hotter = too much negative camber;
 * middle against the mean of the edges = pressure; at most 20 °F across one tyre), Finish Line Racing (outer edge
 * hotter on a loaded tyre = too little negative camber). The vectors are derived from them.
 */
class TyreReaderTest {

    @ParameterizedTest
    @CsvSource({
        "90, 88, 84, even-tread",
        "95, 88, 80, inner-edge-hot",
        "82, 88, 94, outer-edge-hot",
        "86, 94, 86, middle-hot",
        "92, 84, 92, middle-cold"})
    @DisplayName("the five treads of the textbook are read as the textbook reads them")
    void textbook(double inner, double middle, double outer, String shows) {
        TyreReadings tyres = TyreReader.read(tyres(front(tread(inner, middle, outer))));
        Reading strongest = tyres.readings().stream()
                .filter(reading -> Subject.of(reading.state()) != Subject.TEMPERATURE)
                .reduce((one, other) -> other.certainty() > one.certainty() ? other : one).orElseThrow();
        assertEquals(shows, strongest.state().id());
        assertTrue(strongest.certainty() >= 0.5, strongest.toString());
    }

    @Test
    @DisplayName("an inner edge 6 K hotter is what the straights do, and says nothing")
    void healthy() {
        TyreReadings tyres = TyreReader.read(tyres(front(tread(90, 88, 84))));
        assertEquals(List.of(State.EVEN_TREAD, State.INSIDE_WINDOW), states(tyres));
        assertEquals(1, certainty(tyres, "front", State.EVEN_TREAD));
    }

    @Test
    @DisplayName("one kelvin never tips the reading: it grows by at most a sixth of the way")
    void noCliff() {
        double before = 0;
        for (double difference = 0; difference <= 30; difference++) {
            double now = certainty(TyreReader.read(tyres(front(tread(80 + difference, 80 + difference / 2, 80)))),
                    "front",
                    State.INNER_EDGE_HOT);
            assertTrue(now >= before && now - before < 1 / 6.0, difference + ": " + before + " to " + now);
            before = now;
        }
        assertEquals(1, before);
    }

    @Test
    @DisplayName("on a circuit of left turns camber is read off the right-hand tyres")
    void circuitLoadsOneSide() {
        String body = """
                conditions: {turns: left}
                tyres:
                  front-left: {inner: 95 °C, middle: 85 °C, outer: 75 °C}
                  front-right: {inner: 84 °C, middle: 88 °C, outer: 92 °C}
                """;
        TyreReadings tyres = TyreReader.read(run(body));
        assertEquals(1, certainty(tyres, "front", State.OUTER_EDGE_HOT));
        assertEquals(0, certainty(tyres, "front", State.INNER_EDGE_HOT));
        assertTrue(tyres.find("front", State.OUTER_EDGE_HOT).orElseThrow().statement()
                .contains("front-right 84/88/92"));
        assertTrue(tyres.side().text().contains("right-hand tyres"), tyres.side().text());
    }

    @Test
    @DisplayName("where the circuit is not given, a complaint in right turns only points at the left-hand tyres")
    void reportsLoadOneSide() {
        String tyres = """
                tyres:
                  front-left: {inner: 84 °C, middle: 88 °C, outer: 92 °C}
                  front-right: {inner: 92 °C, middle: 88 °C, outer: 84 °C}
                """;
        TyreReadings right = TyreReader.read(run(tyres + "reports: [{symptom: understeer, turn: right}]\n"));
        assertEquals(new LoadedSide(Turn.RIGHT, true), right.side());
        assertEquals(1, certainty(right, "front", State.OUTER_EDGE_HOT));
        TyreReadings both = TyreReader.read(run(tyres
                + "reports: [{symptom: understeer, turn: right}, {symptom: oversteer, turn: left}]\n"));
        assertEquals(new LoadedSide(Turn.BOTH, false), both.side());
    }

    @Test
    @DisplayName("two tyres that ask for opposite cambers are not averaged into a healthy one")
    void unlikeSides() {
        Map<Wheel, TyreReading> tyres = Map.of(Wheel.FRONT_LEFT, tread(104, 92, 80), Wheel.FRONT_RIGHT, tread(82, 88,
                94));
        TyreReadings read = TyreReader.read(tyres(tyres));
        // The left one is the hotter, and does more of the work: it counts, and its partner halves what it says.
        assertEquals(0.5, certainty(read, "front", State.INNER_EDGE_HOT));
        assertEquals(0, certainty(read, "front", State.OUTER_EDGE_HOT));
        assertEquals(0, certainty(read, "front", State.EVEN_TREAD));
        assertTrue(read.doubts().get(0).contains("differ by 36 K"), read.doubts().toString());
        assertTrue(read.doubts().get(0).contains("the hotter tyre counts for more"), read.doubts().toString());
    }

    @Test
    @DisplayName("a loaded tyre that was not read leaves camber open, and that is said")
    void loadedTyreNotRead() {
        TyreReadings tyres = TyreReader.read(run("""
                conditions: {turns: left}
                tyres: {front-left: {inner: 95 °C, middle: 85 °C, outer: 75 °C}}
                """));
        assertEquals(0, certainty(tyres, "front", State.INNER_EDGE_HOT));
        assertTrue(tyres.doubts().get(0).contains("loaded front tyre was not read"));
    }

    @Test
    @DisplayName("a hot middle on a tyre that is at its target: both count less, and both are to be read again")
    void middleAgainstGauge() {
        TyreReadings agreeing = TyreReader.read(tyres(front(tyre(86, 96, 86, 1.6, 2.05))));
        assertEquals(1, certainty(agreeing, "front", State.MIDDLE_HOT));
        assertTrue(certainty(agreeing, "front", State.ABOVE_TARGET) > 0.9);
        assertTrue(agreeing.doubts().isEmpty(), agreeing.doubts().toString());

        TyreReadings atTarget = TyreReader.read(tyres(front(tyre(86, 96, 86, 1.6, 1.90))));
        assertEquals(0.5, certainty(atTarget, "front", State.MIDDLE_HOT));
        assertEquals(1, certainty(atTarget, "front", State.AT_TARGET));
        assertTrue(atTarget.doubts().get(0).contains("trust neither yet"));

        TyreReadings opposed = TyreReader.read(tyres(front(tyre(86, 96, 86, 1.4, 1.72))));
        assertTrue(opposed.doubts().get(0).contains("too much air, but the gauge reads 0.18 bar below the hot target"),
                opposed.doubts().toString());
        TyreReadings far = TyreReader.read(tyres(front(tyre(86, 96, 86, 1.3, 1.60))));
        assertTrue(far.doubts().get(0).contains("the gauge decides"), far.doubts().toString());
        assertEquals(0, certainty(far, "front", State.MIDDLE_HOT));
    }

    @Test
    @DisplayName("one tyre off its target is told of alone; two that share it are told of together")
    void alone() {
        TyreReadings one = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, gauge(1.6, 2.10), Wheel.FRONT_RIGHT,
                gauge(1.6, 1.90))));
        assertEquals(1, certainty(one, "front-left", State.ABOVE_TARGET_ALONE));
        assertEquals(0, certainty(one, "front", State.ABOVE_TARGET));
        TyreReadings shared = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, gauge(1.6, 2.30), Wheel.FRONT_RIGHT,
                gauge(1.6, 2.10))));
        assertEquals(0, certainty(shared, "front-left", State.ABOVE_TARGET_ALONE));
        assertTrue(certainty(shared, "front", State.ABOVE_TARGET) > 0.9);
        TyreReadings apart = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, gauge(1.6, 2.03), Wheel.FRONT_RIGHT,
                gauge(1.6, 1.77))));
        assertEquals(1, certainty(apart, "front-left", State.ABOVE_TARGET_ALONE));
        assertEquals(1, certainty(apart, "front-right", State.BELOW_TARGET_ALONE));
    }

    @Test
    @DisplayName("axles are compared plainly when only one of them has a window")
    void axlesWithOneWindow() {
        Case run = run("""
                tyres:
                  front-left: {inner: 90 °C, middle: 90 °C, outer: 90 °C}
                  rear-left: {inner: 88 °C, middle: 88 °C, outer: 88 °C}
                """);
        Case oneWindow = camberwell.Trackside.yaml(camberwell.Trackside.text("""
                tyres:
                  front-left: {inner: 90 °C, middle: 90 °C, outer: 90 °C}
                  rear-left: {inner: 88 °C, middle: 88 °C, outer: 88 °C}
                """).replace("rear: {window: [75 °C, 100 °C], ", "rear: {"));
        assertTrue(oneWindow.car().tyres(Axle.REAR).windowLow().isEmpty());
        assertEquals(0, certainty(TyreReader.read(run), "front", State.HOTTER_AXLE));
        assertEquals(0, certainty(TyreReader.read(oneWindow), "rear", State.HOTTER_AXLE));
    }

    @Test
    @DisplayName("a growth that needs gas hotter than the tread is a mistake, and so is none at all")
    void impossibleGrowth() {
        TyreReadings hot = TyreReader.read(tyres(front(tyre(80, 80, 80, 1.45, 2.45))));
        // 291.15 K x 3.46325 / 2.46325 = 409.35 K, by hand from the gas law.
        assertEquals(136.2, hot.wheels().get(Wheel.FRONT_LEFT).gas().orElseThrow().in(Unit.CELSIUS), 0.05);
        assertTrue(hot.doubts().get(0).contains("gas at 136 °C, hotter than its tread at 80 °C"), hot.doubts()
                .toString());
        TyreReadings none = TyreReader.read(tyres(Map.of(Wheel.REAR_LEFT, gauge(1.9, 1.9))));
        assertTrue(none.doubts().get(0).contains("is not above cold"));
    }

    @Test
    @DisplayName("a tyre that was run below its minimum is told of, whatever else it shows")
    void belowMinimum() {
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, gauge(1.35, 1.90), Wheel.FRONT_RIGHT,
                gauge(1.40, 1.90))));
        assertEquals(List.of("front-left tyre: cold 1.35 bar is below its minimum of 1.40 bar: set it before it runs "
                + "again"), read.doubts());
    }

    @Test
    @DisplayName("the mean of a cold tyre and an overheated one is nobody's temperature")
    void meanOfExtremes() {
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.REAR_LEFT, tread(110, 110, 110), Wheel.REAR_RIGHT,
                tread(70, 70, 70))));
        assertEquals(1, certainty(read, "rear", State.SIDES_DIFFER));
        assertTrue(read.doubts().stream().anyMatch(doubt -> doubt.contains("neither's temperature")));
    }

    @Property(tries = 200)
    @Label("a car mirrored left for right is read as the mirror image")
    void mirror(@ForAll @DoubleRange(min = 40, max = 130) double a, @ForAll @DoubleRange(min = 40, max = 130) double b,
            @ForAll @DoubleRange(min = 40, max = 130) double c, @ForAll @DoubleRange(min = 40, max = 130) double d,
            @ForAll @DoubleRange(min = 1.5, max = 2.4) double hot, @ForAll @DoubleRange(min = 1.5,
            max = 2.4) double other,
            @ForAll Turn turns) {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        tyres.put(Wheel.FRONT_LEFT, tyre(a, b, c, 1.4, hot));
        tyres.put(Wheel.FRONT_RIGHT, tyre(d, a, b, 1.4, other));
        tyres.put(Wheel.REAR_LEFT, tyre(c, d, a, 1.4, other));
        tyres.put(Wheel.REAR_RIGHT, tyre(b, c, d, 1.4, hot));
        Turn otherWay = turns == Turn.LEFT ? Turn.RIGHT : turns == Turn.RIGHT ? Turn.LEFT : Turn.BOTH;
        Map<String, Double> here = certainties(TyreReader.read(circuit(turns).withTyres(tyres)));
        Map<String, Double> there = certainties(TyreReader.read(circuit(otherWay).withTyres(mirrored(tyres))));
        Map<String, Double> expected = new HashMap<>();
        here.forEach((key, certainty) -> expected.put(key.replace("-left", "-?").replace("-right", "-left")
                .replace("-?", "-right"), certainty));
        // The two sums add up in another order, so the last digit may differ, and a faint reading may be left out.
        sameWithinRounding(expected, there);
    }

    private static void sameWithinRounding(Map<String, Double> one, Map<String, Double> other) {
        double noise = 0.05;
        Stream.concat(one.keySet().stream(), other.keySet().stream()).forEach(key ->
                assertEquals(one.getOrDefault(key, noise), other.getOrDefault(key, noise), 2e-6, key));
    }

    @Property(tries = 200)
    @Label("°F and psi read as °C and bar do")
    void units(@ForAll @DoubleRange(min = 40, max = 130) double a, @ForAll @DoubleRange(min = 40, max = 130) double b,
            @ForAll @DoubleRange(min = 40, max = 130) double c, @ForAll @DoubleRange(min = 1.5, max = 2.4) double hot) {
        TyreReading metric = tyre(a, b, c, 1.4, hot);
        Map<String, Double> one = certainties(TyreReader.read(tyres(front(metric))));
        Map<String, Double> other = certainties(TyreReader.read(tyres(front(imperial(metric)))));
        // A reading as faint as 0.05 is noise, and may be left out in one of the two.
        sameWithinRounding(one, other);
    }

    @Property(tries = 200)
    @Label("every reading is a certainty above nothing and at most one")
    void certaintiesInRange(@ForAll @DoubleRange(min = -20, max = 200) double a,
            @ForAll @DoubleRange(min = -20, max = 200) double b, @ForAll @DoubleRange(min = -20, max = 200) double c,
            @ForAll @DoubleRange(min = 0.3, max = 6) double cold, @ForAll @DoubleRange(min = 0.3, max = 6) double hot) {
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, tyre(a, b, c, cold, hot), Wheel.FRONT_RIGHT,
                tyre(c, a, b, hot, cold), Wheel.REAR_LEFT, tyre(b, c, a, cold, cold))));
        assertFalse(read.readings().isEmpty());
        read.readings().forEach(reading -> assertTrue(reading.certainty() > 0 && reading.certainty() <= 1,
                reading.toString()));
    }

    @Test
    @DisplayName("the loaded wheel is judged, not the mean: 14 K hotter outside on one tyre is no healthy axle")
    void theLoadedWheel() {
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, tread(82, 90, 96),
                Wheel.FRONT_RIGHT, tread(91, 88, 84))));
        assertTrue(certainty(read, "front", State.OUTER_EDGE_HOT) >= 0.6, read.readings().toString());
    }

    @Test
    @DisplayName("a cold pressure below the minimum is a fact, whatever the tyre reads hot")
    void belowTheMinimum() {
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.REAR_LEFT, gauge(1.30, 1.90))));
        assertEquals(1, certainty(read, "rear", State.BELOW_MINIMUM));
        assertTrue(read.doubts().toString().contains("below its minimum"), read.doubts().toString());
        assertEquals(0, certainty(TyreReader.read(tyres(Map.of(Wheel.REAR_LEFT, gauge(1.70, 1.90)))), "rear",
                State.BELOW_MINIMUM));
    }

    @Test
    @DisplayName("a tyre that reads no higher hot than cold is told of, and its pressure is not built on")
    void noGrowth() {
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, gauge(1.70, 1.20), Wheel.FRONT_RIGHT,
                gauge(1.70, 1.90))));
        assertEquals(1, certainty(read, "front", State.NO_GROWTH));
        assertEquals(0, certainty(read, "front", State.BELOW_TARGET));
        assertEquals(0, certainty(read, "front-left", State.BELOW_TARGET_ALONE));
    }

    // By the gas law: (1.70 + 1.013) bar at 61 °C are (1.70 + 1.013) x 353.15 / 334.15 - 1.013 = 1.854 bar at 80 °C.
    @Test
    @DisplayName("tyres that never came in are held against the target as they would be in their window")
    void warmedToTheWindow() {
        Case cold = tyres(front(tyre(61, 61, 61, 1.50, 1.70)));
        WheelFigures wheel = TyreReader.read(cold).wheels().get(Wheel.FRONT_LEFT);
        double low = cold.car().tyres(Axle.FRONT).windowLow().orElseThrow().in(Unit.CELSIUS);
        double gas = wheel.gas().orElseThrow().si();
        double expected = (1.70 + 1.01325) * (gas + low - 61) / gas - 1.01325;
        assertEquals(expected, wheel.warm().orElseThrow().in(Unit.BAR), 1e-6);
        assertTrue(wheel.warm().orElseThrow().in(Unit.BAR) > 1.75);
    }

    @Test
    @DisplayName("a circuit that turns one way heats one side at both ends: only what the axles do not share is the car's")
    void oneWayCircuit() {
        Map<Wheel, TyreReading> oval = new HashMap<>(Map.of(Wheel.FRONT_LEFT, tread(84, 82, 80), Wheel.FRONT_RIGHT,
                tread(98, 96, 94), Wheel.REAR_LEFT, tread(84, 82, 80), Wheel.REAR_RIGHT, tread(98, 96, 94)));
        TyreReadings read = TyreReader.read(tyres(oval));
        assertEquals(0, certainty(read, "front", State.SIDES_DIFFER));
        assertEquals(0, certainty(read, "rear", State.SIDES_DIFFER));
        assertTrue(read.doubts().toString().contains("mostly turns left; say which way"), read.doubts().toString());
        oval.put(Wheel.REAR_LEFT, tread(98, 96, 94));
        oval.put(Wheel.FRONT_LEFT, tread(78, 76, 74));
        assertTrue(certainty(TyreReader.read(tyres(oval)), "front", State.SIDES_DIFFER) > 0.9);
    }

    private static Case circuit(Turn turns) {
        return run("conditions: {air: 18 °C, track: 27 °C, turns: " + turns.id() + "}\n");
    }

    private static List<State> states(TyreReadings tyres) {
        return tyres.readings().stream().map(Reading::state).toList();
    }

    private static double certainty(TyreReadings tyres, String place, State state) {
        return tyres.find(place, state).map(Reading::certainty).orElse(0.0);
    }

    private static Map<String, Double> certainties(TyreReadings tyres) {
        Map<String, Double> certainties = new TreeMap<>();
        tyres.readings().forEach(reading -> certainties.put(reading.place().id() + " " + reading.state().id(),
                reading.certainty()));
        return certainties;
    }
}
