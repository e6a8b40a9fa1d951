package crowdline.console;

import crowdline.console.debrief.DebriefPanel;
import crowdline.console.debrief.DebriefView;
import crowdline.console.prepare.EmptyShow;
import crowdline.console.theme.Appearance;
import java.awt.CardLayout;
import java.util.function.Consumer;
import javax.swing.Action;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The Debrief place, or how to open a show; each made when it is first shown. */
final class DebriefPlace extends JPanel {
    private static final String PANEL = "panel";
    private static final String EMPTY = "empty";

    private final CardLayout cards = new CardLayout();
    private final Later<DebriefView, DebriefPanel> panel;
    private final Later<Void, EmptyShow> empty;
    private String card = "";

    DebriefPlace(Appearance appearance, Action open, Action demo) {
        setLayout(cards);
        setOpaque(false);
        panel = new Later<>(appearance, DebriefPanel::new, DebriefPanel::show, DebriefPanel::wear);
        empty = new Later<>(appearance, a -> new EmptyShow(a, open, demo), (e, none) -> {}, EmptyShow::wear);
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

    void ifShown(Consumer<DebriefPanel> told) {
        panel.ifMade(told);
    }

    void wear(Appearance appearance) {
        panel.wear(appearance);
        empty.wear(appearance);
    }
}
