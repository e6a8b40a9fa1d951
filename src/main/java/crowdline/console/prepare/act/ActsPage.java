package crowdline.console.prepare.act;

import crowdline.console.keys.Clicked;
import crowdline.console.keys.Command;
import crowdline.console.keys.KeyOn;
import crowdline.console.paint.NamedList;
import crowdline.console.paint.PlainText;
import crowdline.console.paint.WordHighList;
import crowdline.console.prepare.field.Aim;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.RowDrag;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.figure.FigureCommands;
import crowdline.console.prepare.figure.FigureTable;
import crowdline.console.prepare.figure.ShapePanel;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FindingView;
import crowdline.console.prepare.glance.ReadIn;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.ContextMenu;
import crowdline.edit.act.Acts;
import crowdline.measure.Measures;
import crowdline.show.Act;
import crowdline.show.RemarkPlace;
import crowdline.show.bounds.Written;
import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The acts of a show: the running order and the findings at the left, the chosen act at the right. */
public final class ActsPage extends JPanel {
    private static final int MOST_LETTERS = 90;
    private static final String FLYING = "The act is being flown for the first time …";
    private static final String NO_ACTS =
            "No acts yet. Paste the pilot's list with Ctrl+I, or the organiser's running order with "
                    + Command.CELLS.key() + ".";

    private final JTextArea title = PlainText.wrapped("Show", "");
    private final JTextArea where = PlainText.wrapped("Where and when", "");
    private final JTextArea air = PlainText.wrapped("The air of the day", "");
    private final JLabel findingsTitle = new JLabel();
    private final DefaultListModel<ActView> acts = new DefaultListModel<>();
    private final JList<ActView> actList = new NamedList<>(acts, ActView::title);
    private final DefaultListModel<FindingView> findings = new DefaultListModel<>();
    private final JList<FindingView> findingList = new WordHighList<>(findings, FindingView::message);
    private final ActPanel act;
    private final transient Tools tools;
    private boolean inFigures;
    private JComponent shownAct = new JPanel();
    private final JTextArea empty = PlainText.wrapped("What to do first", NO_ACTS);
    private transient @Nullable PrepareView view;
    private transient Measures measures = Measures.USUAL;
    /** The act to choose once it is there. */
    private transient @Nullable String wanted;
    /** Whether the focus is on its way to the figures. */
    private boolean toFigures;

    public ActsPage(Appearance appearance, Tools tools) {
        this.tools = tools;
        act = new ActPanel(appearance, tools);
        ContextMenu.on(
                actList,
                tools.actions(),
                List.of(
                        Command.PASTE_LIST,
                        Command.DUPLICATE,
                        Command.EARLIER,
                        Command.LATER,
                        Command.DRAFT_ACT,
                        Command.REMOVE));
        ContextMenu.on(
                act.table(),
                tools.actions(),
                List.of(
                        Command.ADD,
                        Command.EARLIER,
                        Command.LATER,
                        Command.REMOVE,
                        Command.DRAFT_FIGURE,
                        Command.LAY_OUT),
                at -> act.table().chooseAt(at));
        // The list and the table would choose every row the hand passes; without a screen there is no hand.
        boolean hasScreen = !GraphicsEnvironment.isHeadless();
        if (hasScreen) {
            actList.setDragEnabled(true);
            act.table().setDragEnabled(true);
        }
        RowDrag.on(actList, actList::locationToIndex, (from, to) -> {
            actList.setSelectedIndex(from);
            chosen().ifPresent(a -> tools.editor().make(Acts.move(a.id(), to - from)));
        });
        RowDrag.on(act.table(), act.table()::rowAtPoint, (from, to) -> {
            act.table().setRowSelectionInterval(from, from);
            act.commands().ifPresent(c -> c.moveTo(to));
        });
        Aim.at(actList, () -> aim(false));
        Aim.at(act.table(), () -> aim(true));
        KeyOn.all(actList, Map.of("ENTER", act::editHead, "RIGHT", act.table()::requestFocusInWindow));
        KeyOn.all(act.table(), Map.of("LEFT", this::leftOfFigures));
        actList.addMouseListener(new Clicked(act::editHead));
        actList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        actList.getAccessibleContext().setAccessibleName("Acts in running order");
        actList.addListSelectionListener(
                e -> Optional.ofNullable(actList.getSelectedValue()).ifPresent(act::show));
        findingList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        findingList.getAccessibleContext().setAccessibleName("Findings of the check");
        getAccessibleContext().setAccessibleName("Acts");
        wear(appearance);
    }

    /** From the first column of the figures to the acts; else a column to the left. */
    private void leftOfFigures() {
        FigureTable table = act.table();
        int column = table.getColumnModel().getSelectionModel().getLeadSelectionIndex();
        if (column <= 0) {
            actList.requestFocusInWindow();
        } else {
            table.changeSelection(table.getSelectedRow(), column - 1, false, false);
        }
    }

    private void aim(boolean figures) {
        toFigures &= !figures;
        inFigures = figures;
        tools.changed().run();
    }

    /** Shows a show; the act that was chosen stays chosen if it is still there. */
    public void show(PrepareView told) {
        if (told.equals(view)) {
            return;
        }
        view = told;
        PrepareView next = ReadIn.units(told, measures);
        showBriefly(title, next.title());
        showBriefly(where, next.where());
        air.setText(next.air());
        String chosen = wanted != null
                ? wanted
                : Optional.ofNullable(actList.getSelectedValue())
                        .map(ActView::id)
                        .orElse(null);
        int before = Math.max(0, actList.getSelectedIndex());
        acts.clear();
        next.acts().forEach(acts::addElement);
        findings.clear();
        next.findings().forEach(findings::addElement);
        findingsTitle.setText(
                next.findings().isEmpty()
                        ? "The check found nothing"
                        : "The check found " + next.findings().size());
        if (!acts.isEmpty()) {
            int found = next.acts().stream().map(ActView::id).toList().indexOf(chosen);
            wanted = found < 0 ? wanted : null;
            actList.setSelectedIndex(found >= 0 ? found : Math.min(before, acts.size() - 1));
            actList.ensureIndexIsVisible(actList.getSelectedIndex());
        }
        empty.setText(NO_ACTS);
        empty.setVisible(acts.isEmpty());
        shownAct.setVisible(!acts.isEmpty());
        lookAtFigures();
    }

    /** Or a long name would leave no room for the acts under it. */
    private static void showBriefly(JTextArea area, String text) {
        String brief = Written.brief(text, MOST_LETTERS);
        area.setText(brief);
        area.setToolTipText(brief.equals(text) ? null : PlainText.tip(text));
    }

    /** Closes the search for a figure, or leaves its shape; false if neither is open. */
    public boolean back() {
        return act.back();
    }

    public boolean hasActs() {
        return !acts.isEmpty();
    }

    /** Whether what is done is done to the figures, because the focus was there last, and not to the acts. */
    public boolean aimsAtFigures() {
        return inFigures;
    }

    public ActPanel act() {
        return act;
    }

    public void remove() {
        Optional<ShapePanel> shape = act.shapeInWork();
        if (shape.isPresent()) {
            shape.get().remove();
        } else if (inFigures) {
            act.commands().ifPresent(FigureCommands::remove);
        } else {
            chosen().ifPresent(a -> tools.editor().make(Acts.remove(a.id())));
        }
    }

    /**
     * Moves the chosen act, figure or element among its own.
     *
     * @param by places later, negative for earlier
     */
    public void move(int by) {
        Optional<ShapePanel> shape = act.shapeInWork();
        if (shape.isPresent()) {
            shape.get().move(by);
        } else if (inFigures) {
            act.commands().ifPresent(c -> c.move(by));
        } else {
            chosen().ifPresent(a -> tools.editor().make(Acts.move(a.id(), by)));
        }
    }

    public void duplicate() {
        chosen().ifPresent(a -> tools.editor().make(Acts.duplicate(a.id()), show -> {
            List<Act> all = show.acts();
            all.stream()
                    .filter(copy -> acts.indexOf(a) + 1 == all.indexOf(copy))
                    .findFirst()
                    .ifPresent(copy -> chooseNext(copy.id()));
        }));
    }

    private Optional<ActView> chosen() {
        return Optional.ofNullable(actList.getSelectedValue());
    }

    /** Chooses an act as soon as it is shown. */
    public void chooseNext(String actId) {
        PrepareView now = view;
        int there =
                now == null ? -1 : now.acts().stream().map(ActView::id).toList().indexOf(actId);
        wanted = there < 0 ? actId : null;
        empty.setText(there < 0 ? FLYING : NO_ACTS);
        if (there >= 0) {
            actList.setSelectedIndex(there);
            actList.ensureIndexIsVisible(there);
        }
    }

    /** Chooses an act, and a figure of it if one is named, as soon as it is shown. */
    public void chooseNext(RemarkPlace place) {
        String actId = place.actId();
        if (actId != null) {
            chooseNext(actId);
            String figureId = place.figureId();
            if (figureId != null) {
                act.chooseNext(actId, figureId);
            }
        }
    }

    /** The act that is chosen, and the figure of it; the act alone where it has none, and the show where there is no act. */
    public RemarkPlace chosenPlace() {
        return chosen().map(a -> new RemarkPlace(a.id(), act.chosenFigure())).orElse(RemarkPlace.SHOW);
    }

    /** Chooses an act that was just made as soon as it is shown, and puts the focus on its figures, unless it is wanted elsewhere. */
    public void goOnWith(String actId) {
        toFigures = true;
        chooseNext(actId);
        lookAtFigures();
    }

    private void lookAtFigures() {
        if (toFigures && wanted == null) {
            // Once the act is laid out: what is not on the screen yet takes no focus.
            SwingUtilities.invokeLater(() -> {
                Component owner =
                        KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
                if (owner == null || owner.equals(actList) || !SwingUtilities.isDescendingFrom(owner, this)) {
                    takeFocus();
                }
            });
        }
    }

    /** From the acts to the figures of the chosen one, and from anywhere else to the acts. */
    public void goRound() {
        toFigures = actList.isFocusOwner() && hasActs();
        takeFocus();
    }

    /** Puts the focus on the acts, or on the figures if it is on its way there. */
    public boolean takeFocus() {
        return (toFigures && wanted == null ? act.table() : actList).requestFocusInWindow();
    }

    /** Turns from the remarks of the chosen act to its passes. */
    public void showPasses() {
        act.showPasses();
    }

    public void wear(Appearance appearance) {
        PrepareView told = view;
        if (told != null && !appearance.measures().equals(measures)) {
            measures = appearance.measures();
            view = null;
            show(told);
        }
        measures = appearance.measures();
        removeAll();
        boolean roomy = Roomy.in(appearance);
        String gap = appearance.room(16);
        setLayout(new MigLayout(
                "insets 0, gap " + gap + " 0px",
                (roomy ? "[25%!]" : "[33%!]") + "[0:0:,grow,fill]",
                "[0:0:,grow,fill]"));
        String between = appearance.room(8);
        JPanel left = new JPanel(new MigLayout(
                "insets 0, gap 0px " + appearance.room(4),
                "[0:0:,grow,fill]",
                (roomy ? "[][][]" : "[]") + between + "[0:0:,grow 55,fill]" + between + "[][0:0:,grow 45,fill]"));
        title.setFont(appearance.strong(roomy ? TextRole.VALUE : TextRole.BODY));
        where.setFont(appearance.plain(TextRole.BODY));
        air.setFont(appearance.plain(TextRole.BODY));
        air.setForeground(appearance.palette().soft());
        findingsTitle.setFont(appearance.strong(TextRole.BODY));
        actList.setCellRenderer(ActCells.acts(appearance));
        actList.setBackground(appearance.palette().stage());
        findingList.setCellRenderer(ActCells.findings(appearance));
        findingList.setBackground(appearance.palette().stage());
        act.wear(appearance);
        left.add(title, "wmin 0, wrap");
        if (roomy) {
            left.add(where, "wmin 0, wrap");
            left.add(air, "wmin 0, wrap");
        }
        left.add(Scrolling.down(actList), "grow, hmin 0, wrap");
        left.add(findingsTitle, "wmin 0, wrap");
        left.add(Scrolling.down(findingList), "grow, hmin 0");
        add(left, "grow, wmin 0, hmin 0");
        empty.setFont(appearance.plain(TextRole.VALUE));
        JScrollPane scroll = Scrolling.down(act);
        scroll.setBorder(BorderFactory.createEmptyBorder());
        shownAct = scroll;
        add(scroll, "grow, wmin 0, hmin 0, hidemode 3");
        shownAct.setVisible(!acts.isEmpty());
        empty.setVisible(acts.isEmpty());
        add(empty, "grow, wmin 0, hmin 0, hidemode 3");
        revalidate();
        repaint();
    }
}
