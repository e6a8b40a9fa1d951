package crowdline.measure;

/** The band that eight of ten values lie in, from quantile 0.1 to quantile 0.9: the only one the program shows. */
public final class EightInTen {
    /** How far each end lies from the middle of a normal distribution, standard deviations: its quantile 0.9. */
    public static final double HALF_WIDTH = 1.2815515655446004;

    private EightInTen() {}
}
