package crowdline.console.prepare;

import crowdline.console.paint.PlainText;
import crowdline.console.passes.PassesHost;
import crowdline.console.prepare.PrepareView.ActView;
import crowdline.console.prepare.PrepareView.FindingView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The Prepare place: the running order and the findings at the left, the chosen act at the right. */
public final class PreparePanel extends JPanel {
    private final JTextArea title = PlainText.wrapped("Show", "");
    private final JTextArea where = PlainText.wrapped("Where and when", "");
    private final JTextArea air = PlainText.wrapped("The air of the day", "");
    private final JLabel findingsTitle = new JLabel();
    private final DefaultListModel<ActView> acts = new DefaultListModel<>();
    private final JList<ActView> actList = new JList<>(acts);
    private final DefaultListModel<FindingView> findings = new DefaultListModel<>();
    private final JList<FindingView> findingList = new JList<>(findings);
    private final ActPanel act;
    private transient @Nullable PrepareView view;

    /** @param passes asked when somebody decides about a pass */
    public PreparePanel(Appearance appearance, Supplier<PassesHost> passes) {
        act = new ActPanel(appearance, passes);
        actList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        actList.getAccessibleContext().setAccessibleName("Acts in running order");
        actList.addListSelectionListener(
                e -> Optional.ofNullable(actList.getSelectedValue()).ifPresent(act::show));
        findingList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        findingList.getAccessibleContext().setAccessibleName("Findings of the check");
        getAccessibleContext().setAccessibleName("Prepare");
        wear(appearance);
    }

    /** Shows a show; the act that was chosen stays chosen if it is still there. */
    public void show(PrepareView next) {
        if (next.equals(view)) {
            return;
        }
        view = next;
        title.setText(next.title());
        where.setText(next.where());
        air.setText(next.air());
        int chosen = Math.max(0, actList.getSelectedIndex());
        acts.clear();
        next.acts().forEach(acts::addElement);
        findings.clear();
        next.findings().forEach(findings::addElement);
        findingsTitle.setText(
                next.findings().isEmpty()
                        ? "The check found nothing wrong"
                        : "The check found " + next.findings().size());
        if (!acts.isEmpty()) {
            actList.setSelectedIndex(Math.min(chosen, acts.size() - 1));
        }
    }

    /** Turns from the remarks of the chosen act to its passes. */
    public void showPasses() {
        act.showPasses();
    }

    public void wear(Appearance appearance) {
        removeAll();
        boolean roomy = ActPanel.isRoomy(appearance);
        String gap = appearance.room(16);
        setLayout(new MigLayout(
                "insets " + gap + ", gap " + gap + " 0px",
                (roomy ? "[25%!]" : "[33%!]") + "[0:0:,grow,fill]",
                "[0:0:,grow,fill]"));
        String between = appearance.room(8);
        JPanel left = new JPanel(new MigLayout(
                "insets 0, gap 0px " + appearance.room(4),
                "[0:0:,grow,fill]",
                "[][][]" + between + "[0:0:,grow 55,fill]" + between + "[][0:0:,grow 45,fill]"));
        title.setFont(appearance.strong(roomy ? TextRole.VALUE : TextRole.BODY));
        where.setFont(appearance.plain(TextRole.BODY));
        air.setFont(appearance.plain(TextRole.BODY));
        air.setForeground(appearance.palette().soft());
        findingsTitle.setFont(appearance.strong(TextRole.BODY));
        actList.setCellRenderer(PrepareCells.acts(appearance));
        actList.setBackground(appearance.palette().stage());
        findingList.setCellRenderer(PrepareCells.findings(appearance));
        findingList.setBackground(appearance.palette().stage());
        act.wear(appearance);
        left.add(title, "wmin 0, wrap");
        left.add(where, "wmin 0, wrap");
        left.add(air, "wmin 0, wrap");
        left.add(scroll(actList), "grow, hmin 0, wrap");
        left.add(findingsTitle, "wmin 0, wrap");
        left.add(scroll(findingList), "grow, hmin 0");
        add(left, "grow, wmin 0, hmin 0");
        add(act, "grow, wmin 0, hmin 0");
        revalidate();
        repaint();
    }

    private static JScrollPane scroll(JList<?> list) {
        JScrollPane scroll = new JScrollPane(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }
}
