package crowdline.list.piece;

import crowdline.list.word.Manner;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Finds what nobody understood of a piece. */
public final class LeftOver {
    private LeftOver() {}

    /** The stretches nobody understood, as they were written; what only joins words is left out. */
    static List<String> of(Text text, List<Word> words, boolean[] taken) {
        List<String> left = new ArrayList<>();
        int i = 0;
        while (i < words.size()) {
            int end = i;
            while (end < words.size() && !taken[end]) {
                end++;
            }
            stretch(words.subList(i, end), text, left);
            i = Math.max(end, i + 1);
        }
        return left;
    }

    /** From the first word that nobody understood to the last, with what stands between them: a name, as it was written. */
    static List<String> whole(Text text, List<Word> words, boolean[] taken) {
        int first = 0;
        int last = words.size();
        while (first < last && (taken[first] || (isSilent(words.get(first)) && !isMeant(words.get(first))))) {
            first++;
        }
        while (last > first && taken[last - 1]) {
            last--;
        }
        List<String> left = new ArrayList<>();
        if (first < last) {
            stretch(words.subList(first, last), text, left);
        }
        return left;
    }

    private static void stretch(List<Word> words, Text text, List<String> left) {
        int from = 0;
        int to = words.size();
        if (words.stream().allMatch(LeftOver::isSilent)) {
            return;
        }
        while (isJoining(words.get(to - 1))) {
            to--;
        }
        while (isSilent(words.get(from)) && !isMeant(words.get(from))) {
            from++;
        }
        int start = words.get(from).start();
        int end = words.get(to - 1).end();
        String written = text.written();
        boolean isOpen = written.indexOf('(', start) >= 0
                && written.lastIndexOf('(', end) > written.lastIndexOf(')', end - 1)
                && written.lastIndexOf('(', end) >= start;
        left.add(written.substring(
                start, isOpen && end < written.length() && written.charAt(end) == ')' ? end + 1 : end));
    }

    /** Whether a word says nothing by itself. */
    public static boolean isSilent(Word word) {
        return Manner.FILLER.has(word)
                || !Character.isLetterOrDigit(word.plain().charAt(0));
    }

    /** Whether a word only joins what stands around it. */
    static boolean isJoining(Word word) {
        return !Character.isLetterOrDigit(word.plain().charAt(0))
                || Set.of("a", "the", "and", "then", "to", "with", "for", "of", "into", "at", "in")
                        .contains(word.plain());
    }

    /** "with", "from" and "to" say how the rest is meant. */
    private static boolean isMeant(Word word) {
        return Set.of("with", "from", "to", "on", "at", "in", "around", "through")
                .contains(word.plain());
    }
}
