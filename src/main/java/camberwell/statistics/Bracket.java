package camberwell.statistics;

import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.distribution.continuous.TDistribution;

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

    /**
     * Where the vertex lies, at a level of confidence (E. C. Fieller, J. R. Statist. Soc. B 16, 1954: the vertex is a
     * ratio of two contrasts of the means).
     *
     * @param x the three settings, all different
     * @param contrast a weighted sum of the three means with its standard error; the weights sum to 0
     * @param level in (0, 1): 0.95 for the usual one
     * @return empty where the three do not differ by more than can be seen, or the parabola opens downwards: then the vertex
     *         may lie anywhere
     */
    public static Optional<Interval> interval(double[] x, Function<double[], Difference> contrast, double level) {
        double left = x[0] - x[1];
        double right = x[2] - x[1];
        // The vertex less the middle setting is the first of these over the second.
        double[] over = {-right * right, right * right - left * left, left * left};
        double[] under = {-2 * right, 2 * (right - left), 2 * left};
        double[] both = {over[0] + under[0], over[1] + under[1], over[2] + under[2]};
        Difference n = contrast.apply(over);
        Difference d = contrast.apply(under);
        double t = new TDistribution(d.degreesOfFreedom()).inverseCumulativeProbability((1 + level) / 2);
        double together = square(contrast.apply(both).standardError());
        double covariance = (together - square(n.standardError()) - square(d.standardError())) / 2;
        double a = square(d.estimate()) - t * t * square(d.standardError());
        double b = n.estimate() * d.estimate() - t * t * covariance;
        double c = square(n.estimate()) - t * t * square(n.standardError());
        boolean downwards = d.estimate() * left * right * (right - left) < 0;
        if (!(a > 0) || downwards) {
            return Optional.empty();
        }
        double reach = Math.sqrt(Math.max(0, b * b - a * c));
        return Optional.of(new Interval(x[1] + (b - reach) / a, x[1] + (b + reach) / a));
    }

    private static double square(double number) {
        return number * number;
    }
}
