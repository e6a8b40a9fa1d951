package crowdline.speech.plain;

import com.ibm.icu.text.BreakIterator;
import com.ibm.icu.text.FilteredBreakIteratorBuilder;
import com.ibm.icu.util.ULocale;
import java.util.ArrayList;
import java.util.List;

/**
 * Finds the sentences and words of a text by Unicode Standard Annex 29, with the full stops of abbreviations ("Mr.",
 * "approx.") and of quotations ("Look up!" she says) not taken for ends. Slow to make; safe to share between threads.
 */
public final class Sentences {

    private static final List<String> ABBREVIATIONS = List.of(
            "Mr.", "Mrs.", "Ms.", "Dr.", "Prof.", "Rev.", "St.", "Capt.", "Sgt.", "Lt.", "Cdr.", "Flt.", "Sqn.", "Ldr.",
            "Wg.", "Gp.", "Maj.", "Col.", "No.", "Nos.", "no.", "Mk.", "approx.", "Approx.", "e.g.", "i.e.", "vs.",
            "max.", "min.", "incl.", "ft.", "Jan.", "Feb.", "Aug.", "Sept.", "Oct.", "Nov.", "Dec.");

    private final BreakIterator sentences = sentenceBreaks();
    private final BreakIterator words = BreakIterator.getWordInstance(ULocale.UK);

    /** The sentences of a text in order, without the space around them; none for a text without words. */
    public List<TextSpan> in(String text) {
        List<TextSpan> found = new ArrayList<>();
        int start = 0;
        for (int end : breaks(sentences, text)) {
            boolean goesOn = end < text.length() && startsInLowerCase(text, end);
            if (!goesOn) {
                addTrimmed(found, text, start, end);
                start = end;
            }
        }
        addTrimmed(found, text, start, text.length());
        return List.copyOf(found);
    }

    /** The words of a text in order: what has a letter or a digit. */
    public List<TextSpan> wordsIn(String text) {
        List<TextSpan> found = new ArrayList<>();
        int start = 0;
        for (int end : breaks(words, text)) {
            if (hasWord(text, start, end)) {
                found.add(new TextSpan(start, end));
            }
            start = end;
        }
        return List.copyOf(joinHyphens(found, text));
    }

    /** The trade writes "half-and-half" as one word, and it is read as one. */
    private static List<TextSpan> joinHyphens(List<TextSpan> words, String text) {
        List<TextSpan> joined = new ArrayList<>(words.size());
        for (TextSpan word : words) {
            TextSpan last = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (last != null && word.fromChar() == last.toChar() + 1 && text.charAt(last.toChar()) == '-') {
                joined.set(joined.size() - 1, new TextSpan(last.fromChar(), word.toChar()));
            } else {
                joined.add(word);
            }
        }
        return joined;
    }

    private static BreakIterator sentenceBreaks() {
        FilteredBreakIteratorBuilder builder = FilteredBreakIteratorBuilder.getInstance(ULocale.ENGLISH);
        ABBREVIATIONS.forEach(builder::suppressBreakAfter);
        return builder.wrapIteratorWithFilter(BreakIterator.getSentenceInstance(ULocale.UK));
    }

    private static List<Integer> breaks(BreakIterator shared, String text) {
        BreakIterator iterator;
        synchronized (shared) {
            iterator = shared.clone();
        }
        iterator.setText(text);
        List<Integer> ends = new ArrayList<>();
        iterator.first();
        for (int end = iterator.next(); end != BreakIterator.DONE; end = iterator.next()) {
            ends.add(end);
        }
        return ends;
    }

    private static boolean startsInLowerCase(String text, int from) {
        int i = from;
        while (i < text.length() && Character.isWhitespace(text.charAt(i))) {
            i++;
        }
        return i < text.length() && Character.isLowerCase(text.charAt(i));
    }

    private static void addTrimmed(List<TextSpan> found, String text, int from, int to) {
        int start = from;
        int end = to;
        while (start < end && Character.isWhitespace(text.charAt(start))) {
            start++;
        }
        while (end > start && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        if (hasWord(text, start, end)) {
            found.add(new TextSpan(start, end));
        }
    }

    private static boolean hasWord(String text, int from, int to) {
        return text.substring(from, to).codePoints().anyMatch(Character::isLetterOrDigit);
    }
}
