package crowdline.loaded;

import crowdline.flight.FigureFlight;
import crowdline.show.figure.Asked;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a pilot wrote of a figure that is flown and is not in what we draw of it: a quarter roll on the way up, a push where we
 * pull. Where somebody gave the figure a shape of its own, it was taken care of.
 */
public final class Undrawn {
    /** Words of what an aircraft does; a place, smoke or a manner of flying is no shape. */
    private static final Pattern FLOWN = Pattern.compile(
            "(?i)\\b(?:rolls?|rolled|rolling|flicks?|flicked|snaps?|points?|hesitations?|push(?:es|ed)?|pull(?:s|ed)?|inverted|upside"
                    + "|knife|spins?|twists?|loops?|turns|pirouettes?|tumbles?)\\b");

    private static final Pattern ROLLED = Pattern.compile("(?i)\\b(?:rolls?|rolled|rolling|flicks?|flicked|snaps?)\\b");

    private static final Pattern PUSHED_UP =
            Pattern.compile("(?i)\\bpush(?:es|ed)?(?: up)? (?:in)?to (?:the )?vertical\\b|\\bpush(?:es|ed)? up\\b");

    private static final Pattern INVERTED = Pattern.compile("(?i)\\b(?:inverted|upside down)\\b");

    /** A line straight up is flown at no load; what is pushed, at less. */
    private static final double PUSHED_G = -0.5;

    private static final double INVERTED_S = 1;

    private Undrawn() {}

    /** Each in the pilot's words; none where all of it is drawn, or the figure is only timed. */
    public static List<String> of(Asked asked, FigureFlight flown) {
        if (asked.ownShape() || !flown.simulated() || asked.isOfLog()) {
            return List.of();
        }
        List<String> words = new ArrayList<>();
        String note = asked.note();
        if (note != null) {
            for (String part : note.split(";", -1)) {
                if (FLOWN.matcher(part).find()) {
                    words.add(part.strip());
                }
            }
        }
        Matcher push = PUSHED_UP.matcher(asked.text());
        if (push.find() && flown.leastG() > PUSHED_G) {
            missing(words, push.group());
        }
        Matcher inverted = INVERTED.matcher(asked.text());
        if (inverted.find() && flown.upsideDownS() < INVERTED_S) {
            missing(words, inverted.group());
        }
        return words;
    }

    private static void missing(List<String> words, String what) {
        if (words.stream().noneMatch(w -> w.contains(what))) {
            words.add(what);
        }
    }

    /** Whether it is asked where in the figure it comes: of a roll; of anything else, how it is flown. */
    static boolean hasPlace(String words) {
        return ROLLED.matcher(words).find();
    }

    /** All of them in quotation marks. */
    public static String quoted(List<String> words) {
        return String.join(" and ", words.stream().map(w -> "“" + w + "”").toList());
    }
}
