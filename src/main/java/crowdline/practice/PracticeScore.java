package crowdline.practice;

import crowdline.live.event.LiveEvent;
import crowdline.loaded.ShowLookup;
import java.util.ArrayList;
import java.util.List;

/**
 * What became of a practice: one plain sentence for each thing, and no marks.
 *
 * @param lines by what they are about
 */
public record PracticeScore(List<Line> lines) {
    public PracticeScore {
        lines = List.copyOf(lines);
    }

    /** What a line is about, in the order told. */
    public enum About {
        PLAN("When the plan broke"),
        STEPS("In step"),
        CALLS("Calls"),
        TALK("Talked over"),
        DUTIES("Duties");

        private final String title;

        About(String title) {
            this.title = title;
        }

        /** As a heading. */
        public String title() {
            return title;
        }
    }

    /**
     * One thing.
     *
     * @param well whether it was as it should be
     * @param words a whole sentence
     */
    public record Line(About about, boolean well, String words) {}

    /** The lines about something, in the order in which it happened. */
    public List<Line> about(About what) {
        return lines.stream().filter(l -> l.about() == what).toList();
    }

    /**
     * The score of a practice.
     *
     * @param words names, remarks and how long these take
     * @param events what happened in its session, in that order; what was refused changes nothing
     */
    public static PracticeScore of(PracticeFlight flight, ShowLookup words, List<? extends LiveEvent> events) {
        return of(flight, words, events, Double.POSITIVE_INFINITY);
    }

    /**
     * The score of a practice that was left.
     *
     * @param leftS when it was left, seconds of the practice; what there was no time left for is not told
     */
    public static PracticeScore of(
            PracticeFlight flight, ShowLookup words, List<? extends LiveEvent> events, double leftS) {
        PracticeRun run = PracticeRun.of(flight, events, leftS);
        if (flight.pieces().stream().noneMatch(p -> p.kind() != Piece.Kind.WAY && run.hadTimeAfter(p.fromS()))) {
            return new PracticeScore(List.of());
        }
        List<Line> lines = new ArrayList<>();
        lines.addAll(new PlanScore(flight, run).lines());
        lines.addAll(new StepScore(flight, run, words).lines());
        lines.addAll(new TalkScore(flight, run, words).lines());
        return new PracticeScore(lines);
    }
}
