package crowdline.edit;

import crowdline.show.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A show being edited, with the way back and forth. Shows never change, so every step is simply another show.
 *
 * @param saved the show as it stands in its file, or as it was made if it has none yet
 * @param now the show as edited
 * @param past steps to take back, the newest last; each with the show before it
 * @param future steps to make again, the next first; each with the show after it
 * @param about what the last change was about; changes about the same thing are one step
 */
public record EditedShow(Show saved, Show now, List<Step> past, List<Step> future, String about) {
    /** Steps kept; more than anybody takes back, and a show is small. */
    static final int MOST_STEPS = 500;

    private static final String NOTHING = "";

    public EditedShow {
        past = List.copyOf(past);
        future = List.copyOf(future);
    }

    /**
     * A step that can be taken.
     *
     * @param name of the change
     * @param show where it leads
     */
    public record Step(String name, Show show) {}

    /** A show as it was opened. */
    public static EditedShow opened(Show show) {
        return new EditedShow(show, show, List.of(), List.of(), NOTHING);
    }

    /** The show after a change; itself if that changes nothing. */
    public EditedShow changed(Change change) {
        if (change.show().equals(now)) {
            return this;
        }
        if (!change.about().isEmpty() && change.about().equals(about) && !past.isEmpty()) {
            return new EditedShow(saved, change.show(), past, List.of(), about);
        }
        List<Step> before = new ArrayList<>(past);
        before.add(new Step(change.name(), now));
        if (before.size() > MOST_STEPS) {
            before.remove(0);
        }
        return new EditedShow(saved, change.show(), before, List.of(), change.about());
    }

    /** One step back; itself if there is none. */
    public EditedShow undone() {
        if (past.isEmpty()) {
            return this;
        }
        int last = past.size() - 1;
        Step back = past.get(last);
        List<Step> after = new ArrayList<>(future);
        after.add(0, new Step(back.name(), now));
        return new EditedShow(saved, back.show(), past.subList(0, last), after, NOTHING);
    }

    /** One step forward again; itself if there is none. */
    public EditedShow redone() {
        if (future.isEmpty()) {
            return this;
        }
        Step again = future.get(0);
        List<Step> before = new ArrayList<>(past);
        before.add(new Step(again.name(), now));
        return new EditedShow(saved, again.show(), before, future.subList(1, future.size()), NOTHING);
    }

    /** The same after a save, which may have taken a moment in which more was done. */
    public EditedShow saved(Show written) {
        return new EditedShow(written, now, past, future, NOTHING);
    }

    /** What the next step back takes back; empty if there is none. */
    public Optional<String> undoName() {
        return past.isEmpty()
                ? Optional.empty()
                : Optional.of(past.get(past.size() - 1).name());
    }

    /** What the next step forward makes again; empty if there is none. */
    public Optional<String> redoName() {
        return future.isEmpty() ? Optional.empty() : Optional.of(future.get(0).name());
    }

    /** Whether the show differs from what is saved. */
    public boolean isUnsaved() {
        return !now.equals(saved);
    }
}
