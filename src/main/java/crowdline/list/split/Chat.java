package crowdline.list.split;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A talk by messages, each of which begins with when it was sent, in brackets or with the date, and by whom; or, where one
 * asks another, with the name alone. Whoever says most of it, or answers, sends the list.
 */
final class Chat {
    /** Fewer lines may begin so by chance. */
    private static final int LEAST_MESSAGES = 3;

    private static final Pattern HEAD = Pattern.compile(
            "\\s*(?:\\[(?:\\d{1,4}[./-]\\d{1,2}(?:[./-]\\d{1,4})?,?\\s)?TIME\\]|\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4},?\\sTIME)\\s*(?:-\\s*)?"
                            .replace("TIME", "\\d{1,2}[:.]\\d{2}(?:[:.]\\d{2})?(?:\\s?[ap]\\.?m\\.?)?")
                    + "(?<who>\\p{L}[\\p{L} .'()-]{0,30}):\\s");

    /** A message of a talk whose times nobody wrote. */
    private static final Pattern NAMED = Pattern.compile("\\s*(?<who>\\p{L}[\\p{L} .'-]{0,30}):\\s");
    /** With fewer messages, or with fewer that ask, it is no talk: what stands ahead of a colon may be who flies. */
    private static final int LEAST_NAMED = 6;

    /** They name nobody: what is asked belongs to its answer. */
    private static final Set<String> ASKING = Set.of("q", "a", "question", "answer");

    private static final int LEAST_ASKED = 2;
    private static final int MOST_TALK = 4;

    private final String folded;
    private final Pattern form;
    private final @Nullable String sender;

    private Chat(String folded, Pattern form, @Nullable String sender) {
        this.folded = folded;
        this.form = form;
        this.sender = sender;
    }

    /** The talk in a text that is folded; nothing in it is a message if it is none. */
    static Chat of(String folded) {
        Map<String, Integer> said = new HashMap<>();
        folded.lines().forEach(line -> count(line, HEAD, said));
        if (sum(said) < LEAST_MESSAGES) {
            return new Chat(folded, NAMED, answering(folded));
        }
        return new Chat(folded, HEAD, most(said));
    }

    /** Who answers where others ask; null if it is no talk. */
    private static @Nullable String answering(String folded) {
        Map<String, Integer> said = new HashMap<>();
        Map<String, Integer> asked = new HashMap<>();
        List<String> lines = folded.lines().filter(line -> !line.isBlank()).toList();
        for (String line : lines) {
            count(line, NAMED, said);
            if (line.stripTrailing().endsWith("?")) {
                count(line, NAMED, asked);
            }
        }
        said.values().removeIf(times -> times < 2);
        asked.keySet().retainAll(said.keySet());
        if (said.keySet().stream().allMatch(ASKING::contains)) {
            return null;
        }
        boolean isTalk = sum(said) >= LEAST_NAMED
                && sum(said) * 2 > lines.size()
                && sum(asked) >= LEAST_ASKED
                && said.size() > 1
                && said.size() <= MOST_TALK;
        if (!isTalk) {
            return null;
        }
        said.replaceAll((who, times) -> times - 2 * asked.getOrDefault(who, 0));
        return most(said);
    }

    private static void count(String line, Pattern form, Map<String, Integer> said) {
        Matcher head = form.matcher(line);
        if (head.lookingAt()) {
            said.merge(head.group("who"), 1, Integer::sum);
        }
    }

    private static int sum(Map<String, Integer> times) {
        return times.values().stream().mapToInt(Integer::intValue).sum();
    }

    private static String most(Map<String, Integer> said) {
        return Collections.max(
                        said.entrySet(),
                        Map.Entry.<String, Integer>comparingByValue().thenComparing(Map.Entry.comparingByKey()))
                .getKey();
    }

    /** Where the words of a message begin; the beginning of the line if it is none. */
    int words(int start, int end) {
        Matcher head = head(start, end);
        return head == null ? start : head.end();
    }

    /** Whether a line is a message to whoever sends the list. */
    boolean isAnswered(int start, int end) {
        Matcher head = head(start, end);
        return head != null && !head.group("who").equals(sender);
    }

    private @Nullable Matcher head(int start, int end) {
        Matcher head = form.matcher(folded).region(start, end);
        return sender != null && head.lookingAt() ? head : null;
    }
}
