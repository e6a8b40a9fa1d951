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
    ROLLS_UPRIGHT
}
