package crowdline.list.word;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a show calls a figure, with what it is behind: {@code "the Lift" = straight up}, {@code Corkscrew (three rolls going up)}.
 *
 * @param name as it was written, without quotation marks
 * @param from where it begins, with them
 * @param to where it ends
 * @param meantFrom where that begins which says what it is
 * @param meantTo where that ends
 * @param isQuoted whether it stands in quotation marks
 */
public record Called(String name, int from, int to, int meantFrom, int meantTo, boolean isQuoted) {
    private static final Pattern QUOTED = Pattern.compile(
            "[\"“”](?<name>\\p{L}[^\"“”\\n]{1,28})[\"“”],?\\s{0,3}(?:(?<bracket>\\()|(?:=|:|[-–—](?=\\s)|,? ?(?:(?:which|that) is|that['’]s|it['’]s)|,? ?is|,? ?meaning|,? ?i\\.?e\\.?,?)\\s)");
    private static final Pattern WRITTEN = Pattern.compile(
            "(?<![\\p{L}\\d])(?<name>(?:(?:[Tt]he|[Oo]ur|[Mm]y|[Hh]is|[Hh]er) )?\\p{Lu}[\\p{Ll}']+(?: (?:of |the )?\\p{Lu}[\\p{Ll}']+){0,2})\\s?(?:(?<bracket>\\()|=\\s?)");
    private static final Pattern OURS = Pattern.compile(
            "(?<![\\p{L}\\d])(?<name>(?:[Tt]he|[Oo]ur|[Mm]y|[Hh]is|[Hh]er) \\p{Lu}[\\p{Ll}']+(?: (?:of |the )?\\p{Lu}[\\p{Ll}']+){0,2})(?<bracket>(?!))?(?:: | [-–—] |,? (?:which|that) is )");

    private static final int MOST_WORDS = 4;
    private static final int LONGEST = 160;
    /** No show names more: further ones are read as words. */
    private static final int MOST = 40;

    /** What may be such names in a text; whether they are is told by what stands behind. */
    static List<Called> in(String written) {
        List<Called> all = new ArrayList<>();
        for (Pattern pattern : List.of(QUOTED, WRITTEN, OURS)) {
            Matcher found = pattern.matcher(written);
            while (all.size() < MOST && found.find()) {
                String name = found.group("name").strip();
                boolean isKnown =
                        all.stream().anyMatch(other -> found.start() < other.to() && other.from() < found.end());
                if (!isKnown && name.split("\\s+").length <= MOST_WORDS) {
                    int end = end(written, found.end(), found.group("bracket") != null);
                    int to = pattern == QUOTED ? found.end("name") + 1 : found.end("name");
                    all.add(new Called(name, found.start(), to, found.end(), end, pattern == QUOTED));
                }
            }
        }
        return all;
    }

    private static int end(String written, int from, boolean isInBrackets) {
        int limit = Math.min(written.length(), from + LONGEST);
        for (int i = from; i < limit; i++) {
            char c = written.charAt(i);
            if (c == '\n' || (isInBrackets && c == ')')) {
                return i;
            }
        }
        return limit;
    }

    boolean holds(int at) {
        return from <= at && at < to;
    }
}
