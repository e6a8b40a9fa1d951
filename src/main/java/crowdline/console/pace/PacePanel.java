package crowdline.console.pace;

import crowdline.console.pace.PaceHost.Found;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.speech.pace.Pace;
import crowdline.storage.settings.PaceShelf;
import java.awt.CardLayout;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** Three pages: who speaks, the remarks against the watch, and what was learned. */
public final class PacePanel extends JPanel {
    private static final String NOBODY = "Default pace, 160 words a minute";
    private static final String WHO = "WHO";
    private static final String TIMING = "TIMING";
    private static final String LEARNED = "LEARNED";

    private final CardLayout cards = new CardLayout();
    private final DefaultListModel<String> names = new DefaultListModel<>();
    private final JList<String> speakers = PlainText.plain(new JList<>(names));
    private final JTextField name = TextMenu.on(new JTextField());
    private final JTextArea wrong = PlainText.wrapped("What is wrong", "");
    private final TimingPage timing;
    private final JTextArea learned = PlainText.wrapped("What was learned", "");
    private final JButton keep = new JButton("Keep and use it");
    private final transient Appearance appearance;
    private final transient Found found;
    private final transient PaceHost host;
    private final transient Runnable close;
    private transient @Nullable Pace pace;

    /** @param close closes the window the panel is in */
    public PacePanel(Appearance appearance, Found found, PaceHost host, Runnable close) {
        this.appearance = appearance;
        this.found = found;
        this.host = host;
        this.close = close;
        timing = new TimingPage(
                appearance, new ListeningStrip(appearance, found.whyNoMicrophone(), host.microphone()), this::learn);
        setLayout(cards);
        add(who(), WHO);
        add(timing, TIMING);
        add(learned(), LEARNED);
        getAccessibleContext().setAccessibleName("Speaker and pace");
    }

    @Override
    public void addNotify() {
        super.addNotify();
        SwingUtilities.invokeLater(first()::requestFocusInWindow);
    }

    /** Where the keys go at first: to the name while nobody was timed yet, since there is nobody to choose. */
    JComponent first() {
        return found.speakers().isEmpty() ? name : speakers;
    }

    private JPanel who() {
        names.addElement(NOBODY);
        found.speakers().forEach(names::addElement);
        speakers.setCellRenderer(PlainText.cells());
        speakers.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        speakers.setFont(appearance.plain(TextRole.BODY));
        speakers.setSelectedIndex(1 + found.speakers().indexOf(found.current()));
        speakers.getAccessibleContext().setAccessibleName("Whose pace the times are for");
        speakers.registerKeyboardAction(e -> use(), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
        name.setText(found.current());
        name.setFont(appearance.plain(TextRole.BODY));
        name.getAccessibleContext().setAccessibleName("Name of a speaker to time");
        name.addActionListener(e -> begin());
        wrong.setFont(appearance.strong(TextRole.BODY));
        wrong.setFocusable(false);
        JButton use = button("Use this pace", this::use);
        JButton time = button("Time this speaker", this::begin);
        JPanel page = page("[][0:0:,grow,fill][]" + appearance.room(10) + "[][][]");
        page.add(label("Whose pace the times are for", speakers), "wrap");
        page.add(new JScrollPane(speakers), "grow, wrap");
        page.add(use, "growx 0, wrap");
        page.add(label("Time a speaker with ten remarks. Name:", name), "wrap");
        page.add(name, "split 2, growx");
        page.add(time, "growx 0, wrap");
        page.add(wrong, "growx");
        return page;
    }

    private JPanel learned() {
        learned.setFont(appearance.plain(TextRole.BODY));
        keep.addActionListener(e -> keep());
        keep.setFont(appearance.plain(TextRole.BODY));
        enterPresses(keep);
        JPanel page = page("[0:0:,grow,fill][]");
        page.add(new JScrollPane(learned), "grow, wrap");
        page.add(keep, "split 2, growx 0");
        page.add(button("Time again", this::begin), "growx 0");
        return page;
    }

    private JPanel page(String rows) {
        return new JPanel(new MigLayout(
                "insets " + appearance.room(16) + ", gap " + appearance.room(6) + " " + appearance.room(6),
                "[0:0:,grow,fill]",
                rows));
    }

    private JLabel label(String words, java.awt.Component of) {
        JLabel label = new JLabel(words);
        label.setLabelFor(of);
        label.setFont(appearance.strong(TextRole.BODY));
        return label;
    }

    private JButton button(String words, Runnable pressed) {
        JButton button = new JButton(words);
        button.setFont(appearance.plain(TextRole.BODY));
        button.addActionListener(e -> pressed.run());
        enterPresses(button);
        return button;
    }

    private static void enterPresses(JButton button) {
        button.registerKeyboardAction(e -> button.doClick(), KeyStroke.getKeyStroke("ENTER"), WHEN_FOCUSED);
    }

    private void use() {
        int at = speakers.getSelectedIndex();
        if (at >= 0) {
            host.use(at == 0 ? "" : names.get(at));
            close.run();
        }
    }

    /** Goes on to time the speaker whose name stands there, as its button does. */
    public void begin() {
        String speaker;
        try {
            speaker = PaceShelf.name(name.getText());
        } catch (IllegalArgumentException e) {
            wrong.setText(e.getMessage());
            return;
        }
        timing.begin(PaceRun.of(speaker, found.remarks()));
        cards.show(this, TIMING);
        SwingUtilities.invokeLater(timing::takeFocus);
    }

    /**
     * Does as a key of the watch does.
     *
     * @param key a code of {@link java.awt.event.KeyEvent}
     * @param atS when it was pressed, seconds from any beginning
     */
    public void press(int key, double atS) {
        timing.press(key, atS);
    }

    private void learn(PaceRun run) {
        PaceOutcome outcome = PaceOutcome.of(run.speaker(), run.timed());
        pace = outcome.pace();
        learned.setText(run.speaker() + "\n\n" + String.join("\n\n", outcome.lines()));
        learned.setCaretPosition(0);
        keep.setEnabled(outcome.pace() != null);
        timing.rest();
        cards.show(this, LEARNED);
        SwingUtilities.invokeLater(outcome.pace() != null ? keep::requestFocusInWindow : learned::requestFocusInWindow);
    }

    /** Lets the microphone go with the window. */
    @Override
    public void removeNotify() {
        timing.rest();
        super.removeNotify();
    }

    private void keep() {
        Pace made = pace;
        if (made != null) {
            host.keep(made);
            close.run();
        }
    }
}
