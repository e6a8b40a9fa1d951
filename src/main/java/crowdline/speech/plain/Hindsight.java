package crowdline.speech.plain;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Whether words tell of what has just been flown, so that they are wrong before it was: "That was five g." Narrow on purpose.
 * The past of anything else, of people, of makers or of history, may be told at any time.
 */
public final class Hindsight {
    private static final String NUMBER =
            "(?:\\d[\\d,.]*|half|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|twenty|thirty|forty"
                    + "|fifty|sixty|seventy|eighty|ninety|(?:a |several )?hundred|(?:a )?thousand|twice)";

    /** Quantities that are flown. */
    private static final String FLOWN = NUMBER
            + "[\\w ,-]{0,24}?(?:\\bg\\b|\\btimes (?:his|her|its|their|your|as)\\b|\\b(?:feet|foot|metres?|meters?|knots?"
            + "|mph|km/h|degrees|turns?|rolls?|flicks?|loops?|seconds?|storeys?)\\b|\\b(?:miles|kilometres) an hour\\b)";

    private static final String SUBJECT =
            "(?:he|she|it|they|we|the (?:aircraft|aeroplane|plane|pilot|glider|machine|nose)"
                    + "|\\p{Lu}\\w+(?: \\p{Lu}\\w+)?)";

    private static final String VERB =
            "(?:pulled|pushed|reached|touched|dived|climbed|fell|dropped|lost|gained|turned|rolled"
                    + "|spun|felt|weighed|came|went|topped|slowed|flew|covered|hung|did|took|needed"
                    + "|(?:was|were) (?:doing|pulling|pushing|flying|falling|going|hanging|down to|up to|at))";

    /** Any of these is of another time than a moment ago, or of something else than a flight. */
    private static final Pattern ANOTHER_TIME =
            Pattern.compile("\\b(?:1\\d{3}|20\\d{2}|years?|centur\\w+|decades?|wars?|ago|once"
                    + "|born|built|designed|invented|founded|named|called|records?|seasons?|careers?|school|when|until|that was before"
                    + "|last (?:week|month|summer|winter)|yesterday|as a (?:boy|girl|child|student)|grand\\w+|father|mother"
                    + "|idea|dream|reason|why|because|crash|accident|championships?|his first|her first)\\b");

    private static final List<Pattern> OF_THE_FLIGHT = List.of(
            Pattern.compile(
                    "^(?:and |so |well, )?(?:that|those|these) (?:was|were|took|made|lasted|reached|needed|used|covered) .*"),
            Pattern.compile("^there (?:was|were) .*" + FLOWN + ".*"),
            Pattern.compile(
                    "^(?:and |so |in that \\w+,? )?" + SUBJECT + " (?:just |nearly |almost |only |even )?" + VERB
                            + "\\b.*" + FLOWN + ".*",
                    Pattern.CASE_INSENSITIVE),
            Pattern.compile(
                    "^(?:and |so )?" + SUBJECT + " had .*" + NUMBER + "[\\w ,-]{0,12}\\bg\\b.*",
                    Pattern.CASE_INSENSITIVE),
            Pattern.compile(
                    "^(?:at|over|in|on|through|halfway) (?:the |its |his |her )?(?:very )?(?:top|bottom|pull|push|loop"
                            + "|dive|turn|spin|roll|way (?:up|down|round)|middle|peak|slowest|fastest|highest|lowest)\\b.*"
                            + "\\b(?:was|were|had|pulled|pushed|reached|did|felt|weighed)\\b.*" + FLOWN + ".*"),
            Pattern.compile(".*\\byou(?:'ve| have)? just (?:saw|seen|heard|watched)\\b.*"),
            Pattern.compile("^did you (?:see|hear|notice|feel)\\b.*"));

    private Hindsight() {}

    /** True if a sentence of the text tells of the figure that has just been flown. */
    public static boolean tellsOfTheFlight(String text) {
        for (String sentence : text.replace('\u2019', '\'').split("(?<=[.!?])\\s+", -1)) {
            String plain = sentence.strip();
            String lower = plain.toLowerCase(Locale.ROOT);
            if (!ANOTHER_TIME.matcher(lower).find()
                    && OF_THE_FLIGHT.stream()
                            .anyMatch(p -> p.matcher(matched(p, plain, lower)).matches())) {
                return true;
            }
        }
        return false;
    }

    /** A name is told by its capital. */
    private static String matched(Pattern pattern, String plain, String lower) {
        return (pattern.flags() & Pattern.CASE_INSENSITIVE) == 0 ? lower : plain;
    }
}
