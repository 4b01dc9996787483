package camberwell.channel;

/** Sums of the squares and products of two channels, for the line through the origin and the correlation about it. */
final class Sums {

    private double xx;
    private double xy;
    private double yy;

    /** Takes a pair; none where one of both is not a number. */
    void add(double x, double y) {
        if (!Double.isNaN(x * y)) {
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
    }

    /** Slope of y on x; 0 where x is nothing. */
    double slope() {
        return xx > 0 ? xy / xx : 0;
    }

    /** From -1 to 1; 0 where one of both is nothing. */
    double correlation() {
        return xx * yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
    }
}
