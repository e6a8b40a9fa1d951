package crowdline.list.piece;

import crowdline.list.draft.Detail;
import crowdline.list.draft.Draft;
import crowdline.list.name.Spelling;
import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Finds the one figure that a piece may name in words of everyday English, each of which is then a slip: "tale slied", "lop". */
final class Misspelt {
    /** So many letters are no other word by chance. */
    private static final int LONG_WORD = 6;

    private static final int MOST_WORDS = 8;

    /**
     * What is guessed.
     *
     * @param words the piece as it is meant
     * @param isDoubtful whether a word was changed that is short enough to be another by chance
     */
    record Guess(List<Word> words, Found found, boolean isDoubtful) {}

    private final Spelling spelling;
    private final Naming naming;

    Misspelt(Spelling spelling, Naming naming) {
        this.spelling = spelling;
        this.naming = naming;
    }

    /**
     * The guess; null if there is none, or several.
     *
     * @param read what the piece says as it stands
     */
    @Nullable
    Guess guess(Text text, List<Word> words, Draft read) {
        boolean stands = (read.says(Detail.ENTRY_KT) && !read.isFigure())
                || words.stream().anyMatch(this::isTradeWord);
        boolean isShort = words.stream().allMatch(word -> word.plain().length() < LONG_WORD);
        boolean isAName = isShort
                && words.size() == 2
                && (words.stream().anyMatch(spelling::isKnown) || joined(words).size() == 1);
        boolean isALetterShort =
                !words.isEmpty() && words.size() <= 2 && words.stream().allMatch(this::isALetterShort);
        if (words.size() > MOST_WORDS
                || (!stands && isShort && !isAName && !isALetterShort)
                || tellsOfASpeed(words, read)
                || (!words.isEmpty() && (Somebody.isAddress(words, 0) || Manner.HEADING.has(words.get(0))))) {
            return null;
        }
        List<Word> spelt = words.stream()
                .map(word -> isMeant(text, word) ? word : spelt(word))
                .toList();
        List<Found> found = spelt.equals(words) ? List.of() : naming.of(spelt);
        if (found.isEmpty() && !read.isFigure()) {
            spelt = joined(words);
            found = spelt.equals(words) ? List.of() : naming.of(spelt);
        }
        if (found.size() != 1
                || (!stands && isAName && found.get(0).to() - found.get(0).from() < spelt.size())) {
            return null;
        }
        boolean isDoubtful = false;
        for (int i = 0; i < words.size() && spelt.size() == words.size(); i++) {
            isDoubtful |=
                    !spelt.get(i).equals(words.get(i)) && words.get(i).plain().length() < LONG_WORD;
        }
        return new Guess(spelt, found.get(0), isDoubtful);
    }

    private static boolean isMeant(Text text, Word word) {
        return Manner.DESCRIBING.has(word) || Manner.SENTENCE.has(word) || Somebody.isType(text, word);
    }

    private Word spelt(Word word) {
        return spelling.nearest(word)
                .filter(near -> Character.isLetter(near.charAt(0)))
                .map(word::spelt)
                .orElse(word);
    }

    /** "Lop": a name from which one letter was lost. */
    private boolean isALetterShort(Word word) {
        return !Manner.isAny(word.plain())
                && spelling.nearest(word)
                        .filter(near ->
                                Spelling.isALetterShort(word.plain(), near) && spelling.mayName(word.spelt(near)))
                        .isPresent();
    }

    /** "Hamer head": two words of which one is meant. */
    private List<Word> joined(List<Word> words) {
        List<Word> joined = new ArrayList<>(words);
        for (int i = 0; i + 1 < joined.size(); i++) {
            Word both = new Word(
                    joined.get(i).plain() + joined.get(i + 1).plain(),
                    joined.get(i).start(),
                    joined.get(i + 1).end(),
                    null);
            boolean areMeant = spelling.isKnown(joined.get(i)) && spelling.isKnown(joined.get(i + 1));
            Word near = areMeant || both.plain().length() < LONG_WORD ? both : spelt(both);
            if (Spelling.isALetterShort(both.plain(), near.plain())) {
                joined.set(i, near);
                joined.remove(i + 1);
            }
        }
        return joined;
    }

    /** "100 knots is all she will give me": of everyday words none is a misspelt dive. */
    private boolean tellsOfASpeed(List<Word> words, Draft read) {
        return read.says(Detail.ENTRY_KT)
                && Manner.SENTENCE.hasAny(words)
                && words.stream().allMatch(word -> word.number() != null || spelling.isEveryday(word));
    }

    private boolean isTradeWord(Word word) {
        return word.number() == null && word.plain().length() > 3 && !LeftOver.isSilent(word) && spelling.isKnown(word);
    }
}
