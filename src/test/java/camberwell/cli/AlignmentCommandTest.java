package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AlignmentCommandTest {

    // Trade pages: total 4 mm across 727.7 mm is 0.31° in total; 0.15° on a 24 in reference is 0.062832 in
    // (santafegarage.com, "how to check toe"); 1/8 in total on a 26 in tyre is 0.138° a side (forabodiesonly.com);
    // 0.25° is about 2 mm on an 18 in wheel (dieselcar.com, "The Extra Mile"); 1/2 in total is about 1/2° a wheel (J.
    // Yurko, EPA-AA-LDTP 78-12, 1978; exact for a diameter of 28.65 in).
    @ParameterizedTest
    @CsvSource({
        "--total 4mm --across 727.7mm, total-toe, 0.31, 0.005",
        "--each 0.15deg --across 24in, toe-length-wheel, 1.59593, 0.00005",
        "--total 0.125in --across 26in, toe-wheel, 0.138, 0.0005",
        "--each 0.25deg --across 18in, toe-length-wheel, 2.0, 0.01",
        "--total 0.5in --across 28.65in, toe-wheel, 0.5, 0.0005"})
    @DisplayName("toe between degrees and lengths as the trade publishes it")
    void publishedToe(String given, String figure, double expected, double tolerance) {
        assertEquals(expected, Typed.run("alignment toe " + given + " --format json").value(figure), tolerance);
    }

    // Computed, d sin(toe): one millimetre a wheel across the rim.
    @ParameterizedTest
    @CsvSource({"13in, 0.1735", "15in, 0.1504", "16in, 0.1410", "17in, 0.1327", "18in, 0.1253", "19in, 0.1187",
        "20in, 0.1128"})
    @DisplayName("the larger the rim, the smaller the angle of a millimetre")
    void oneMillimetre(String rim, double degrees) {
        assertEquals(degrees, Typed.run("alignment toe --each 1mm --across " + rim + " --format json")
                .value("toe-wheel"),
                0.00005);
    }

    @Test
    @DisplayName("left and right each for itself, and toe-out negative")
    void leftAndRight() {
        Typed typed = Typed.run("alignment toe --left 1.5mm --right -0.5mm --across 17in");
        assertTrue(typed.out().contains("Toe of the right wheel: -0.066 deg"), typed.out());
        assertTrue(typed.out().contains("toe-out"));
        assertTrue(typed.out().contains("Total toe, as a length: 1.00 mm"));
    }

    // Exact rotation, computed; geometry of D. B. January, SAE 850219 (1985). caster, kingpin, camber, steer, outer,
    // inner.
    @ParameterizedTest
    @CsvSource({"7, 10, -2, 20, -3.7795, 1.0108", "7, 10, -2, 10, -3.0594, -0.6301", "5, 0, 0, 20, -1.7139, 1.7139",
        "0, 12, 0, 20, 0.7354, 0.7354", "8, 6, -3, 5, -3.6745, -2.2786", "3, 12, -0.5, 20, -0.7918, 1.2636"})
    @DisplayName("camber in steer by exact rotation")
    void camberInSteer(double caster, double kingpin, double camber, String steer, double outer, double inner) {
        Typed typed = Typed.run(String.format(Locale.ROOT, "alignment steer --caster %fdeg --kingpin %fdeg "
                + "--camber %fdeg --steer %sdeg --format json", caster, kingpin, camber, steer));
        assertEquals(outer, typed.value("outer-at-" + steer), 1e-4);
        assertEquals(inner, typed.value("inner-at-" + steer), 1e-4);
    }

    @Test
    @DisplayName("with little caster and much kingpin inclination the outer wheel's gain turns back in steer")
    void gainTurnsBack() {
        Typed typed = Typed.run("alignment steer --caster 3deg --kingpin 12deg --camber -0.5deg --format json");
        assertEquals(-0.8613, typed.value("outer-at-15"), 1e-4);
        assertTrue(typed.value("outer-at-20") > typed.value("outer-at-15"));
    }

    // The sine form's factor 1/(2 sin steer): 2.8794 at 10°, 1.9319 at 15°, 1.4619 at 20°, computed.
    @ParameterizedTest
    @CsvSource({"10, 2.8794", "15, 1.9319", "20, 1.4619"})
    @DisplayName("caster from a sweep, by the sine form")
    void casterFromSweep(int sweep, double factor) {
        assertEquals(factor, Typed.run("alignment caster --turned-in 0.5deg --turned-out -0.5deg --sweep " + sweep
                + "deg --format json").value("caster"), 5e-5);
    }

    @Test
    @DisplayName("a sweep of the cambers that 7° of caster gives reads 7°")
    void sweepRoundTrip() {
        Typed typed = Typed.run("alignment caster --turned-in 1.0108deg --turned-out -3.7795deg --sweep 20deg");
        assertEquals("""
                Caster: 7.00 deg
                    (1.011° - -3.780°) / (2 x sin 20.0°), a factor of 1.4619; workshop rules
                    round the factor, and 1.5 for a sweep of 20° reads 2.6 % high
                """, typed.out());
    }

    // By hand: of 2.2° of roll 30 % is taken back, 1.54° is left; -3 + 1.54 = -1.46°. On the jack -0.5° for 25 mm and a
    // track of 1.53 m: 0.5° x 765 mm / 25 mm = 15.3° per radian = 0.267.
    @Test
    @DisplayName("camber of the loaded wheel in roll, and the static camber that stands it upright")
    void roll() {
        Typed given = Typed.run("alignment roll --camber -3deg --roll 2.2deg --recovery 30% --format json");
        assertEquals(-1.46, given.value("outer"), 1e-6);
        assertEquals(-4.54, given.value("inner"), 1e-6);
        assertEquals(-1.54, given.value("upright"), 1e-6);
        Typed jack = Typed.run("alignment roll --camber -3deg --roll 2.2deg --change -0.5deg --travel 25mm --track "
                + "1530mm --format json");
        assertEquals(26.7, jack.value("recovery"), 0.05);
        double upright = jack.value("upright");
        assertEquals(0, Typed.run(String.format(Locale.ROOT, "alignment roll --camber %.6fdeg --roll 2.2deg "
                + "--change -0.5deg --travel 25mm --track 1530mm --format json", upright)).value("outer"), 1e-5);
    }

    // C toe sin(toe) with toe taken for slip angle as by J. Yurko, EPA-AA-LDTP 78-12 (1978); computed for one tyre of
    // 1000 N/deg: 0.1° 0.175 N, 0.25° 1.091 N, 0.5° 4.363 N, 1° 17.452 N.
    @ParameterizedTest
    @CsvSource({"0.1, 0.175", "0.25, 1.091", "0.5, 4.363", "1, 17.452"})
    @DisplayName("toe drags with the square of the angle")
    void drag(String toe, double oneTyre) {
        Typed typed = Typed.run("alignment drag --toe " + toe + "deg --stiffness 1000N/deg --speed 36km/h --format "
                + "json");
        assertEquals(2 * oneTyre, typed.value("drag"), 0.001);
        assertEquals(20 * oneTyre, typed.value("scrub-heat"), 0.01);
    }

    // SAE 870421 (1987), table 2: B C D = 1027.3 N/deg at 4 kN.
    @Test
    @DisplayName("without a stiffness of its own the tyre is a published one at its load")
    void publishedTyre() {
        Typed typed = Typed.run("alignment drag --toe 1deg --load 4000N --format json");
        assertEquals(1027.3, typed.value("side-force"), 0.05);
        assertEquals(Typed.run("alignment drag --toe 1deg --stiffness 58.862kN/rad --format json").value("side-force"),
                typed.value("side-force"), 0.1);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "toe --each 2mm | means nothing without the diameter",
        "toe --each 2mm --total 4mm --across 18in | give --each, or --total, or --left and --right",
        "toe --left 2mm --across 18in | give --each, or --total, or --left and --right",
        "toe --each 2 --across 18in | a toe needs a unit",
        "steer --caster 80deg --kingpin 10deg | a caster or kingpin inclination lies between -25 deg and 25 deg",
        "roll --camber -3deg --roll 2deg | give either --recovery, or --change, --travel and --track",
        "drag --toe 1deg --load 300kg | the load of one tyre is written in N",
        "drag --toe 1deg --stiffness 1000 | a cornering stiffness is a number and a unit, N/deg, N/rad or kN/rad",
        "casters | did you mean caster?"})
    @DisplayName("a wrong word is answered with the right one")
    void wrongCommandLines(String typed, String answer) {
        Typed result = Typed.run("alignment " + typed);
        assertEquals(ExitCode.WRONG_INPUT, result.code());
        assertTrue(result.err().contains(answer), result.err());
        assertEquals("", result.out());
    }

    @Test
    @DisplayName("the help of toe names both of its traps")
    void traps() {
        String help = Typed.run("alignment toe --help").out().replaceAll("\\s+", " ");
        assertTrue(help.contains("a length means nothing without its diameter"), help);
        assertTrue(help.contains("it makes the angle twice too large"), help);
    }

    @Property(tries = 60)
    @Label("toe goes to millimetres and back, and zero caster leans both wheels alike")
    void roundTrip(@ForAll @DoubleRange(min = -1, max = 1) double toe,
            @ForAll @DoubleRange(min = 300, max = 700) double across, @ForAll @DoubleRange(min = 0,
            max = 15) double kingpin) {
        double length = Typed.run(String.format(Locale.ROOT, "alignment toe --each %.5fdeg --across %.2fmm "
                + "--format json",
                toe, across)).value("toe-length-wheel");
        assertEquals(toe, Typed.run(String.format(Locale.ROOT, "alignment toe --each %.6fmm --across %.2fmm "
                + "--format json",
                length, across)).value("toe-wheel"), 1e-5);
        Typed steer = Typed.run(String.format(Locale.ROOT, "alignment steer --caster 0deg --kingpin %.3fdeg "
                + "--camber -2deg --steer 15deg --format json", kingpin));
        assertEquals(steer.value("outer-at-15"), steer.value("inner-at-15"), 1e-6);
    }
}
