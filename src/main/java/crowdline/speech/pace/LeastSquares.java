package crowdline.speech.pace;

/**
 * Linear least squares by Householder reflections (Golub 1965, "Numerical methods for solving linear least squares
 * problems", Numerische Mathematik 7). Small and dense: tens of rows, a handful of columns.
 */
final class LeastSquares {

    /** A column whose own part is smaller than this share of it is taken to be made of the others. Tuned: 1e-10. */
    private static final double SEPARABLE = 1e-10;

    private LeastSquares() {}

    /**
     * The coefficients, one for each column, that minimise the sum of squares of {@code rows * coefficients - targets}.
     *
     * @param rows at least as many as columns, all equally long; not changed
     * @param targets one for each row; not changed
     * @throws IllegalArgumentException if there are too few rows, or one column is made of the others
     */
    static double[] solve(double[][] rows, double[] targets) {
        int n = rows.length;
        int p = n == 0 ? 0 : rows[0].length;
        if (p == 0 || n < p || targets.length != n) {
            throw new IllegalArgumentException("a fit of " + p + " values needs at least as many observations, but got "
                    + n + " rows and " + targets.length + " targets");
        }
        double[][] r = new double[n][];
        double[] scale = new double[p];
        for (int i = 0; i < n; i++) {
            r[i] = rows[i].clone();
            for (int j = 0; j < p; j++) {
                scale[j] = Math.hypot(scale[j], r[i][j]);
            }
        }
        double[] y = targets.clone();
        double[] diagonal = new double[p];
        for (int j = 0; j < p; j++) {
            diagonal[j] = reflect(r, y, j);
            if (!(Math.abs(diagonal[j]) > SEPARABLE * scale[j])) {
                throw new IllegalArgumentException("column " + j + " of the fit cannot be told apart from the others");
            }
        }
        return backSubstitute(r, y, diagonal);
    }

    private static double reflect(double[][] r, double[] y, int j) {
        int n = r.length;
        double norm = 0;
        for (int i = j; i < n; i++) {
            norm = Math.hypot(norm, r[i][j]);
        }
        if (norm == 0) {
            return 0;
        }
        double diagonal = r[j][j] > 0 ? -norm : norm;
        r[j][j] -= diagonal;
        double half = -diagonal * r[j][j];
        for (int k = j + 1; k < r[j].length; k++) {
            double dot = 0;
            for (int i = j; i < n; i++) {
                dot += r[i][j] * r[i][k];
            }
            for (int i = j; i < n; i++) {
                r[i][k] -= dot / half * r[i][j];
            }
        }
        double dot = 0;
        for (int i = j; i < n; i++) {
            dot += r[i][j] * y[i];
        }
        for (int i = j; i < n; i++) {
            y[i] -= dot / half * r[i][j];
        }
        return diagonal;
    }

    private static double[] backSubstitute(double[][] r, double[] y, double[] diagonal) {
        double[] x = new double[diagonal.length];
        for (int j = diagonal.length - 1; j >= 0; j--) {
            double rest = y[j];
            for (int k = j + 1; k < x.length; k++) {
                rest -= r[j][k] * x[k];
            }
            x[j] = rest / diagonal[j];
        }
        return x;
    }
}
