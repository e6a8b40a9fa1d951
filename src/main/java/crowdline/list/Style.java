package crowdline.list;

import crowdline.list.piece.Heard;
import crowdline.list.split.Sentence;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How a list is written.
 *
 * @param isMarked whether numbers or bullets mark what is flown
 * @param figureEachLine whether a line has one figure as a rule
 * @param onlyLine the line that has nearly all that is flown, as in the minutes of a briefing; -1 if none has
 */
record Style(boolean isMarked, boolean figureEachLine, int onlyLine) {
    /** Fewer lines do not show how a list is written. */
    static final int LEAST_LINES = 4;

    /** As many figures in one line are a list. */
    private static final int LEAST_IN_ONE = 5;

    static Style of(List<Sentence> sentences, List<List<Heard>> heard) {
        return new Style(isMarked(sentences, heard), isFigureEachLine(heard), onlyLine(sentences, heard));
    }

    /** Whether a sentence stands beside the one line that has the list. */
    boolean isElsewhere(Sentence sentence) {
        return onlyLine >= 0 && sentence.line() != onlyLine;
    }

    private static int onlyLine(List<Sentence> sentences, List<List<Heard>> heard) {
        Map<Integer, Long> figures = new HashMap<>();
        for (int i = 0; i < sentences.size(); i++) {
            long count = heard.get(i).stream().filter(Heard::isFigure).count();
            figures.merge(sentences.get(i).line(), count, Long::sum);
        }
        long all = figures.values().stream().mapToLong(Long::longValue).sum();
        return figures.entrySet().stream()
                .filter(line -> line.getValue() >= LEAST_IN_ONE && line.getValue() * 4 >= all * 3)
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(-1);
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
