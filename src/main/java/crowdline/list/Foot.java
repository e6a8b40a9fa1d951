package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Uniform;
import crowdline.list.word.Word;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands below a list: who signs it, and which page it is. */
final class Foot {
    /** How letters in uniform end. */
    private static final Pattern VERY_RESPECTFULLY = Pattern.compile("v/?r[,.]?");

    private static final Pattern PAGE = Pattern.compile(
            "(?:.{0,90}(?:\\s{2,}|\\s[-–—|·]\\s))?page \\d{1,3}(?: ?(?:of|/) ?\\d{1,3})?\\.?|[-–—] ?\\d{1,3} ?[-–—]");
    private static final Pattern RANKED =
            Pattern.compile(Uniform.RANK + "(?: [A-Z][\\p{L}'’-]*\\.?){1,3}" + Uniform.BEHIND + "[.,]?");
    /** "In charge: Ada Quillan": a label and somebody's name, and nothing else. */
    private static final Pattern LABELLED =
            Pattern.compile("\\P{L}{0,4}(?<label>[\\p{L}][\\p{L} /.'-]{0,24}?)\\s?[:=]\\s+(?:" + Uniform.RANK
                    + " )?[A-Z][\\p{L}'’-]*\\.?(?: (?:de|van|von|der|la|le) )?(?: [A-Z][\\p{L}'’-]+){1,3}[.,]?");

    /** "FIRST HALF (six together)", "Part 2". */
    private static final Pattern PART = Pattern.compile(
            "\\W*(?:(?:first|second|third|last|final|1st|2nd|3rd) (?:half|part|section|phase|block|segment)"
                    + "|(?:part|section|phase|block|segment|minute) (?:\\d{1,2}|one|two|three|four|five|[a-c]|i{1,3}))\\W*(?:\\([^)\\n]*\\))?\\W*");

    /** "D. R. Quillan." */
    private static final Pattern WITH_INITIALS =
            Pattern.compile("(?:[A-Z]\\. ?){2,3}[A-Z][\\p{L}'’]+(?:[- ][A-Z][\\p{L}'’]+)?[.,]?");

    /** "1415L." */
    private static final Pattern HOUR = Pattern.compile(
            "\\W*(?:\\d{4} ?(?:l|lt|z|local|hrs?|hours|h)|(?:[7-9]|[012]\\d)[:.h][0-5]\\d ?(?:l|lt|z|local|hrs?|hours|h|[ap]m)?)\\W*");

    /** "## Phase 2": a heading of a text with marks. */
    private static final Pattern MARKED_HEAD = Pattern.compile("#{2,4}\\s.*", Pattern.DOTALL);

    /** "A axis = along the crowd, B axis = across": what letters mean. */
    private static final Pattern LEGEND =
            Pattern.compile("\\W*\\p{L}{1,2}(?: axis)? ?= ?[^,;=\\n]+(?:[,;] ?\\p{L}{1,2}(?: axis)? ?= ?[^,;=\\n]+)+");

    /** "PART THREE - REJOIN AND FINISH", in capitals among other lines. */
    private static final Pattern PART_IN_CAPITALS = Pattern.compile(
            "(?:PART|SECTION|PHASE|BLOCK|SEGMENT) (?:[A-Z]{1,5}|\\d) ?[-–—:] ?[A-Z][A-Z '&()\\d-]{2,60}");

    /** What a telephone writes for a picture, and a word that was spelt wrong in the message before. */
    private static final Pattern OF_A_MESSAGE = Pattern.compile("<[^<>\\n]{3,40}>|\\*\\p{L}+");

    private static final int LONGEST_NAME = 3;

    private Foot() {}

    /** Whether all of a sentence says who does something, and nobody flies a figure of that name. */
    private static boolean isLabelled(Sentence sentence, List<Heard> pieces, Text text) {
        Matcher labelled = LABELLED.matcher(sentence.written(text));
        Heard last = pieces.get(pieces.size() - 1);
        Heard first = pieces.get(0);
        return labelled.matches()
                && !last.isFigure()
                && !last.drafts().get(0).saysAnything()
                && !Manner.FLOWN.hasAny(last.words())
                && (!first.isFigure() || labelled.group("label").indexOf('/') > 0)
                && first.words().stream().noneMatch(word -> Manner.LABEL.has(word) || Manner.FLOWN.has(word));
    }

    /** Whether a sentence is a line of dashes or the like. */
    static boolean isOfSignsAlone(Sentence sentence, List<Heard> pieces, Text text) {
        return pieces.stream().allMatch(piece -> piece.words().isEmpty())
                && sentence.written(text).chars().noneMatch(Character::isLetterOrDigit);
    }

    /** "…, spin. Cheers, Ada Quillan-Howe": the piece with which somebody signs a line; as many as there are if nobody does. */
    static int signedAt(List<Heard> pieces, Text text) {
        for (int i = 0; i + 1 < pieces.size(); i++) {
            List<Word> words = pieces.get(i).words();
            List<Heard> behind = pieces.subList(i + 1, pieces.size());
            if (!words.isEmpty()
                    && words.stream().allMatch(Manner.PARTING::has)
                    && (isSomebody(behind, text) || (i == 0 && behind.stream().noneMatch(Foot::isNamed)))) {
                return i;
            }
        }
        return pieces.size();
    }

    static boolean takesLeave(String said) {
        return VERY_RESPECTFULLY.matcher(said).matches();
    }

    /** Whether all of a sentence is the number of a page, an hour, the head of a part, or who does something. */
    static boolean isNothingFlown(String said, Sentence sentence, List<Heard> pieces, Text text) {
        return PAGE.matcher(said).matches()
                || OF_A_MESSAGE.matcher(said).matches()
                || MARKED_HEAD.matcher(said).matches()
                || LEGEND.matcher(said).matches()
                || Form.asks(said, pieces)
                || PART.matcher(said).matches()
                || (!sentence.numbered() && HOUR.matcher(said).matches())
                || (!sentence.numbered() && Facts.isOfMusic(pieces.get(0)))
                || WITH_INITIALS.matcher(sentence.written(text)).matches()
                || (text.hasSmallLetters()
                        && PART_IN_CAPITALS.matcher(sentence.written(text)).matches())
                || isLabelled(sentence, pieces, text);
    }

    /** "Squadron Leader (ret.) Ada Quillan": somebody in uniform, and nothing else. */
    static boolean isRanked(Sentence sentence, Text text) {
        return !sentence.numbered() && RANKED.matcher(sentence.written(text)).matches();
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
        return pieces.stream()
                        .skip(1)
                        .allMatch(piece -> piece.isDetail()
                                && Overlong.isOfTheAct(piece.drafts().get(0)))
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
