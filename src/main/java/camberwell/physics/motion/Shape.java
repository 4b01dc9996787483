package camberwell.physics.motion;

/**
 * The shape of a Magic Formula curve, {@code sin(C atan(x - E (x - atan x)))}, tabulated: a cubic through values and
 * slopes on an even grid is within 1e-8 of the formula and costs a fifth of it.
 */
final class Shape {

    private static final int A_UNIT = 64;
    private static final double REACH = 24.0;

    private final double c;
    private final double e;
    private final double peak;
    private final double[] value = new double[(int) REACH * A_UNIT + 2];
    private final double[] slope = new double[value.length];

    Shape(double c, double e) {
        this.c = c;
        this.e = e;
        int highest = 0;
        for (int i = 0; i < value.length; i++) {
            double x = (double) i / A_UNIT;
            double u = x - e * (x - Math.atan(x));
            double inner = 1.0 - e + e / (1.0 + x * x);
            value[i] = formula(x);
            slope[i] = Math.cos(c * Math.atan(u)) * c / (1.0 + u * u) * inner / A_UNIT;
            highest = value[i] > value[highest] ? i : highest;
        }
        this.peak = (double) highest / A_UNIT;
    }

    /** Whether it is the shape of those factors. */
    boolean is(double otherC, double otherE) {
        return c == otherC && e == otherE;
    }

    /** The argument at which it peaks, to the table's grid. */
    double peak() {
        return peak;
    }

    /** The shape at an argument, -1 to 1, odd. */
    double at(double x) {
        double distance = Math.abs(x);
        if (!(distance < REACH)) {
            return formula(x);
        }
        double place = distance * A_UNIT;
        int i = (int) place;
        double t = place - i;
        double from = value[i];
        double rise = value[i + 1] - from;
        double a = slope[i] - rise;
        double b = rise - slope[i + 1];
        double high = from + t * (rise + (1.0 - t) * (a * (1.0 - t) + b * t));
        return x < 0.0 ? -high : high;
    }

    private double formula(double x) {
        return Math.sin(c * Math.atan(x - e * (x - Math.atan(x))));
    }
}
