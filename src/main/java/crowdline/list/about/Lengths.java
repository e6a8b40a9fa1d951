package crowdline.list.about;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How long a whole act is: "about 8 min", "whole thing nine minutes", "6 minute solo". */
final class Lengths {
    /** Minutes: nobody is given less. */
    static final double LEAST = 1;
    /** Minutes: what is longer is no act, but a day. */
    static final double MOST = 60;

    private static final Pattern MINUTES = Pattern.compile("(?<![\\d.:,])(\\d{1,2}(?:[.,]5)?|"
            + Numbers.WORD
            + ")\\s*(½|and a half)?\\s*-?\\s*(?:min(?:ute)?[sn]?|mn)\\b");

    /** What is said of a whole act. */
    private static final Pattern WHOLE = Pattern.compile(
            "\\b(?:slot|solo|routine|display|demo|act|show|whole|total|altogether|in all|"
                    + "lasts?|long|takes?|all in|all told|duration|length|running time|sequence|programme|program|set|have|got|given|will do|is enough|is plenty|dauer|duree|durée|about|around|bout|abt|roughly|approx\\w*|all up|on at)\\b");

    /** Minutes of something else. */
    private static final Pattern OTHER = Pattern.compile(
            "\\b(?:brief\\w*|before|after(?! release| take-?off| about| some| \\d)|between|apart|fuel|hold\\w*|reserve\\w*|"
                    + "notice|late|early|warm\\w*|transit\\w*|endurance|ago|walk|drive|away|inverted|tea|every|interview|from here|earlier|"
                    + "later|taxi\\w*|engine|call|spare)\\b");

    private static final Pattern ENDS = Pattern.compile("(?<=[.!?;\\n])\\s+|\\n");

    private static final Pattern SAYS = Pattern.compile("\\b(?:in|me|you|us|ring|see|by|is|are|will)\\b");

    /** "Duration 8", "slot 11:45 for 10". */
    private static final Pattern BARE = Pattern.compile(
            "\\b(?:dur(?:ation)?\\.?|length|display time|\\d{1,2}[:.]?\\d{2},? for)[\\s:=]{1,4}(\\d{1,2})(?![\\d:]|[.,]\\d|\\s*(?:s|m|sec|min|ft|feet|kts?|knots|hour|h|metres|people|of|jumpers|us)\\b)");

    /** "Ada Quillan - 14h20 - 8'". */
    private static final Pattern PRIME = Pattern.compile(
            "(?:[-–—,|/] ?|\\s{2}|\\b(?:approx\\w*|about|duration|length|total)[.:]? )(\\d{1,2}) ?['′’](?=\\s*(?:$|[-–—,|/.]))");

    /** "Act length 6:30". */
    private static final Pattern CLOCK = Pattern.compile(
            "\\b(?:duration|length|total(?: time)?|running time)[\\s:=]{1,4}(\\d{1,2}):([0-5]\\d)(?![:\\d])");

    /** "7 min 30". */
    private static final Pattern AND_SECONDS = Pattern.compile(
            "(?<![\\d.:,])(\\d{1,2}) ?m(?:in(?:ute)?s?)? ?([0-5]\\d)(?: ?s(?:ec(?:ond)?s?)?)?(?![\\d:]|\\.\\d)");

    /** "Saturday at 11:20, ten minutes". */
    private static final Pattern TIME = Pattern.compile("\\d{1,2}[:.]\\d{2}[^\\d\\n]{0,16}$");

    /** Letters. */
    private static final int NEAR = 24;

    /** Of a heading. */
    private static final int MOST_WORDS = 7;

    private static final Pattern BETWEEN = Pattern.compile("\\s+");

    private Lengths() {}

    /** Minutes; null if nothing is said. */
    static @Nullable Double in(List<String> notes) {
        for (String note : notes) {
            for (String sentence :
                    ENDS.splitAsStream(note.toLowerCase(Locale.UK)).toList()) {
                Matcher bare = BARE.matcher(sentence);
                if (bare.find() && Double.parseDouble(bare.group(1)) >= LEAST) {
                    return Double.valueOf(bare.group(1));
                }
                Matcher prime = PRIME.matcher(sentence);
                if (prime.find() && Double.parseDouble(prime.group(1)) >= LEAST) {
                    return Double.valueOf(prime.group(1));
                }
                Matcher clock = CLOCK.matcher(sentence);
                Matcher seconds = AND_SECONDS.matcher(sentence);
                if (seconds.find() && isOfTheWhole(sentence, seconds)) {
                    clock = seconds;
                    clock.reset();
                }
                if (clock.find()) {
                    double minutes = Double.parseDouble(clock.group(1)) + Double.parseDouble(clock.group(2)) / 60;
                    if (minutes >= LEAST && minutes <= MOST) {
                        return minutes;
                    }
                }
                Matcher found = MINUTES.matcher(sentence);
                if (found.find() && isOfTheWhole(sentence, found)) {
                    double minutes = Numbers.of(found.group(1)) + (found.group(2) == null ? 0 : 0.5);
                    if (minutes >= LEAST && minutes <= MOST) {
                        return minutes;
                    }
                }
            }
        }
        return null;
    }

    /** What stands so near that it says of what the minutes are. */
    private static String beside(String sentence, Matcher found) {
        return sentence.substring(Math.max(0, found.start() - NEAR), Math.min(sentence.length(), found.end() + NEAR));
    }

    /** It says so, or says nothing else. */
    private static boolean isOfTheWhole(String sentence, Matcher found) {
        String rest = sentence.substring(0, found.start()) + sentence.substring(found.end());
        boolean isAlone = rest.chars().noneMatch(Character::isLetterOrDigit);
        boolean isHeading = BETWEEN.splitAsStream(rest.strip()).count() <= MOST_WORDS;
        boolean isBehindATime =
                TIME.matcher(sentence.substring(0, found.start())).find();
        String ahead = sentence.substring(0, found.start()).stripTrailing();
        String behind = sentence.substring(found.end()).strip();
        boolean isApart = ahead.endsWith(",") && (behind.isEmpty() || behind.startsWith(",") || behind.startsWith("."));
        return isAlone
                || (isApart && !OTHER.matcher(sentence).find())
                || (isBehindATime && !OTHER.matcher(sentence).find())
                || (isHeading
                        && !OTHER.matcher(sentence).find()
                        && !SAYS.matcher(sentence).find())
                || (WHOLE.matcher(sentence).find()
                        && !OTHER.matcher(beside(sentence, found)).find());
    }
}
