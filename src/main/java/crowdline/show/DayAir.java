package crowdline.show;

import org.jspecify.annotations.Nullable;

/**
 * The air of the day at the venue.
 *
 * @param qnhHpa pressure reduced to sea level, 850 to 1100
 * @param temperatureC air temperature at the datum, −60 to 60
 * @param windFromDeg true direction the wind comes from, 0 to 360
 * @param windKt wind speed, 0 to 100
 * @param cloudBaseFt cloud base above the datum in feet, or null if clear or unknown
 */
public record DayAir(
        double qnhHpa,
        double temperatureC,
        double windFromDeg,
        double windKt,
        @Nullable Double cloudBaseFt) {

    /** Standard pressure and temperature at sea level (ISO 2533), no wind. */
    public static final DayAir STANDARD = new DayAir(1013.25, 15, 0, 0, null);

    public DayAir {
        Must.beWithin("qnhHpa", qnhHpa, 850, 1100);
        Must.beWithin("temperatureC", temperatureC, -60, 60);
        Must.beWithin("windFromDeg", windFromDeg, 0, 360);
        Must.beWithin("windKt", windKt, 0, 100);
        if (cloudBaseFt != null) {
            Must.beAtLeast("cloudBaseFt", cloudBaseFt, 0);
        }
    }
}
