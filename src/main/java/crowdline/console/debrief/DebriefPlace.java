package crowdline.console.debrief;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.place.PlaceScreen;
import crowdline.console.place.Ways;
import crowdline.console.theme.Appearance;
import java.io.File;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import org.jspecify.annotations.Nullable;

/** The Debrief place, and where its text and its table are saved. */
public final class DebriefPlace implements PlaceScreen {
    private final PlaceOrEmpty<DebriefView, DebriefPanel> place;
    private final CommandTable commands = CommandTable.of(Command.Scope.DEBRIEF)
            .on(Command.LATER_RUN, this::hasShow, () -> step(1))
            .on(Command.EARLIER_RUN, this::hasShow, () -> step(-1))
            .on(Command.SAVE_TEXT, this::hasShow, () -> save("debrief.txt", DebriefHost::saveText))
            .on(Command.SAVE_TABLE, this::hasShow, () -> save("debrief.csv", DebriefHost::saveTable))
            .filled();
    private Supplier<@Nullable DebriefHost> host = () -> null;

    public DebriefPlace(Appearance appearance, Ways ways) {
        place = new PlaceOrEmpty<>(
                "Debrief",
                appearance,
                new LazyCard<>(appearance, DebriefPanel::new, DebriefPanel::show, DebriefPanel::wear),
                ways);
    }

    /** Who serves it; null while no show is open. */
    public void serve(Supplier<@Nullable DebriefHost> next) {
        host = next;
    }

    private interface Saving {
        void save(DebriefHost to, Path file);
    }

    @Override
    public JComponent component() {
        return place;
    }

    @Override
    public CommandTable commands() {
        return commands;
    }

    @Override
    public void refresh() {
        DebriefHost now = host.get();
        show(now == null ? null : now.view());
    }

    /** Shows a debrief, or how to open a show if there is none. */
    public void show(@Nullable DebriefView view) {
        place.show(view);
    }

    @Override
    public void showEmpty(EmptyShow.Shown shown) {
        place.showEmpty(shown);
    }

    private boolean hasShow() {
        return place.hasShow();
    }

    private void step(int by) {
        place.ifShown(panel -> panel.step(by));
    }

    private void ifServed(Consumer<DebriefHost> asked) {
        DebriefHost now = host.get();
        if (now != null) {
            asked.accept(now);
        }
    }

    private void save(String name, Saving saving) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Save the debrief");
        chooser.setSelectedFile(new File(name));
        if (chooser.showSaveDialog(place) == JFileChooser.APPROVE_OPTION) {
            Path file = chooser.getSelectedFile().toPath();
            if (!file.toFile().exists() || replace(file)) {
                ifServed(to -> saving.save(to, file));
            }
        }
    }

    private boolean replace(Path file) {
        return JOptionPane.showConfirmDialog(
                        place,
                        file.getFileName() + " already exists. Replace it?",
                        "Save the debrief",
                        JOptionPane.OK_CANCEL_OPTION)
                == JOptionPane.OK_OPTION;
    }

    @Override
    public void wear(Appearance appearance) {
        place.wear(appearance);
    }
}
