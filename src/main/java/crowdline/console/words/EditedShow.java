package crowdline.console.words;

import crowdline.show.Show;
import java.util.ArrayList;
import java.util.List;

/**
 * A show being edited, with the way back and forth. Shows never change, so every step is simply another show.
 *
 * @param saved the show as it stands in its file
 * @param now the show as edited
 * @param past shows to go back to, the newest last
 * @param future shows to go forward to, the next first
 * @param step what the last change was about; changes about the same thing are one step
 */
public record EditedShow(Show saved, Show now, List<Show> past, List<Show> future, String step) {
    /** Steps kept; more than anybody takes back, and a show is small. */
    static final int MOST_STEPS = 500;

    private static final String NO_STEP = "";

    public EditedShow {
        past = List.copyOf(past);
        future = List.copyOf(future);
    }

    static EditedShow opened(Show show) {
        return new EditedShow(show, show, List.of(), List.of(), NO_STEP);
    }

    /**
     * The show after a change.
     *
     * @param about what the change is about: typing on in one word is one step; empty for a step of its own
     */
    EditedShow changed(Show next, String about) {
        if (next.equals(now)) {
            return this;
        }
        if (!about.isEmpty() && about.equals(step) && !past.isEmpty()) {
            return new EditedShow(saved, next, past, List.of(), step);
        }
        List<Show> before = new ArrayList<>(past);
        before.add(now);
        if (before.size() > MOST_STEPS) {
            before.remove(0);
        }
        return new EditedShow(saved, next, before, List.of(), about);
    }

    EditedShow undone() {
        if (past.isEmpty()) {
            return this;
        }
        List<Show> after = new ArrayList<>(future);
        after.add(0, now);
        int last = past.size() - 1;
        return new EditedShow(saved, past.get(last), past.subList(0, last), after, NO_STEP);
    }

    EditedShow redone() {
        if (future.isEmpty()) {
            return this;
        }
        List<Show> before = new ArrayList<>(past);
        before.add(now);
        return new EditedShow(saved, future.get(0), before, future.subList(1, future.size()), NO_STEP);
    }

    /** The same after a save, which may have taken a moment in which more was typed. */
    EditedShow saved(Show written) {
        return new EditedShow(written, now, past, future, NO_STEP);
    }

    /** Whether going one step back changes the air of the day. */
    boolean undoesAir() {
        return !past.isEmpty() && !past.get(past.size() - 1).air().equals(now.air());
    }

    /** Whether going one step forward again changes the air of the day. */
    boolean redoesAir() {
        return !future.isEmpty() && !future.get(0).air().equals(now.air());
    }

    boolean isUnsaved() {
        return !now.equals(saved);
    }
}
