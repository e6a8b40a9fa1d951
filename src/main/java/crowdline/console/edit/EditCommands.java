package crowdline.console.edit;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.show.DayAir;
import crowdline.show.Show;
import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import org.jspecify.annotations.Nullable;

/** What is done with the edited show as a whole; it asks before anything unsaved is left. On the event thread. */
public final class EditCommands {
    private static final Object[] LEAVING = {"Save", "Leave without saving", "Cancel"};

    private final Editing editing;
    private final Component owner;
    private EditHost host = EditHost.NONE;
    private BiConsumer<DayAir, Boolean> fly = (air, unsaved) -> {};
    private @Nullable DayAir flown;
    /** What was asked for while something was unsaved, to be done once it is saved. */
    private @Nullable Runnable afterSaving;

    /** @param owner what its questions are asked over */
    public EditCommands(Editing editing, Component owner) {
        this.editing = editing;
        this.owner = owner;
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
        table.on(Command.SAVE, open, () -> host.save(editing.now()))
                .on(Command.SAVE_AS, open, () -> chooseFile().ifPresent(file -> host.saveAs(editing.now(), file)))
                .on(Command.INTO_LIVE, open, () -> host.intoLive(editing.now()));
    }

    /** The show as it is edited; empty if none is open. */
    public Optional<Show> now() {
        return editing.isOpen() ? Optional.of(editing.now()) : Optional.empty();
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
        Runnable next = afterSaving;
        afterSaving = null;
        if (next != null && !editing.isUnsaved()) {
            next.run();
        }
    }

    /** The show could not be saved. */
    public void notSaved() {
        afterSaving = null;
    }

    /** Does something that leaves the edited show, once nothing unsaved is lost by it. */
    public void leaving(Runnable next) {
        if (!editing.isUnsaved()) {
            next.run();
            return;
        }
        int answer = JOptionPane.showOptionDialog(
                owner,
                "The show is not saved yet.",
                "Crowdline",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                LEAVING,
                LEAVING[0]);
        if (answer == 0) {
            afterSaving = next;
            host.save(editing.now());
        } else if (answer == 1) {
            next.run();
        }
    }

    private Optional<Path> chooseFile() {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Save the show as");
        if (chooser.showSaveDialog(owner) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Path file = chooser.getSelectedFile().toPath();
        boolean may = !Files.exists(file)
                || JOptionPane.showConfirmDialog(
                                owner,
                                "There is already a file with that name. Replace it? The old one is kept beside it as .previous.",
                                "Crowdline",
                                JOptionPane.YES_NO_OPTION)
                        == JOptionPane.YES_OPTION;
        return may ? Optional.of(file) : Optional.empty();
    }
}
