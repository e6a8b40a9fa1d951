package crowdline.list.draft;

/** A thing that a list can say of a figure. */
public enum Detail {
    COUNT("count"),
    PLACE("place"),
    SIDE("side"),
    HEADING("heading"),
    HEIGHT_FT("height"),
    /** Of the figure, which is no height it begins at. */
    TOP_FT("top"),
    ENTRY_KT("speed"),
    SECONDS("time"),
    SMOKE("smoke");

    private final String called;

    Detail(String called) {
        this.called = called;
    }

    public String called() {
        return called;
    }
}
