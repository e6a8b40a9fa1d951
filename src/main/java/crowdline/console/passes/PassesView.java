package crowdline.console.passes;

import crowdline.console.paint.Mark;
import java.util.List;

/**
 * The passes of one variant of an act.
 *
 * @param summary in a few words, such as "Passes: 3 of 4 teach"
 * @param figures what was learned of each figure, in the order flown; empty if nothing is predicted
 * @param passes in the order in which they were kept
 */
public record PassesView(String summary, List<FigureLine> figures, List<PassLine> passes) {
    /** Where nothing is known. */
    public static final PassesView NONE = new PassesView("No passes yet", List.of(), List.of());

    /**
     * A figure.
     *
     * @param predicted how long it was predicted to last
     * @param passes how many passes taught it; empty if none did
     * @param detail everything about it in a sentence
     */
    public record FigureLine(String predicted, String passes, String detail) {}

    /**
     * A pass.
     *
     * @param id its name in the file
     * @param title its number, how and when it was timed
     * @param note what somebody wrote about it
     * @param counts whether somebody had it count
     * @param mark what it does
     * @param odd what in it is unlike the other passes, in words
     */
    public record PassLine(String id, String title, String note, boolean counts, Mark mark, List<String> odd) {
        public PassLine {
            odd = List.copyOf(odd);
        }

        /** What a screen reader says. */
        public String spoken() {
            return title + ", " + mark.word() + (odd.isEmpty() ? "" : ". " + String.join("; ", odd))
                    + (note.isEmpty() ? "" : ". " + note);
        }
    }

    public PassesView {
        figures = List.copyOf(figures);
        passes = List.copyOf(passes);
    }

    /** Everything about the figure at a place in the order flown. */
    public String detail(int index) {
        return index >= 0 && index < figures.size() ? figures.get(index).detail() : summary;
    }
}
