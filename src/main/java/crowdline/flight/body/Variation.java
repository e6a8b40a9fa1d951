package crowdline.flight.body;

/**
 * How one flight departs from the plan. Factors are 1 and additions 0 when it does not.
 *
 * @param mass factor on mass
 * @param power factor on power
 * @param drag factor on zero-lift drag
 * @param pull factor on how far a pull or push departs from one g; radii shrink by the same factor
 * @param rollRate factor on roll and flick rates
 * @param pause factor on lines flown for seconds and pauses between points
 * @param entryMps added to the act's entry speed, m/s
 * @param windAlongMps added to the wind along the A-axis, m/s
 * @param windAwayMps added to the wind along the B-axis, m/s
 */
public record Variation(
        double mass,
        double power,
        double drag,
        double pull,
        double rollRate,
        double pause,
        double entryMps,
        double windAlongMps,
        double windAwayMps) {

    /** As planned. */
    public static final Variation NONE = new Variation(1, 1, 1, 1, 1, 1, 0, 0, 0);

    public Variation {
        if (!(mass > 0 && power >= 0 && drag > 0 && pull > 0 && rollRate > 0 && pause >= 0)) {
            throw new IllegalArgumentException("factors must be above 0, not " + mass + ", " + power + ", " + drag
                    + ", " + pull + ", " + rollRate + ", " + pause);
        }
    }
}
