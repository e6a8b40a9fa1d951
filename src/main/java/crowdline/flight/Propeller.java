package crowdline.flight;

import crowdline.show.Engine;
import crowdline.show.Engine.PropellerType;

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
 * @param type how its blades are made
 */
record Propeller(double powerW, double discM2, double rotationRadPerS, boolean clockwise, PropellerType type)
        implements Drive {
    /** Useful share of shaft power in flight. */
    static final double IN_FLIGHT = 0.83;

    private static final double RHO0 = 1.225;
    /** What in-flight efficiency alone would give at rest, of the ideal: f to the power 2/3. */
    private static final double UNBOUND = Math.cbrt(IN_FLIGHT * IN_FLIGHT);

    static Propeller of(Engine.Propeller propeller, double ofPower) {
        double radiusM = propeller.diameterM() / 2;
        return new Propeller(
                propeller.powerKw() * 1000 * ofPower,
                Math.PI * radiusM * radiusM,
                propeller.rpm() * 2 * Math.PI / 60,
                propeller.turns() == Engine.Turns.CLOCKWISE,
                propeller.type());
    }

    /**
     * Thrust at rest as a share of the ideal. Judgement from measured pulls and from thrust and power coefficients at rest:
     * a direct-drive cruise propeller pulled 0.32 to 0.34 (lancaironline, message 44243), two-blade fixed ones compute to
     * 0.39 and 0.50 and a variable one to 0.37 to 0.60 by its pitch (JSBSim-Team/jsbsim, engine tables), small geared ones
     * pulled 0.73 and more (alltrikes.com, page 10317).
     */
    static double atRest(PropellerType type) {
        return switch (type) {
            case FIXED_CRUISE -> 0.40;
            case FIXED_CLIMB -> 0.55;
            case CONSTANT_SPEED, TURBINE -> 0.65;
            case GEARED -> 0.75;
        };
    }

    /**
     * Drag coefficient on the disc with the power off. Where CP is 0 in the tables of JSBSim-Team/jsbsim it is 0.093 and
     * 0.119 in fine pitch and 0.022 and 0.026 in coarse; the handbook glides of a four-seat trainer with a fixed propeller
     * give 0.09 to 0.12, and those of a turbine trainer, windmilling and feathered, about 0.20. None is above 0.4, which
     * is no propeller's.
     */
    static double idleDrag(PropellerType type) {
        return switch (type) {
            case FIXED_CRUISE -> 0.05;
            case FIXED_CLIMB, GEARED -> 0.10;
            case CONSTANT_SPEED -> 0.12;
            case TURBINE -> 0.20;
        };
    }

    /** When sliding backwards it pulls as at rest. */
    @Override
    public double thrustN(double speedMps, double rhoKgM3, double share) {
        double drag = (1 - share) * idleDrag(type) * 0.5 * rhoKgM3 * discM2 * speedMps * Math.abs(speedMps);
        return (share > 0 ? pullN(Math.max(speedMps, 0), share) * (rhoKgM3 / RHO0) : 0) - drag;
    }

    /** The smaller of what it gives in flight and at rest, with the corner between them rounded; at sea level. */
    private double pullN(double v, double share) {
        double power = powerW * share;
        // With w = V + v the two equations are w³ − V w² = c, which has one root above 0: Cardano, with w = u + V/3 + …
        double c = IN_FLIGHT * power / (2 * RHO0 * discM2);
        double third = v / 3;
        double cube = third * third * third;
        double u = Math.cbrt(cube + c / 2 + Math.sqrt(c * (c / 4 + cube)));
        double inFlight = IN_FLIGHT * power / (third + u + third * third / u);
        double most = corner(atRest(type)) * Math.cbrt(2 * RHO0 * discM2 * power * power);
        return inFlight / Math.sqrt(Math.sqrt(Math.sqrt(1 + eighth(inFlight / most))));
    }

    /** The share to round towards so that the rounding leaves the thrust at rest itself alone. */
    private static double corner(double atRest) {
        return 1 / Math.sqrt(Math.sqrt(Math.sqrt(eighth(1 / atRest) - eighth(1 / UNBOUND))));
    }

    private static double eighth(double x) {
        double fourth = x * x * x * x;
        return fourth * fourth;
    }

    /** The reaction to a propeller turning clockwise as the pilot sees it rolls the aircraft to the left. */
    @Override
    public double torqueNm(double rhoKgM3, double share) {
        return (clockwise ? -1 : 1) * powerW * share * (rhoKgM3 / RHO0) / rotationRadPerS;
    }
}
