package crowdline.show;

import crowdline.show.Placing.Heading;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a list, or a person, asked of a figure that was laid out. What is null was not asked: where the figure has it all
 * the same it is assumed.
 *
 * @param text the piece of the list as it was written
 * @param count how often, or how many rolls or turns; above 0
 * @param place where along the display line
 * @param alongM where on the A-axis its middle is pinned, metres to the commentator's right
 * @param side which way the pilot turns or rolls
 * @param heading which way it begins
 * @param heightFt feet above the datum at which it begins
 * @param kt knots at which it begins
 * @param seconds how long it takes
 * @param note the words of the list that nothing else holds
 * @param sure whether the figure is surely what was meant
 * @param choices names of the catalogue that may be meant instead, the likeliest first
 */
public record Asked(
        String text,
        @Nullable Double count,
        @Nullable Place place,
        @Nullable Double alongM,
        @Nullable Hand side,
        @Nullable Heading heading,
        @Nullable Double heightFt,
        @Nullable Double kt,
        @Nullable Double seconds,
        @Nullable String note,
        boolean sure,
        List<String> choices) {

    /** Where along the display line, as the commentator sees it. */
    public enum Place {
        LEFT_END,
        CENTRE,
        RIGHT_END
    }

    /** Which way the pilot turns or rolls, as the pilot sees it. */
    public enum Hand {
        LEFT,
        RIGHT
    }

    public Asked {
        Most.mustBeText("text of what was asked", text);
        if (count != null) {
            Quantity.ASKED_COUNT.must(count);
        }
        if (alongM != null) {
            Quantity.PLACE_ALONG_M.must(alongM);
        }
        if (heightFt != null) {
            Quantity.PLACE_HEIGHT_FT.must(heightFt);
        }
        if (kt != null) {
            Quantity.PLACE_KT.must(kt);
        }
        if (seconds != null) {
            Quantity.ASKED_SECONDS.must(seconds);
        }
        Most.CHOICES.must(choices);
        choices = List.copyOf(choices);
    }

    /** A figure by its name, with nothing asked of it. */
    public static Asked plainly(String text) {
        return new Asked(text, null, null, null, null, null, null, null, null, null, true, List.of());
    }
}
