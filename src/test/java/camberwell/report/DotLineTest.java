package camberwell.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Figures on a scale of characters")
class DotLineTest {

    @Test
    @DisplayName("stand in proportion, the ends of the scale at the ends of the line")
    void proportion() {
        assertEquals("a    b    c", new DotLine(0, 10, 11).mark(0, 'a').mark(5, 'b').mark(10, 'c').text());
    }

    @Test
    @DisplayName("stand upon the span that is filled, and two at one place show as an asterisk")
    void several() {
        assertEquals("  ==o=*  ", new DotLine(70, 110, 9).span(80, 100, '=').mark(90, 'o').mark(99, 'i').mark(101, 'm').text());
    }

    @Test
    @DisplayName("beyond the scale stand at its end; where there is no scale, in the middle")
    void beyond() {
        assertEquals("x  ", new DotLine(1, 2, 3).mark(-5, 'x').text());
        assertEquals(" x ", new DotLine(2, 2, 3).mark(2, 'x').text());
    }
}
