package crowdline.flight.body;

import crowdline.show.aircraft.Engine;

/**
 * Thrust from momentum theory, less than ideal in flight and much less at rest, and drag when the power is off.
 *
 * <p>In flight P·f = T (V + v) and T = 2 ρ A (V + v) v with the induced speed v (Rankine–Froude) and f = 0.83: a three-blade
 * propeller computed at one point of flight has 0.832 (JSBSim-Team/jsbsim, the note in a 2.70 m propeller's file: 1200 rpm,
 * 36.01 m/s, 134.2 kW, 2737 N). At rest real propellers give a share of the ideal T³ = 2 ρ A P² that goes with how their
 * blades are made; the thrust never exceeds what it is at rest, so it is level up to the speed where the two meet, which is
 * about J = 0.6 for blades of coarse pitch and earlier for others. Power falls in proportion to density, as an
 * unsupercharged engine's does to first order.
 *
 * <p>Without power the air turns the propeller, which then drags, by its blades' pitch. In between, the drag goes as the
 * power is taken off.
 *
 * @param powerW shaft power at full throttle in standard sea-level air, W
 * @param discM2 area of the propeller disc, m²
 * @param rotationRadPerS speed of rotation at full throttle, rad/s
 * @param clockwise true if it turns clockwise seen from the cockpit
 * @param blades how they are made
 * @param idealN what an ideal disc gives at rest at full throttle and sea level, N; follows from the others
 * @param inflowMps how fast it draws the air in there, m/s; follows from the others
 */
record Propeller(
        double powerW,
        double discM2,
        double rotationRadPerS,
        boolean clockwise,
        Blades blades,
        double idealN,
        double inflowMps)
        implements Drive {
    /** Useful share of shaft power in flight. */
    static final double IN_FLIGHT = 0.83;

    private static final double RHO0 = 1.225;

    Propeller(double powerW, double discM2, double rotationRadPerS, boolean clockwise, Blades blades) {
        this(
                powerW,
                discM2,
                rotationRadPerS,
                clockwise,
                blades,
                Math.cbrt(2 * RHO0 * discM2 * powerW * powerW),
                Math.cbrt(IN_FLIGHT * powerW / (2 * RHO0 * discM2)));
    }

    static Propeller of(Engine.Propeller propeller, double ofPower) {
        double radiusM = propeller.diameterM() / 2;
        return new Propeller(
                propeller.powerKw() * 1000 * ofPower,
                Math.PI * radiusM * radiusM,
                propeller.rpm() * 2 * Math.PI / 60,
                propeller.turns() == Engine.Turns.CLOCKWISE,
                Blades.of(propeller.type()));
    }

    /** When sliding backwards it pulls as at rest. */
    @Override
    public double thrustN(double speedMps, double rhoKgM3, double share) {
        double drag = (1 - share) * blades.idleDrag * 0.5 * rhoKgM3 * discM2 * speedMps * Math.abs(speedMps);
        return (share > 0 ? pullN(Math.max(speedMps, 0), share) * (rhoKgM3 / RHO0) : 0) - drag;
    }

    /**
     * The smaller of what it gives in flight and at rest, with the corner between them rounded; at sea level. With a share of
     * the power all speeds go with its cube root, and all forces with the square of that.
     */
    private double pullN(double v, double share) {
        double speeds = share == 1 ? 1 : Math.cbrt(share);
        return idealN * speeds * speeds * blades.pull(v / (inflowMps * speeds));
    }

    /** The reaction to a propeller turning clockwise as the pilot sees it rolls the aircraft to the left. */
    @Override
    public double torqueNm(double rhoKgM3, double share) {
        return (clockwise ? -1 : 1) * powerW * share * (rhoKgM3 / RHO0) / rotationRadPerS;
    }
}
