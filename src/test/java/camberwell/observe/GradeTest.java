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

    @Test
    @DisplayName("what is faint in three laps of five is there on some, however little of it there is")
    void faintOnSome() {
        assertEquals(Occurrence.SOME_LAPS, of(1.4, 1.4, 1.4, 0, 0));
        assertEquals(Occurrence.ONCE, of(0, 1.4, 0, 0, 0));
    }

    @Test
    @DisplayName("a lap in which it was not measured is no clean lap")
    void notMeasured() {
        boolean[] measured = {true, true, false, false, false};
        Grade grade = Grade.of(new double[] {2, 2, Double.NaN, Double.NaN, Double.NaN}, measured, 1, 2,
                VectorsTest.limits());

        assertEquals(Occurrence.EVERY_LAP, grade.occurrence());
        assertEquals(2.0 / 3, grade.certainty(), 1e-9);
        assertEquals(1, grade.weight(), 1e-9);
        assertEquals(5, grade.clearness().length);
    }
}
