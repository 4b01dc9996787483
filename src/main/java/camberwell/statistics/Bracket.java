package camberwell.statistics;

import java.util.Optional;

/** Three settings of one adjuster, of which the middle one was best: the best lies between the outer two. */
public final class Bracket {

    private Bracket() {
    }

    /**
     * The setting at the vertex of the parabola through three points.
     *
     * @param x settings, all different
     * @param y what is to be small: the lap time
     * @return empty where the points lie on a line, or the parabola opens downwards
     */
    public static Optional<Double> vertex(double[] x, double[] y) {
        double left = (x[1] - x[0]) * (y[1] - y[2]);
        double right = (x[1] - x[2]) * (y[1] - y[0]);
        double curvature = ((y[2] - y[1]) / (x[2] - x[1]) - (y[1] - y[0]) / (x[1] - x[0])) / (x[2] - x[0]);
        if (left == right || !(curvature > 0)) {
            return Optional.empty();
        }
        return Optional.of(x[1] - ((x[1] - x[0]) * left - (x[1] - x[2]) * right) / (2 * (left - right)));
    }
}
