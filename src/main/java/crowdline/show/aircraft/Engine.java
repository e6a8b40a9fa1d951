package crowdline.show.aircraft;

import crowdline.measure.Must;
import crowdline.show.bounds.Quantity;
import org.jspecify.annotations.Nullable;

/** What pulls or pushes an airframe along. */
public sealed interface Engine {
    /** A glider's. */
    Engine NONE = new None();

    /** No engine at all. */
    record None() implements Engine {}

    /**
     * A piston engine or turbine that turns a propeller; several of each are given as one with their power together.
     *
     * @param powerKw shaft power at full throttle at sea level, above 0
     * @param diameterM propeller diameter, above 0
     * @param rpm propeller speed at full throttle, above 0
     * @param turns which way the propeller turns seen from the cockpit
     * @param type how its blades are made
     */
    record Propeller(double powerKw, double diameterM, double rpm, Turns turns, PropellerType type) implements Engine {
        public Propeller {
            Quantity.POWER_KW.must(powerKw);
            Quantity.PROPELLER_DIAMETER_M.must(diameterM);
            Quantity.PROPELLER_RPM.must(rpm);
            Must.bePositive("powerKw", powerKw);
            Must.bePositive("propellerDiameterM", diameterM);
            Must.bePositive("propellerRpm", rpm);
        }
    }

    /**
     * One or more jets, their thrust together.
     *
     * @param thrustKn static thrust at full power at sea level without reheat, kilonewtons, above 0
     * @param reheatKn the same with reheat, more than {@code thrustKn}, or null if it has none
     */
    record Jet(double thrustKn, @Nullable Double reheatKn) implements Engine {
        public Jet {
            Quantity.THRUST_KN.must(thrustKn);
            if (reheatKn != null) {
                Quantity.REHEAT_KN.must(reheatKn);
                if (reheatKn <= thrustKn) {
                    throw new IllegalArgumentException("reheatKn is " + Quantity.written(reheatKn)
                            + " and thrustKn is " + Quantity.written(thrustKn)
                            + "; reheat must give more thrust, or be left out");
                }
            }
        }

        /** Static thrust at sea level with all it has, kilonewtons. */
        public double mostKn() {
            return reheatKn == null ? thrustKn : reheatKn;
        }
    }

    /** Which way a propeller turns, seen from the cockpit. */
    enum Turns {
        CLOCKWISE,
        ANTICLOCKWISE
    }

    /** How a propeller's blades are made, which decides what it gives at rest and how it drags at idle. */
    enum PropellerType {
        /** Blades fixed at a coarse pitch, for cruising. */
        FIXED_CRUISE,
        /** Blades fixed at a fine pitch, for climbing and aerobatics. */
        FIXED_CLIMB,
        /** Blades that turn in the hub to hold the engine's speed. */
        CONSTANT_SPEED,
        /** A large, slow propeller of fine pitch behind gears. */
        GEARED,
        /** The propeller of a turbine, whose blades go flat when the power comes off. */
        TURBINE
    }
}
