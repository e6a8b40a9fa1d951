package crowdline.list.line;

/** Which way the pilot turns, rolls or spins, as the pilot sees it. */
public enum Side {
    LEFT,
    RIGHT
}
