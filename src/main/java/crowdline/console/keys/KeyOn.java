package crowdline.console.keys;

import java.awt.event.ActionEvent;
import java.util.Map;
import javax.swing.AbstractAction;
import javax.swing.JComponent;
import javax.swing.KeyStroke;

/** What a key does while one component has the focus. */
public final class KeyOn extends AbstractAction {
    private static final long serialVersionUID = 1;

    private final transient Runnable action;

    private KeyOn(Runnable action) {
        this.action = action;
    }

    /**
     * Gives keys what they do on a component.
     *
     * @param actions by the key, as Swing's {@code KeyStroke} reads it
     */
    public static void all(JComponent on, Map<String, Runnable> actions) {
        give(on, JComponent.WHEN_FOCUSED, actions);
    }

    /**
     * Gives keys what they do while a component or anything within it has the focus and has no use for them itself.
     *
     * @param actions by the key, as Swing's {@code KeyStroke} reads it
     */
    public static void within(JComponent whole, Map<String, Runnable> actions) {
        give(whole, JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, actions);
    }

    private static void give(JComponent to, int condition, Map<String, Runnable> actions) {
        actions.forEach((key, action) -> {
            to.getInputMap(condition).put(KeyStroke.getKeyStroke(key), key);
            to.getActionMap().put(key, new KeyOn(action));
        });
    }

    @Override
    public void actionPerformed(ActionEvent event) {
        action.run();
    }
}
