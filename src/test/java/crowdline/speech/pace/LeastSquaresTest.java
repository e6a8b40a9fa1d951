package crowdline.speech.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Certified values: NIST Statistical Reference Datasets, linear regression (Norris, NoInt1, NoInt2, Longley). */
class LeastSquaresTest {

    /** Norris.dat, y and x. */
    private static final double[][] NORRIS = {
        {0.1, 0.2}, {338.8, 337.4}, {118.1, 118.2}, {888.0, 884.6}, {9.2, 10.1}, {228.1, 226.5},
        {668.5, 666.3}, {998.5, 996.3}, {449.1, 448.6}, {778.9, 777.0}, {559.2, 558.2}, {0.3, 0.4},
        {0.1, 0.6}, {778.1, 775.5}, {668.8, 666.9}, {339.3, 338.0}, {448.9, 447.5}, {10.8, 11.6},
        {557.7, 556.0}, {228.3, 228.1}, {998.0, 995.8}, {888.8, 887.6}, {119.6, 120.2}, {0.3, 0.3},
        {0.6, 0.3}, {557.6, 556.8}, {339.3, 339.1}, {888.0, 887.2}, {998.5, 999.0}, {778.9, 779.0},
        {10.2, 11.1}, {117.6, 118.3}, {228.9, 229.2}, {668.4, 669.1}, {449.2, 448.9}, {0.2, 0.5}
    };

    /** Longley.dat, y and six x (typed from memory; the certified values below would not come out of a wrong digit). */
    private static final double[][] LONGLEY = {
        {60323, 83.0, 234289, 2356, 1590, 107608, 1947},
        {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
        {60171, 88.2, 258054, 3682, 1616, 109773, 1949},
        {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
        {63221, 96.2, 328975, 2099, 3099, 112075, 1951},
        {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
        {64989, 99.0, 365385, 1870, 3547, 115094, 1953},
        {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
        {66019, 101.2, 397469, 2904, 3048, 117388, 1955},
        {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
        {68169, 108.4, 442769, 2936, 2798, 120445, 1957},
        {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
        {68655, 112.6, 482704, 3813, 2552, 123366, 1959},
        {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
        {69331, 115.7, 518173, 4806, 2572, 127852, 1961},
        {70551, 116.9, 554894, 4007, 2827, 130081, 1962}
    };

    private static double[] withIntercept(double[][] data) {
        return LeastSquares.solve(
                rowsWithIntercept(data),
                Arrays.stream(data).mapToDouble(d -> d[0]).toArray());
    }

    private static double[][] rowsWithIntercept(double[][] data) {
        return Arrays.stream(data)
                .map(d -> {
                    double[] row = d.clone();
                    row[0] = 1;
                    return row;
                })
                .toArray(double[][]::new);
    }

    private static double squaredError(double[][] rows, double[] targets, double[] fit) {
        double sum = 0;
        for (int i = 0; i < rows.length; i++) {
            double error = -targets[i];
            for (int j = 0; j < fit.length; j++) {
                error += fit[j] * rows[i][j];
            }
            sum += error * error;
        }
        return sum;
    }

    private static Offset<Double> relative(double certified, double share) {
        return within(Math.abs(certified) * share);
    }

    @Test
    void norrisAsCertified() {
        double[] fit = withIntercept(NORRIS);
        assertThat(fit[0]).isCloseTo(-0.262323073774029, within(1e-11));
        assertThat(fit[1]).isCloseTo(1.00211681802045, within(1e-13));
        double[] y = Arrays.stream(NORRIS).mapToDouble(d -> d[0]).toArray();
        assertThat(squaredError(rowsWithIntercept(NORRIS), y, fit) / 34).isCloseTo(0.782864662630069, within(1e-11));
    }

    @Test
    void firstNoInterceptSetAsCertified() {
        double[][] rows = new double[11][1];
        double[] targets = new double[11];
        for (int i = 0; i < 11; i++) {
            rows[i][0] = 60 + i;
            targets[i] = 130 + i;
        }
        double[] fit = LeastSquares.solve(rows, targets);
        assertThat(fit[0]).isCloseTo(2.07438016528926, within(1e-13));
        assertThat(squaredError(rows, targets, fit) / 10).isCloseTo(12.7272727272727, within(1e-11));
    }

    @Test
    void secondNoInterceptSetAsCertified() {
        double[][] rows = {{4}, {5}, {6}};
        double[] targets = {3, 4, 4};
        double[] fit = LeastSquares.solve(rows, targets);
        assertThat(fit[0]).isCloseTo(0.727272727272727, within(1e-14));
        assertThat(squaredError(rows, targets, fit)).isCloseTo(0.272727272727273, within(1e-14));
    }

    @Test
    void longleyAsCertifiedInSpiteOfItsNearCollinearColumns() {
        double[] fit = withIntercept(LONGLEY);
        double[] certified = {
            -3482258.63459582,
            15.0618722713733,
            -0.358191792925910e-01,
            -2.02022980381683,
            -1.03322686717359,
            -0.511041056535807e-01,
            1829.15146461355
        };
        for (int i = 0; i < certified.length; i++) {
            assertThat(fit[i]).isCloseTo(certified[i], relative(certified[i], 1e-7));
        }
    }

    @Test
    void columnsThatRepeatAnotherAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LeastSquares.solve(
                        new double[][] {{1, 2, 4}, {1, 3, 6}, {1, 5, 10}, {1, 9, 18}}, new double[] {1, 2, 3, 4}))
                .withMessage("column 2 of the fit cannot be told apart from the others");
    }

    @Test
    void asManyRowsAsColumnsAreMetExactly() {
        double[] fit = LeastSquares.solve(new double[][] {{1, 2}, {3, 4}}, new double[] {5, 11});
        assertThat(fit[0]).isCloseTo(1, within(1e-12));
        assertThat(fit[1]).isCloseTo(2, within(1e-12));
    }

    @Test
    void columnOfSmallNumbersIsToldApartAsWell() {
        double[] fit = LeastSquares.solve(new double[][] {{1, 1e-12}, {1, 2e-12}, {1, 3e-12}}, new double[] {1, 2, 3});
        assertThat(fit[0]).isCloseTo(0, within(1e-9));
        assertThat(fit[1] / 1e12).isCloseTo(1, within(1e-9));
    }

    @Test
    void fewerRowsThanColumnsAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LeastSquares.solve(new double[][] {{1, 2}}, new double[] {1}))
                .withMessageContaining("1 rows");
    }
}
