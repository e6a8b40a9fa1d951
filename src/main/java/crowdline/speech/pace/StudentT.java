package crowdline.speech.pace;

/** The one quantile of Student's t that an 80 % band needs. */
final class StudentT {

    private StudentT() {}

    /**
     * Quantile 0.90, by the expansion in 1/df of Abramowitz and Stegun, "Handbook of Mathematical Functions", 26.7.5.
     * Within 0.01 of the tables from 3 degrees of freedom on.
     *
     * @param df degrees of freedom, 1 or more
     */
    static double quantile90(int df) {
        double x = Pace.NORMAL_90;
        double x2 = x * x;
        double g1 = x * (x2 + 1) / 4;
        double g2 = x * ((5 * x2 + 16) * x2 + 3) / 96;
        double g3 = x * (((3 * x2 + 19) * x2 + 17) * x2 - 15) / 384;
        double g4 = x * ((((79 * x2 + 776) * x2 + 1482) * x2 - 1920) * x2 - 945) / 92160;
        return x + (g1 + (g2 + (g3 + g4 / df) / df) / df) / df;
    }
}
