package crowdline.list.word;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a leader says on the radio, in quotes ahead of what is then flown: "Pulling up... now!" loop. */
final class Calls {
    private static final Pattern CALL = Pattern.compile(
            "(?m)(?<=^|[.;>] |[-–—] |\\b(?:synchro|solo|five|four|six|seven|pair|lead|leader):? )[ \\t]*[\"“](?=[^\"”\\n]*(?:\\.{2,}|…|!))[^\"”\\n]{2,60}[\"”]");

    /** Fewer may be what a figure is called. */
    private static final int LEAST = 3;

    private Calls() {}

    /** The text, as long as it was, with spaces in place of them, if it has several. */
    static String without(String folded) {
        Matcher call = CALL.matcher(folded);
        return call.results().count() < LEAST
                ? folded
                : call.replaceAll(found -> " ".repeat(found.group().length()));
    }
}
