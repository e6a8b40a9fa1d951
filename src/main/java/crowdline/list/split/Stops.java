package crowdline.list.split;

import crowdline.list.word.Text;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Tells which full stops end a sentence: none of "R. Smith", "approx. 5", "bomb... sorry". */
final class Stops {
    private static final Pattern SHORTENED = Pattern.compile(
            ".*\\b(?:w|approx|sec|secs|min|mins|max|ft|kt|kts|pt|rev|inv|neg|no|deg|e\\.?g|i\\.?e|incl|alt|perf|perform|ht|spd|hgt|lt|rt|vert|hor|horiz|opp|sq|repos|ca|hes|fig|mr|mrs|dr|capt|cpt|ldr|cdr|sgt)",
            Pattern.DOTALL);

    private static final Pattern COUNTED = Pattern.compile("\\s*#?\\d");
    private static final Pattern INITIALS = Pattern.compile("(?:\\p{Lu}\\. ?)*\\p{Lu}");

    private static final Pattern TITLED = Pattern.compile(
            "(?s)(?:.*\\W)?(?:mr|mrs|ms|miss|dr|sir|dame|capt|cpt|ldr|sgt|lt|cdr|maj|col|fl)\\.? [a-z]");

    private static final Pattern MEASURE =
            Pattern.compile(".*\\d ?(?:ft|kts?|secs?|mins?|m|km/h|kmh|mph)", Pattern.DOTALL);

    private static final Pattern CORRECTING =
            Pattern.compile(" ?(?:oh |er |no,? )?(?:sorry|i mean|correction|oops|pardon)\\b");
    private static final Pattern SLIP = Pattern.compile("\\s*(?:oh |er |ah )?(?:no|no wait|wait|oops|correction)");
    private static final Pattern CLOCK = Pattern.compile("\\d{1,2}:\\d{2}\\s");

    private final Text text;

    Stops(Text text) {
        this.text = text;
    }

    /**
     * Whether a stop parts what stands before it from what follows.
     *
     * @param from where the piece begins that it stands behind
     */
    boolean part(Matcher stop, int from) {
        return !isInitial(stop.start(), from)
                && (!stop.group().startsWith(".") || isEndOfAMeasure(stop, from) || !isShortened(stop, from));
    }

    /** "Approx." and the "no." of "no. 4"; "no." alone, behind another sentence, is none. */
    private boolean isShortened(Matcher stop, int from) {
        return !isSlip(stop, from)
                && SHORTENED
                        .matcher(text.folded())
                        .region(Math.max(from, stop.start() - 12), stop.start())
                        .matches();
    }

    private boolean isSlip(Matcher stop, int from) {
        int before = from - 1;
        while (before > 0 && text.folded().charAt(before) == ' ') {
            before--;
        }
        return before >= 0
                && ".?!".indexOf(text.folded().charAt(before)) >= 0
                && SLIP.matcher(text.folded()).region(from, stop.start()).matches()
                && !COUNTED.matcher(text.folded())
                        .region(stop.end(), text.folded().length())
                        .lookingAt();
    }

    /** Whether the sentence is not over: "bomb... sorry, low pass", "inverted spin? No. A flat spin". */
    boolean trailsOff(Matcher stop, int from) {
        boolean isCorrected = stop.group().startsWith("..")
                && CORRECTING
                        .matcher(text.folded())
                        .region(stop.end(), text.folded().length())
                        .lookingAt();
        return isCorrected || isSlip(stop, from);
    }

    /** "Dirty pass 140 kt. Rejoin": a capital, or a time, begins the next. */
    private boolean isEndOfAMeasure(Matcher stop, int from) {
        int after = stop.end();
        while (after < text.written().length()
                && Character.isWhitespace(text.written().charAt(after))) {
            after++;
        }
        return after < text.written().length()
                && (Character.isUpperCase(text.written().charAt(after))
                        || CLOCK.matcher(text.written())
                                .region(after, text.written().length())
                                .lookingAt())
                && MEASURE.matcher(text.folded())
                        .region(Math.max(from, stop.start() - 12), stop.start())
                        .matches();
    }

    /** The "R." of "R. Smith" at the beginning of a line. */
    private boolean isInitial(int stop, int from) {
        if (TITLED.matcher(text.folded())
                .region(Math.max(from, stop - 12), stop)
                .matches()) {
            return true;
        }
        int after = stop + 2;
        return after < text.written().length()
                && Character.isUpperCase(text.written().charAt(after))
                && INITIALS.matcher(text.written()).region(from, stop).matches();
    }
}
