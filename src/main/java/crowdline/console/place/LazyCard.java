package crowdline.console.place;

import crowdline.console.theme.Appearance;
import java.awt.BorderLayout;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/**
 * A card of a {@link java.awt.CardLayout} that is made when it is first turned to: a start waits for what it shows and
 * for nothing else. On the event thread.
 *
 * @param <V> what it shows; the newest is kept until it is made
 * @param <C> what it is made of
 */
public final class LazyCard<V, C extends JComponent> extends JPanel {
    private final transient Function<Appearance, C> making;
    private final transient BiConsumer<C, V> showing;
    private final transient BiConsumer<C, Appearance> wearing;
    private transient Appearance appearance;
    private transient @Nullable V view;
    private @Nullable C made;

    public LazyCard(
            Appearance appearance,
            Function<Appearance, C> making,
            BiConsumer<C, V> showing,
            BiConsumer<C, Appearance> wearing) {
        super(new BorderLayout());
        this.appearance = appearance;
        this.making = making;
        this.showing = showing;
        this.wearing = wearing;
        setOpaque(false);
        // The layout leaves its first card as it is, and shows only a card that is hidden.
        super.setVisible(false);
    }

    public void show(V next) {
        view = next;
        ifMade(c -> showing.accept(c, next));
    }

    public void wear(Appearance next) {
        appearance = next;
        ifMade(c -> wearing.accept(c, next));
    }

    public void ifMade(Consumer<C> told) {
        C component = made;
        if (component != null) {
            told.accept(component);
        }
    }

    /** The layout turns to a card by making it visible. */
    @Override
    public void setVisible(boolean visible) {
        if (visible && made == null) {
            make();
        }
        super.setVisible(visible);
    }

    private void make() {
        C component = making.apply(appearance);
        made = component;
        add(component);
        V waiting = view;
        if (waiting != null) {
            showing.accept(component, waiting);
        }
    }
}
