package crowdline.flight.air;

import crowdline.measure.Units;

/**
 * The ISO 2533 / ICAO standard atmosphere below 11 km, shifted by the day's pressure and temperature.
 *
 * <p>Heights are geopotential; the difference to geometric height is 0.16 m at 1,000 m and is ignored. The day's
 * pressure is found from QNH as an altimeter does, the day's temperature departs from the standard by the same amount
 * at every height. Error against the published tables: below their last printed digit.
 */
public final class StandardAtmosphere implements Atmosphere {
    /** Sea-level temperature, K (ISO 2533). */
    static final double T0_K = 288.15;
    /** Sea-level pressure, Pa (ISO 2533). */
    static final double P0_PA = 101_325;
    /** Specific gas constant of dry air, J/(kg K) (ISO 2533). */
    static final double R_J_PER_KG_K = 287.05287;
    /** Fall of temperature with height, K/m (ISO 2533). */
    static final double LAPSE_K_PER_M = 0.0065;

    private static final double EXPONENT = Units.G_MPS2 / (R_J_PER_KG_K * LAPSE_K_PER_M);

    private final double pressureHeightAtDatumM;
    private final double departureK;

    /** Sea level on a standard day. */
    public StandardAtmosphere() {
        this(1013.25, 15, 0);
    }

    /**
     * @param qnhHpa pressure reduced to sea level, hPa
     * @param temperatureC air temperature at the datum, °C
     * @param elevationM elevation of the datum above mean sea level, m
     */
    public StandardAtmosphere(double qnhHpa, double temperatureC, double elevationM) {
        if (!(qnhHpa >= 850 && qnhHpa <= 1100)) {
            throw new IllegalArgumentException("QNH is " + qnhHpa + " hPa; it must be from 850 to 1100");
        }
        if (!(temperatureC >= -60 && temperatureC <= 60)) {
            throw new IllegalArgumentException("the temperature is " + temperatureC + " °C; it must be from -60 to 60");
        }
        pressureHeightAtDatumM = elevationM + pressureHeightM(qnhHpa * 100);
        departureK = temperatureC + 273.15 - standardTemperatureK(pressureHeightAtDatumM);
    }

    @Override
    public double densityKgM3(double zM) {
        double heightM = pressureHeightAtDatumM + zM;
        return pressurePa(heightM) / (R_J_PER_KG_K * (standardTemperatureK(heightM) + departureK));
    }

    /** Height in the standard atmosphere at which the datum's pressure is found, metres. */
    public double pressureHeightAtDatumM() {
        return pressureHeightAtDatumM;
    }

    static double standardTemperatureK(double heightM) {
        return T0_K - LAPSE_K_PER_M * heightM;
    }

    static double pressurePa(double heightM) {
        return P0_PA * Math.pow(standardTemperatureK(heightM) / T0_K, EXPONENT);
    }

    private static double pressureHeightM(double pressurePa) {
        return T0_K / LAPSE_K_PER_M * (1 - Math.pow(pressurePa / P0_PA, 1 / EXPONENT));
    }
}
