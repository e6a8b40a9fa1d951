package crowdline.list.piece;

import crowdline.list.name.Names;
import crowdline.list.word.Word;
import crowdline.list.word.Words;
import java.util.List;

/**
 * A figure's name in a piece.
 *
 * @param from its first word
 * @param to the word behind its last
 */
record Found(Names.Sense sense, int from, int to) {
    /** The plain words of it, of those of the piece. */
    List<String> plain(List<Word> words) {
        return Words.plain(words.subList(from, to));
    }
}
