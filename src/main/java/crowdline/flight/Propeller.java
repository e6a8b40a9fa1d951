package crowdline.flight;

import crowdline.show.Engine;

/**
 * Thrust from momentum theory: shaft power times a figure of merit accelerates the air through the disc.
 *
 * <p>P·f = T (V + v) and T = 2 ρ A (V + v) v with the induced speed v (Rankine–Froude). Finite at rest, where it gives
 * T³ = 2 ρ A (P f)². Power falls in proportion to density, as an unsupercharged engine's does to first order. The figure
 * of merit stands for what real propellers lose in twist and drag; 0.80 is the average the Pilot's Handbook of
 * Aeronautical Knowledge (FAA-H-8083-25C, p. 5-28) gives for thrust over absorbed power.
 *
 * @param powerW shaft power at full throttle in standard sea-level air, W
 * @param discM2 area of the propeller disc, m²
 * @param rotationRadPerS speed of rotation at full throttle, rad/s
 * @param clockwise true if it turns clockwise seen from the cockpit
 */
record Propeller(double powerW, double discM2, double rotationRadPerS, boolean clockwise) implements Drive {
    /** Useful share of shaft power. */
    static final double FIGURE_OF_MERIT = 0.80;

    private static final double RHO0 = 1.225;

    static Propeller of(Engine.Propeller propeller, double ofPower) {
        double radiusM = propeller.diameterM() / 2;
        return new Propeller(
                propeller.powerKw() * 1000 * ofPower,
                Math.PI * radiusM * radiusM,
                propeller.rpm() * 2 * Math.PI / 60,
                propeller.turns() == Engine.Turns.CLOCKWISE);
    }

    /** When sliding backwards the thrust at rest is used. */
    @Override
    public double thrustN(double speedMps, double rhoKgM3, double share) {
        if (share == 0) {
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

    /** The reaction to a propeller turning clockwise as the pilot sees it rolls the aircraft to the left. */
    @Override
    public double torqueNm(double rhoKgM3, double share) {
        return (clockwise ? -1 : 1) * powerW * share * (rhoKgM3 / RHO0) / rotationRadPerS;
    }
}
