package crowdline.flight.body;

import crowdline.show.aircraft.Engine;

/**
 * Thrust of jets from their static thrust at sea level, with Mach number and density.
 *
 * <p>Static dry thrust goes with density, and both lapses follow the generic turbine tables of JSBSim-Team/jsbsim
 * (commit 0b688c801c52, engine data files; a program's output, no measurement): (1 − 0.386 M + 0.507 M²) σ fits the dry
 * one within 1 % at sea level and 3 % at 10,000 ft up to Mach 0.6, and falls short by 12 % at Mach 1 and 30,000 ft;
 * (1 − 0.255 M + 0.308 M²) σ^0.66 fits the one with reheat. Idle is 5 % of the dry static thrust at rest and falls below 0 before Mach 0.6, where the intake drags: between the
 * tables of a trainer's and of a fighter's engine.
 *
 * @param dryN static thrust without reheat at sea level, N
 * @param fullN static thrust with all it has at sea level, N
 * @param reheat whether full power is with reheat
 */
record Jet(double dryN, double fullN, boolean reheat) implements Drive {
    private static final double RHO0 = 1.225;
    private static final double SOUND_MPS = 340.294;
    /** In standard air temperature goes with density to the power 1 / 4.25588 (ISO 2533), and speed of sound with its root. */
    private static final double SOUND_WITH_DENSITY = 0.5 / 4.25588;

    private static final double REHEAT_WITH_DENSITY = 0.66;
    private static final double IDLE = 0.05;
    private static final double IDLE_FALL = 0.28;

    static Jet of(Engine.Jet jet, double ofPower) {
        return new Jet(1000 * jet.thrustKn() * ofPower, 1000 * jet.mostKn() * ofPower, jet.reheatKn() != null);
    }

    @Override
    public double thrustN(double speedMps, double rhoKgM3, double share) {
        double sigma = rhoKgM3 / RHO0;
        double mach = Math.max(speedMps, 0) / (SOUND_MPS * Math.pow(sigma, SOUND_WITH_DENSITY));
        double idle = dryN * sigma * (IDLE - IDLE_FALL * mach * mach);
        double full = reheat
                ? fullN * Math.pow(sigma, REHEAT_WITH_DENSITY) * (1 - 0.255 * mach + 0.308 * mach * mach)
                : dryN * sigma * (1 - 0.386 * mach + 0.507 * mach * mach);
        return idle + share * (full - idle);
    }

    @Override
    public double torqueNm(double rhoKgM3, double share) {
        return 0;
    }
}
