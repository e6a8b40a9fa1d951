package crowdline.layout;

/** What is flown between two figures, as the commentator says it. */
public enum Transit {
    RUNS_IN,
    FLIES_ON,
    CLIMBS,
    DIVES,
    SLOWS_DOWN,
    /** Back to the display line from further out, along it. */
    COMES_IN,
    TURNS_BACK,
    /** The same, pulled up into a climb that trades speed for height. */
    TURNS_UP,
    ROLLS_UPRIGHT
}
