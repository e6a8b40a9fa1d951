package crowdline.list.line;

/** Where along the display line a figure is flown, as the commentator sees it. */
public enum Place {
    LEFT_END,
    CENTRE,
    RIGHT_END
}
