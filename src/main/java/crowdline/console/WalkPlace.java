package crowdline.console;

import crowdline.console.prepare.EmptyShow;
import crowdline.console.theme.Appearance;
import crowdline.console.walk.WalkPanel;
import crowdline.console.walk.WalkView;
import java.awt.CardLayout;
import java.util.function.Consumer;
import java.util.function.DoubleConsumer;
import javax.swing.Action;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The Walk through place, or how to open a show; each made when it is first shown. */
final class WalkPlace extends JPanel {
    private static final String PANEL = "panel";
    private static final String EMPTY = "empty";

    private final CardLayout cards = new CardLayout();
    private final Later<WalkView, WalkPanel> panel;
    private final Later<Void, EmptyShow> empty;
    private transient DoubleConsumer pointed = share -> {};
    private transient Consumer<String> written = text -> {};
    private String card = "";
    private boolean writing;

    WalkPlace(Appearance appearance, Action open, Action demo) {
        setLayout(cards);
        setOpaque(false);
        panel = new Later<>(appearance, this::made, WalkPanel::show, WalkPanel::wear);
        empty = new Later<>(appearance, a -> new EmptyShow(a, open, demo), (e, none) -> {}, EmptyShow::wear);
        add(empty, EMPTY);
        add(panel, PANEL);
        getAccessibleContext().setAccessibleName("Walk through");
    }

    private WalkPanel made(Appearance appearance) {
        WalkPanel made = new WalkPanel(appearance, share -> pointed.accept(share), text -> {
            writing = false;
            written.accept(text);
        });
        made.wear(appearance);
        return made;
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
        String next = view == null ? EMPTY : PANEL;
        boolean turned = !next.equals(card);
        if (view != null) {
            panel.show(view);
        }
        if (turned) {
            card = next;
            cards.show(this, next);
        }
        return turned;
    }

    boolean hasShow() {
        return card.equals(PANEL);
    }

    void openNote(String figure, String text) {
        writing = true;
        panel.ifMade(p -> p.openNote(figure, text));
    }

    boolean writing() {
        return writing;
    }

    void closeNote() {
        writing = false;
        panel.ifMade(WalkPanel::closeNote);
    }

    void wear(Appearance appearance) {
        panel.wear(appearance);
        empty.wear(appearance);
    }
}
