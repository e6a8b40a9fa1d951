package crowdline.list.piece;

import crowdline.list.name.Names;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** How somebody says that an aircraft arrives: "Arrive L to R at 110 kt". */
final class Arrival {
    private static final Set<String> ARRIVING = Set.of("enter", "arrive", "arriving", "arrival");

    private static final Set<String> WAYS = Set.of("from", "lefttoright", "righttoleft");

    private Arrival() {}

    private static final Set<String> COMING = Set.of("come", "coming", "arrive");

    private static final Set<String> ACROSS = Set.of("in", "over", "across", "around");

    /** Behind "from". */
    private static final Set<String> WHENCE = Set.of("left", "right", "behind", "rear", "crowd");

    /** In the same sentence: then that is what it is. */
    private static final Pattern DIVING = Pattern.compile("[^.\\n]*\\bdiv(?:e|es|ing)\\b");

    private static final int MOST_WHO = 3;

    private static final Names.Sense RUN_IN = Names.Sense.of("run-in");

    /**
     * The run-in that a line or sentence begins with that tells where the aircraft comes in from, as in "I come over the trees
     * from the left"; none if it tells nothing of it.
     */
    static List<Found> of(Text text, List<Word> words) {
        int at = 0;
        while (at < words.size()
                && at <= MOST_WHO
                && !COMING.contains(words.get(at).plain())) {
            at++;
        }
        boolean begins = !words.isEmpty() && isBegun(text, words.get(0).start());
        if (!begins
                || at > MOST_WHO
                || at + 1 >= words.size()
                || !ACROSS.contains(words.get(at + 1).plain())) {
            return List.of();
        }
        int from = at + 1;
        while (from < words.size() && !words.get(from).plain().equals("from")) {
            from++;
        }
        boolean isWhence = words.subList(from, words.size()).stream().anyMatch(word -> WHENCE.contains(word.plain()));
        boolean isDiving = !words.isEmpty()
                && DIVING.matcher(text.folded())
                        .region(words.get(0).start(), text.folded().length())
                        .lookingAt();
        return isWhence && !isDiving ? List.of(new Found(RUN_IN, at, at + 2)) : List.of();
    }

    private static boolean isBegun(Text text, int start) {
        return start == 0
                || text.written().charAt(start - 1) == '\n'
                || Character.isUpperCase(text.written().charAt(start));
    }

    /** A line that only says how the aircraft arrives is its arrival. */
    static boolean isSaid(Text text, List<Word> words) {
        if (words.isEmpty() || !ARRIVING.contains(words.get(0).plain())) {
            return false;
        }
        return isBegun(text, words.get(0).start())
                && words.subList(1, words.size()).stream().anyMatch(word -> WAYS.contains(word.plain()));
    }
}
