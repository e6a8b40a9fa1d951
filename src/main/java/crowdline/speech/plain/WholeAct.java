package crowdline.speech.plain;

import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Whether words tell of all that is flown in an act: a sum ("In this act it climbs about a mile"), or the most of it ("The highest
 * point in this act"). They are wrong once something of it is not flown.
 */
public final class WholeAct {
    private static final String MOST =
            "(?:highest|fastest|slowest|hardest|heaviest|longest|lowest|top speed|higher than)";

    private static final String COUNTED =
            "(?:\\d+|half|quarters?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve"
                    + "|\\w+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|once|twice|minutes?|miles?|kilometres?)";

    private static final String FLOWN =
            "(?:feet|foot|metres?|miles?|kilometres?|seconds?|minutes?|times|rolls?|loops?|turns?|spins?|flicks?|g)";

    private static final Pattern TELLS = Pattern.compile("\\bin (?:this|the) (?:whole )?(?:act|display)\\b.*\\b"
            + either(COUNTED)
            + "|\\b" + either(COUNTED) + ".*\\bin (?:this|the) (?:whole )?(?:act|display)\\b"
            + "|\\b" + COUNTED + "\\b[^.]*\\b" + FLOWN + "\\b[^.]*\\b(?:in all|altogether|all told)\\b"
            + "|\\badd (?:it all up|them all up|up (?:every|all))\\b"
            + "|\\bat its (?:highest|fastest) the (?:aeroplane|glider)\\b"
            + "|\\bat the hardest pull everything\\b"
            + "|\\bfrom the first figure to the last\\b");

    private WholeAct() {}

    private static String either(String counted) {
        return "(?:" + counted + "|" + MOST + ")\\b";
    }

    /** True if a text tells of all that is flown in an act. */
    public static boolean isToldOf(String text) {
        return TELLS.matcher(text.toLowerCase(Locale.ROOT)).find();
    }
}
