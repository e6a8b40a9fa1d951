package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import java.util.List;

/**
 * How a list is written.
 *
 * @param isMarked whether numbers or bullets mark what is flown
 * @param figureEachLine whether a line has one figure as a rule
 */
record Style(boolean isMarked, boolean figureEachLine) {
    /** Fewer lines do not show how a list is written. */
    private static final int LEAST_LINES = 4;

    static Style of(List<Sentence> sentences, List<List<Heard>> heard) {
        return new Style(isMarked(sentences, heard), isFigureEachLine(heard));
    }

    /** Whether most lines that have a figure have no other, so that a comma in them parts a figure from what is said of it. */
    private static boolean isFigureEachLine(List<List<Heard>> sentences) {
        List<Long> figures = sentences.stream()
                .map(pieces -> pieces.stream().filter(Heard::isFigure).count())
                .filter(count -> count > 0)
                .toList();
        return figures.size() >= LEAST_LINES
                && figures.stream().filter(count -> count == 1).count() * 3 >= figures.size() * 2L;
    }

    /** Whether numbers or bullets mark most of what is flown. */
    private static boolean isMarked(List<Sentence> sentences, List<List<Heard>> heard) {
        int marked = 0;
        int figures = 0;
        for (int i = 0; i < sentences.size(); i++) {
            if (heard.get(i).stream().anyMatch(Heard::isFigure)) {
                figures++;
                marked += sentences.get(i).numbered() ? 1 : 0;
            }
        }
        return marked >= LEAST_LINES && marked * 3 >= figures * 2;
    }
}
