package crowdline.show.aircraft;

/** What kind of shape an aircraft has, as far as anybody sees it from a crowd line. */
public enum Outline {
    /** One pair of wings and a propeller. */
    MONOPLANE,
    /** Two pairs of wings, one above the other, and a propeller. */
    BIPLANE,
    /** Wings swept back and a pointed nose. */
    JET,
    /** Long narrow wings. */
    GLIDER,
    /** A rotor over a cabin, and a thin tail. */
    HELICOPTER,
    /** Somebody under an open parachute. */
    CANOPY,
    /** Somebody who falls, flat in the air. */
    JUMPER;

    /** What an aircraft with that engine usually looks like. */
    static Outline of(Engine engine) {
        if (engine instanceof Engine.Propeller) {
            return MONOPLANE;
        }
        return engine instanceof Engine.Jet ? JET : GLIDER;
    }
}
