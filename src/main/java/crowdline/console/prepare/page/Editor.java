package crowdline.console.prepare.page;

import crowdline.console.edit.Editing;
import crowdline.edit.Change;
import crowdline.edit.act.Edit;
import crowdline.show.Show;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * Makes edits of the show one after the other, in the order they were asked for, each of the show as it is by then. What was
 * done elsewhere meanwhile is kept: the edit is made again on top of it. On the event thread.
 */
public final class Editor {
    private final Editing editing;
    private final Supplier<PrepareHost> host;
    private final Consumer<String> refused;
    private final Deque<Asked> waiting = new ArrayDeque<>();
    private boolean busy;

    /** An edit, and what is done once it was made, or refused. */
    private record Asked(Edit edit, Consumer<Show> done, Runnable otherwise) {}

    /**
     * Edits the show that this edits.
     *
     * @param refused told why an edit cannot be made
     */
    public Editor(Editing editing, Supplier<PrepareHost> host, Consumer<String> refused) {
        this.editing = editing;
        this.host = host;
        this.refused = refused;
    }

    public boolean isOpen() {
        return editing.isOpen();
    }

    /** Whether a show is open that nothing was done to yet. */
    public boolean isUntouched() {
        return editing.isOpen()
                && editing.undoName().isEmpty()
                && editing.redoName().isEmpty();
    }

    public Show now() {
        return editing.now();
    }

    /** Makes an edit. */
    public void make(Edit edit) {
        make(edit, made -> {});
    }

    /**
     * Makes an edit.
     *
     * @param done told the show with it, if it was made
     */
    public void make(Edit edit, Consumer<Show> done) {
        make(edit, done, () -> {});
    }

    /**
     * Makes an edit.
     *
     * @param done told the show with it, if it was made
     * @param otherwise done if it was refused
     */
    public void make(Edit edit, Consumer<Show> done, Runnable otherwise) {
        waiting.add(new Asked(edit, done, otherwise));
        next();
    }

    /** Told the show before and after every step back or forth. */
    public void onStep(BiConsumer<Show, Show> listener) {
        editing.onStep(listener);
    }

    /** Says why something is not done. */
    public void refuse(String why) {
        refused.accept(why);
    }

    /** Says what comes of an edit that nobody asked for. */
    public void tell(String what) {
        refused.accept(what);
    }

    private void next() {
        if (busy) {
            return;
        }
        Asked asked = waiting.peek();
        if (asked == null || !editing.isOpen()) {
            waiting.clear();
            return;
        }
        busy = true;
        Show before = editing.now();
        host.get().make(before, asked.edit(), change -> made(before, asked, change), why -> {
            busy = false;
            waiting.remove();
            refused.accept(why);
            asked.otherwise().run();
            next();
        });
    }

    private void made(Show before, Asked asked, Change change) {
        busy = false;
        if (editing.isOpen() && editing.now().equals(before)) {
            waiting.remove();
            editing.change(change);
            asked.done().accept(change.show());
        }
        next();
    }
}
