package crowdline.console.edit;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.edit.Change;
import crowdline.show.DayAir;
import crowdline.show.Show;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** What is done with the edited show as a whole; it asks before anything unsaved is left. On the event thread. */
public final class EditCommands {
    private final Editing editing;
    private final EditQuestions questions;
    private EditHost host = EditHost.NONE;
    private BiConsumer<DayAir, Boolean> fly = (air, unsaved) -> {};
    private @Nullable DayAir flown;
    private Runnable begun = () -> {};
    /** What was asked for while something was unsaved, to be done once it is saved. */
    private @Nullable Runnable afterSaving;

    private final BooleanSupplier inIncident;
    private final Consumer<Mark> say;
    private final Consumer<String> unsay;
    /** Why it could not be saved since it was saved last. */
    private final List<String> unsaved = new ArrayList<>();

    /**
     * @param owner what its questions are asked over
     * @param inIncident whether the incident page is in front, over which nothing is asked
     * @param say says what cannot be asked
     * @param unsay takes back words that were said and are no longer true
     */
    public EditCommands(
            Editing editing, Component owner, BooleanSupplier inIncident, Consumer<Mark> say, Consumer<String> unsay) {
        this.unsay = unsay;
        this.editing = editing;
        this.inIncident = inIncident;
        this.say = say;
        questions = new EditQuestions(owner);
        editing.onEdit(this::edited);
        editing.onChange(() -> flown = editing.isOpen() ? editing.now().air() : null);
    }

    /**
     * Who serves it.
     *
     * @param air takes the air to predict by, and whether saving would write it
     */
    public void serve(EditHost next, BiConsumer<DayAir, Boolean> air) {
        host = next;
        fly = air;
    }

    /**
     * Puts those of the file into the table of the window.
     *
     * @param outside whether anything but the look of the window may change at all
     */
    public void fill(CommandTable.Filling table, BooleanSupplier outside) {
        BooleanSupplier open = () -> outside.getAsBoolean() && editing.isOpen();
        table.on(Command.SAVE, open, this::save)
                .on(Command.SAVE_AS, open, this::saveAs)
                .on(Command.INTO_LIVE, open, () -> {
                    if (editing.hasFile()) {
                        host.intoLive(editing.now());
                    } else {
                        saveAs();
                    }
                });
    }

    /** Tells this when a new show was begun, or could not be. */
    public void onBegun(Runnable told) {
        begun = told;
    }

    /** A new show was begun, or could not be. */
    public void begun() {
        begun.run();
    }

    /** The show as edited, if one is open. */
    public Optional<Show> now() {
        return editing.isOpen() ? Optional.of(editing.now()) : Optional.empty();
    }

    private void save() {
        if (editing.hasFile()) {
            host.save(editing.now());
        } else {
            saveAs();
        }
    }

    private void saveAs() {
        questions.fileToSaveIn(editing.now().title()).ifPresent(file -> host.saveAs(editing.now(), file));
    }

    /** Whether something may be asked now; where not, a sentence says it. */
    private boolean mayAsk() {
        return host.isCalm() && !inIncident.getAsBoolean();
    }

    /** Looks whether somebody else has changed the file. */
    public void lookOutside() {
        if (editing.isOpen() && editing.hasFile()) {
            host.lookOutside(editing.now());
        }
    }

    /**
     * Asks what becomes of a file that was changed outside.
     *
     * @param differences what it has against the show as edited, a line each
     * @param atSave whether it was to be saved
     */
    public void changedOutside(String file, List<String> differences, boolean atSave) {
        if (!mayAsk()) {
            say.accept(new Mark(
                    Form.DIAMOND,
                    Tone.CAUTION,
                    file + " was changed by another program"
                            + (atSave
                                    ? " and was not saved over; Ctrl+Shift+S saves your version as another file"
                                    : "")));
            return;
        }
        switch (questions.changedOutside(file, differences, editing.isUnsaved())) {
            case RELOAD -> host.reload();
            case MINE -> {
                host.keepMine();
                if (atSave && editing.isOpen()) {
                    host.save(editing.now());
                }
            }
            case LATER -> afterSaving = null;
        }
    }

    /** Asks what becomes of changes that were not saved when the program ended. */
    public void offer(UnsavedOffer offer) {
        if (!mayAsk()) {
            say.accept(new Mark(
                    Form.DIAMOND,
                    Tone.CAUTION,
                    "There are unsaved changes in " + offer.of() + " from " + offer.since()
                            + "; open the show again after the act to bring them back"));
            return;
        }
        switch (questions.bringBack(offer)) {
            case BRING_BACK -> {
                if (offer.neverSaved()) {
                    leaving(() -> host.broughtBack(offer));
                } else {
                    bringBack(offer.show());
                    host.broughtBack(offer);
                }
            }
            case LEAVE -> host.leave(offer);
            case LATER -> {}
        }
    }

    /** Puts changes into the show that were not saved when the program ended, as one step. */
    public void bringBack(Show show) {
        if (editing.isOpen()) {
            editing.change(Change.of("Bring back unsaved changes", show));
        }
    }

    /**
     * The steps back and forth.
     *
     * @param say says which was taken
     */
    public CommandTable steps(Consumer<Mark> say) {
        return CommandTable.of(Command.Scope.EDIT)
                .on(
                        Command.UNDO,
                        () -> editing.undoName().isPresent(),
                        () -> editing.undo().ifPresent(name -> say.accept(said("Took back: " + name))))
                .on(
                        Command.REDO,
                        () -> editing.redoName().isPresent(),
                        () -> editing.redo().ifPresent(name -> say.accept(said("Made again: " + name))))
                .filled();
    }

    private static Mark said(String words) {
        return new Mark(Form.DISC, Tone.GOOD, words);
    }

    private void edited(Show show) {
        host.edited(show);
        if (!show.air().equals(flown)) {
            fly.accept(show.air(), editing.isAirUnsaved());
        }
    }

    /** What the edited show is judged by has changed, so it is judged anew. */
    public void retimed() {
        if (editing.isOpen()) {
            host.edited(editing.now());
        }
    }

    /** The show was saved into a file of this name, as it was when the save began. */
    public void saved(Show written, String file) {
        editing.saved(written, file);
        unsaved.forEach(unsay);
        unsaved.clear();
        Runnable next = afterSaving;
        afterSaving = null;
        if (next != null && !editing.isUnsaved()) {
            next.run();
        }
    }

    /** The show could not be saved; it is offered to be saved elsewhere. */
    public void notSaved(String why) {
        afterSaving = null;
        unsaved.add(why);
        if (mayAsk() && editing.isOpen() && questions.saveElsewhere(why)) {
            saveAs();
        }
    }

    /** Does something that leaves the edited show, once nothing unsaved is lost by it. */
    public void leaving(Runnable next) {
        if (!editing.isUnsaved()) {
            next.run();
            return;
        }
        switch (questions.leaving()) {
            case SAVE -> {
                afterSaving = next;
                save();
            }
            case LEAVE -> {
                host.giveUp();
                next.run();
            }
            case CANCEL -> {}
        }
    }
}
