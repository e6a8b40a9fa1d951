package crowdline.live.debrief;

import crowdline.live.event.Source;
import crowdline.live.state.Flown;
import crowdline.live.state.FlownAct;
import crowdline.live.state.Note;
import crowdline.timing.Pass;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What a run in a show says about how long figures last. */
public final class LivePass {
    private LivePass() {}

    /**
     * The pass in an act that is over: its figures whose start and end were both marked by hand, that were followed by
     * the next one of the plan, and whose clock was not held. A boundary the clock made repeats what was believed
     * already; a jump, going off the plan or breaking the act off does not say when the figure before was over.
     *
     * @param id the new pass's own name
     * @param begunAt when the act began
     * @param notes all that were made; those of this run stay with the pass
     */
    public static Pass of(FlownAct act, String id, Instant begunAt, List<Note> notes) {
        List<Pass.TimedFigure> timed = new ArrayList<>();
        for (int i = 0; i < act.flown().size(); i++) {
            Flown figure = act.flown().get(i);
            Double endS = figure.endedAtS();
            if (endS != null
                    && endS > figure.startedAtS()
                    && figure.mark() == Source.HAND
                    && figure.heldS() == 0
                    && endedByHand(act, i, endS)) {
                timed.add(new Pass.TimedFigure(
                        figure.figureId(), figure.startedAtS() - act.startedAtS(), endS - act.startedAtS()));
            }
        }
        return Pass.of(id, act.actId(), act.variant(), Pass.How.LIVE, begunAt, timed)
                .withNote(notes.stream()
                        .filter(note -> note.atS() >= act.startedAtS() && note.atS() <= act.endedAtS())
                        .map(note -> inWords(note, act))
                        .collect(Collectors.joining("; ")));
    }

    private static String inWords(Note note, FlownAct act) {
        long seconds = (long) (note.atS() - act.startedAtS());
        return String.format(
                Locale.ROOT,
                "%d:%02d %s",
                seconds / 60,
                seconds % 60,
                note.text().isEmpty() ? "noted" : note.text());
    }

    private static boolean endedByHand(FlownAct act, int index, double endS) {
        if (index + 1 == act.flown().size()) {
            return endS == act.endedAtS() && isLast(act, index);
        }
        Flown next = act.flown().get(index + 1);
        return next.mark() == Source.HAND && next.startedAtS() == endS && follows(act, index, next);
    }

    /** True if nothing more was meant to be flown; an act broken off cuts its figure short. */
    private static boolean isLast(FlownAct act, int index) {
        int at = act.idsAsFlown().indexOf(act.flown().get(index).figureId());
        return at >= 0
                && act.droppedIds()
                        .containsAll(act.idsAsFlown()
                                .subList(at + 1, act.idsAsFlown().size()));
    }

    private static boolean follows(FlownAct act, int index, Flown next) {
        int from = act.idsAsFlown().indexOf(act.flown().get(index).figureId());
        int to = act.idsAsFlown().indexOf(next.figureId());
        return from >= 0
                && to > from
                && act.droppedIds().containsAll(act.idsAsFlown().subList(from + 1, to));
    }
}
