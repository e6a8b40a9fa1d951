package crowdline.console.place;

import crowdline.console.theme.Appearance;
import java.awt.CardLayout;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/**
 * A place that needs a show, or how to open one; each made when it is first shown.
 *
 * @param <V> what the place shows
 * @param <P> the place
 */
public final class PlaceOrEmpty<V, P extends JComponent> extends JPanel {
    private static final String PANEL = "panel";
    private static final String EMPTY = "empty";

    private final CardLayout cards = new CardLayout();
    private final LazyCard<V, P> panel;
    private final LazyCard<EmptyShow.Shown, EmptyShow> empty;
    private String card = "";

    /**
     * @param name for screen readers
     * @param panel the place
     * @param ways to a show
     */
    public PlaceOrEmpty(String name, Appearance appearance, LazyCard<V, P> panel, Ways ways) {
        setLayout(cards);
        setOpaque(false);
        this.panel = panel;
        empty = new LazyCard<>(appearance, a -> new EmptyShow(a, ways), EmptyShow::show, EmptyShow::wear);
        add(empty, EMPTY);
        add(panel, PANEL);
        getAccessibleContext().setAccessibleName(name);
    }

    /**
     * Shows the place, or how to open a show if there is none.
     *
     * @return true if there is a show now and was none before, or the other way round
     */
    public boolean show(@Nullable V view) {
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

    /** What is said where a show would be. */
    public void showEmpty(EmptyShow.Shown shown) {
        empty.show(shown);
    }

    /** Puts the keys where one begins if there is no show; false if there is one, or nothing to do but wait. */
    public boolean takeFocus() {
        boolean[] took = {false};
        if (!hasShow()) {
            empty.ifMade(made -> took[0] = made.takeFocus());
        }
        return took[0];
    }

    public boolean hasShow() {
        return card.equals(PANEL);
    }

    public void ifShown(Consumer<P> told) {
        panel.ifMade(told);
    }

    public void wear(Appearance appearance) {
        panel.wear(appearance);
        empty.wear(appearance);
    }
}
