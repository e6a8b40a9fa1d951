package crowdline.console.prepare.day;

import crowdline.console.paint.EveryLetter;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.show.DayAir;
import java.awt.KeyboardFocusManager;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Takes a METAR and shows at every letter what is read in it; used for the day's air only when told to. */
public final class MetarPanel extends JPanel {
    private final JTextArea report = TextMenu.on(new JTextArea(3, 40));
    private final JTextArea read = PlainText.wrapped("What was read", "");
    private final JTextArea notes = PlainText.wrapped("Notes", "");
    private final JButton use = new JButton("Use this air");
    private final JButton keep = new JButton("Use it and put it in the show");
    private final JButton leave = new JButton("Leave it as it is");
    private final transient DayAir before;
    private final transient Appearance appearance;
    private transient MetarView view;

    /**
     * @param before the air until now
     * @param chosen told the new air, for this session
     * @param kept told the new air, to be saved with the show
     * @param done told when the panel has done its work, whatever was chosen
     */
    public MetarPanel(
            Appearance appearance, DayAir before, Consumer<DayAir> chosen, Consumer<DayAir> kept, Runnable done) {
        this.appearance = appearance;
        this.before = before;
        view = MetarView.of("", before);
        String gap = appearance.room(14);
        setLayout(new MigLayout(
                "insets " + gap + ", gap 0px " + appearance.room(6),
                "[0:0:,grow,fill]",
                "[][][][0:0:,grow,fill]" + appearance.room(10) + "[]"));
        JLabel label = new JLabel("METAR of the day");
        label.setLabelFor(report);
        label.setFont(appearance.strong(TextRole.BODY));
        report.setFont(appearance.plain(TextRole.BODY));
        report.setLineWrap(true);
        report.setWrapStyleWord(true);
        report.getAccessibleContext().setAccessibleName("METAR of the day");
        // Tab leaves the field, as everywhere else.
        report.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        report.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        report.getDocument().addDocumentListener(new EveryLetter(this::look));
        read.setFont(appearance.strong(TextRole.BODY));
        notes.setFont(appearance.plain(TextRole.BODY));
        notes.setForeground(appearance.palette().soft());
        use.addActionListener(e -> give(chosen, done));
        keep.addActionListener(e -> give(kept, done));
        leave.addActionListener(e -> done.run());
        add(label, "wrap");
        add(new JScrollPane(report), "hmin " + appearance.room(70) + ", wrap");
        add(read, "wmin 0, wrap");
        JScrollPane scroll = new JScrollPane(notes);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll, "grow, wmin 0, hmin 0, wrap");
        add(leave, "split 3, growx 0, gapleft push, wmin 0");
        add(use, "growx 0, wmin 0");
        add(keep, "growx 0, wmin 0");
        look();
    }

    private void give(Consumer<DayAir> taker, Runnable done) {
        DayAir air = view.air();
        if (air != null) {
            taker.accept(air);
            done.run();
        }
    }

    /** Puts a report into the field, as pasting it does. */
    void paste(String text) {
        report.setText(text);
    }

    JButton use() {
        return use;
    }

    JButton keep() {
        return keep;
    }

    String said() {
        return read.getText();
    }

    @Nullable
    DayAir air() {
        return view.air();
    }

    private void look() {
        view = MetarView.of(report.getText(), before);
        boolean good = view.air() != null;
        boolean empty = report.getText().isBlank();
        read.setText(appearance.measures().told(good ? view.read() : view.wrong()));
        read.setForeground(
                good
                        ? appearance.palette().text()
                        : empty
                                ? appearance.palette().soft()
                                : appearance.palette().alarm());
        notes.setText(appearance.measures().told(String.join("\n", view.notes())));
        notes.setCaretPosition(0);
        use.setEnabled(good);
        keep.setEnabled(good);
    }
}
