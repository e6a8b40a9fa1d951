package crowdline.list;

import crowdline.list.draft.Draft;
import crowdline.list.piece.Heard;
import crowdline.list.split.Piece;
import crowdline.list.split.Sentence;
import crowdline.list.word.Text;
import crowdline.list.word.Word;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Points below points: what stands further in than the figures of a list says something of the figure above it. */
final class Nested {
    /** As many figures show where those of the list stand. */
    private static final int LEAST = 4;

    private final Set<Integer> inner = new HashSet<>();
    private final Set<Integer> further = new HashSet<>();

    Nested(Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        int outer = Integer.MAX_VALUE;
        for (int i = 0; i < sentences.size(); i++) {
            if (sentences.get(i).numbered() && heard.get(i).get(0).isFigure()) {
                outer = Math.min(outer, indent(text, sentences.get(i)));
            }
        }
        int figures = 0;
        int points = 0;
        int figuresWithin = 0;
        for (int i = 0; i < sentences.size(); i++) {
            int indent = indent(text, sentences.get(i));
            boolean isFigure = heard.get(i).stream().anyMatch(piece -> piece.isFigure() && !piece.isWeak());
            if (indent > outer + 1) {
                inner.add(i);
                figuresWithin += isFigure ? 1 : 0;
            } else if (sentences.get(i).numbered()) {
                points++;
                figures += isFigure ? 1 : 0;
            }
        }
        addFurtherOut(text, sentences, heard);
        boolean isNested = figures >= LEAST && figures * 3 >= points * 2 && figuresWithin * 2 <= inner.size();
        if (!isNested) {
            inner.clear();
        }
    }

    /** Points that tell something, as the paragraphs of a signal do, and have the list within one of them. */
    private void addFurtherOut(Text text, List<Sentence> sentences, List<List<Heard>> heard) {
        Map<Integer, Integer> figures = new HashMap<>();
        for (int i = 0; i < sentences.size(); i++) {
            if (sentences.get(i).numbered() && heard.get(i).get(0).isFigure()) {
                figures.merge(indent(text, sentences.get(i)), 1, Integer::sum);
            }
        }
        int listed = figures.entrySet().stream()
                .filter(indent -> indent.getValue() >= LEAST)
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElse(0);
        int line = -1;
        for (int i = 0; i < sentences.size(); i++) {
            boolean begins = sentences.get(i).numbered() && indent(text, sentences.get(i)) < listed - 1;
            line = begins ? sentences.get(i).line() : line;
            if (sentences.get(i).line() == line
                    && (!begins || heard.get(i).stream().noneMatch(Heard::isFigure))) {
                further.add(i);
            }
        }
    }

    /** Whether a sentence stands further out than the figures of the list, in a numbered point without one. */
    boolean isFurtherOut(int sentence) {
        return further.contains(sentence);
    }

    private static int indent(Text text, Sentence sentence) {
        return text.indent(sentence.pieces().get(0).from());
    }

    boolean isSaidOfTheOneAbove(int sentence) {
        return inner.contains(sentence);
    }

    /** Whether a piece stands further in than the name of a figure before it. */
    static boolean isFurtherIn(Piece piece, Draft figure, Text text) {
        List<Word> name = figure.name();
        return !name.isEmpty()
                && text.indent(piece.from()) > text.indent(name.get(0).start());
    }

    /** Whether a piece stands on the line that a figure ends on. */
    static boolean isOnTheLineOf(Draft figure, Piece piece, Text text) {
        return text.written()
                        .substring(Math.min(figure.end(), piece.from()), piece.from())
                        .indexOf('\n')
                < 0;
    }
}
