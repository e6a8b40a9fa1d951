package crowdline.console.words;

import crowdline.console.keys.Command;
import crowdline.show.DayAir;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JFileChooser;
import javax.swing.JFrame;
import javax.swing.JOptionPane;
import org.jspecify.annotations.Nullable;

/** Ties the Words place to the rest of the program, and asks before anything unsaved is left. Event thread only. */
public final class WordsPlace {
    private static final Object[] LEAVING = {"Save", "Leave without saving", "Cancel"};

    private final WordsPanel panel;
    private final WordsHost host;
    private final BiConsumer<DayAir, Boolean> air;
    private final JFrame owner;
    /** What was asked for while something was unsaved, to be done once it is saved. */
    private @Nullable Runnable afterSaving;
    /** Air to be put into the show once its words are open. */
    private @Nullable DayAir waiting;

    /** @param air takes the air to predict by, and whether saving would write it */
    public WordsPlace(WordsPanel panel, WordsHost host, BiConsumer<DayAir, Boolean> air, JFrame owner) {
        this.panel = panel;
        this.host = host;
        this.air = air;
        this.owner = owner;
    }

    /** The place is gone to. */
    public void enter() {
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

    public void carryOut(Command command) {
        WordsModel model = panel.model();
        if (model == null) {
            return;
        }
        switch (command) {
            case SAVE -> host.save(model.show());
            case SAVE_AS -> chooseFile().ifPresent(file -> host.saveAs(model.show(), file));
            case INTO_LIVE -> host.intoLive(model.show());
            default -> {
                DayAir before = model.show().air();
                panel.carryOut(command);
                if (!model.show().air().equals(before)) {
                    fly(model);
                }
            }
        }
    }

    /** Does something that leaves these words, once nothing unsaved is lost by it. */
    public void leaving(Runnable next) {
        WordsModel model = panel.model();
        if (model == null || !isUnsaved()) {
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
            host.save(model.show());
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
