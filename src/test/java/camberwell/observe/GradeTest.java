package camberwell.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.vocabulary.Occurrence;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("How often something shows goes by the laps that it is spread over, not by how much of it there is")
class GradeTest {

    private static Occurrence of(double... figures) {
        return Grade.of(figures, 1, 2, VectorsTest.limits()).occurrence();
    }

    @Test
    @DisplayName("what is faint in each lap is there on every lap")
    void faint() {
        assertEquals(Occurrence.EVERY_LAP, of(1.3, 1.35, 1.3, 1.25, 1.3, 1.3));
        assertEquals(Occurrence.EVERY_LAP, of(2, 2, 2, 2, 2, 2));
    }

    @Test
    @DisplayName("what shows in three laps of six is there on some, in one of six once")
    void some() {
        assertEquals(Occurrence.SOME_LAPS, of(2, 0, 1.8, 0, 0, 1.9));
        assertEquals(Occurrence.ONCE, of(0, 0, 2, 0, 0, 0));
    }
}
