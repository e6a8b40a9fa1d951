package crowdline.live.debrief;

import crowdline.live.event.Source;
import crowdline.live.state.Announced;
import crowdline.live.state.IncidentSpan;
import crowdline.live.state.LiveState;
import crowdline.live.state.Note;
import crowdline.show.Show;
import crowdline.show.figure.RemarkKind;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was flown and said, against what was planned. Times are seconds on the session's scale where the name says so,
 * otherwise seconds of the act.
 *
 * @param showTitle title of the show
 * @param runs acts that were flown, in the order flown; the last may still be in the air
 * @param remarks remarks of the show, which belong to no act
 * @param incidents when the incident page was open
 * @param announcements when which announcement was shown, and read out
 * @param notes what was written down
 * @param changes what to change, each in one sentence
 * @param day the day as a whole
 */
public record Debrief(
        String showTitle,
        List<Run> runs,
        List<RemarkRun> remarks,
        List<IncidentSpan> incidents,
        List<Announced.Page> announcements,
        List<Note> notes,
        List<String> changes,
        DayRun day) {

    /**
     * One act as it was flown.
     *
     * @param run which run of this act, from 1
     * @param sessionStartS when it began, on the session's scale
     * @param sessionEndS when it ended, or null if it is in the air
     * @param plannedS how long it was planned to take, or null if nobody predicted it
     * @param figures in the order flown, then those that were not
     * @param offPlan stretches off the plan
     * @param remarks of its figures in their order, then of the act
     */
    public record Run(
            String actId,
            String title,
            String variant,
            int run,
            double sessionStartS,
            @Nullable Double sessionEndS,
            @Nullable Double plannedS,
            List<FigureRun> figures,
            List<OffPlan> offPlan,
            List<RemarkRun> remarks) {
        public Run {
            figures = List.copyOf(figures);
            offPlan = List.copyOf(offPlan);
            remarks = List.copyOf(remarks);
        }

        /** How long it was flown, or null while it is in the air. */
        public @Nullable Double flownS() {
            return sessionEndS == null ? null : sessionEndS - sessionStartS;
        }
    }

    /** What became of a figure. */
    public enum Fate {
        FLOWN,
        /** Flown in another place than the variant has it, because two were swapped. */
        SWAPPED,
        /** Flown although it had been flown before. */
        AGAIN,
        /** Left out on purpose. */
        DROPPED,
        NOT_FLOWN
    }

    /**
     * A figure, planned and flown.
     *
     * @param plannedStartS when it was to begin, or null
     * @param plannedS how long it was to last, or null
     * @param startS when it began, or null if it was not flown
     * @param flownS how long it lasted without the time its clock was held, or null
     * @param heldS how long its clock was held
     * @param mark how its start was marked, or null if it was not flown
     * @param measured true if hand or aircraft marked both its ends, so that its length says something
     */
    public record FigureRun(
            String figureId,
            String name,
            Fate fate,
            @Nullable Double plannedStartS,
            @Nullable Double plannedS,
            @Nullable Double startS,
            @Nullable Double flownS,
            double heldS,
            @Nullable Source mark,
            boolean measured) {

        /** How much later than planned it began, or null if either is unknown. */
        public @Nullable Double lateS() {
            return startS == null || plannedStartS == null ? null : startS - plannedStartS;
        }

        /** How much longer than planned it lasted, or null if either is unknown. */
        public @Nullable Double longerS() {
            return flownS == null || plannedS == null ? null : flownS - plannedS;
        }
    }

    /** A stretch off the plan. */
    public record OffPlan(double fromS, double toS) {}

    /** What is known of a remark. */
    public enum Told {
        SAID,
        SKIPPED,
        /** Begun by a key, and something else came before it was over. */
        CUT_SHORT,
        /** Taken by a key, and on the screen for its time; no key said that it was said. */
        SHOWN,
        /** No key was pressed for it; it may have been said. */
        NOT_MARKED
    }

    /**
     * A remark and what became of it.
     *
     * @param figureId the figure it belongs to, or null
     * @param shortForm true if it was said in its short form
     * @param sessionAtS when it was marked, on the session's scale, or null
     */
    public record RemarkRun(
            String remarkId,
            RemarkKind kind,
            String text,
            @Nullable String figureId,
            Told told,
            boolean shortForm,
            @Nullable Double sessionAtS) {}

    public Debrief {
        runs = List.copyOf(runs);
        remarks = List.copyOf(remarks);
        incidents = List.copyOf(incidents);
        announcements = List.copyOf(announcements);
        notes = List.copyOf(notes);
        changes = List.copyOf(changes);
    }

    /** Every remark of a kind in the show and all runs. */
    public List<RemarkRun> remarks(RemarkKind kind) {
        List<RemarkRun> all = new ArrayList<>();
        runs.forEach(r -> all.addAll(r.remarks()));
        all.addAll(remarks);
        return all.stream().filter(r -> r.kind() == kind).toList();
    }

    /** The debrief of a running show, or of one that is over. */
    public static Debrief of(Show show, LiveState state, DebriefSources sources) {
        List<Run> runs = new DebriefRuns(show, state, sources).all();
        return new Debrief(
                show.title(),
                runs,
                show.remarks().stream()
                        .map(r -> DebriefRuns.remark(r, null, state.talk().entries().stream()))
                        .toList(),
                state.incidents(),
                state.announced().pages(),
                state.notes(),
                new DebriefChanges(show, sources).of(runs, state),
                DayRun.of(show, state, runs, sources));
    }
}
