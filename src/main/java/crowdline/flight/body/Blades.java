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
    /** The share to round the corner towards so that the rounding leaves the pull at rest itself alone. */
    final double corner;

    Blades(double atRest, double idleDrag) {
        this.atRest = atRest;
        this.idleDrag = idleDrag;
        // What in-flight efficiency alone would give at rest, of the ideal.
        double unbound = Math.cbrt(Propeller.IN_FLIGHT * Propeller.IN_FLIGHT);
        corner = Math.pow(Math.pow(atRest, -8) - Math.pow(unbound, -8), -1.0 / 8);
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
