package crowdline.list;

/** Which way the pilot turns, rolls or spins, as the pilot sees it. */
public enum Side {
    LEFT,
    RIGHT
}
