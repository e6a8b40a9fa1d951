package crowdline.console.live;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Zoom;
import crowdline.console.window.TextMenu;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** Where a note is written in Live, or the name of an act that is put in: it lies over the foot of the rows, so that none of them moves. */
final class NoteRow extends JPanel {
    private final JTextArea label = PlainText.wrapped("What is written", "");
    private final JTextField text = TextMenu.on(new JTextField());

    /** @param written told the words when they are finished; empty if none were wanted */
    NoteRow(Appearance appearance, Consumer<String> written) {
        text.getAccessibleContext().setAccessibleName("Words; Enter keeps them, Esc leaves them out");
        text.addActionListener(e -> {
            String words = text.getText().strip();
            close();
            written.accept(words);
        });
        getAccessibleContext().setAccessibleName("Note");
        setVisible(false);
        wear(appearance);
    }

    /**
     * Opens it empty.
     *
     * @param asks what is to be written, in a sentence
     */
    void open(String asks) {
        open(asks, "");
    }

    /** Opens it with words, which are typed over or kept. */
    void open(String asks, String words) {
        label.setText(asks);
        text.setText(words);
        text.selectAll();
        setVisible(true);
    }

    void close() {
        setVisible(false);
    }

    void takeFocus() {
        text.requestFocusInWindow();
    }

    final void wear(Appearance appearance) {
        removeAll();
        // Larger it would hide the figure that comes next.
        Appearance worn = appearance.with(
                new Zoom(Math.min(Zoom.NONE.percent(), appearance.zoom().percent())));
        setLayout(new MigLayout(
                "insets " + worn.room(6) + " " + worn.room(18) + " " + worn.room(6) + " " + worn.room(18) + ", gap "
                        + worn.room(14) + " 0px",
                "[0:0:,grow 40,fill][0:0:,grow 60,fill]",
                "[center]"));
        setBackground(worn.palette().sunk());
        label.setFont(worn.plain(TextRole.BODY));
        label.setForeground(worn.palette().text());
        text.setFont(worn.plain(TextRole.VALUE));
        add(label, "wmin 0");
        add(text, "wmin 0");
        revalidate();
    }
}
