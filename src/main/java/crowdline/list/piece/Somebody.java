package crowdline.list.piece;

import crowdline.list.name.Spelling;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/** Names of people and of what they fly, which are no misspelt figures. */
final class Somebody {
    private static final Set<String> TITLES =
            Set.of("Mr", "Mrs", "Ms", "Miss", "Dr", "Sir", "Dame", "Capt", "Cpt", "Herr", "Frau");

    private static final Set<String> ARTICLES = Set.of("a", "an", "the", "my", "our", "his", "her");

    /** A name with as many letters is near to some figure's by chance. */
    private static final int SHORTEST_SPELT = 4;

    /** "The Merrow 300": what flies, with the number behind its name. */
    private static final Pattern BEFORE_TYPE = Pattern.compile("(?s).*\\b(?:the|my|our|an?|his|her|this) ");

    private static final Pattern BEHIND_TYPE = Pattern.compile(
            "(?si)[ -]\\d{1,4}\\b(?! ?(?:kts?|knots|ft|feet|m|km|s|secs?|g|turns?|points?|pt|x|times|deg|°)\\b).*");

    /** "Pilot", and the longest name behind it. */
    private static final int LONGEST_NAMED = 4;

    private static final Set<String> CALLING = Set.of("it's", "its", "it", "i'm", "is", "im", "here");

    private static final int LAST_CALLER = 3;

    private final Spelling spelling;

    Somebody(Spelling spelling) {
        this.spelling = spelling;
    }

    /** Whether a word of a piece is the name of somebody. */
    boolean is(Text text, List<Word> piece, int at) {
        return isWithinALine(text, piece.get(at))
                || isSurname(text, piece, at)
                || isType(text, piece.get(at))
                || isNamed(text, piece, at)
                || isAddress(piece, at)
                || (at > 0 && (isAddress(piece, at - 1) || isPilot(piece) || isCaller(piece, at)));
    }

    /** "Saludos, Nuria": neither word is misspelt. */
    static boolean isAddress(List<Word> words, int at) {
        return Manner.GREETING.has(words.get(at)) || (at == 0 && Manner.PARTING.has(words.get(at)));
    }

    /** "PILOT NEV CARDLE" flies no circle. */
    private static boolean isPilot(List<Word> words) {
        return words.size() <= LONGEST_NAMED && words.get(0).plain().equals("pilot");
    }

    /** "Hi it's Cass": somebody's name is no pass. */
    private static boolean isCaller(List<Word> words, int at) {
        return at <= LAST_CALLER
                && Manner.GREETING.has(words.get(0))
                && CALLING.contains(words.get(at - 1).plain());
    }

    /** The second of two names that are all of a piece: "Bryony Lund" is no landing. */
    private boolean isSurname(Text text, List<Word> piece, int at) {
        if (piece.size() != 2 || at != 1 || !text.hasSmallLetters()) {
            return false;
        }
        Word first = piece.get(0);
        return isCapital(text, first)
                && isCapital(text, piece.get(1))
                && !spelling.isKnown(first)
                && !spelling.isEveryday(first)
                && spelling.nearest(first).isEmpty();
    }

    /** "A Merrow Kestrine": within a sentence, two capitals behind an article are a name; so is the second of "leader Bo Stell". */
    private boolean isNamed(Text text, List<Word> piece, int at) {
        boolean isSecond = at > 1
                && text.hasSmallLetters()
                && isCapital(text, piece.get(at))
                && isCapital(text, piece.get(at - 1))
                && !isCapital(text, piece.get(0))
                && !spelling.isKnown(piece.get(at - 1))
                && Character.isLetter(piece.get(at - 1).plain().charAt(0));
        return isSecond || isNamedBehindAnArticle(text, piece, at);
    }

    private boolean isNamedBehindAnArticle(Text text, List<Word> piece, int at) {
        return at > 0
                && at + 1 < piece.size()
                && text.hasSmallLetters()
                && ARTICLES.contains(piece.get(at - 1).plain())
                && !isCapital(text, piece.get(at - 1))
                && isCapital(text, piece.get(at))
                && isCapital(text, piece.get(at + 1))
                && !spelling.isKnown(piece.get(at + 1));
    }

    /** Whether a word is the name of an aircraft, with a number behind it. */
    static boolean isType(Text text, Word word) {
        String written = text.written();
        return isCapital(text, word)
                && BEFORE_TYPE
                        .matcher(written.substring(Math.max(0, word.start() - 6), word.start()))
                        .matches()
                && BEHIND_TYPE
                        .matcher(written.substring(word.end(), Math.min(written.length(), word.end() + 12)))
                        .matches();
    }

    private static boolean isCapital(Text text, Word word) {
        return Character.isUpperCase(text.written().charAt(word.start()));
    }

    /** "Rolf" within a line is no misspelt roll. */
    private static boolean isWithinALine(Text text, Word word) {
        String written = text.written();
        int before = word.start() - 1;
        while (before >= 0 && written.charAt(before) == ' ') {
            before--;
        }
        boolean isWithin = before >= 0
                && (Character.isLetter(written.charAt(before)) || written.charAt(before) == '.')
                && before < word.start() - 1;
        return isWithin
                && word.end() - word.start() <= SHORTEST_SPELT
                && Character.isUpperCase(written.charAt(word.start()))
                && written.substring(word.start() + 1, word.end()).chars().allMatch(Character::isLowerCase)
                && (!Character.isUpperCase(written.charAt(begin(written, before)))
                        || TITLES.contains(written.substring(begin(written, before), before + 1)));
    }

    /** Where the word begins that ends at a place. */
    private static int begin(String written, int at) {
        int begin = at;
        while (begin > 0 && Character.isLetter(written.charAt(begin - 1))) {
            begin--;
        }
        return begin;
    }
}
