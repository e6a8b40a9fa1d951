package crowdline.console.debrief;

import crowdline.console.keys.Command;
import crowdline.console.keys.CommandTable;
import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.place.PlaceScreen;
import crowdline.console.place.Ways;
import crowdline.console.theme.Appearance;
import crowdline.console.window.Courier;
import java.awt.CardLayout;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The Debrief place, where its text and its table are saved, and how a practice flight went until that is put away. */
public final class DebriefPlace implements PlaceScreen {
    private static final String OF_THE_DAY = "day";
    private static final String OF_PRACTICE = "practice";

    private final PlaceOrEmpty<DebriefView, DebriefBook> place;
    private final CommandTable commands = CommandTable.of(Command.Scope.DEBRIEF)
            .on(Command.LATER_RUN, this::hasShow, () -> step(1))
            .on(Command.EARLIER_RUN, this::hasShow, () -> step(-1))
            .on(Command.DAY_CHARTS, this::hasCharts, this::turn)
            .on(Command.OTHER_DAY, this::hasCharts, this::askForDay)
            .on(Command.SCORE_NEXT, this::hasScore, () -> ifScored(Scored::next))
            .on(Command.SCORE_AGAIN, this::hasScore, () -> ifScored(Scored::again))
            .on(Command.SCORE_AWAY, this::hasScore, () -> show((Scored) null))
            .on(Command.SAVE_TEXT, this::hasShow, () -> save("debrief.txt", DebriefHost::saveText))
            .on(Command.SAVE_TABLE, this::hasShow, () -> save("debrief.csv", DebriefHost::saveTable))
            .on(Command.SAVE_DAY, this::hasShow, () -> save("day.csv", DebriefHost::saveDay))
            .on(Command.SAVE_JSON, this::hasShow, () -> save("debrief.json", DebriefHost::saveJson))
            .filled();
    private final Courier<List<DayChoice>> days = new Courier<>(offered -> onBook(book -> book.offer(offered)));
    private final CardLayout cards = new CardLayout();
    private final JPanel whole = new JPanel(cards);
    private Supplier<@Nullable DebriefHost> host = () -> null;
    private @Nullable Scored scored;
    private boolean charted;
    private Runnable changed = () -> {};

    public DebriefPlace(Appearance appearance, Ways ways) {
        place = new PlaceOrEmpty<>(
                "Debrief",
                appearance,
                new LazyCard<>(
                        appearance, a -> new DebriefBook(a, new Choosing()), DebriefBook::show, DebriefBook::wear),
                ways);
        whole.setOpaque(false);
        whole.add(place, OF_THE_DAY);
    }

    /** What is chosen of the days to set beside this one. */
    private final class Choosing implements DayChooser.Asked {
        @Override
        public void beside(Path journal) {
            DebriefPlace.this.beside(journal);
        }

        @Override
        public void alone() {
            leave();
            ifServed(DebriefHost::alone);
        }

        @Override
        public void file() {
            leave();
            JFileChooser chooser = new JFileChooser();
            chooser.setDialogTitle("Another day beside it");
            if (chooser.showOpenDialog(place) == JFileChooser.APPROVE_OPTION) {
                beside(chooser.getSelectedFile().toPath());
            }
        }

        @Override
        public void leave() {
            onBook(DebriefBook::toCharts);
        }
    }

    /** How a practice flight went. */
    public interface Scored {
        /** The page that says it. */
        JComponent page();

        /** What of the page has the keys. */
        JComponent first();

        /** Another flight is wanted. */
        void next();

        /** The same flight is wanted again. */
        void again();

        /** The page takes another look. */
        void wear(Appearance appearance);
    }

    /** Told whenever what can be done here has changed. */
    public void onChange(Runnable listener) {
        changed = listener;
    }

    /** Shows how a practice flight went, or the debrief of the day. */
    public void show(@Nullable Scored next) {
        Scored before = scored;
        if (before != null) {
            whole.remove(before.page());
        }
        scored = next;
        if (next != null) {
            whole.add(next.page(), OF_PRACTICE);
        }
        cards.show(whole, next == null ? OF_THE_DAY : OF_PRACTICE);
        if (next == null) {
            refresh();
        }
        whole.revalidate();
        whole.repaint();
        changed.run();
    }

    private boolean hasScore() {
        return scored != null;
    }

    private void ifScored(Consumer<Scored> asked) {
        Scored now = scored;
        if (now != null) {
            asked.accept(now);
        }
    }

    @Override
    public boolean takeFocus() {
        Scored now = scored;
        return now != null && now.first().requestFocusInWindow();
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
        return whole;
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
        charted = view != null && view.charts().count() > 0;
        place.show(view);
    }

    @Override
    public void showEmpty(EmptyShow.Shown shown) {
        place.showEmpty(shown);
    }

    private boolean hasShow() {
        return scored == null && place.hasShow();
    }

    private boolean hasCharts() {
        return hasShow() && charted;
    }

    private void onBook(Consumer<DebriefBook> told) {
        place.ifShown(told);
    }

    private void askForDay() {
        ifServed(now -> now.days(days::send));
    }

    /** Sets the day beside this one that a journal tells. */
    public void beside(Path journal) {
        onBook(DebriefBook::toCharts);
        ifServed(now -> now.beside(journal));
    }

    /** To the act, or the chart, so many on. */
    public void step(int by) {
        place.ifShown(book -> book.step(by));
    }

    /** Turns to the charts of the day, or back to its acts. */
    public void turn() {
        place.ifShown(DebriefBook::turn);
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
        ifScored(now -> now.wear(appearance));
    }
}
