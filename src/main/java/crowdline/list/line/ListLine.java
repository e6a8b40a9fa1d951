package crowdline.list.line;

import crowdline.measure.Must;
import crowdline.show.figure.Placing.Heading;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One piece of a list: one figure, and all that the list says about it. What the list does not say is null.
 *
 * @param text the piece as it was written
 * @param figure the catalogue's name of the figure; null if it is none, and then it is only timed
 * @param title how to call it: the name the list gives it, rightly spelt; its own words if it is no figure
 * @param count how often, or how many rolls or turns of a spin, such as 1.5; points belong to the name. Above 0, at most
 *     {@link #MOST_COUNT}
 * @param place where along the display line
 * @param side which way the pilot turns or rolls
 * @param heading where the aircraft points as the figure begins: {@code RIGHT} if it comes from the left
 * @param heightFt feet above the datum at which it begins, or to which a climb or a dive leads, 0 to {@link #MOST_FT}
 * @param entryKt knots at which it begins, above 0, at most {@link #MOST_KT}
 * @param seconds how long it lasts, above 0, at most {@link #MOST_SECONDS}
 * @param beginsS when it begins by the list's own clock, seconds from the beginning of the act, 0 to {@link #MOST_SECONDS}
 * @param smoke whether smoke goes on or off with it
 * @param note the words that none of the above holds
 * @param sure whether the catalogue's figure is all that the piece asks for; false if it was guessed, or if something is
 *     to be added that the figure does not have
 * @param choices the catalogue's names that may be meant, the likeliest first, {@link #MOST_CHOICES} at most; empty if it
 *     is sure
 */
public record ListLine(
        String text,
        @Nullable String figure,
        String title,
        @Nullable Double count,
        @Nullable Place place,
        @Nullable Side side,
        @Nullable Heading heading,
        @Nullable Double heightFt,
        @Nullable Double entryKt,
        @Nullable Double seconds,
        @Nullable Double beginsS,
        @Nullable Boolean smoke,
        @Nullable String note,
        boolean sure,
        List<String> choices) {

    private static final Pattern LONGER_WORD = Pattern.compile("\\p{L}{4}");

    /** What a spin or a roll of a show may have. */
    public static final double MOST_COUNT = 100;
    /** What a show file takes. */
    public static final double MOST_FT = 60_000;
    /** What a show file takes. */
    public static final double MOST_KT = 2_000;
    /** What a show file takes. */
    public static final double MOST_SECONDS = 7_200;
    /** More would have to be read where one look must do. */
    public static final int MOST_CHOICES = 3;

    public static final double LEAST = 0.01;

    /** @throws IllegalArgumentException if a number is out of its range, or there are too many choices */
    public ListLine {
        Must.beSaid("text of a line", text);
        Must.beSaid("title of a line", title);
        mustBeWithin("count", count, LEAST, MOST_COUNT);
        mustBeWithin("heightFt", heightFt, 0, MOST_FT);
        mustBeWithin("entryKt", entryKt, 1, MOST_KT);
        mustBeWithin("seconds", seconds, LEAST, MOST_SECONDS);
        mustBeWithin("beginsS", beginsS, 0, MOST_SECONDS);
        Must.beWithin("number of choices", choices.size(), 0, MOST_CHOICES);
        if (figure == null && sure) {
            throw new IllegalArgumentException("\"" + text + "\" is no figure, so it cannot be sure");
        }
        choices = List.copyOf(choices);
    }

    /**
     * A line that says no more than what is flown.
     *
     * @param seconds how long it lasts, or null if nobody said
     */
    public static ListLine of(
            String text,
            @Nullable String figure,
            String title,
            @Nullable Double seconds,
            boolean sure,
            List<String> choices) {
        return new ListLine(
                text, figure, title, null, null, null, null, null, null, seconds, null, null, null, sure, choices);
    }

    /**
     * The same line taken for a figure, with nothing left to choose.
     *
     * @param name the catalogue's
     * @param times how often, or how many turns or rolls; null for the usual
     * @param isSure whether it surely is that figure
     */
    public ListLine takenFor(String name, @Nullable Double times, boolean isSure) {
        return new ListLine(
                text, name, name, times, place, side, heading, heightFt, entryKt, seconds, beginsS, smoke, note, isSure,
                List.of());
    }

    /**
     * The same line as something that no catalogue has, and that is only timed.
     *
     * @param words how to call it
     */
    public ListLine called(String words) {
        return new ListLine(
                text, null, words, count, place, side, heading, heightFt, entryKt, seconds, beginsS, smoke, note, false,
                List.of());
    }

    /** The same line under its own words in small letters, as of a list in capitals; "RTB" has only short ones and stays. */
    public ListLine inSmallLetters() {
        if (!LONGER_WORD.matcher(title).find()) {
            return this;
        }
        return new ListLine(
                text,
                figure,
                title.toLowerCase(Locale.UK),
                count,
                place,
                side,
                heading,
                heightFt,
                entryKt,
                seconds,
                beginsS,
                smoke,
                note,
                sure,
                choices);
    }

    /**
     * The same line by the list's clock.
     *
     * @param atS when it begins, seconds from the beginning of the act
     * @param lasts how long it lasts, seconds, or null if that is not said
     * @param other the note without the clock's own words
     */
    public ListLine begun(double atS, @Nullable Double lasts, @Nullable String other) {
        return new ListLine(
                text, figure, title, count, place, side, heading, heightFt, entryKt, lasts, atS, smoke, other, sure,
                choices);
    }

    private static void mustBeWithin(String what, @Nullable Double value, double least, double most) {
        if (value != null) {
            Must.beWithin(what, value, least, most);
        }
    }
}
