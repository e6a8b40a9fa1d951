package crowdline.console.window;

import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;
import javax.swing.text.JTextComponent;

/** The menu that a right click on a text that is written opens: cut, copy, paste, choose all. */
public final class TextMenu extends MouseAdapter implements PopupMenuListener {
    private final JTextComponent text;
    private final JMenuItem cut = new JMenuItem("Cut   Ctrl+X");
    private final JMenuItem copy = new JMenuItem("Copy   Ctrl+C");
    private final JMenuItem paste = new JMenuItem("Paste   Ctrl+V");
    private final JMenuItem all = new JMenuItem("Choose all   Ctrl+A");

    private TextMenu(JTextComponent text) {
        this.text = text;
        cut.addActionListener(e -> text.cut());
        copy.addActionListener(e -> text.copy());
        paste.addActionListener(e -> text.paste());
        all.addActionListener(e -> text.selectAll());
    }

    /** The text, with its menu. */
    public static <T extends JTextComponent> T on(T text) {
        TextMenu made = new TextMenu(text);
        JPopupMenu menu = new JPopupMenu();
        menu.add(made.cut);
        menu.add(made.copy);
        menu.add(made.paste);
        menu.addSeparator();
        menu.add(made.all);
        menu.addPopupMenuListener(made);
        text.addMouseListener(made);
        text.setComponentPopupMenu(menu);
        return text;
    }

    /** Swing gives the keys to a text for the other button only. */
    @Override
    public void mousePressed(MouseEvent event) {
        if (event.getButton() != MouseEvent.BUTTON1 && text.isEnabled()) {
            text.requestFocusInWindow();
        }
    }

    @Override
    public void popupMenuWillBecomeVisible(PopupMenuEvent event) {
        boolean isWritten = text.isEnabled() && text.isEditable();
        boolean isChosen = text.getSelectionStart() != text.getSelectionEnd();
        cut.setEnabled(isWritten && isChosen);
        copy.setEnabled(isChosen);
        paste.setEnabled(isWritten);
        all.setEnabled(!text.getText().isEmpty());
    }

    @Override
    public void popupMenuWillBecomeInvisible(PopupMenuEvent event) {}

    @Override
    public void popupMenuCanceled(PopupMenuEvent event) {}
}
