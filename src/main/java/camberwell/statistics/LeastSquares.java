package camberwell.statistics;

import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;

/**
 * A linear model fitted by least squares.
 *
 * @param coefficients one for each column of the design
 * @param covariance of the coefficients per unit of residual variance: (X'X)⁻¹
 * @param residuals of the observations, in their order
 * @param degreesOfFreedom observations less coefficients; at least 1
 */
record LeastSquares(double[] coefficients, double[][] covariance, double[] residuals, int degreesOfFreedom) {

    private static final double SINGULAR = 1e-10;

    /**
     * Fits y = Xb by Householder's QR decomposition, with one step of refinement.
     *
     * @param design X, row by row
     * @param observed y
     * @throws IllegalArgumentException if there are no more rows than columns, or the columns are not independent
     */
    static LeastSquares fit(double[][] design, double[] observed) {
        int rows = design.length;
        int columns = design[0].length;
        if (rows <= columns) {
            throw new IllegalArgumentException(rows + " observations for " + columns + " coefficients");
        }
        RealMatrix x = new Array2DRowRealMatrix(design, false);
        QRDecomposition qr = new QRDecomposition(x, SINGULAR);
        DecompositionSolver solver = qr.getSolver();
        try {
            double[] b = solver.solve(new ArrayRealVector(observed, false)).toArray();
            double[] correction = solver.solve(new ArrayRealVector(residuals(x, b, observed), false)).toArray();
            for (int i = 0; i < columns; i++) {
                b[i] += correction[i];
            }
            RealMatrix r = qr.getR().getSubMatrix(0, columns - 1, 0, columns - 1);
            RealMatrix inverse = new QRDecomposition(r, 0).getSolver().getInverse();
            return new LeastSquares(b, inverse.multiplyTransposed(inverse).getData(), residuals(x, b, observed),
                    rows - columns);
        } catch (MathIllegalArgumentException e) {
            throw new IllegalArgumentException("the columns of the design are not independent", e);
        }
    }

    private static double[] residuals(RealMatrix x, double[] b, double[] observed) {
        double[] fitted = x.operate(b);
        double[] residuals = new double[observed.length];
        for (int i = 0; i < observed.length; i++) {
            residuals[i] = observed[i] - fitted[i];
        }
        return residuals;
    }

    /** Residual variance, in the square of the unit of the observations. */
    double variance() {
        double sum = 0;
        for (double residual : residuals) {
            sum += residual * residual;
        }
        return sum / degreesOfFreedom;
    }

    /** A weighted sum of the coefficients, with its standard error. */
    Difference contrast(double... weights) {
        double estimate = 0;
        double variance = 0;
        for (int i = 0; i < weights.length; i++) {
            estimate += weights[i] * coefficients[i];
            for (int j = 0; j < weights.length; j++) {
                variance += weights[i] * weights[j] * covariance[i][j];
            }
        }
        return new Difference(estimate, Math.sqrt(variance * variance()), degreesOfFreedom);
    }
}
