package camberwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Vectors derived from published reading rules: Northstar Motorsports tech tips (inside clearly hotter = too much
 * negative camber; middle against the mean of the edges = pressure; spread at most 20 °F) and Finish Line Racing
 * (outer edge hotter = too little negative camber; within 5 to 10 °F = pressure about right).
 */
class TreadReadTest {

    @Test
    @DisplayName("90/88/84: an inner edge a few kelvin hotter is healthy and starts nothing")
    void healthy() {
        TreadRead read = new TreadRead(90, 88, 84);
        assertEquals(6, read.spread());
        assertEquals(6, read.innerMinusOuter());
        assertEquals(1, read.middleMinusEdges());
        assertEquals(87.333, read.mean(), 5e-4);
        assertClearness(read, 0, 0, 0, 0);
    }

    @Test
    @DisplayName("95/88/80: inner edge 15 K hotter, too much negative camber")
    void tooMuchNegativeCamber() {
        TreadRead read = new TreadRead(95, 88, 80);
        assertEquals(15, read.spread());
        assertClearness(read, 0.7, 0, 0, 0);
    }

    @Test
    @DisplayName("82/88/94: outer edge hotter, too little negative camber")
    void tooLittleNegativeCamber() {
        assertClearness(new TreadRead(82, 88, 94), 0, 1, 0, 0);
    }

    @Test
    @DisplayName("86/94/86: middle 8 K above the edges, over-inflated")
    void overInflated() {
        TreadRead read = new TreadRead(86, 94, 86);
        assertEquals(8, read.middleMinusEdges());
        assertClearness(read, 0, 0, 1, 0);
    }

    @Test
    @DisplayName("92/84/92: middle 8 K below the edges, under-inflated")
    void underInflated() {
        TreadRead read = new TreadRead(92, 84, 92);
        assertEquals(-8, read.middleMinusEdges());
        assertClearness(read, 0, 0, 0, 1);
    }

    @Test
    @DisplayName("a spread of 24 K from inside to outside leaves no doubt")
    void clearSpread() {
        assertClearness(new TreadRead(102, 90, 78), 1, 0, 0, 0);
    }

    @Test
    @DisplayName("half way up the ramps the reading is half clear")
    void ramps() {
        assertEquals(0.5, new TreadRead(93, 86.5, 80).innerHotClearness(), 1e-12);
        assertEquals(0.5, new TreadRead(86, 88, 90).outerHotClearness(), 1e-12);
        assertEquals(0.5, new TreadRead(85, 90.5, 85).middleHotClearness(), 1e-12);
        assertEquals(0.5, new TreadRead(85, 79.5, 85).middleCoolClearness(), 1e-12);
    }

    @Property
    void aHotterInnerEdgeNeverReadsAsTheOuterOne(@ForAll @DoubleRange(min = 20, max = 120) double inner,
            @ForAll @DoubleRange(min = 20, max = 120) double middle,
            @ForAll @DoubleRange(min = 20, max = 120) double outer) {
        TreadRead read = new TreadRead(inner, middle, outer);
        assertTrue(read.innerHotClearness() * read.outerHotClearness() == 0);
        assertTrue(read.middleHotClearness() * read.middleCoolClearness() == 0);
        assertTrue(new TreadRead(inner + 1, middle, outer).innerHotClearness() >= read.innerHotClearness());
        assertTrue(read.spread() >= Math.abs(read.innerMinusOuter()));
    }

    @Test
    void refusesAMissingReading() {
        assertThrows(IllegalArgumentException.class, () -> new TreadRead(90, Double.NaN, 80));
    }

    private static void assertClearness(TreadRead read, double innerHot, double outerHot, double middleHot,
            double middleCool) {
        assertEquals(innerHot, read.innerHotClearness(), 1e-12);
        assertEquals(outerHot, read.outerHotClearness(), 1e-12);
        assertEquals(middleHot, read.middleHotClearness(), 1e-12);
        assertEquals(middleCool, read.middleCoolClearness(), 1e-12);
    }
}
