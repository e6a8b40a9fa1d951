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

/** The Walk through place, or how to open a show. */
final class WalkPlace extends JPanel {
    private static final String PANEL = "panel";
    private static final String EMPTY = "empty";

    private final CardLayout cards = new CardLayout();
    private final WalkPanel panel;
    private final EmptyShow empty;
    private transient DoubleConsumer pointed = share -> {};
    private transient Consumer<String> written = text -> {};
    private boolean hasShow;

    WalkPlace(Appearance appearance, Action open, Action demo) {
        setLayout(cards);
        panel = new WalkPanel(appearance, share -> pointed.accept(share), text -> written.accept(text));
        empty = new EmptyShow(appearance, open, demo);
        add(empty, EMPTY);
        add(panel, PANEL);
        getAccessibleContext().setAccessibleName("Walk through");
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
        boolean before = hasShow;
        hasShow = view != null;
        if (view != null) {
            panel.show(view);
        }
        if (before != hasShow) {
            cards.show(this, hasShow ? PANEL : EMPTY);
        }
        return before != hasShow;
    }

    boolean hasShow() {
        return hasShow;
    }

    WalkPanel panel() {
        return panel;
    }

    void wear(Appearance appearance) {
        setBackground(appearance.palette().ground());
        panel.wear(appearance);
        empty.wear(appearance);
    }
}
