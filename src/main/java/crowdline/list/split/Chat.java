package crowdline.list.split;

import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
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
            "\\s*(?:\\[(?:(?:mon|tues?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?,?\\s)?(?:\\d{1,4}[./-]\\d{1,2}(?:[./-]\\d{1,4})?,?\\s)?TIME\\]|\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4},?\\sTIME)\\s*(?:-\\s*)?"
                            .replace("TIME", "\\d{1,2}[:.]\\d{2}(?:[:.]\\d{2})?(?:\\s?[ap]\\.?m\\.?)?")
                    + "(?<who>\\p{L}[\\p{L} .'()-]{0,30}):\\s");

    /** Who wrote the lines below, and when, on a line of its own. */
    private static final Pattern ABOVE = Pattern.compile(
            "(?m)^[ \\t]*(?<who>\\p{L}[\\p{L}\\d ._'-]{0,30}?)[ \\t]+(?:\\(?at )?\\d{1,2}[:.]\\d{2}(?:[:.]\\d{2})?(?:\\s?[ap]\\.?m\\.?)?\\)?[ \\t]*$");

    /** A message of a talk whose times nobody wrote. */
    private static final Pattern NAMED = Pattern.compile("\\s*@?(?<who>\\p{L}[\\p{L}\\d _.'()-]{0,30}):\\s");
    /** With fewer messages, or with fewer that ask, it is no talk: what stands ahead of a colon may be who flies. */
    private static final int LEAST_NAMED = 6;

    /** They name nobody: what is asked belongs to its answer. */
    private static final Set<String> ASKING = Set.of("q", "a", "question", "answer");

    private static final int LEAST_ASKED = 2;
    private static final int MOST_TALK = 4;

    private final String folded;
    private final Pattern form;
    private final @Nullable String sender;
    /** Where lines begin that say who wrote those below, and who. */
    private final NavigableMap<Integer, String> above;

    private Chat(String folded, Pattern form, @Nullable String sender, NavigableMap<Integer, String> above) {
        this.folded = folded;
        this.form = form;
        this.sender = sender;
        this.above = above;
    }

    /** The talk in a text that is folded; nothing in it is a message if it is none. */
    static Chat of(String folded) {
        Map<String, Integer> said = new HashMap<>();
        folded.lines().forEach(line -> count(line, HEAD, said));
        if (sum(said) < LEAST_MESSAGES) {
            NavigableMap<Integer, String> above = above(folded);
            return above.isEmpty()
                    ? new Chat(folded, NAMED, answering(folded), above)
                    : new Chat(folded, ABOVE, mostWritten(folded, above), above);
        }
        return new Chat(folded, HEAD, most(said), new TreeMap<>());
    }

    /** Where it says who wrote the lines below; nowhere if they are too few, or of one alone. */
    private static NavigableMap<Integer, String> above(String folded) {
        NavigableMap<Integer, String> above = new TreeMap<>();
        ABOVE.matcher(folded).results().forEach(head -> above.put(head.start(), head.group(1)));
        boolean isTalk = above.size() >= LEAST_MESSAGES
                && Set.copyOf(above.values()).size() > 1
                && Set.copyOf(above.values()).size() < above.size();
        return isTalk ? above : new TreeMap<>();
    }

    /** Who wrote the most letters. */
    private static String mostWritten(String folded, NavigableMap<Integer, String> above) {
        Map<String, Integer> written = new HashMap<>();
        above.forEach((start, who) -> {
            Integer next = above.higherKey(start);
            written.merge(who, (next == null ? folded.length() : next) - start, Integer::sum);
        });
        return most(written);
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
        if (!above.isEmpty()) {
            return above.containsKey(start) ? end : start;
        }
        Matcher head = head(start, end);
        return head == null ? start : head.end();
    }

    /** Whether a line is a message to whoever sends the list. */
    boolean isAnswered(int start, int end) {
        Map.Entry<Integer, String> by = above.floorEntry(start);
        if (by != null) {
            return by.getKey() == start || !by.getValue().equals(sender);
        }
        Matcher head = head(start, end);
        return head != null && !head.group("who").equals(sender);
    }

    private @Nullable Matcher head(int start, int end) {
        Matcher head = form.matcher(folded).region(start, end);
        return sender != null && head.lookingAt() ? head : null;
    }
}
