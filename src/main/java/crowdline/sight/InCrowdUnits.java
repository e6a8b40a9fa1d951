package crowdline.sight;

import crowdline.measure.Units;
import crowdline.show.CrowdUnits;
import java.util.Locale;

/** Numbers in what the crowd measures in, to stand beside the knots and feet of the commentator. */
public final class InCrowdUnits {
    private InCrowdUnits() {}

    /** A speed in m/s, such as "170 mph" or "275 km/h", to the nearest five. */
    public static String speed(double mps, CrowdUnits units) {
        return units == CrowdUnits.MILES
                ? fives(Units.mphFromMps(mps)) + " mph"
                : fives(Units.kmhFromMps(mps)) + " km/h";
    }

    /** A height in metres, such as "370 m", to the nearest ten; feet for those who say feet. */
    public static String height(double m, CrowdUnits units) {
        return units == CrowdUnits.MILES ? tens(Units.ftFromM(m)) + " feet" : tens(m) + " m";
    }

    private static String fives(double value) {
        return String.format(Locale.UK, "%,d", Math.round(value / 5) * 5);
    }

    private static String tens(double value) {
        return String.format(Locale.UK, "%,d", Math.round(value / 10) * 10);
    }
}
