package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.piece.Heard;
import crowdline.list.split.Asides;
import crowdline.list.word.Text;
import java.util.List;

/** "Loop, roll, spin. No, scrap that: loop, spin, roll": from the same figure on it is said anew. */
final class Anew {
    private Anew() {}

    /**
     * Takes out what was said from the last figure on that a piece behind a slip names again, in the same line of the text.
     *
     * @return how many figures were taken out
     */
    static int begin(List<Draft> lines, Heard heard, Text text, Asides asides) {
        for (int i = lines.size() - 1; i >= 0 && Nested.isOnTheLineOf(lines.get(i), heard.piece(), text); i--) {
            if (Exchanges.isSame(lines.get(i), heard.drafts().get(0))) {
                List<Draft> old = List.copyOf(lines.subList(i, lines.size()));
                lines.removeAll(old);
                old.forEach(draft -> draft.eachSpan(asides::add));
                return (int) old.stream().filter(Draft::isFigure).count();
            }
        }
        return 0;
    }
}
