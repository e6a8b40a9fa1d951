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
        double v0 = Math.max(speedMps, 0);
        // v (V + v)² = c; Newton from above converges one-sided because the left side is convex in v.
        double c = FIGURE_OF_MERIT * powerW * share * (rhoKgM3 / RHO0) / (2 * rhoKgM3 * discM2);
        double v = Math.min(Math.cbrt(c), v0 > 0 ? c / (v0 * v0) : Double.MAX_VALUE);
        for (int i = 0; i < 12; i++) {
            double sum = v0 + v;
            double step = (v * sum * sum - c) / (sum * (sum + 2 * v));
            v -= step;
            if (Math.abs(step) < 1e-12 * v) {
                break;
            }
        }
        return 2 * rhoKgM3 * discM2 * (v0 + v) * v;
    }

    /** Torque on the airframe at a share of full power in newton metres, size only. */
    double torqueNm(double rhoKgM3, double share) {
        return powerW == 0 ? 0 : powerW * share * (rhoKgM3 / RHO0) / rotationRadPerS;
    }
}
