package crowdline.layout;

/** Where along the display line a figure is wanted, as the commentator sees it. */
public enum End {
    LEFT,
    CENTRE,
    RIGHT
}
