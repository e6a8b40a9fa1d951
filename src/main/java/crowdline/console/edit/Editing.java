package crowdline.console.edit;

import crowdline.edit.Change;
import crowdline.edit.EditedShow;
import crowdline.show.Show;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The one show that is edited in the window, whichever place it is edited in. On the event thread. */
public final class Editing {
    private final List<Consumer<Show>> edited = new ArrayList<>();
    private final List<Runnable> changed = new ArrayList<>();
    private final List<BiConsumer<Show, Show>> stepped = new ArrayList<>();
    private @Nullable EditedShow open;
    private String called = "";
    private boolean hasFile;

    /**
     * Begins to edit a show, in place of any other.
     *
     * @param name what its file is called, for the title
     */
    public void open(String name, Show show) {
        open(name, show, true);
    }

    /** Begins to edit a show that is saved in no file yet, in place of any other. */
    public void openWithoutFile(String name, Show show) {
        open(name, show, false);
    }

    private void open(String name, Show show, boolean fromFile) {
        called = name;
        hasFile = fromFile;
        open = EditedShow.opened(show);
        tell();
    }

    /** Edits nothing from now on. */
    public void close() {
        open = null;
        tell();
    }

    public boolean isOpen() {
        return open != null;
    }

    /**
     * The show as edited.
     *
     * @throws IllegalStateException if none is open
     */
    public Show now() {
        return edited().now();
    }

    /**
     * The show as it stands in its file.
     *
     * @throws IllegalStateException if none is open
     */
    public Show saved() {
        return edited().saved();
    }

    /**
     * Makes a change, which tells everybody if it changes anything.
     *
     * @throws IllegalStateException if no show is open
     */
    public void change(Change change) {
        take(edited().changed(change));
    }

    /** Takes the last change back; what it was called, or empty if there is none. */
    public Optional<String> undo() {
        Optional<String> name = undoName();
        name.ifPresent(any -> step(edited().undone()));
        return name;
    }

    /** Makes the last change taken back again; what it is called, or empty if there is none. */
    public Optional<String> redo() {
        Optional<String> name = redoName();
        name.ifPresent(any -> step(edited().redone()));
        return name;
    }

    /** What undoing takes back; empty if nothing can be taken back. */
    public Optional<String> undoName() {
        return Optional.ofNullable(open).flatMap(EditedShow::undoName);
    }

    /** What redoing makes again; empty if nothing can be made again. */
    public Optional<String> redoName() {
        return Optional.ofNullable(open).flatMap(EditedShow::redoName);
    }

    /** Whether something stands in no file. */
    public boolean isUnsaved() {
        EditedShow now = open;
        return now != null && now.isUnsaved();
    }

    /** Whether the air of the day is not the one in the file. */
    public boolean isAirUnsaved() {
        EditedShow now = open;
        return now != null && !now.now().air().equals(now.saved().air());
    }

    /** Whether it has a file to be saved in. */
    public boolean hasFile() {
        return hasFile;
    }

    /** The name of the file and whether something is not saved; empty if no show is open. */
    public Optional<String> title() {
        return Optional.ofNullable(open)
                .map(now -> called + (!hasFile ? ", not saved yet" : now.isUnsaved() ? ", not saved" : ""));
    }

    /**
     * The show was saved as it was when the save began; more may have been done meanwhile.
     *
     * @param into the name of the file it was saved into
     */
    public void saved(Show written, String into) {
        EditedShow now = open;
        if (now != null) {
            called = into;
            hasFile = true;
            open = now.saved(written);
            tell();
        }
    }

    /** Told of the show after every change of it, undone and redone ones among them; not when one is opened. */
    public void onEdit(Consumer<Show> listener) {
        edited.add(listener);
    }

    /** Told after anything that may have changed: the show, its steps, whether it is saved, whether one is open. */
    public void onChange(Runnable listener) {
        changed.add(listener);
    }

    /** Told the show before and after a step back or forth, once everybody else was told. */
    public void onStep(BiConsumer<Show, Show> listener) {
        stepped.add(listener);
    }

    private void step(EditedShow next) {
        Show before = now();
        take(next);
        stepped.forEach(listener -> listener.accept(before, next.now()));
    }

    private EditedShow edited() {
        EditedShow now = open;
        if (now == null) {
            throw new IllegalStateException("no show is open, so none can be edited");
        }
        return now;
    }

    private void take(EditedShow next) {
        if (!next.equals(open)) {
            boolean isOther = !next.now().equals(edited().now());
            open = next;
            if (isOther) {
                edited.forEach(listener -> listener.accept(next.now()));
            }
            tell();
        }
    }

    private void tell() {
        changed.forEach(Runnable::run);
    }
}
