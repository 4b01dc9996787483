package camberwell.observe;

import java.util.ArrayList;
import java.util.List;

/**
 * A line across the road that laps are timed at.
 *
 * @param x a point of the way over it, m
 * @param dx direction in which it is crossed, of length 1
 */
record TimingLine(double x, double y, double dx, double dy) {

    /** Half of how far it reaches to each side, m: wider than a road and a position's error: judgement, no source. */
    private static final double REACH = 25;

    static TimingLine through(double x, double y, double dx, double dy) {
        double length = Math.max(1e-9, Math.hypot(dx, dy));
        return new TimingLine(x, y, dx / length, dy / length);
    }

    /** How far beyond the line a point lies, m. */
    double beyond(double px, double py) {
        return (px - x) * dx + (py - y) * dy;
    }

    /**
     * The part of the way from one point to the next at which the line is crossed in its direction, 0 to 1; not a number
     * where it is not crossed, or beside its ends.
     */
    double crossed(double fromX, double fromY, double toX, double toY) {
        double before = beyond(fromX, fromY);
        double after = beyond(toX, toY);
        if (!(before < 0 && after >= 0)) {
            return Double.NaN;
        }
        double part = before / (before - after);
        double atX = fromX + part * (toX - fromX);
        double atY = fromY + part * (toY - fromY);
        double aside = -(atX - x) * dy + (atY - y) * dx;
        return Math.abs(aside) <= REACH ? part : Double.NaN;
    }

    /** The first samples behind the line, at least {@code apart} from each other. */
    List<Integer> crossings(float[] px, float[] py, int size, int apart) {
        List<Integer> crossings = new ArrayList<>();
        for (int i = 1; i < size; i++) {
            boolean far = crossings.isEmpty() || i - crossings.get(crossings.size() - 1) >= apart;
            if (far && !Double.isNaN(crossed(px[i - 1], py[i - 1], px[i], py[i]))) {
                crossings.add(i);
            }
        }
        return crossings;
    }
}
