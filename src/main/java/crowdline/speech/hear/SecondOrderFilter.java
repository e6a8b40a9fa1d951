package crowdline.speech.hear;

/**
 * Lets high or low tones through, 3 dB down at its corner, 12 dB an octave beyond: Butterworth's of second order by the
 * bilinear transform (R. Bristow-Johnson, Cookbook formulae for audio EQ biquad filter coefficients; from memory).
 */
final class SecondOrderFilter {
    private static final double BUTTERWORTH_Q = Math.sqrt(0.5);

    private final double b0;
    private final double b1;
    private final double a1;
    private final double a2;
    private double first;
    private double second;

    private SecondOrderFilter(double b0, double b1, double a1, double a2) {
        this.b0 = b0;
        this.b1 = b1;
        this.a1 = a1;
        this.a2 = a2;
    }

    static SecondOrderFilter highPass(double cornerHz, double rateHz) {
        return of(cornerHz, rateHz, -1);
    }

    static SecondOrderFilter lowPass(double cornerHz, double rateHz) {
        return of(cornerHz, rateHz, 1);
    }

    private static SecondOrderFilter of(double cornerHz, double rateHz, int sign) {
        double turn = 2 * Math.PI * cornerHz / rateHz;
        double cos = Math.cos(turn);
        double alpha = Math.sin(turn) / (2 * BUTTERWORTH_Q);
        double a0 = 1 + alpha;
        double b = (1 - sign * cos) / a0;
        return new SecondOrderFilter(b / 2, sign * b, -2 * cos / a0, (1 - alpha) / a0);
    }

    double next(double sample) {
        double out = b0 * sample + first;
        first = b1 * sample - a1 * out + second;
        second = b0 * sample - a2 * out;
        return out;
    }
}
