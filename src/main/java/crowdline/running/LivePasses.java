package crowdline.running;

import crowdline.live.debrief.LivePass;
import crowdline.live.state.FlownAct;
import crowdline.live.state.Note;
import crowdline.loaded.PassIds;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.passes.PassesFile;
import crowdline.timing.Pass;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * Keeps each act of a running show as a pass once it is over, and once only, whatever was killed or taken back in between.
 */
public final class LivePasses {
    private static final double MS_PER_S = 1000;

    private final PassesFile file;
    private final PassIds ids;
    private final Function<Pass, Optional<String>> doubt;
    /** On the live thread only. */
    private List<FlownAct> seen = List.of();

    private List<Note> seenNotes = List.of();
    /** On the io thread only: the pass of each act by when it began, which taking back its end does not change. */
    private final Map<Double, Pass> kept = new HashMap<>();

    /**
     * The passes of one show.
     *
     * @param doubt why nothing should be learned from a pass by itself, as a clause; empty if it should. Such a pass is kept, and
     *     counts once somebody says so
     */
    public LivePasses(PassesFile file, PassIds ids, Function<Pass, Optional<String>> doubt) {
        this.file = file;
        this.ids = ids;
        this.doubt = doubt;
    }

    /** Whether there are other acts that are over than when it was asked for news last. */
    public boolean hasOtherActs(List<FlownAct> acts) {
        return !acts.equals(seen);
    }

    /** Whether there are other acts that are over than when it was asked last, or other notes. */
    public boolean isNews(List<FlownAct> acts, List<Note> notes) {
        boolean news = !acts.equals(seen) || !notes.equals(seenNotes);
        seen = acts;
        seenNotes = notes;
        return news && !acts.isEmpty();
    }

    /**
     * Keeps what is not kept yet.
     *
     * @param notes what was written down in the session
     * @param zero when the session began
     * @return what to tell the user, if anything
     */
    public Optional<String> keep(List<FlownAct> acts, List<Note> notes, Instant zero) throws ShowFileException {
        @Nullable String said = null;
        List<Pass> known = file.read().passes();
        for (FlownAct act : acts) {
            Instant begunAt = zero.plusMillis(Math.round(act.startedAtS() * MS_PER_S));
            Pass pass = LivePass.of(act, ids.next(), begunAt, notes);
            Pass before = kept.get(act.startedAtS());
            if (before != null && before.figures().equals(pass.figures())) {
                noteLater(before, pass.note(), known);
                kept.put(act.startedAtS(), before.withNote(pass.note()));
                continue;
            }
            if (before != null) {
                // Its end was taken back and came another time: the first pass stays in the file and counts no more.
                file.count(before.id(), false, ids.now());
                file.note(before.id(), "its end was taken back", ids.now());
            }
            Optional<Pass> inFile = known.stream().filter(p -> isSame(p, pass)).findFirst();
            if (inFile.isEmpty() && !pass.figures().isEmpty()) {
                Optional<String> why = doubt.apply(pass);
                String notice = file.keep(pass.counting(why.isEmpty())).notice();
                String uncounted = why.map(LivePasses::notCounted).orElse(said);
                said = notice != null ? notice : uncounted;
            }
            kept.put(act.startedAtS(), inFile.orElse(pass));
        }
        return Optional.ofNullable(said);
    }

    private static String notCounted(String why) {
        return "The times of this act are kept, but not counted: " + why + ". Passes, in Prepare, counts them";
    }

    /** Words that were finished, or taken back, once the act was over; what somebody has written since stays. */
    private void noteLater(Pass before, String note, List<Pass> known) throws ShowFileException {
        boolean isAsItWas = known.stream()
                .anyMatch(p -> p.id().equals(before.id()) && p.note().equals(before.note()));
        if (isAsItWas && !note.equals(before.note())) {
            file.note(before.id(), note, ids.now());
        }
    }

    /** A show that goes on after it was stopped has the same times again. */
    private static boolean isSame(Pass kept, Pass pass) {
        return kept.how() == Pass.How.LIVE
                && kept.isOf(pass.actId(), pass.variant())
                && kept.figures().equals(pass.figures());
    }
}
