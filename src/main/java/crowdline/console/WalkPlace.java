package crowdline.console;

import crowdline.console.prepare.EmptyShow;
import crowdline.console.theme.Appearance;
import crowdline.console.walk.WalkPanel;
import crowdline.console.walk.WalkView;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import javax.swing.Action;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/** The Walk through place, with the note that is written there and what the mouse points at. */
final class WalkPlace {
    private final PlaceOrEmpty<WalkView, WalkPanel> place;
    private DoubleConsumer pointed = share -> {};
    private Consumer<String> written = text -> {};
    private boolean writing;

    WalkPlace(Appearance appearance, Action open, Action demo) {
        Later<WalkView, WalkPanel> panel = new Later<>(appearance, this::made, WalkPanel::show, WalkPanel::wear);
        place = new PlaceOrEmpty<>("Walk through", appearance, panel, open, demo);
    }

    private WalkPanel made(Appearance appearance) {
        WalkPanel made = new WalkPanel(appearance, share -> pointed.accept(share), text -> {
            writing = false;
            written.accept(text);
        });
        made.wear(appearance);
        return made;
    }

    JComponent component() {
        return place;
    }

    /** Who is told where the mouse points, and what was written. */
    void answer(DoubleConsumer newPointed, Consumer<String> newWritten) {
        pointed = newPointed;
        written = newWritten;
    }

    /**
     * Shows a moment, or how to open a show if there is none.
     *
     * @return true if there is a show now and was none before, or the other way round
     */
    boolean show(@Nullable WalkView view) {
        return place.show(view);
    }

    /** What is said where a show would be. */
    void showEmpty(EmptyShow.Shown shown) {
        place.showEmpty(shown);
    }

    boolean hasShow() {
        return place.hasShow();
    }

    void openNote(String figure, String text) {
        writing = true;
        place.ifShown(p -> p.openNote(figure, text));
    }

    /** Goes on with a note that was left half written. */
    void takeFocus() {
        place.ifShown(WalkPanel::takeFocus);
    }

    boolean writing() {
        return writing;
    }

    void closeNote() {
        writing = false;
        place.ifShown(WalkPanel::closeNote);
    }

    void wear(Appearance appearance) {
        place.wear(appearance);
    }
}
