package crowdline.console.prepare.cells;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.page.Editor;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import crowdline.edit.act.Edit;
import crowdline.exchange.RemarkTable;
import crowdline.exchange.RunningOrder;
import crowdline.show.Show;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.StringSelection;
import java.awt.event.ActionEvent;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** A box for cells copied from a spreadsheet, what each row is taken for, and the show's own rows to copy. */
final class CellsPanel extends JPanel {
    /** It is read once the hand has stopped. */
    private static final int PAUSE_MS = 250;

    private static final String STOP = "stop";

    private static final String EMPTY =
            "Copy the rows of a running order, or of remarks, in the spreadsheet and paste them here. Headings over"
                    + " the columns help: start, minutes, act, performer, aircraft; or act, figure, kind, words.";

    private final transient Editor editor;
    private final transient PrepareHost host;
    private final transient Runnable close;
    private final JTextArea cells = TextMenu.on(new JTextArea());
    private final DefaultListModel<String> rows = new DefaultListModel<>();
    private final JList<String> list = PlainText.plain(new JList<>(rows));
    private final JTextArea said = PlainText.wrapped("What was understood", EMPTY);
    private final JButton take = new JButton("Take them   Ctrl+Enter");
    private final JButton stop = new JButton("Stop   Esc");
    private final Timer pause = new Timer(PAUSE_MS, e -> read());
    private transient @Nullable Edit edit;
    private boolean isTaking;
    /** Asked by the thread that takes them. */
    private volatile boolean isStopped;

    /** @param close closes the window it is in */
    CellsPanel(Appearance appearance, Editor editor, PrepareHost host, Runnable close) {
        super(new MigLayout(
                "hidemode 3, insets " + appearance.room(16) + ", gap " + appearance.room(12) + " " + appearance.room(8),
                "[0:0:,grow,fill][0:0:,grow,fill]",
                "[][0:0:,grow,fill][][]"));
        this.editor = editor;
        this.host = host;
        this.close = close;
        setBackground(appearance.palette().ground());
        pause.setRepeats(false);
        cells.setFont(appearance.plain(TextRole.BODY));
        cells.getAccessibleContext().setAccessibleName("Cells of a spreadsheet");
        cells.getDocument().addDocumentListener(new Reread());
        // Tab stands between cells here, and leaves the box with Ctrl.
        list.setFont(appearance.plain(TextRole.BODY));
        list.setCellRenderer(PlainText.cells());
        list.getAccessibleContext().setAccessibleName("Rows as they were understood");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        // What is said of a row may be longer than the list is wide.
        list.addListSelectionListener(
                e -> Optional.ofNullable(list.getSelectedValue()).ifPresent(said::setText));
        said.setFont(appearance.strong(TextRole.BODY));
        said.setFocusable(false);
        take.setEnabled(false);
        take.addActionListener(e -> take());
        stop.setVisible(false);
        stop.addActionListener(e -> stop());
        // Escape closes the window while nothing is being taken.
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(KeyStroke.getKeyStroke("ESCAPE"), STOP);
        getActionMap().put(STOP, new Stop());
        registerKeyboardAction(
                e -> take(), KeyStroke.getKeyStroke("ctrl ENTER"), JComponent.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT);
        add(label("Cells", cells, appearance));
        add(label("Read as", list, appearance), "wrap");
        add(new JScrollPane(cells), "grow, wmin 0, hmin 0");
        add(new JScrollPane(list), "grow, wmin 0, hmin 0, wrap");
        add(said, "spanx, wmin 0, wrap");
        add(copy("Copy the show's acts", () -> RunningOrder.of(editor.now(), '\t')), "split 2, growx 0");
        add(copy("Copy the show's remarks", () -> RemarkTable.of(editor.now(), '\t')), "growx 0");
        add(take, "right, split 2, growx 0");
        add(stop, "growx 0");
        getAccessibleContext().setAccessibleName("Cells of a spreadsheet");
    }

    private static JLabel label(String words, Component of, Appearance appearance) {
        JLabel label = new JLabel(words);
        label.setLabelFor(of);
        label.setFont(appearance.plain(TextRole.LABEL));
        label.setForeground(appearance.palette().soft());
        return label;
    }

    private JButton copy(String label, Supplier<String> table) {
        JButton button = new JButton(label);
        button.addActionListener(e -> {
            Toolkit.getDefaultToolkit().getSystemClipboard().setContents(new StringSelection(table.get()), null);
            said.setText("Copied; paste it into a spreadsheet.");
        });
        return button;
    }

    /** What was understood of each row, for tests and screen readers. */
    List<String> rows() {
        return Collections.list(rows.elements());
    }

    String said() {
        return said.getText();
    }

    void paste(String text) {
        cells.setText(text);
        read();
    }

    private void read() {
        String text = cells.getText();
        Show show = editor.now();
        host.read(() -> CellsView.of(text, show, host, this::taken), view -> {
            // Typed on meanwhile, it is read again.
            if (text.equals(cells.getText())) {
                show(view);
            }
        });
    }

    private void show(CellsView view) {
        rows.clear();
        // Or each row would be measured before the first is shown.
        list.setPrototypeCellValue(view.rows().stream()
                .max(Comparator.comparingInt(String::length))
                .orElse(null));
        rows.addAll(view.rows());
        said.setText(view.said().isEmpty() ? EMPTY : view.said());
        edit = view.edit();
        take.setEnabled(edit != null);
    }

    @Override
    public void removeNotify() {
        pause.stop();
        stop();
        super.removeNotify();
    }

    /** From the thread that takes them: whether it goes on. */
    private boolean taken(int acts) {
        SwingUtilities.invokeLater(() -> {
            if (isTaking) {
                said.setText("Taking them: " + acts + (acts == 1 ? " act so far" : " acts so far"));
            }
        });
        return !isStopped;
    }

    void stop() {
        isStopped = true;
    }

    void take() {
        Edit taken = edit;
        if (taken != null) {
            isStopped = false;
            taking(true);
            editor.make(taken, show -> close.run(), () -> {
                taking(false);
                said.setText(
                        isStopped
                                ? "Stopped; nothing was taken."
                                : "This could not be taken; the line at the foot says why.");
            });
        }
    }

    private void taking(boolean now) {
        isTaking = now;
        cells.setEditable(!now);
        take.setVisible(!now);
        stop.setVisible(now);
        (now ? stop : take).requestFocusInWindow();
        revalidate();
    }

    private final class Stop extends AbstractAction {
        @Override
        public void actionPerformed(ActionEvent event) {
            stop();
        }

        @Override
        public boolean isEnabled() {
            return isTaking;
        }
    }

    private final class Reread implements DocumentListener {
        @Override
        public void insertUpdate(DocumentEvent event) {
            edit = null;
            take.setEnabled(false);
            pause.restart();
        }

        @Override
        public void removeUpdate(DocumentEvent event) {
            insertUpdate(event);
        }

        @Override
        public void changedUpdate(DocumentEvent event) {}
    }
}
