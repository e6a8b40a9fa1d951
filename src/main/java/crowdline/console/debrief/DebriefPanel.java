package crowdline.console.debrief;

import crowdline.console.debrief.DebriefView.Line;
import crowdline.console.debrief.DebriefView.RunView;
import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.paint.PlainText;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The Debrief place: the acts flown and what to change at the left, the chosen act against its plan at the right. */
public final class DebriefPanel extends JPanel {
    private static final String KEYS =
            "G charts   S saves text   C a table   D the day   J JSON   Ctrl+P prints   ← → acts";

    private final JTextArea title = PlainText.wrapped("Show", "");
    private final JTextArea thanks = PlainText.wrapped("Duties and thanks", "");
    private final JTextArea incidents = PlainText.wrapped("Incidents", "");
    private final JTextArea empty = PlainText.wrapped("What to do", "");
    private final JTextArea total = PlainText.wrapped("The act in all", "");
    private final JLabel said = PlainText.plain(new JLabel(" "));
    private final JTextArea keys = PlainText.wrapped("Keys", KEYS);
    private final DefaultListModel<RunView> runs = new DefaultListModel<>();
    private final JList<RunView> runList = new JList<>(runs);
    private final DefaultListModel<Line> changes = new DefaultListModel<>();
    private final JList<Line> changeList = new JList<>(changes);
    private final DefaultListModel<Line> remarks = new DefaultListModel<>();
    private final JList<Line> remarkList = new JList<>(remarks);
    private final FlownTable table = new FlownTable();
    private transient @Nullable DebriefView view;
    private transient Appearance appearance;

    public DebriefPanel(Appearance appearance) {
        this.appearance = appearance;
        for (JList<?> list : java.util.List.of(runList, changeList, remarkList)) {
            list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        }
        runList.getAccessibleContext().setAccessibleName("Acts flown");
        changeList.getAccessibleContext().setAccessibleName("What to change");
        remarkList.getAccessibleContext().setAccessibleName("Remarks of the act");
        runList.addListSelectionListener(e -> choose(runList.getSelectedValue()));
        getAccessibleContext().setAccessibleName("Debrief");
        wear(appearance);
    }

    /** Shows a debrief; the act that was chosen stays chosen. */
    public void show(DebriefView next) {
        if (next.equals(view)) {
            return;
        }
        DebriefView before = view;
        view = next;
        int chosen = runList.getSelectedIndex();
        boolean grown = before == null || before.runs().size() != next.runs().size();
        title.setText(next.title());
        thanks.setText(next.thanks().word());
        sayIncidents();
        changes.clear();
        next.changes().forEach(changes::addElement);
        runs.clear();
        next.runs().forEach(runs::addElement);
        empty.setText(next.empty());
        if (runs.isEmpty()) {
            choose(null);
        } else {
            runList.setSelectedIndex(grown ? runs.size() - 1 : Math.max(0, chosen));
        }
        if (before == null || before.empty().isEmpty() != next.empty().isEmpty()) {
            wear(appearance);
        }
    }

    /** Each on a line; where type is large only how many, or there would be no room for what to change. */
    private void sayIncidents() {
        DebriefView shown = view;
        java.util.List<String> all = shown == null ? java.util.List.of() : shown.incidents();
        String lines = String.join("\n", all);
        boolean isBrief = isLarge(appearance) && all.size() > 1;
        incidents.setText(isBrief ? "Incident page: " + all.size() + " times" : lines);
        incidents.setToolTipText(isBrief ? PlainText.tip(lines) : null);
    }

    /** The act chosen, or −1 if none was flown. */
    public int chosen() {
        return runList.getSelectedIndex();
    }

    /** To the act before or after. */
    public void step(int by) {
        int to = runList.getSelectedIndex() + by;
        if (to >= 0 && to < runs.size()) {
            runList.setSelectedIndex(to);
            runList.ensureIndexIsVisible(to);
        }
    }

    private void choose(@Nullable RunView run) {
        table.show(run == null ? java.util.List.of() : run.figures());
        total.setText(run == null ? "" : PlainText.unbroken(run.title() + ": " + run.total()));
        said.setText(run == null ? " " : run.said());
        remarks.clear();
        if (run != null) {
            run.remarks().forEach(remarks::addElement);
        }
    }

    public void wear(Appearance worn) {
        appearance = worn;
        removeAll();
        String gap = worn.room(16);
        setBackground(worn.palette().ground());
        fonts(worn);
        sayIncidents();
        DebriefView shown = view;
        if (shown != null && !shown.empty().isEmpty()) {
            setLayout(new MigLayout(
                    "insets " + worn.room(40) + ", align center center",
                    "[60px:" + worn.room(760) + ":" + worn.room(860) + ",fill]"));
            add(title, "wmin 0, wrap " + worn.room(18));
            add(empty, "wmin 0, growx");
        } else {
            setLayout(new MigLayout(
                    "insets " + gap + ", gap " + gap + " 0px", "[32%!][0:0:,grow,fill]", "[0:0:,grow,fill]"));
            add(left(worn), "grow, wmin 0, hmin 0");
            add(right(worn), "grow, wmin 0, hmin 0");
        }
        revalidate();
        repaint();
    }

    private void fonts(Appearance worn) {
        title.setFont(worn.strong(TextRole.VALUE));
        empty.setFont(worn.plain(TextRole.READ));
        empty.setForeground(worn.palette().text());
        title.setForeground(worn.palette().text());
        thanks.setFont(worn.strong(TextRole.BODY));
        DebriefView shown = view;
        thanks.setForeground(
                shown == null
                        ? worn.palette().text()
                        : worn.theme().tone(shown.thanks().tone()));
        incidents.setFont(worn.plain(TextRole.BODY));
        incidents.setForeground(worn.palette().text());
        total.setFont(worn.strong(TextRole.SMALL));
        total.setForeground(worn.palette().text());
        said.setFont(worn.strong(TextRole.BODY));
        keys.setFont(worn.plain(TextRole.LABEL));
        keys.setForeground(worn.palette().soft());
        runList.setCellRenderer(new CellPainter<>(worn, 78, r -> r.title() + ", " + r.when(), DebriefPanel::run));
        changeList.setCellRenderer(new CellPainter<>(worn, 94, Line::text, DebriefPanel::change));
        remarkList.setCellRenderer(new CellPainter<>(
                worn, isLarge(worn) ? 54 : 44, l -> l.mark().word() + ", " + l.text(), DebriefPanel::remark));
        for (JList<?> list : java.util.List.of(runList, changeList, remarkList)) {
            list.setBackground(worn.palette().stage());
        }
        table.wear(worn);
    }

    private JPanel left(Appearance worn) {
        String between = worn.room(8);
        JPanel left = new JPanel(new MigLayout(
                "insets 0, gap 0px " + worn.room(4),
                "[0:0:,grow,fill]",
                "[]" + between + "[" + worn.room(80) + ":" + worn.room(80) + ":,grow 36,fill]" + between + "[][]"
                        + between + "[][" + worn.room(96) + ":" + worn.room(96) + ":,grow 64,fill]"));
        JLabel change = new JLabel("What to change");
        change.setFont(worn.strong(TextRole.BODY));
        left.add(title, "wmin 0, wrap");
        left.add(scroll(runList), "grow, hmin 0, wrap");
        left.add(thanks, "wmin 0, wrap");
        left.add(incidents, "wmin 0, wrap");
        left.add(change, "wmin 0, wrap");
        left.add(scroll(changeList), "grow, hmin 0");
        return left;
    }

    private JPanel right(Appearance worn) {
        JPanel right = new JPanel(new MigLayout(
                "insets 0, gap 0px " + worn.room(6),
                "[0:0:,grow,fill]",
                "[]" + worn.room(4) + "[0:0:,grow 56,fill][][0:0:,grow 44,fill][]"));
        JScrollPane tableScroll = new JScrollPane(table);
        // Swing does this by itself only in a window on screen; pictures are drawn without one.
        tableScroll.setColumnHeaderView(table.getTableHeader());
        right.add(total, "wmin 0, wrap");
        right.add(tableScroll, "grow, hmin 0, wmin 0, wrap");
        right.add(said, "wmin 0, wrap");
        right.add(scroll(remarkList), "grow, hmin 0, wrap");
        right.add(keys, "wmin 0, growx");
        return right;
    }

    private static JScrollPane scroll(JList<?> list) {
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    /** Whether words are so large that what is one line otherwise takes two. */
    private static boolean isLarge(Appearance appearance) {
        return appearance.zoom().percent() > 140;
    }

    private static void run(Pen pen, RunView run, Box box, boolean chosen) {
        Box inner = box.inset(pen.px(12), pen.px(4));
        Box top = inner.top(inner.h() * 0.66);
        pen.midway(
                pen.lines(run.title(), TextRole.SMALL, true, top, 2),
                top,
                chosen ? pen.palette().onChosen() : pen.palette().text());
        Box under = inner.bottom(inner.h() * 0.31);
        pen.midway(
                pen.line(run.when(), TextRole.BODY, false, under),
                under,
                chosen ? pen.palette().onChosen() : pen.palette().soft());
    }

    private static void change(Pen pen, Line line, Box box, boolean chosen) {
        Box inner = box.inset(pen.px(12), pen.px(4));
        TextBlock text = pen.lines(line.text(), TextRole.BODY, false, inner, 5);
        pen.midway(
                text, inner, chosen ? pen.palette().onChosen() : pen.palette().text());
    }

    private static void remark(Pen pen, Line line, Box box, boolean chosen) {
        Box inner = box.inset(pen.px(12), pen.px(3));
        Box state = inner.left(inner.w() * 0.2);
        if (chosen) {
            pen.markOnChosen(line.mark(), TextRole.BODY, state, 2);
        } else {
            pen.mark(line.mark(), TextRole.BODY, state, 2);
        }
        double aside = Math.max(inner.w() * 0.1, pen.sizePx(TextRole.BODY) * 5);
        Box text = inner.rightOf(inner.w() * 0.21).leftOf(aside + pen.px(8));
        pen.midway(
                pen.lines(line.text(), TextRole.BODY, false, text, 2),
                text,
                chosen ? pen.palette().onChosen() : pen.palette().text());
        Box at = inner.right(aside);
        pen.atRight(
                pen.line(line.aside(), TextRole.BODY, false, at),
                at,
                chosen ? pen.palette().onChosen() : pen.palette().soft());
    }
}
