package crowdline.console.words;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.place.PlaceScreen;
import crowdline.console.theme.Appearance;
import crowdline.show.DayAir;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import org.jspecify.annotations.Nullable;

/** The Words place tied to the rest of the program; it asks before anything unsaved is left. On the event thread. */
public final class WordsPlace implements PlaceScreen {
    private static final Object[] LEAVING = {"Save", "Leave without saving", "Cancel"};

    private final WordsPanel panel;
    private final CommandTable commands;
    private WordsHost host = WordsHost.NONE;
    private BiConsumer<DayAir, Boolean> air = (next, saved) -> {};
    /** What was asked for while something was unsaved, to be done once it is saved. */
    private @Nullable Runnable afterSaving;
    /** Air to be put into the show once its words are open. */
    private @Nullable DayAir waiting;

    public WordsPlace(Appearance appearance) {
        panel = new WordsPanel(appearance);
        CommandTable.Filling table = CommandTable.of(Command.Scope.WORDS)
                .on(Command.SAVE, panel::hasWords, () -> ifOpen(model -> host.save(model.show())))
                .on(
                        Command.SAVE_AS,
                        panel::hasWords,
                        () -> ifOpen(model -> chooseFile().ifPresent(file -> host.saveAs(model.show(), file))))
                .on(Command.INTO_LIVE, panel::hasWords, () -> ifOpen(model -> host.intoLive(model.show())))
                .on(Command.UNDO, panel::canUndo, () -> change(WordsModel::undo))
                .on(Command.REDO, panel::canRedo, () -> change(WordsModel::redo))
                .on(Command.ADD_REMARK, panel::hasWords, () -> {
                    change(WordsModel::add);
                    panel.writeAnew();
                })
                .on(Command.DELETE_REMARK, panel::hasRemark, () -> change(WordsModel::delete))
                .on(Command.REMARK_UP, panel::hasRemark, () -> change(model -> model.move(-1)))
                .on(Command.REMARK_DOWN, panel::hasRemark, () -> change(model -> model.move(1)))
                .on(Command.PLAIN_WORDS, panel::hasRemark, () -> ifOpen(panel::insertPlainWords))
                .on(Command.ACCEPT, panel::hasDraft, () -> change(WordsModel::accept))
                .on(Command.ACCEPT_ALL, panel::hasDrafts, () -> change(WordsModel::acceptAll))
                .on(Command.FACT_REMARK, panel::hasFact, () -> change(WordsModel::addFact));
        commands = table.filled();
    }

    /**
     * Who serves it.
     *
     * @param fly takes the air to predict by, and whether saving would write it
     */
    public void serve(WordsHost next, BiConsumer<DayAir, Boolean> fly) {
        host = next;
        air = fly;
    }

    /** Told whenever what can be done, or what is saved, may have changed. */
    public void onChange(Runnable told) {
        panel.onChange(told);
    }

    @Override
    public JComponent component() {
        return panel;
    }

    @Override
    public CommandTable commands() {
        return commands;
    }

    /** Those that make sense where the air of the day is given: they are about it, or about the whole file. */
    public Set<Command> possibleForAir() {
        return panel.possibleForAir();
    }

    @Override
    public boolean takeFocus() {
        panel.takeFocus();
        return true;
    }

    @Override
    public void wear(Appearance appearance) {
        panel.wear(appearance);
    }

    /** Shows the words of a show; null for none. */
    public void show(@Nullable WordsModel words) {
        panel.show(words);
    }

    private void ifOpen(Consumer<WordsModel> done) {
        WordsModel model = panel.model();
        if (model != null) {
            done.accept(model);
        }
    }

    /** Changes the words, and flies the act anew if that changed the air. */
    private void change(Consumer<WordsModel> step) {
        ifOpen(model -> {
            DayAir before = model.show().air();
            step.accept(model);
            panel.refresh();
            if (!model.show().air().equals(before)) {
                fly(model);
            }
        });
    }

    @Override
    public void arrive() {
        if (panel.model() == null) {
            host.open();
        }
    }

    public void opened(WordsOpened words) {
        panel.show(new WordsModel(words.file(), words.show(), words.basis(), host::edited));
        DayAir next = waiting;
        waiting = null;
        if (next != null) {
            keepAir(next);
        }
    }

    /** Puts the air of the day into the show, to be saved with it, and predicts by it. */
    public void keepAir(DayAir next) {
        WordsModel model = panel.model();
        if (model == null) {
            waiting = next;
            host.open();
            return;
        }
        model.changeAir(next);
        panel.refresh();
        fly(model);
    }

    private void fly(WordsModel model) {
        air.accept(model.show().air(), model.isAirUnsaved());
    }

    /** Another show was opened, so these words are no longer its. */
    public void forget(boolean inPlace) {
        panel.show(null);
        if (inPlace) {
            host.open();
        }
    }

    public void planned(WordsPlan plan) {
        WordsModel model = panel.model();
        if (model != null) {
            model.planned(plan);
            panel.refresh();
        }
    }

    public void computed(Map<RemarkPlace, PlaceFacts> facts) {
        WordsModel model = panel.model();
        if (model != null) {
            model.computed(facts);
            panel.refresh();
        }
    }

    /** Another speaker's times count from now on, or those of other air. */
    public void retimed() {
        WordsModel model = panel.model();
        if (model != null) {
            host.edited(model.show());
            panel.refresh();
        }
    }

    public void saved(Show written, String file) {
        WordsModel model = panel.model();
        if (model != null) {
            model.saved(written, file);
            panel.refresh();
        }
        Runnable next = afterSaving;
        afterSaving = null;
        if (next != null && (model == null || !model.isUnsaved())) {
            next.run();
        }
    }

    public void notSaved() {
        afterSaving = null;
        waiting = null;
    }

    /** True if something typed stands in no file. */
    public boolean isUnsaved() {
        WordsModel model = panel.model();
        return model != null && model.isUnsaved();
    }

    /** What the window's title says of the words, if any are open. */
    public Optional<String> title() {
        return panel.title();
    }

    /** Does something that leaves these words, once nothing unsaved is lost by it. */
    public void leaving(Runnable next) {
        WordsModel model = panel.model();
        if (model == null || !isUnsaved()) {
            next.run();
            return;
        }
        int answer = JOptionPane.showOptionDialog(
                panel,
                "The show is not saved yet.",
                "Crowdline",
                JOptionPane.DEFAULT_OPTION,
                JOptionPane.QUESTION_MESSAGE,
                null,
                LEAVING,
                LEAVING[0]);
        if (answer == 0) {
            afterSaving = next;
            host.save(model.show());
        } else if (answer == 1) {
            next.run();
        }
    }

    private Optional<Path> chooseFile() {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Save the show as");
        if (chooser.showSaveDialog(panel) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Path file = chooser.getSelectedFile().toPath();
        boolean may = !Files.exists(file)
                || JOptionPane.showConfirmDialog(
                                panel,
                                "There is already a file with that name. Replace it? The old one is kept beside it as .previous.",
                                "Crowdline",
                                JOptionPane.YES_NO_OPTION)
                        == JOptionPane.YES_OPTION;
        return may ? Optional.of(file) : Optional.empty();
    }
}
