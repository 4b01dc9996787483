package camberwell.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@Label("A low-pass that shifts no phase")
class ZeroPhaseTest {

    /** Second-order Butterworth, bilinear; both passes 3 dB down at the cut-off (Winter): recomputed by hand and in Python. */
    @Test
    @DisplayName("at 100 Hz with 5 Hz it has the coefficients of the textbook")
    void coefficients() {
        double[] c = new ZeroPhase(100, 5).coefficients();

        assertEquals(0.0295690747, c[0], 5e-11);
        assertEquals(2 * c[0], c[1], 1e-15);
        assertEquals(-1.4581038605, c[3], 5e-11);
        assertEquals(0.5763801593, c[4], 5e-11);
    }

    /** Eight noughts, then eight ones; ends extended oddly by nine samples: scipy.signal.filtfilt gives the same. */
    @Test
    @DisplayName("a step comes out as SciPy's filtfilt gives it")
    void step() {
        double[] y = new ZeroPhase(100, 5).smoothed(0, 0, 0, 0, 0, 0, 0, 0, 1, 1, 1, 1, 1, 1, 1, 1);

        assertEquals(0.000281, y[0], 5e-7);
        assertEquals(0.435977, y[7], 5e-7);
        assertEquals(0.567448, y[8], 5e-7);
        assertEquals(1.031449, y[15], 5e-7);
    }

    @Test
    @DisplayName("both passes together are 3 dB down at the cut-off, and nothing comes late")
    void threeDecibels() {
        ZeroPhase filter = new ZeroPhase(100, 3);
        double[] wave = new double[2000];
        for (int i = 0; i < wave.length; i++) {
            wave[i] = Math.sin(2 * Math.PI * 3 * i / 100);
        }
        double[] y = filter.smoothed(wave);

        double most = 0;
        for (int i = 500; i < 1500; i++) {
            most = Math.max(most, y[i]);
            assertEquals(y[i], wave[i] * Math.sqrt(0.5), 1e-3, "sample " + i);
        }
        assertEquals(Math.sqrt(0.5), most, 2e-3);
    }

    @Test
    @DisplayName("a gap stays empty and parts what lies on its sides")
    void gaps() {
        double[] y = new ZeroPhase(100, 3).smoothed(1, 1, 1, Double.NaN, 5, 5, 5);

        assertEquals(1, y[2], 1e-12);
        assertTrue(Double.isNaN(y[3]));
        assertEquals(5, y[4], 1e-12);
    }

    @Property
    @Label("a steady value and a steady slope pass unchanged in the middle")
    void straightLines(@ForAll @DoubleRange(min = -50, max = 50) double height,
            @ForAll @DoubleRange(min = -2, max = 2) double slope) {
        double[] x = new double[600];
        for (int i = 0; i < x.length; i++) {
            x[i] = height + slope * i;
        }
        double[] y = new ZeroPhase(100, 3).smoothed(x);

        for (int i = 150; i < 450; i++) {
            assertEquals(x[i], y[i], 1e-6 * (1 + Math.abs(x[i])));
        }
    }
}
