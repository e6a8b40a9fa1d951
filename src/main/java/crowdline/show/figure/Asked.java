package crowdline.show.figure;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.figure.Placing.Heading;
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
 * @param beginsS when it begins by the list's own clock, seconds from the beginning of the act
 * @param note the words of the list that nothing else holds
 * @param sure whether the figure is surely what was meant
 * @param choices names of the catalogue that may be meant instead, the likeliest first
 * @param ownShape whether somebody gave the figure a shape of its own, flown in place of the catalogue's
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
        @Nullable Double beginsS,
        @Nullable String note,
        boolean sure,
        List<String> choices,
        boolean ownShape) {

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

    /** How the text begins of whatever was found in a flight log. */
    public static final String FROM_LOG = "flight log, ";

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
        if (beginsS != null) {
            Quantity.ASKED_BEGINS_S.must(beginsS);
        }
        Most.CHOICES.must(choices);
        choices = List.copyOf(choices);
    }

    /** Whether it was taken for what it is by the path in a flight log alone, and nobody has said so yet. */
    public boolean isGuessedOfLog() {
        return !sure && isOfLog();
    }

    /** Whether a flight log has it, and nobody wrote of it. */
    public boolean isOfLog() {
        return text.startsWith(FROM_LOG);
    }

    /** What was written of it, in one line; empty if it is of a flight log. */
    public String written() {
        return isOfLog() ? "" : text.strip().replaceAll("\\s+", " ");
    }

    /** The same as often as this; null as often as usual. */
    public Asked withCount(@Nullable Double other) {
        return new Asked(
                text, other, place, alongM, side, heading, heightFt, kt, seconds, beginsS, note, sure, choices,
                ownShape);
    }

    /** The same there; null anywhere. */
    public Asked withPlace(@Nullable Place other) {
        return new Asked(
                text, count, other, null, side, heading, heightFt, kt, seconds, beginsS, note, sure, choices, ownShape);
    }

    /** The same with its middle pinned there; null anywhere. */
    public Asked withAlongM(@Nullable Double other) {
        return new Asked(
                text, count, null, other, side, heading, heightFt, kt, seconds, beginsS, note, sure, choices, ownShape);
    }

    /** The same to that side; null to any. */
    public Asked withSide(@Nullable Hand other) {
        return new Asked(
                text, count, place, alongM, other, heading, heightFt, kt, seconds, beginsS, note, sure, choices,
                ownShape);
    }

    /** The same begun that way; null any way. */
    public Asked withHeading(@Nullable Heading other) {
        return new Asked(
                text, count, place, alongM, side, other, heightFt, kt, seconds, beginsS, note, sure, choices, ownShape);
    }

    /** The same begun at that height; null at any. */
    public Asked withHeightFt(@Nullable Double other) {
        return new Asked(
                text, count, place, alongM, side, heading, other, kt, seconds, beginsS, note, sure, choices, ownShape);
    }

    /** The same begun at that speed; null at the usual. */
    public Asked withKt(@Nullable Double other) {
        return new Asked(
                text, count, place, alongM, side, heading, heightFt, other, seconds, beginsS, note, sure, choices,
                ownShape);
    }

    /** The same taking as long as that; null as long as it takes. */
    public Asked withSeconds(@Nullable Double other) {
        return new Asked(
                text, count, place, alongM, side, heading, heightFt, kt, other, beginsS, note, sure, choices, ownShape);
    }

    /** The same begun then by the list's clock; null whenever it comes. */
    public Asked withBeginsS(@Nullable Double other) {
        return new Asked(
                text, count, place, alongM, side, heading, heightFt, kt, seconds, other, note, sure, choices, ownShape);
    }

    /** The same asked in other words. */
    public Asked withText(String other) {
        return new Asked(
                other, count, place, alongM, side, heading, heightFt, kt, seconds, beginsS, note, sure, choices,
                ownShape);
    }

    /** The same, sure of what was meant. */
    public Asked confirmed() {
        return new Asked(
                text, count, place, alongM, side, heading, heightFt, kt, seconds, beginsS, note, true, List.of(),
                ownShape);
    }

    /** The same with a shape of its own, or flown as the catalogue has it. */
    public Asked withOwnShape(boolean own) {
        return new Asked(
                text, count, place, alongM, side, heading, heightFt, kt, seconds, beginsS, note, sure, choices, own);
    }

    /** A figure by its name, with nothing asked of it. */
    public static Asked plainly(String text) {
        return new Asked(text, null, null, null, null, null, null, null, null, null, null, true, List.of(), false);
    }
}
