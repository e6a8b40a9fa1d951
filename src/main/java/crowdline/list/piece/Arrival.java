package crowdline.list.piece;

import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;

/** How somebody says that an aircraft arrives: "Arrive L to R at 110 kt". */
final class Arrival {
    private static final Set<String> ARRIVING = Set.of("enter", "arrive", "arriving", "arrival");

    private static final Set<String> WAYS = Set.of("from", "lefttoright", "righttoleft");

    private Arrival() {}

    /** A line that only says how the aircraft arrives is its arrival. */
    static boolean isSaid(Text text, List<Word> words) {
        if (words.isEmpty() || !ARRIVING.contains(words.get(0).plain())) {
            return false;
        }
        int from = words.get(0).start();
        boolean begins = from == 0
                || text.written().charAt(from - 1) == '\n'
                || Character.isUpperCase(text.written().charAt(from));
        return begins && words.subList(1, words.size()).stream().anyMatch(word -> WAYS.contains(word.plain()));
    }
}
