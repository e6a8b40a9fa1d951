package crowdline.show.figure;

/** How a spin sits. */
public enum SpinKind {
    UPRIGHT,
    INVERTED,
    FLAT,
    INVERTED_FLAT;

    public boolean isInverted() {
        return this == INVERTED || this == INVERTED_FLAT;
    }

    public boolean isFlat() {
        return this == FLAT || this == INVERTED_FLAT;
    }
}
