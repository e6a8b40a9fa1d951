package crowdline.live.state;

/** Who speaks next, as far as keys say: by the plan, unless the turn was handed over or taken from it. */
public enum WhoseTurn {
    /** Whoever sits at the console, though the plan has the other: until something was said or left out. */
    CONSOLE,
    /** Whom the plan names. */
    BY_PLAN,
    /** The co-commentator or interpreter, until it is taken back. */
    OTHER;

    /** After a key: from the plan to the one who was asked for, and back to the plan from the other one. */
    WhoseTurn handed(boolean toOther) {
        return toOther ? (this == CONSOLE ? BY_PLAN : OTHER) : this == OTHER ? BY_PLAN : CONSOLE;
    }

    /** After something was said or left out. */
    WhoseTurn settled() {
        return this == CONSOLE ? BY_PLAN : this;
    }
}
