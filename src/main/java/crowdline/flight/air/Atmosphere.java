package crowdline.flight.air;

/** Air density by height. */
public interface Atmosphere {
    /**
     * Density of the air.
     *
     * @param zM height above the display datum in metres, from −500 to 11,000
     * @return density in kg/m³
     */
    double densityKgM3(double zM);
}
