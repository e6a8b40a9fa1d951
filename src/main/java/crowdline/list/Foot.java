package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Uniform;
import crowdline.list.word.Word;
import java.util.List;
import java.util.regex.Pattern;

/** What stands below a list: who signs it, and which page it is. */
final class Foot {
    /** How letters in uniform end. */
    private static final Pattern VERY_RESPECTFULLY = Pattern.compile("v/?r[,.]?");

    private static final Pattern PAGE = Pattern.compile("page \\d{1,2}(?: ?(?:of|/) ?\\d{1,2})?");
    private static final Pattern RANKED =
            Pattern.compile(Uniform.RANK + "(?: [A-Z][\\p{L}'’-]*\\.?){1,3}" + Uniform.BEHIND + "[.,]?");
    private static final int LONGEST_NAME = 3;

    private Foot() {}

    static boolean takesLeave(String said) {
        return VERY_RESPECTFULLY.matcher(said).matches();
    }

    static boolean isOfAPage(String said) {
        return PAGE.matcher(said).matches();
    }

    /** "Squadron Leader (ret.) Ada Quillan": somebody in uniform, and nothing else. */
    static boolean isRanked(Sentence sentence, Text text) {
        return !sentence.numbered()
                && RANKED.matcher(text.written()
                                .substring(sentence.start(), sentence.end())
                                .strip())
                        .matches();
    }

    /** "Ring me. R": one letter behind a mail's list is somebody's name. */
    static boolean isAnInitial(List<Heard> pieces) {
        List<Word> words = pieces.get(0).words();
        return pieces.size() == 1
                && words.size() == 1
                && words.get(0).number() == null
                && words.get(0).end() - words.get(0).start() == 1;
    }

    /** "Sylvie" below a list with one figure on a line: no word of it may be flown. */
    static boolean isSignature(Sentence sentence, List<Heard> pieces, Text text) {
        return !sentence.numbered()
                && text.hasSmallLetters()
                && pieces.stream()
                        .noneMatch(piece -> piece.isFigure() || piece.isDetail() || Manner.FLOWN.hasAny(piece.words()));
    }

    /** "Arthur Pike" below a letter is nobody's aileron roll; "Loop" below its first thanks is one. */
    static boolean isSomebody(List<Heard> pieces, Text text) {
        List<Word> words = pieces.get(0).words();
        return pieces.size() == 1
                && !isNamed(pieces.get(0))
                && words.size() <= LONGEST_NAME
                && words.stream()
                        .allMatch(word -> Character.isUpperCase(text.written().charAt(word.start())));
    }

    /** A figure in its own words, not in words that are like them. */
    private static boolean isNamed(Heard piece) {
        return piece.isFigure()
                && !Beside.isGuess(piece)
                && piece.words().containsAll(piece.drafts().get(0).name());
    }
}
