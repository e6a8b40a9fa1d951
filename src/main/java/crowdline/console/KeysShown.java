package crowdline.console;

/** Which sheet of keys lies over the place in front. */
public enum KeysShown {
    NONE,
    /** The keys of that place. */
    OF_THE_PLACE,
    /** The keys that work in every place. */
    EVERYWHERE;

    KeysShown next() {
        return switch (this) {
            case NONE -> OF_THE_PLACE;
            case OF_THE_PLACE -> EVERYWHERE;
            case EVERYWHERE -> NONE;
        };
    }
}
