package crowdline.list.split;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** A talk by messages, each of which begins with when it was sent, in brackets or with the date, and by whom. Whoever says most of it sends the list. */
final class Chat {
    /** Fewer lines may begin so by chance. */
    private static final int LEAST_MESSAGES = 3;

    private static final Pattern HEAD = Pattern.compile(
            "\\s*(?:\\[(?:\\d{1,4}[./-]\\d{1,2}(?:[./-]\\d{1,4})?,?\\s)?TIME\\]|\\d{1,4}[./-]\\d{1,2}[./-]\\d{1,4},?\\sTIME)\\s*(?:-\\s*)?"
                            .replace("TIME", "\\d{1,2}[:.]\\d{2}(?:[:.]\\d{2})?(?:\\s?[ap]\\.?m\\.?)?")
                    + "(?<who>\\p{L}[\\p{L} .'-]{0,30}):\\s");

    private final String folded;
    private final @Nullable String sender;

    private Chat(String folded, @Nullable String sender) {
        this.folded = folded;
        this.sender = sender;
    }

    /** The talk in a text that is folded; nothing in it is a message if it is none. */
    static Chat of(String folded) {
        Map<String, Integer> said = new HashMap<>();
        folded.lines().forEach(line -> {
            Matcher head = HEAD.matcher(line);
            if (head.lookingAt()) {
                said.merge(head.group("who"), 1, Integer::sum);
            }
        });
        int messages = said.values().stream().mapToInt(Integer::intValue).sum();
        return new Chat(
                folded,
                messages < LEAST_MESSAGES
                        ? null
                        : Collections.max(
                                        said.entrySet(),
                                        Map.Entry.<String, Integer>comparingByValue()
                                                .thenComparing(Map.Entry.comparingByKey()))
                                .getKey());
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
        Matcher head = HEAD.matcher(folded).region(start, end);
        return sender != null && head.lookingAt() ? head : null;
    }
}
