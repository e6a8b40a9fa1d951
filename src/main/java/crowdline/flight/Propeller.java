package crowdline.flight;

/**
 * Thrust from momentum theory: shaft power times a figure of merit accelerates the air through the disc.
 *
 * <p>P·f = T (V + v) and T = 2 ρ A (V + v) v with the induced speed v (Rankine–Froude). Finite at rest, where it gives
 * T³ = 2 ρ A (P f)². Power falls in proportion to density, as an unsupercharged engine's does to first order. The figure
 * of merit stands for what real propellers lose in twist and drag; 0.80 is the average the Pilot's Handbook of
 * Aeronautical Knowledge (FAA-H-8083-25C, p. 5-28) gives for thrust over absorbed power.
 *
 * @param powerW shaft power at full throttle in standard sea-level air, W; 0 for a glider
 * @param discM2 area of the propeller disc, m²
 * @param rotationRadPerS speed of rotation at full throttle, rad/s
 * @param clockwise true if it turns clockwise seen from the cockpit
 */
record Propeller(double powerW, double discM2, double rotationRadPerS, boolean clockwise) {
    /** Useful share of shaft power. */
    static final double FIGURE_OF_MERIT = 0.80;

    private static final double RHO0 = 1.225;

    /**
     * Thrust in newtons.
     *
     * @param speedMps airspeed along the nose, m/s; when sliding backwards the thrust at rest is used
     * @param rhoKgM3 air density
     * @param share of full power, 0 to 1
     */
    double thrustN(double speedMps, double rhoKgM3, double share) {
        if (powerW == 0 || share == 0) {
            return 0;
        }
        double v = Math.max(speedMps, 0);
        // With w = V + v the two equations are w³ − V w² = c, which has one root above 0: Cardano, with w = u + V/3 + …
        double c = FIGURE_OF_MERIT * powerW * share / (2 * RHO0 * discM2);
        double third = v / 3;
        double cube = third * third * third;
        double u = Math.cbrt(cube + c / 2 + Math.sqrt(c * (c / 4 + cube)));
        double throughDiscMps = third + u + third * third / u;
        return FIGURE_OF_MERIT * powerW * share * (rhoKgM3 / RHO0) / throughDiscMps;
    }

    /** Torque on the airframe at a share of full power in newton metres, size only. */
    double torqueNm(double rhoKgM3, double share) {
        return powerW == 0 ? 0 : powerW * share * (rhoKgM3 / RHO0) / rotationRadPerS;
    }
}
