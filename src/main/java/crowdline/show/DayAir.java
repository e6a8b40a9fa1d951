package crowdline.show;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The air of the day at the venue.
 *
 * @param qnhHpa pressure reduced to sea level, 850 to 1100
 * @param temperatureC air temperature at the datum, −60 to 60
 * @param windFromDeg true direction the wind at the ground comes from, 0 to 360
 * @param windKt wind speed at the ground, 0 to 100; at every height if {@code windsAloft} is empty
 * @param windsAloft winds higher up, from the lowest to the highest
 * @param cloudBaseFt cloud base above the datum in feet, or null if clear or unknown
 */
public record DayAir(
        double qnhHpa,
        double temperatureC,
        double windFromDeg,
        double windKt,
        List<WindAt> windsAloft,
        @Nullable Double cloudBaseFt) {

    /** Standard pressure and temperature at sea level (ISO 2533), no wind. */
    public static final DayAir STANDARD = new DayAir(1013.25, 15, 0, 0, List.of(), null);

    public DayAir {
        Quantity.QNH_HPA.must(qnhHpa);
        Quantity.TEMPERATURE_C.must(temperatureC);
        Quantity.WIND_FROM_DEG.must(windFromDeg);
        Quantity.WIND_KT.must(windKt);
        Most.WINDS_ALOFT.must(windsAloft);
        windsAloft = List.copyOf(windsAloft);
        for (int i = 1; i < windsAloft.size(); i++) {
            double below = windsAloft.get(i - 1).heightFt();
            if (windsAloft.get(i).heightFt() <= below) {
                throw new IllegalArgumentException(
                        "windsAloft has " + windsAloft.get(i).heightFt() + " ft after " + below
                                + " ft; each height must be above the one before");
            }
        }
        if (cloudBaseFt != null) {
            Quantity.CLOUD_BASE_FT.must(cloudBaseFt);
        }
    }

    /** The same as one would write it down: pressure, temperature and wind at the ground to a tenth. */
    public DayAir toTenths() {
        return new DayAir(
                tenths(qnhHpa), tenths(temperatureC), tenths(windFromDeg), tenths(windKt), windsAloft, cloudBaseFt);
    }

    private static double tenths(double value) {
        return Math.round(value * 10) / 10.0;
    }

    /** With the same wind at every height. */
    public DayAir(double qnhHpa, double temperatureC, double windFromDeg, double windKt, @Nullable Double cloudBaseFt) {
        this(qnhHpa, temperatureC, windFromDeg, windKt, List.of(), cloudBaseFt);
    }
}
