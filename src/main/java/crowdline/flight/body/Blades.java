package crowdline.flight.body;

import crowdline.show.aircraft.Engine.PropellerType;

/**
 * What a propeller gives at rest and how it drags at idle, by how its blades are made.
 *
 * <p>Pull at rest, as a share of the ideal, is judgement from measured pulls and from thrust and power coefficients at rest: a
 * direct-drive cruise propeller pulled 0.32 to 0.34 (lancaironline, message 44243), two-blade fixed ones compute to 0.39 and
 * 0.50 and a variable one to 0.37 to 0.60 by its pitch (JSBSim-Team/jsbsim, engine tables), small geared ones pulled 0.73 and
 * more (alltrikes.com, page 10317).
 *
 * <p>Drag at idle is a coefficient on the disc. Where CP is 0 in the tables of JSBSim-Team/jsbsim it is 0.093 and 0.119 in fine
 * pitch and 0.022 and 0.026 in coarse; the handbook glides of a four-seat trainer with a fixed propeller give 0.09 to 0.12, and
 * those of a turbine trainer, windmilling and feathered, about 0.20. None is above 0.4, which is no propeller's.
 */
enum Blades {
    COARSE(0.40, 0.05),
    FINE(0.55, 0.10),
    VARIABLE(0.65, 0.12),
    GEARED(0.75, 0.10),
    TURBINE(0.65, 0.20);

    /** Pull at rest as a share of the ideal. */
    final double atRest;
    /** Drag coefficient on the disc at idle. */
    final double idleDrag;

    @SuppressWarnings("ImmutableEnumChecker") // never written once it is made
    private final PullCurve pull;

    Blades(double atRest, double idleDrag) {
        this.atRest = atRest;
        this.idleDrag = idleDrag;
        // What in-flight efficiency alone would give at rest, of the ideal.
        double unbound = Math.cbrt(Propeller.IN_FLIGHT * Propeller.IN_FLIGHT);
        // Rounding the corner towards this leaves the pull at rest itself alone.
        double corner = Math.pow(Math.pow(atRest, -8) - Math.pow(unbound, -8), -1.0 / 8);
        pull = new PullCurve(x -> {
            double inFlight = unbound / through(x);
            return inFlight / Math.pow(1 + Math.pow(inFlight / corner, 8), 1.0 / 8);
        });
    }

    /**
     * Pull at full power as a share of what an ideal disc gives at rest.
     *
     * @param speeds airspeed, in those at which the disc draws the air in at rest, 0 or above
     */
    double pull(double speeds) {
        return pull.at(speeds);
    }

    /** How fast the air goes through the disc: w³ − x w² = 1 has one root above 0, by Cardano, with w = u + x/3 + … */
    private static double through(double x) {
        double third = x / 3;
        double cube = third * third * third;
        double u = Math.cbrt(cube + 0.5 + Math.sqrt(0.25 + cube));
        return third + u + third * third / u;
    }

    static Blades of(PropellerType type) {
        return switch (type) {
            case FIXED_CRUISE -> COARSE;
            case FIXED_CLIMB -> FINE;
            case CONSTANT_SPEED -> VARIABLE;
            case GEARED -> GEARED;
            case TURBINE -> TURBINE;
        };
    }
}
