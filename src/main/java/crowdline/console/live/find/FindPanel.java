package crowdline.console.live.find;

import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Zoom;
import crowdline.console.window.TextMenu;
import crowdline.loaded.Found;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.function.Function;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import org.jspecify.annotations.Nullable;

/**
 * Where something is looked up in Live. It lies over the row of what is flown, so that the words to say stay in sight, and
 * takes the letters; the keys of a remote go on stepping the act.
 */
public final class FindPanel extends JPanel {
    private static final int MARGIN_PX = 18;
    /** What is typed grows with the zoom to this, and leaves the rest of the room to what is found. Tuned by looking. */
    private static final int MOST_ZOOM = 130;

    private final JTextField field = TextMenu.on(new JTextField());
    private final FoundRows rows;
    private final transient Runnable keysBack;
    private transient @Nullable Function<String, List<Found>> finding;
    private transient List<Found> found = List.of();
    private int chosen;

    /** @param keysBack gives the keys to the window again, when it is closed */
    public FindPanel(Appearance appearance, Runnable keysBack) {
        super(null);
        this.keysBack = keysBack;
        rows = new FoundRows(appearance);
        field.getAccessibleContext().setAccessibleName("Look up");
        field.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent event) {
                typed();
            }

            @Override
            public void removeUpdate(DocumentEvent event) {
                typed();
            }

            @Override
            public void changedUpdate(DocumentEvent event) {
                typed();
            }
        });
        add(field);
        add(rows);
        setVisible(false);
        getAccessibleContext().setAccessibleName("Look up");
        wear(appearance, 1);
    }

    /**
     * Opens it empty.
     *
     * @param by finds by what is typed
     */
    public void open(Function<String, List<Found>> by) {
        finding = by;
        field.setText("");
        typed();
        setVisible(true);
        takeFocus();
    }

    /** Shows what these words find, as if they were typed. */
    public void type(String words) {
        field.setText(words);
    }

    public boolean isOpen() {
        return isVisible();
    }

    /** Closes it; false if it is not open. */
    public boolean close() {
        boolean open = isOpen();
        finding = null;
        setVisible(false);
        if (open) {
            keysBack.run();
        }
        return open;
    }

    /** Goes on with what is looked up; false if nothing is. */
    public boolean takeFocus() {
        return isOpen() && field.requestFocusInWindow();
    }

    /**
     * Takes a key while it is open: a digit, an arrow up or down, Esc.
     *
     * @return false if it is a letter for the field, or for somebody else
     */
    public boolean press(int key) {
        switch (key) {
            case KeyEvent.VK_ESCAPE -> close();
            case KeyEvent.VK_ENTER -> choose(0);
            case KeyEvent.VK_UP -> choose(Math.max(0, chosen - 1));
            case KeyEvent.VK_DOWN -> choose(chosen + 1);
            default -> {
                int digit = key >= KeyEvent.VK_NUMPAD1 && key <= KeyEvent.VK_NUMPAD9
                        ? key - KeyEvent.VK_NUMPAD0
                        : key - KeyEvent.VK_0;
                boolean isDigit = digit >= 0 && digit <= 9;
                if (isDigit && digit >= 1) {
                    choose(digit - 1);
                }
                return isDigit;
            }
        }
        return true;
    }

    private void choose(int index) {
        if (index < Math.min(FindView.MOST, found.size())) {
            chosen = index;
            tell();
        }
    }

    private void typed() {
        Function<String, List<Found>> by = finding;
        found = by == null ? List.of() : by.apply(field.getText());
        chosen = 0;
        tell();
    }

    private void tell() {
        rows.show(FindPresenter.of(field.getText(), found, chosen));
    }

    public final void wear(Appearance worn, double scale) {
        setBackground(worn.palette().sunk());
        Zoom zoom = new Zoom(Math.min(MOST_ZOOM, worn.zoom().percent()));
        field.setFont(worn.with(zoom).plain(TextRole.VALUE));
        rows.wear(worn, scale);
    }

    @Override
    public void doLayout() {
        int top = Math.min(getHeight() / 3, field.getPreferredSize().height);
        field.setBounds(MARGIN_PX, 4, Math.max(0, getWidth() - 2 * MARGIN_PX), top);
        rows.setBounds(0, top + 6, getWidth(), Math.max(0, getHeight() - top - 6));
    }
}
