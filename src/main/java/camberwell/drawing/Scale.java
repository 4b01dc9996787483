package camberwell.drawing;

import camberwell.units.Figures;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a figure stands in a drawing: from {@code low} at {@code start} to {@code high} at {@code end}, in proportion.
 *
 * @param low the least figure that is drawn
 * @param high the greatest one, above {@code low}
 * @param start its place in the drawing; {@code end} may lie before it, as it does for what grows upwards
 */
public record Scale(double low, double high, double start, double end) {

    /** @throws IllegalArgumentException if there is nothing between low and high */
    public Scale {
        if (!(high > low)) {
            throw new IllegalArgumentException("a scale from " + low + " to " + high);
        }
    }

    /** Where {@code figure} stands. */
    public double at(double figure) {
        return start + (figure - low) / (high - low) * (end - start);
    }

    /** Round figures within the scale, about {@code wanted} of them: multiples of 1, 2 or 5 times a power of ten. */
    public List<Double> marks(int wanted) {
        double step = step(wanted);
        List<Double> marks = new ArrayList<>();
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + step * 1e-9; i++) {
            marks.add(i * step);
        }
        return marks;
    }

    /** One of the marks of {@link #marks} as it is written: with as many decimals as tell it from the next. */
    public String label(double mark, int wanted) {
        return Figures.fixed(mark, Math.max(0, (int) Math.ceil(-Math.log10(step(wanted)) - 1e-9)));
    }

    private double step(int wanted) {
        double raw = (high - low) / wanted;
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double part = raw / power;
        return power * (part <= 1 ? 1 : part <= 2 ? 2 : part <= 5 ? 5 : 10);
    }
}
