package crowdline.measure;

/** Conversions, at the door and on the screen; all exact by definition (knot, foot, mile and pound: international). */
public final class Units {
    /** Standard acceleration of free fall, m/s² (ISO 80000-3). */
    public static final double G_MPS2 = 9.80665;

    private static final double M_PER_NAUTICAL_MILE = 1852;
    private static final double MPS_PER_KT = M_PER_NAUTICAL_MILE / 3600;
    private static final double M_PER_FT = 0.3048;
    private static final double KG_PER_LB = 0.45359237;
    private static final double M_PER_MILE = 1609.344;
    private static final double MPS_PER_KMH = 1 / 3.6;
    /** A horsepower is 550 ft·lbf/s. */
    private static final double KW_PER_HP = 550 * KG_PER_LB * G_MPS2 * M_PER_FT / 1000;

    private Units() {}

    public static double nauticalMilesFromM(double m) {
        return m / M_PER_NAUTICAL_MILE;
    }

    public static double mpsFromKt(double kt) {
        return kt * MPS_PER_KT;
    }

    public static double ktFromMps(double mps) {
        return mps / MPS_PER_KT;
    }

    public static double mpsFromKmh(double kmh) {
        return kmh * MPS_PER_KMH;
    }

    public static double kgFromLb(double lb) {
        return lb * KG_PER_LB;
    }

    public static double kwFromHp(double hp) {
        return hp * KW_PER_HP;
    }

    public static double hpFromKw(double kw) {
        return kw / KW_PER_HP;
    }

    public static double kmhFromMps(double mps) {
        return mps / MPS_PER_KMH;
    }

    /** Statute miles an hour. */
    public static double mphFromMps(double mps) {
        return mps * 3600 / M_PER_MILE;
    }

    public static double mFromFt(double ft) {
        return ft * M_PER_FT;
    }

    public static double ftFromM(double m) {
        return m / M_PER_FT;
    }

    /** Statute miles, as people on the ground mean them. */
    public static double milesFromM(double m) {
        return m / M_PER_MILE;
    }
}
