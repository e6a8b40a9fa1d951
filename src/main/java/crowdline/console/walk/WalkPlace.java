package crowdline.console.walk;

import crowdline.console.place.EmptyShow;
import crowdline.console.place.LazyCard;
import crowdline.console.place.PlaceOrEmpty;
import crowdline.console.theme.Appearance;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import javax.swing.Action;
import javax.swing.JComponent;
import org.jspecify.annotations.Nullable;

/** The Walk through place, with the note that is written there and what the mouse points at. */
public final class WalkPlace {
    private final PlaceOrEmpty<WalkView, WalkPanel> place;
    private DoubleConsumer pointed = share -> {};
    private Consumer<String> written = text -> {};
    private boolean writing;

    public WalkPlace(Appearance appearance, Action open, Action demo) {
        LazyCard<WalkView, WalkPanel> panel = new LazyCard<>(appearance, this::made, WalkPanel::show, WalkPanel::wear);
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

    public JComponent component() {
        return place;
    }

    /** Who is told where the mouse points, and what was written. */
    public void answer(DoubleConsumer newPointed, Consumer<String> newWritten) {
        pointed = newPointed;
        written = newWritten;
    }

    /**
     * Shows a moment, or how to open a show if there is none.
     *
     * @return true if there is a show now and was none before, or the other way round
     */
    public boolean show(@Nullable WalkView view) {
        return place.show(view);
    }

    /** What is said where a show would be. */
    public void showEmpty(EmptyShow.Shown shown) {
        place.showEmpty(shown);
    }

    public boolean hasShow() {
        return place.hasShow();
    }

    public void openNote(String figure, String text) {
        writing = true;
        place.ifShown(p -> p.openNote(figure, text));
    }

    /** Goes on with a note that was left half written. */
    public void takeFocus() {
        place.ifShown(WalkPanel::takeFocus);
    }

    public boolean writing() {
        return writing;
    }

    public void closeNote() {
        writing = false;
        place.ifShown(WalkPanel::closeNote);
    }

    public void wear(Appearance appearance) {
        place.wear(appearance);
    }
}
