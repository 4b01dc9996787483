package camberwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ToeTest {

    private static final double INCH = 25.4;

    // Computed from t = d sin(toe), the definition of ISO 8855:2011, 7.1.6, measured across the rim.
    @ParameterizedTest
    @CsvSource({"13, 0.1735, 0.3470, 0.5206, 0.576", "15, 0.1504, 0.3008, 0.4512, 0.665",
        "16, 0.1410, 0.2820, 0.4230, 0.709", "17, 0.1327, 0.2654, 0.3981, 0.754",
        "18, 0.1253, 0.2506, 0.3760, 0.798", "19, 0.1187, 0.2374, 0.3562, 0.842",
        "20, 0.1128, 0.2256, 0.3384, 0.887"})
    @DisplayName("1, 2 and 3 mm at the rim in degrees, and 0.1° in mm")
    void rimTable(double inches, double one, double two, double three, double tenth) {
        double diameter = inches * INCH;
        assertEquals(one, Toe.degreesFromMillimetres(1, diameter), 1e-4);
        assertEquals(two, Toe.degreesFromMillimetres(2, diameter), 1e-4);
        assertEquals(three, Toe.degreesFromMillimetres(3, diameter), 1e-4);
        assertEquals(tenth, Toe.millimetresFromDegrees(0.1, diameter), 1e-3);
    }

    // A trade page: total 4 mm across 727.7 mm is 0.31° total.
    @Test
    void totalAcrossTheTyre() {
        assertEquals(0.31, 2 * Toe.degreesPerWheelFromTotal(4, 727.7), 0.005);
    }

    // santafegarage.com, "how to check toe": 0.15° on a 24 in reference is 0.062832 in.
    @Test
    void aQuarterOfADegreeOnALargeReference() {
        assertEquals(0.062832, Toe.millimetresFromDegrees(0.15, 24 * INCH) / INCH, 1e-6);
    }

    // forabodiesonly.com: 1/8 in total on a 26 in tyre is 0.138° per side.
    @Test
    void anEighthOfAnInchTotal() {
        assertEquals(0.138, Toe.degreesPerWheelFromTotal(INCH / 8, 26 * INCH), 5e-4);
    }

    // dieselcar.com, "The Extra Mile": 0.25° is about 2 mm on an 18 in wheel.
    @Test
    void twoMillimetresOnEighteenInches() {
        assertEquals(2.0, Toe.millimetresFromDegrees(0.25, 18 * INCH), 0.01);
    }

    // J. Yurko, EPA-AA-LDTP 78-12 (1978): 1/2 in total toe is about 1/2° per wheel (28.65 in across).
    @Test
    void halfAnInchIsHalfADegreePerWheel() {
        assertEquals(0.5, Toe.degreesPerWheelFromTotal(INCH / 2, 28.65 * INCH), 1e-3);
        assertEquals(INCH / 2, Toe.totalMillimetres(0.5, 0.5, 28.65 * INCH), 1e-2);
    }

    // Computed from C toe sin(toe) with C = 1000 N/deg: quadratic in toe.
    @ParameterizedTest
    @CsvSource({"0.1, 0.175", "0.25, 1.091", "0.5, 4.363", "1, 17.452"})
    @DisplayName("toe drag grows with the square of toe, whichever way it points")
    void drag(double degrees, double newtons) {
        double stiffness = Math.toDegrees(1000);
        assertEquals(newtons, Toe.drag(stiffness, Math.toRadians(degrees)), 5e-4);
        assertEquals(newtons, Toe.drag(stiffness, Math.toRadians(-degrees)), 5e-4);
        assertEquals(newtons * 50, Toe.dragPower(stiffness, Math.toRadians(degrees), 50), 0.025);
    }

    @Test
    void refusesALengthThatDoesNotFit() {
        assertThrows(IllegalArgumentException.class, () -> Toe.degreesFromMillimetres(500, 400));
        assertThrows(IllegalArgumentException.class, () -> Toe.millimetresFromDegrees(1, 0));
    }

    @Property
    void lengthAndAngleAreRoundTrips(@ForAll @DoubleRange(min = -3, max = 3) double degrees,
            @ForAll @DoubleRange(min = 300, max = 760) double diameter) {
        double there = Toe.millimetresFromDegrees(degrees, diameter);
        assertEquals(degrees, Toe.degreesFromMillimetres(there, diameter), 1e-10);
        assertEquals(degrees, Toe.degreesPerWheelFromTotal(Toe.totalMillimetres(degrees, degrees, diameter), diameter),
                1e-10);
    }
}
