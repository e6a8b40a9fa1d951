package crowdline.flight;

/** Conversions at the door of the prediction; all exact by definition (knot, foot: international). */
public final class Units {
    /** Standard acceleration of free fall, m/s² (ISO 80000-3). */
    public static final double G_MPS2 = 9.80665;

    private static final double MPS_PER_KT = 1852.0 / 3600.0;
    private static final double M_PER_FT = 0.3048;

    private Units() {}

    public static double mpsFromKt(double kt) {
        return kt * MPS_PER_KT;
    }

    public static double ktFromMps(double mps) {
        return mps / MPS_PER_KT;
    }

    public static double mFromFt(double ft) {
        return ft * M_PER_FT;
    }

    public static double ftFromM(double m) {
        return m / M_PER_FT;
    }
}
