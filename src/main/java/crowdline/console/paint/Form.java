package crowdline.console.paint;

/** The shapes that stand beside a word of state, so that no state is told by colour alone. */
public enum Form {
    /** All is as it should be. */
    DISC,
    /** Waiting, or nothing known. */
    RING,
    /** Ahead of the plan. */
    UP,
    /** Behind the plan. */
    DOWN,
    /** Something to look at. */
    DIAMOND,
    /** Stopped on purpose. */
    BARS,
    /** Off the plan, gone, not allowed. */
    CROSS,
    /** Two have changed places. */
    SWAP,
    /** Act now. */
    STOP,
    /** Moved by hand. */
    SQUARE,
    /** Moved by the clock. */
    CLOCK,
    /** Moved by the aircraft. */
    AEROPLANE,
    /** Sure. */
    THREE_OF_THREE,
    /** Fairly sure. */
    TWO_OF_THREE,
    /** Not sure. */
    ONE_OF_THREE
}
