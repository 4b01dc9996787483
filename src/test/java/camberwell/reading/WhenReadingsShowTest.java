package camberwell.reading;

import static camberwell.Trackside.front;
import static camberwell.Trackside.gauge;
import static camberwell.Trackside.run;
import static camberwell.Trackside.tread;
import static camberwell.Trackside.tyre;
import static camberwell.Trackside.tyres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.fact.Reading;
import camberwell.fact.Reading.State;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Wheel;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * From where to where each reading grows, worked out by hand from the limits that the trade goes by. The limits without a
 * source in {@link TreadReader} and {@link GaugeReader} are common practice, no source; the 2 psi of the pressures are Northstar
 * Motorsports'.
 */
@DisplayName("How far off something is before it shows, and before it is clear")
class WhenReadingsShowTest {

    private static final double ROUNDING = 1e-6;

    private static double certainty(TyreReadings read, String place, State state) {
        return read.find(place, state).map(Reading::certainty).orElse(0.0);
    }

    private static TyreReadings sides(String turns, double left, double right) {
        return TyreReader.read(run("conditions: {air: 18 °C" + turns + "}\n").withTyres(Map.of(
                Wheel.REAR_LEFT, tread(left, left, left), Wheel.REAR_RIGHT, tread(right, right, right))));
    }

    private static TyreReadings gauges(double left, double right) {
        return TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, gauge(1.2, left), Wheel.FRONT_RIGHT, gauge(1.2, right))));
    }

    private static boolean told(TyreReadings read, String words) {
        return read.doubts().stream().anyMatch(doubt -> doubt.contains(words));
    }

    @ParameterizedTest
    @CsvSource({"92, 87, 0, 0", "95, 85, 0.5, 0", "100, 84, 1, 0", "85, 95, 0, 0.5"})
    @DisplayName("one axle is the hotter from 5 K on, clearly from 15 K")
    void hotterAxle(double front, double rear, double frontHotter, double rearHotter) {
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, tread(front, front, front), Wheel.REAR_LEFT,
                tread(rear, rear, rear))));
        assertEquals(frontHotter, certainty(read, "front", State.HOTTER_AXLE), ROUNDING);
        assertEquals(rearHotter, certainty(read, "rear", State.HOTTER_AXLE), ROUNDING);
    }

    @Test
    @DisplayName("axles with different tyres are each held against the middle of their own window")
    void ownWindows() {
        String body = "tyres:\n  front-left: {inner: 95 °C, middle: 95 °C, outer: 95 °C}\n"
                + "  rear-left: {inner: 95 °C, middle: 95 °C, outer: 95 °C}\n";
        Case hotterRears = Trackside.yaml(Trackside.text(body).replace("rear: {window: [75 °C, 100 °C], ",
                "rear: {window: [85 °C, 110 °C], "));
        // 95 °C is 7.5 K above the middle of the front window and 2.5 K below that of the rear one: 10 K apart.
        Reading read = TyreReader.read(hotterRears).find("front", State.HOTTER_AXLE).orElseThrow();
        assertEquals(0.5, read.certainty(), ROUNDING);
        assertEquals("front tyres 10 K hotter than the rear tyres, each against its own window", read.statement());
        Case unknown = Trackside.yaml(Trackside.text(body.replaceFirst("95 °C, middle: 95 °C, outer: 95 °C",
                "105 °C, middle: 105 °C, outer: 105 °C")).replace("window: [75 °C, 100 °C], ", ""));
        assertEquals("front tyres 10 K hotter than the rear tyres",
                TyreReader.read(unknown).find("front", State.HOTTER_AXLE).orElseThrow().statement());
    }

    @ParameterizedTest
    @CsvSource({"70, 0.5, 0, 0", "65, 1, 0, 0", "73.5, 0.15, 0.5, 0", "75, 0, 1, 0", "100, 0, 1, 0", "101.5, 0, 0.5, 0.15",
        "105, 0, 0, 0.5", "110, 0, 0, 1"})
    @DisplayName("10 K outside the window is clear; up to 3 K outside it nobody swears that it is not inside")
    void window(double tread, double below, double inside, double above) {
        TyreReadings read = TyreReader.read(tyres(front(tread(tread, tread, tread))));
        assertEquals(below, certainty(read, "front", State.BELOW_WINDOW), ROUNDING);
        assertEquals(inside, certainty(read, "front", State.INSIDE_WINDOW), ROUNDING);
        assertEquals(above, certainty(read, "front", State.ABOVE_WINDOW), ROUNDING);
    }

    @Test
    @DisplayName("on a wet road a dry window has no lower end, neither for the tread nor for the gauge")
    void wet() {
        Case run = run("conditions: {air: 18 °C, surface: wet}\n").withTyres(front(tyre(61, 61, 61, 1.5, 1.7)));
        TyreReadings read = TyreReader.read(run);
        assertEquals(0, certainty(read, "front", State.BELOW_WINDOW));
        assertEquals(0, certainty(read, "front", State.INSIDE_WINDOW));
        WheelFigures wheel = read.wheels().get(Wheel.FRONT_LEFT);
        assertEquals(wheel.hot(), wheel.warm(), "nothing is warmed to a window that does not hold");
    }

    @ParameterizedTest
    @CsvSource({"'', 8, 0", "'', 14, 0.5", "'', 20, 1", "', turns: left', 3, 0", "', turns: left', 7.5, 0.5",
        "', turns: left', 12, 1", "', turns: left', -20, 0"})
    @DisplayName("left and right differ from 8 K on; the side that a circuit works less ought not to be the hotter one at all")
    void sidesDiffer(String turns, double leftOver, double expected) {
        assertEquals(expected, certainty(sides(turns, 85 + leftOver, 85), "rear", State.SIDES_DIFFER), ROUNDING);
    }

    @Test
    @DisplayName("what both ends share by 8 K is asked about: the circuit may turn one way")
    void shared() {
        assertTrue(told(both(93, 94), "the left tyres are the hotter ones at both ends, by 8 K at least"));
        assertFalse(told(both(92, 94), "at both ends"), "7 K are within what a gauge and a pit lane do");
        assertFalse(told(both(75, 105), "at both ends"), "a car that is hot front right and rear left shares nothing");
    }

    private static TyreReadings both(double frontLeft, double rearLeft) {
        return TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, tread(frontLeft, frontLeft, frontLeft), Wheel.FRONT_RIGHT,
                tread(85, 85, 85), Wheel.REAR_LEFT, tread(rearLeft, rearLeft, rearLeft), Wheel.REAR_RIGHT,
                tread(85, 85, 85))));
    }

    @Test
    @DisplayName("two cambers that differ by more than 12 K across their treads are to be measured")
    void unlikeEdges() {
        assertFalse(told(edges(18, 6), "measure the camber of each wheel"));
        assertTrue(told(edges(19, 6), "differ by 13 K"));
    }

    private static TyreReadings edges(double left, double right) {
        return TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, tread(85 + left, 85 + left / 2, 85), Wheel.FRONT_RIGHT,
                tread(85 + right, 85 + right / 2, 85))));
    }

    @Test
    @DisplayName("of two loaded tyres the hotter one counts for more, and from 5 K on for all")
    void hotterCounts() {
        // Means 2.5 K apart: the hotter one counts three quarters. 0.75 x 12 + 0.25 x 0 = 9 K.
        TyreReadings read = TyreReader.read(tyres(Map.of(Wheel.FRONT_LEFT, tread(93.5, 87.5, 81.5), Wheel.FRONT_RIGHT,
                tread(85, 85, 85))));
        assertEquals(9, read.innerMinusOuter(Axle.FRONT).orElseThrow(), 1e-9);
    }

    // 0.9 of the way to clear at 0.13 bar, the rest to 0.5 bar: 0.08 bar is half way to 0.13, 0.315 bar half way on.
    @ParameterizedTest
    @CsvSource({"1.93, 0, 1", "1.945, 0.135, 0.5", "1.96, 0.27, 0", "1.98, 0.45, 0", "2.03, 0.9, 0", "2.215, 0.95, 0",
            "2.4, 1, 0"})
    @DisplayName("a pressure is off from 0.03 bar on, clearly at 2 psi, and clearer still the further it goes")
    void offTarget(double hot, double above, double atTarget) {
        TyreReadings read = gauges(hot, hot);
        assertEquals(above, certainty(read, "front", State.ABOVE_TARGET), ROUNDING);
        assertEquals(atTarget, certainty(read, "front", State.AT_TARGET), ROUNDING);
        TyreReadings low = gauges(3.8 - hot, 3.8 - hot);
        assertEquals(above, certainty(low, "front", State.BELOW_TARGET), ROUNDING);
        assertEquals(0, certainty(low, "front", State.ABOVE_TARGET), ROUNDING);
    }

    @Test
    @DisplayName("a tyre is told of alone as far as its partner does not share it, and the axle as far as that leaves room")
    void partlyAlone() {
        TyreReadings read = gauges(2.01, 1.90);
        // 0.11 bar off is 0.8 clear, and half way from 0.06 to 0.16 bar from its partner: 0.8 x 0.5.
        assertEquals(0.4, certainty(read, "front-left", State.ABOVE_TARGET_ALONE), ROUNDING);
        // Together they are 0.055 bar off: a quarter of the way to 0.9, and a sixth still at the target.
        assertEquals(0.9 * 0.25 * 0.6, certainty(read, "front", State.ABOVE_TARGET), ROUNDING);
        assertEquals(0.6 / 6, certainty(read, "front", State.AT_TARGET), ROUNDING);
        Reading alone = read.find("front-left", State.ABOVE_TARGET_ALONE).orElseThrow();
        assertEquals("front-left tyre 0.11 bar above the hot target of 1.90 bar; its partner differs by 0.11 bar",
                alone.statement());
    }

    @ParameterizedTest
    @CsvSource({"1.945, 0.75", "1.90, 0.5", "1.71, 0.5", "1.65, 0", "2.10, 1"})
    @DisplayName("a hot middle counts as far as the gauge lets it: half at the target, nothing a quarter of a bar below it")
    void middleHot(double hot, double expected) {
        TyreReadings read = TyreReader.read(tyres(front(tyre(86, 96, 86, 1.4, hot))));
        assertEquals(expected, certainty(read, "front", State.MIDDLE_HOT), ROUNDING);
    }

    @ParameterizedTest
    @CsvSource({"1.855, 0.75", "2.09, 0.5", "2.15, 0", "1.70, 1"})
    @DisplayName("and a cold middle likewise, above it")
    void middleCold(double hot, double expected) {
        TyreReadings read = TyreReader.read(tyres(front(tyre(94, 84, 94, 1.4, hot))));
        assertEquals(expected, certainty(read, "front", State.MIDDLE_COLD), ROUNDING);
        String direction = hot > 1.9 ? "above" : "below";
        assertEquals(hot > 1.80, told(read, "10 K cooler than the edges says too little air, but the gauge reads"), read.doubts()
                .toString());
        assertEquals(hot > 1.80, told(read, direction + " the hot target"), read.doubts().toString());
    }

    // By the gas law: (1.5 + 1.01325) x T / 291.15 - 1.01325 bar with the gas at T kelvin.
    @ParameterizedTest
    @CsvSource({"89, false", "91, true"})
    @DisplayName("gas more than 10 K hotter than its tread is a mistake of somebody's")
    void gasOverTread(double celsius, boolean doubted) {
        double hot = (1.5 + 1.01325) * (celsius + 273.15) / 291.15 - 1.01325;
        TyreReadings read = TyreReader.read(tyres(front(tyre(80, 80, 80, 1.5, hot))));
        assertEquals(doubted, told(read, "hotter than its tread at 80 °C"), read.doubts().toString());
    }

    @Test
    @DisplayName("at altitude the air outside weighs less on the gauge")
    void altitude() {
        Case run = run("conditions: {air: 18 °C, altitude: 1500 m}\n").withTyres(front(gauge(1.5, 1.9)));
        // US Standard Atmosphere, 1976: 845.56 hPa at 1500 m. 291.15 x 2.74556 / 2.34556 = 340.80 K.
        assertEquals(340.80, TyreReader.read(run).wheels().get(Wheel.FRONT_LEFT).gas().orElseThrow().si(), 0.02);
    }

    @Test
    @DisplayName("where no cold pressure was read the one that the car's file sets is taken, and held against its minimum")
    void setCold() {
        TyreReading hotOnly = new TyreReading(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                gauge(1.5, 1.9).hotPressure());
        WheelFigures wheel = TyreReader.read(tyres(front(hotOnly))).wheels().get(Wheel.FRONT_LEFT);
        assertEquals(1.70, wheel.cold().orElseThrow().in(Unit.BAR), 1e-9);
        Case soft = Trackside.yaml(Trackside.text("").replace("front-pressure: {now: 1.70 bar",
                "front-pressure: {now: 1.30 bar"));
        TyreReadings read = TyreReader.read(soft);
        assertEquals(1, certainty(read, "front", State.BELOW_MINIMUM));
        assertEquals(0, certainty(read, "rear", State.BELOW_MINIMUM));
    }

    @Test
    @DisplayName("where nobody knows how warm the air was that went in, the tread stands for the gas")
    void warmedByTread() {
        Case run = run("").withTyres(front(tyre(61, 61, 61, 1.5, 1.7)));
        // 334.15 K to the window's 75 °C: (1.70 + 1.01325) x 348.15 / 334.15 - 1.01325.
        assertEquals(2.71325 * 348.15 / 334.15 - 1.01325,
                TyreReader.read(run).wheels().get(Wheel.FRONT_LEFT).warm().orElseThrow().in(Unit.BAR), 1e-6);
    }
}
