package crowdline.list.piece;

import crowdline.list.draft.Draft;
import crowdline.list.name.Names;
import crowdline.list.split.Piece;
import crowdline.list.word.Manner;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.List;

/**
 * A piece and what was read in it.
 *
 * @param drafts one at least
 * @param words its words
 */
public record Heard(Piece piece, List<Draft> drafts, List<Word> words) {
    public boolean isFigure() {
        return drafts.get(0).isFigure();
    }

    /** A figure by a name that other things have too. */
    public boolean isWeak() {
        Names.Sense sense = drafts.get(0).sense();
        return sense != null && sense.weak();
    }

    /** Nothing but words that join. */
    public boolean isSilent() {
        return !isFigure()
                && !drafts.get(0).saysAnything()
                && drafts.get(0).notes().isEmpty();
    }

    /** Only says something of a figure that stands elsewhere. */
    public boolean isDetail() {
        return !isFigure()
                && drafts.get(0).saysAnything()
                && drafts.get(0).notes().isEmpty();
    }

    /** "150" alone. */
    public boolean isNumber() {
        return words.size() == 1 && words.get(0).number() != null;
    }

    public boolean beginsWith(Manner manner) {
        return !words.isEmpty() && manner.has(words.get(0));
    }

    /** Its plain words, one space between them. */
    public String said() {
        return String.join(" ", Words.plain(words));
    }

    public long notUnderstood() {
        return drafts.stream()
                .flatMap(draft -> draft.notes().stream())
                .flatMap(note -> Words.of(Words.folded(note)).stream())
                .filter(word -> !Manner.FILLER.has(word) && word.number() == null)
                .count();
    }

    /** Which of the pieces is the last figure; -1 if none is one. */
    public static int lastFigure(List<Heard> pieces) {
        int last = pieces.size() - 1;
        while (last >= 0 && !pieces.get(last).isFigure()) {
            last--;
        }
        return last;
    }
}
