package crowdline.paper;

import crowdline.loaded.Origin;
import crowdline.sheet.page.Sign;

/** Where a number comes from, by a word and a shape. */
final class OriginSign {
    private OriginSign() {}

    static String word(Origin origin) {
        return switch (origin) {
            case TOLD -> "told";
            case TIMED -> "timed";
            case TYPED -> "written";
            case ASSUMED -> "assumed";
        };
    }

    static Sign sign(Origin origin) {
        return switch (origin) {
            case TOLD -> Sign.DISC;
            case TIMED -> Sign.SQUARE;
            case TYPED -> Sign.RING;
            case ASSUMED -> Sign.TRIANGLE;
        };
    }

    /** What the word means, for the foot of a sheet. */
    static String about(Origin origin) {
        return switch (origin) {
            case TOLD -> "told: you said so";
            case TIMED -> "timed: from a flight that was timed";
            case TYPED -> "written: put into the show by hand";
            case ASSUMED -> "assumed: what is usual, nobody said so";
        };
    }
}
