package crowdline.flight;

/**
 * The wind in the display frame: where the air goes, not where it comes from.
 *
 * @param alongMps towards the commentator's right, m/s, at the reference height
 * @param awayMps away from the crowd, m/s, at the reference height
 * @param referenceM height at which the wind was given, m, above 0
 * @param exponent growth with height as (z / reference)^exponent; 0 for a steady wind
 */
public record Wind(double alongMps, double awayMps, double referenceM, double exponent) {
    public static final Wind CALM = new Wind(0, 0, 10, 0);

    public Wind {
        if (!(Double.isFinite(alongMps) && Double.isFinite(awayMps) && referenceM > 0 && exponent >= 0)) {
            throw new IllegalArgumentException("the wind must be finite, its reference height above 0 and its exponent"
                    + " 0 or more, not " + alongMps + ", " + awayMps + ", " + referenceM + ", " + exponent);
        }
    }

    /**
     * A steady wind.
     *
     * @param fromDeg true direction it comes from
     * @param kt speed in knots
     * @param axisBearingDeg true bearing of the A-axis towards the commentator's right
     */
    public static Wind steady(double fromDeg, double kt, double axisBearingDeg) {
        double towardsRad = Math.toRadians(fromDeg + 180 - axisBearingDeg);
        double mps = Units.mpsFromKt(kt);
        // Bearings run clockwise; away from the crowd is 90 degrees to the left of the A-axis.
        return new Wind(mps * Math.cos(towardsRad), -mps * Math.sin(towardsRad), 10, 0);
    }

    /** Wind at a height over wind at the reference height. */
    double share(double zM) {
        return exponent == 0 ? 1 : Math.pow(Math.max(zM, 1) / referenceM, exponent);
    }

    /** Growth of {@link #share} with height, 1/m. */
    double shareSlope(double zM) {
        return exponent == 0 || zM < 1 ? 0 : exponent * share(zM) / zM;
    }
}
