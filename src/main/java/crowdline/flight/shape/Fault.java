package crowdline.flight.shape;

import java.util.Locale;
import java.util.function.Supplier;

/**
 * What is wrong with one way of drawing a figure. Of many that are found few are said, and putting one into words takes as
 * long as flying on.
 *
 * @param kind what would help
 * @param words the rest of a sentence that begins with the name of the figure
 */
record Fault(Kind kind, Supplier<String> words) {
    /** @param values what is put into the words, as {@link String#format} does */
    static Fault of(Kind kind, String words, Object... values) {
        return new Fault(kind, () -> String.format(Locale.UK, words, values));
    }

    String why() {
        return words.get();
    }

    enum Kind {
        /** Too little speed or lift on the way round. */
        ENERGY,
        /** Too little speed or lift where a line up is turned over. */
        OVER,
        /** More load than the airframe is given. */
        LOAD,
        /** Faster than the never-exceed speed. */
        NEVER_EXCEED,
        /** Too fast for too long: it does not slow down to the speed at which the figure goes on. */
        NEVER_SLOWS,
        /** Not a thing such an aircraft does, at any speed. */
        NEVER
    }
}
