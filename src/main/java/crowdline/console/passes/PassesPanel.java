package crowdline.console.passes;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.NamedList;
import crowdline.console.paint.Pen;
import crowdline.console.paint.PlainText;
import crowdline.console.passes.PassesView.PassLine;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import java.awt.Color;
import java.awt.event.ActionEvent;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.AbstractAction;
import javax.swing.DefaultListModel;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;

/** The passes of a variant as a list: arrows choose one, Space has it count or not, Enter goes to its note. */
public final class PassesPanel extends JPanel {
    private final transient Supplier<PassesHost> host;
    private final DefaultListModel<PassLine> lines = new DefaultListModel<>();
    private final JList<PassLine> list = new NamedList<>(lines, PassLine::title);
    private final JCheckBox counts = PlainText.plain(new JCheckBox("Counts"));
    private final JLabel label = new JLabel("Note");
    private final JTextField note = TextMenu.on(new JTextField());

    /** @param host asked when somebody decides about a pass */
    public PassesPanel(Appearance appearance, Supplier<PassesHost> host) {
        this.host = host;
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Passes of the act");
        list.getAccessibleContext()
                .setAccessibleDescription("Space counts the pass or leaves it out, Enter goes to its note");
        list.addListSelectionListener(e -> showChosen());
        on("SPACE", "count", this::toggle);
        on("ENTER", "note", note::requestFocusInWindow);
        counts.getAccessibleContext().setAccessibleName("Count the chosen pass");
        counts.addActionListener(e -> toggle());
        label.setLabelFor(note);
        note.getAccessibleContext().setAccessibleName("Note on the chosen pass");
        note.addActionListener(e -> {
            chosen().ifPresent(pass ->
                    this.host.get().note(pass.id(), note.getText().strip()));
            list.requestFocusInWindow();
        });
        setOpaque(false);
        wear(appearance);
        showChosen();
    }

    private void on(String key, String name, Runnable done) {
        list.getInputMap().put(KeyStroke.getKeyStroke(key), name);
        list.getActionMap().put(name, new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent event) {
                done.run();
            }
        });
    }

    /** Shows passes; the one chosen stays chosen if it is still there. */
    public void show(PassesView view) {
        String before = chosen().map(PassLine::id).orElse("");
        lines.clear();
        view.passes().forEach(lines::addElement);
        int index = 0;
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).id().equals(before)) {
                index = i;
            }
        }
        if (!lines.isEmpty()) {
            list.setSelectedIndex(index);
        }
        showChosen();
    }

    /** Puts the keys into the list. */
    public void takeFocus() {
        list.requestFocusInWindow();
    }

    public void wear(Appearance appearance) {
        removeAll();
        setLayout(new MigLayout(
                "insets 0, gap " + appearance.room(6) + " " + appearance.room(4),
                "[][][0:0:,grow,fill]",
                "[0:0:,grow,fill][]"));
        list.setCellRenderer(new CellPainter<>(appearance, 62, PassLine::spoken, PassesPanel::cell));
        list.setBackground(appearance.palette().stage());
        counts.setFont(appearance.plain(TextRole.BODY));
        label.setFont(appearance.plain(TextRole.BODY));
        note.setFont(appearance.plain(TextRole.BODY));
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        add(scroll, "spanx, grow, wmin 0, hmin 0, wrap");
        add(counts);
        add(label, "gapleft " + appearance.room(8));
        add(note, "growx, wmin 0");
        revalidate();
        repaint();
    }

    private Optional<PassLine> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private void showChosen() {
        Optional<PassLine> pass = chosen();
        counts.setEnabled(pass.isPresent());
        note.setEnabled(pass.isPresent());
        counts.setSelected(pass.map(PassLine::counts).orElse(false));
        note.setText(pass.map(PassLine::note).orElse(""));
    }

    private void toggle() {
        chosen().ifPresent(pass -> host.get().count(pass.id(), !pass.counts()));
    }

    private static void cell(Pen pen, PassLine pass, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(box.h() * 0.18, box.h() * 0.1);
        Box top = inner.top(inner.h() * 0.48);
        pen.midway(pen.line(pass.title(), TextRole.BODY, true, top), top, text);
        Box below = inner.bottom(inner.h() * 0.46);
        Box mark = below.left(below.w() * 0.32);
        if (chosen) {
            pen.markOnChosen(pass.mark(), TextRole.LABEL, mark);
        } else {
            pen.mark(pass.mark(), TextRole.LABEL, mark);
        }
        Box words = below.right(below.w() * 0.66);
        String odd = String.join("; ", pass.odd());
        String said = odd + (odd.isEmpty() || pass.note().isEmpty() ? "" : ". ") + pass.note();
        pen.midway(pen.line(said, TextRole.LABEL, false, words), words, soft);
    }
}
