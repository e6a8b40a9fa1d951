package crowdline.console;

import crowdline.console.debrief.DebriefPanel;
import crowdline.console.debrief.DebriefView;
import crowdline.console.prepare.EmptyShow;
import crowdline.console.theme.Appearance;
import java.awt.CardLayout;
import javax.swing.Action;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The Debrief place, or how to open a show. */
final class DebriefPlace extends JPanel {
    private static final String PANEL = "panel";
    private static final String EMPTY = "empty";

    private final CardLayout cards = new CardLayout();
    private final DebriefPanel panel;
    private final EmptyShow empty;
    private boolean hasShow;

    DebriefPlace(Appearance appearance, Action open, Action demo) {
        setLayout(cards);
        panel = new DebriefPanel(appearance);
        empty = new EmptyShow(appearance, open, demo);
        add(empty, EMPTY);
        add(panel, PANEL);
        getAccessibleContext().setAccessibleName("Debrief");
    }

    /**
     * Shows a debrief, or how to open a show if there is none.
     *
     * @return true if there is a show now and was none before, or the other way round
     */
    boolean show(@Nullable DebriefView view) {
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

    DebriefPanel panel() {
        return panel;
    }

    void wear(Appearance appearance) {
        setBackground(appearance.palette().ground());
        panel.wear(appearance);
        empty.wear(appearance);
    }
}
