package crowdline.speech.plain;

import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.util.ULocale;
import java.util.ArrayList;
import java.util.List;

/** The judge: ICU's rules for the same annex, which know no abbreviations. */
final class IcuSentences {

    private static final BreakIterator SENTENCES = BreakIterator.getSentenceInstance(ULocale.UK);
    private static final BreakIterator WORDS = BreakIterator.getWordInstance(ULocale.UK);

    private IcuSentences() {}

    static List<String> sentencesIn(String text) {
        List<String> found = new ArrayList<>();
        int start = 0;
        for (int end : ends(SENTENCES, text)) {
            String next = text.substring(end).strip();
            boolean goesOn = !next.isEmpty() && Character.isLowerCase(next.charAt(0));
            if (!goesOn) {
                String sentence = text.substring(start, end).strip();
                if (hasWord(sentence)) {
                    found.add(sentence);
                }
                start = end;
            }
        }
        return found;
    }

    static List<String> wordsIn(String text) {
        List<String> found = new ArrayList<>();
        int start = 0;
        boolean hyphen = false;
        boolean afterWord = false;
        for (int end : ends(WORDS, text)) {
            String part = text.substring(start, end);
            if (hasWord(part)) {
                int last = found.size() - 1;
                if (hyphen) {
                    found.set(last, found.get(last) + "-" + part);
                } else {
                    found.add(part);
                }
                hyphen = false;
            } else {
                hyphen = afterWord && part.equals("-");
            }
            afterWord = hasWord(part);
            start = end;
        }
        return found;
    }

    private static List<Integer> ends(BreakIterator breaks, String text) {
        breaks.setText(text);
        List<Integer> ends = new ArrayList<>();
        breaks.first();
        for (int end = breaks.next(); end != BreakIterator.DONE; end = breaks.next()) {
            ends.add(end);
        }
        return ends;
    }

    private static boolean hasWord(String text) {
        return text.codePoints().anyMatch(Character::isLetterOrDigit);
    }
}
