package crowdline.console.pedals;

import crowdline.console.keys.Command;
import crowdline.console.keys.HeldKeys;
import crowdline.console.keys.RemoteKey;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.telemetry.serial.HeardSignal;
import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.Set;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;

/**
 * The window in which pedals and remotes are learned. While it is open a press gives no command; it is learned, or only
 * said. It hears the keys before its components do, so that Escape and Enter of a remote can be learned too.
 */
public final class PedalsPanel extends JPanel {
    private static final int LOOK_MS = 1000;
    /** Keys that move about in the window itself, and those that only change others. */
    private static final Set<Integer> MOVE_ABOUT = Set.of(
            KeyEvent.VK_UP,
            KeyEvent.VK_DOWN,
            KeyEvent.VK_TAB,
            KeyEvent.VK_ENTER,
            KeyEvent.VK_SPACE,
            KeyEvent.VK_DELETE,
            KeyEvent.VK_ESCAPE);

    private static final Set<Integer> MODIFIERS =
            Set.of(KeyEvent.VK_SHIFT, KeyEvent.VK_CONTROL, KeyEvent.VK_ALT, KeyEvent.VK_ALT_GRAPH, KeyEvent.VK_META);

    private final transient PedalHost host;
    private final transient Pedals pedals;
    private final CommandList commands;
    private final SaidLine said;
    private final PortPart port;
    private final JButton learn;
    private final JButton move;
    private final JButton stop;
    private final transient HeldKeys held = new HeldKeys();
    private final transient KeyEventDispatcher hearing = this::hear;
    private final Timer looking = new Timer(LOOK_MS, e -> look());
    private boolean eatTyped;

    /** @param close closes the window the panel is in */
    public PedalsPanel(Appearance appearance, PedalHost host, Runnable close) {
        this.host = host;
        pedals = new Pedals(host.learned(), host::keep);
        commands = new CommandList(appearance);
        said = new SaidLine("What to do", appearance, TextRole.SMALL, 52);
        port = new PortPart(appearance, host.learned(), pedals::usePort, pedals::useBaud);
        commands.registerKeyboardAction(e -> learn(), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        commands.registerKeyboardAction(e -> forget(), KeyStroke.getKeyStroke("DELETE"), WHEN_FOCUSED);
        learn = button(appearance, "Learn (Enter)", this::learn);
        JButton forget = button(appearance, "Forget (Delete)", this::forget);
        move = button(appearance, "Move it", () -> told(Pedals::move));
        stop = button(appearance, "Stop (Tab)", () -> told(Pedals::stop));
        JTextArea note = PlainText.wrapped(
                "Note",
                "While this is open, no press moves anything in Live. No pedal can open the incident page, because a slip"
                        + " would stop everything; use F12 for that.");
        note.setFont(appearance.plain(TextRole.LABEL));
        note.setForeground(appearance.palette().soft());
        note.setFocusable(false);
        String edge = appearance.room(14);
        setLayout(new MigLayout(
                "insets " + edge + " " + edge + " " + edge + " " + edge + ", gap " + appearance.room(6) + " "
                        + appearance.room(5),
                "[0:0:,grow,fill]",
                "[][0:0:,grow,fill][][][]"));
        add(port, "wrap");
        JScrollPane list = new JScrollPane(commands);
        // As wide as the rows, whether or not the scroll bar stands beside them.
        list.setColumnHeaderView(CommandList.titles(appearance));
        add(list, "gaptop " + appearance.room(4) + ", grow, wmin 0, hmin " + appearance.room(98) + ", wrap");
        add(said, "wrap");
        add(learn, "split 5, growx 0");
        add(forget, "growx 0");
        add(move, "growx 0");
        add(stop, "growx 0");
        add(button(appearance, "Close", close), "growx 0, gapleft push, wrap");
        add(note, "wmin 0");
        getAccessibleContext().setAccessibleName("Pedals and remotes");
        refresh();
    }

    private static JButton button(Appearance appearance, String words, Runnable pressed) {
        JButton button = new JButton(words);
        button.setFont(appearance.plain(TextRole.BODY));
        button.addActionListener(e -> pressed.run());
        button.registerKeyboardAction(e -> button.doClick(), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        return button;
    }

    @Override
    public void addNotify() {
        super.addNotify();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(hearing);
        look();
        looking.start();
        SwingUtilities.invokeLater(commands::requestFocusInWindow);
    }

    @Override
    public void removeNotify() {
        looking.stop();
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(hearing);
        super.removeNotify();
    }

    /** A pedal was worked; on the event thread. */
    public void hear(HeardSignal signal) {
        told(p -> p.hear(signal));
    }

    private void look() {
        host.findPorts(found -> port.show(found, host.status()));
    }

    private void learn() {
        PedalsView.Row row = commands.getSelectedValue();
        if (row != null) {
            told(p -> p.learn(row.command()));
        }
    }

    private void forget() {
        PedalsView.Row row = commands.getSelectedValue();
        if (row != null) {
            told(p -> p.forget(row.command()));
        }
    }

    private void told(Consumer<Pedals> told) {
        told.accept(pedals);
        refresh();
    }

    private void refresh() {
        PedalsView view = pedals.view();
        commands.show(view.rows());
        said.show(view.said());
        Command learning = view.learning();
        learn.setEnabled(learning == null);
        stop.setEnabled(learning != null);
        move.setEnabled(view.asks());
    }

    private boolean hear(KeyEvent event) {
        Component source = event.getComponent();
        boolean ours =
                source != null && SwingUtilities.getWindowAncestor(source) == SwingUtilities.getWindowAncestor(this);
        return ours && key(event);
    }

    /** Takes a key; true if it went no further. */
    boolean key(KeyEvent event) {
        if (event.getID() == KeyEvent.KEY_RELEASED) {
            held.release(event);
            return false;
        }
        if (event.getID() == KeyEvent.KEY_TYPED) {
            return eatTyped;
        }
        boolean fresh = held.press(event);
        eatTyped = false;
        if (MODIFIERS.contains(event.getKeyCode()) || !isForUs(event)) {
            return false;
        }
        eatTyped = true;
        if (fresh) {
            take(event);
        }
        return true;
    }

    private boolean isForUs(KeyEvent event) {
        if (Command.INCIDENT.isHeardFirst(event)) {
            return false;
        }
        if (pedals.view().learning() != null) {
            return true;
        }
        boolean writing = event.getComponent() instanceof JTextComponent text && text.isEditable();
        boolean command =
                (event.getModifiersEx() & (KeyEvent.CTRL_DOWN_MASK | KeyEvent.ALT_DOWN_MASK | KeyEvent.META_DOWN_MASK))
                        != 0;
        return !writing && !command && !MOVE_ABOUT.contains(event.getKeyCode());
    }

    private void take(KeyEvent event) {
        PedalsView view = pedals.view();
        boolean learning = view.learning() != null;
        if (learning && event.getKeyCode() == KeyEvent.VK_TAB) {
            told(Pedals::stop);
        } else if (view.asks() && event.getKeyCode() == KeyEvent.VK_ENTER) {
            told(Pedals::move);
        } else {
            RemoteKey.of(event).ifPresentOrElse(key -> told(p -> p.press(key)), () -> told(Pedals::nameless));
        }
    }
}
