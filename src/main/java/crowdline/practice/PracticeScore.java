package crowdline.practice;

import crowdline.live.event.LiveEvent;
import crowdline.loaded.ShowLookup;
import java.util.ArrayList;
import java.util.List;

/**
 * What became of a practice: one plain sentence for each thing, and no marks.
 *
 * @param lines by what they are about
 * @param counts how many things went well of how many, for those parts in which there were any
 */
public record PracticeScore(List<Line> lines, List<Count> counts) {
    /** There was nothing to do yet. */
    public static final PracticeScore NOTHING = new PracticeScore(List.of(), List.of());

    public PracticeScore {
        lines = List.copyOf(lines);
        counts = List.copyOf(counts);
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

    /**
     * How many things of a part went well.
     *
     * @param about changes of the plan, figures stepped, calls due, beginnings of figures heard, or duties due
     * @param well 0 to {@code of}
     * @param of 1 or more
     */
    public record Count(About about, int well, int of) {
        public Count {
            if (well < 0 || of < 1 || well > of) {
                throw new IllegalArgumentException(well + " of " + of + " cannot have gone well");
            }
        }
    }

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
            return NOTHING;
        }
        List<Count> counts = new ArrayList<>();
        List<Line> lines = new ArrayList<>(new PlanScore(flight, run).lines());
        if (!lines.isEmpty()) {
            counts.add(new Count(
                    About.PLAN, (int) lines.stream().filter(Line::well).count(), lines.size()));
        }
        lines.addAll(new StepScore(flight, run, words).lines(counts));
        lines.addAll(new TalkScore(flight, run, words).lines(counts));
        return new PracticeScore(lines, counts);
    }
}
