package camberwell.statistics;

import java.util.List;

/**
 * Stints side by side: a mean for each, and the trend of fuel and tyre age taken out. One stint cannot tell the two
 * apart, and need not; fitted together, a difference between stints is charged for not knowing the trend, also where
 * they differ in length.
 */
public final class StintFit {

    /** What runs with the lap of the stint. */
    public enum Trend {
        /** Nothing: the trend is known to be none. */
        NONE,
        /** One slope for all stints: the same tyres and about the same fuel. */
        COMMON,
        /** A slope each: other tyres, or another load of fuel. */
        OWN
    }

    private final LeastSquares fit;
    private final int stints;
    private final Trend trend;
    private final double base;
    private final double middle;

    private StintFit(LeastSquares fit, int stints, Trend trend, double base, double middle) {
        this.fit = fit;
        this.stints = stints;
        this.trend = trend;
        this.base = base;
        this.middle = middle;
    }

    /**
     * Fits them.
     *
     * @throws IllegalArgumentException if there are too few laps for the means and the trend
     */
    public static StintFit of(List<Stint> stints, Trend trend) {
        int laps = stints.stream().mapToInt(Stint::count).sum();
        if (laps == 0) {
            throw new IllegalArgumentException("no laps");
        }
        double middle = stints.stream().mapToDouble(stint -> sum(stint.lap())).sum() / laps;
        double base = stints.stream().filter(stint -> stint.count() > 0).findFirst().orElseThrow().seconds()[0];
        int slopes = trend == Trend.NONE ? 0 : trend == Trend.COMMON ? 1 : stints.size();
        double[][] design = new double[laps][stints.size() + slopes];
        double[] observed = new double[laps];
        int row = 0;
        for (int s = 0; s < stints.size(); s++) {
            for (int i = 0; i < stints.get(s).count(); i++) {
                design[row][s] = 1;
                if (trend != Trend.NONE) {
                    design[row][stints.size() + (trend == Trend.OWN ? s : 0)] = stints.get(s).lap()[i] - middle;
                }
                observed[row] = stints.get(s).seconds()[i] - base;
                row++;
            }
        }
        return new StintFit(LeastSquares.fit(design, observed), stints.size(), trend, base, middle);
    }

    private static double sum(double[] numbers) {
        double sum = 0;
        for (double number : numbers) {
            sum += number;
        }
        return sum;
    }

    /** The mean of a stint at the middle lap of all, in seconds. */
    public double mean(int stint) {
        return base + fit.coefficients()[stint];
    }

    /** The same with its standard error. */
    public Difference level(int stint) {
        double[] weights = new double[stints];
        weights[stint] = 1;
        Difference above = contrast(weights);
        return new Difference(base + above.estimate(), above.standardError(), above.degreesOfFreedom());
    }

    /** The trend of a stint, in seconds a lap. @throws IllegalStateException if none was fitted */
    public Difference slope(int stint) {
        if (trend == Trend.NONE) {
            throw new IllegalStateException("no trend was fitted");
        }
        double[] weights = new double[fit.coefficients().length];
        weights[stints + (trend == Trend.OWN ? stint : 0)] = 1;
        return fit.contrast(weights);
    }

    /** The lap of the stint at which the means stand. */
    public double middle() {
        return middle;
    }

    /** Scatter of a lap about means and trend, in seconds. */
    public double scatter() {
        return Math.sqrt(fit.variance());
    }

    /** What is left of each lap, stint after stint, in seconds. */
    public double[] residuals() {
        return fit.residuals().clone();
    }

    /** Laps less means and slopes. */
    public int degreesOfFreedom() {
        return fit.degreesOfFreedom();
    }

    /** A weighted sum of the stints' means: -1 and 1 for B less A, -½, 1, -½ for B less the A before and after it. */
    public Difference contrast(double... weights) {
        double[] all = new double[fit.coefficients().length];
        System.arraycopy(weights, 0, all, 0, stints);
        return fit.contrast(all);
    }

    /**
     * Every second stint less the mean of its neighbours, averaged: A-B-A, A-B-A-B-A. A drift that runs evenly through
     * the session falls out of it; one that bends stays.
     *
     * @throws IllegalArgumentException if there is an even number of stints, or fewer than three
     */
    public Difference alternating() {
        if (stints < 3 || stints % 2 == 0) {
            throw new IllegalArgumentException("A and B have to alternate, from an A to an A, not in " + stints);
        }
        double[] weights = new double[stints];
        double share = 1.0 / (stints / 2);
        for (int s = 1; s < stints; s += 2) {
            weights[s] += share;
            weights[s - 1] -= share / 2;
            weights[s + 1] -= share / 2;
        }
        return contrast(weights);
    }
}
