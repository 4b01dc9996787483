package camberwell.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A scale places figures in a drawing and marks round ones")
class ScaleTest {

    @Test
    @DisplayName("what grows upwards ends above where it starts")
    void places() {
        Scale up = new Scale(0, 10, 200, 100);
        assertEquals(200, up.at(0));
        assertEquals(150, up.at(5));
        assertEquals(100, up.at(10));
    }

    @Test
    @DisplayName("marks are multiples of 1, 2 or 5 times a power of ten, written with no more decimals than tell them apart")
    void marks() {
        assertEquals(List.of("0.0", "0.5", "1.0"), labels(new Scale(0, 1.3, 0, 1), 5));
        assertEquals(List.of("-2", "-1", "0", "1", "2", "3"), labels(new Scale(-2, 3, 0, 1), 6));
        assertEquals(List.of("280", "300", "320", "340", "360", "380"), labels(new Scale(262, 398, 0, 1), 8));
        assertEquals(List.of("92.00", "92.05"), labels(new Scale(91.99, 92.06, 0, 1), 2));
    }

    @Test
    @DisplayName("a scale from nothing to nothing is none")
    void empty() {
        assertThrows(IllegalArgumentException.class, () -> new Scale(1, 1, 0, 100));
    }

    private static List<String> labels(Scale scale, int wanted) {
        return scale.marks(wanted).stream().map(mark -> scale.label(mark, wanted)).toList();
    }
}
