package crowdline.list.about;

import crowdline.measure.Hour;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Whether a letter seems to hold more than one act: lines that begin with different hours, each of which says how many
 * minutes are flown from there. It is asked, not decided: a list is read as one act.
 */
public final class SeveralActs {
    private static final Pattern LINE = Pattern.compile(
            "(?im)^[ \\t>*•#(\\[–—-]{0,9}(?:\\p{L}{1,20}[ \\t]{1,4}(?:\\d(?!\\d)[ \\t]?)?){0,2}[:–—-]?[ \\t]{0,4}"
                    + "(?<hour>\\d{1,2}[:.h][0-5]\\d|[012]\\d[0-5]\\d)(?!\\d)(?<rest>.*)$");
    /** Shorter is a figure. */
    private static final Pattern LENGTH =
            Pattern.compile("(?i)(?<![\\d.:,])(?:[3-9]|[1-5]\\d|three|four|five|six|seven|eight"
                    + "|nine|ten|twelve|fifteen|twenty)[ -]?(?:min(?:s|utes?)?\\b|['’′])");
    /** What else is done at an hour on such a day. */
    private static final Pattern OTHER = Pattern.compile(
            "(?i)\\b(?:brief\\w*|meet\\w*|lunch|tea|arriv\\w*|hold\\w*|taxi\\w*"
                    + "|gates?|practi[cs]\\w*|rehears\\w*|take-?off|airborne|landing|weather|fuel\\w*|start-?up|walk\\w*|phone|call|drive)\\b");

    private SeveralActs() {}

    /** The hours at which acts seem to begin, in the order written; none where there is one act at most. */
    public static List<LocalTime> in(String letter) {
        List<LocalTime> begin = LINE.matcher(letter)
                .results()
                .map(SeveralActs::begins)
                .flatMap(Optional::stream)
                .distinct()
                .toList();
        return begin.size() < 2 ? List.of() : begin;
    }

    private static Optional<LocalTime> begins(MatchResult line) {
        String whole = line.group();
        Matcher length = LENGTH.matcher(whole);
        return OTHER.matcher(whole).find() || !length.find() ? Optional.empty() : Hour.typed(line.group(1));
    }

    /** What to do about it, in a sentence; empty where there is nothing to do. */
    public static String said(String letter) {
        List<LocalTime> begin = in(letter);
        return begin.isEmpty()
                ? ""
                : "More than one act seems to stand here, at "
                        + begin.stream().map(Hour::toTheMinute).collect(Collectors.joining(" and "))
                        + ": make them one at a time, each of its own lines";
    }
}
