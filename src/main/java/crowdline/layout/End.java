package crowdline.layout;

/** Where along the display line a figure is wanted, as the commentator sees it. */
public enum End {
    LEFT,
    CENTRE,
    RIGHT;

    /** The one that somebody flies to. */
    static End ahead(boolean toRight) {
        return toRight ? RIGHT : LEFT;
    }
}
