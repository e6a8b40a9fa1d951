package crowdline.console.prepare;

import crowdline.console.paint.PlainText;
import crowdline.console.passes.PassesHost;
import crowdline.console.passes.PassesPanel;
import crowdline.console.passes.PassesView;
import crowdline.console.prepare.PrepareView.ActView;
import crowdline.console.prepare.PrepareView.FigureView;
import crowdline.console.prepare.PrepareView.RemarkView;
import crowdline.console.prepare.PrepareView.VariantView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.sight.SideView;
import java.awt.CardLayout;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.JToggleButton;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One act: its variants, the figures of the chosen one, and what can be said of the chosen figure. */
final class ActPanel extends JPanel {
    /** From this zoom on the variants take a line of their own; tuned for a window 1280 wide. */
    private static final double ROOMY_ZOOM = 1.3;

    private static final String REMARKS = "REMARKS";
    private static final String PASSES = "PASSES";

    private final JTextArea title = PlainText.wrapped("Act", "");
    private final JLabel total = PlainText.plain(new JLabel());
    private final JLabel choice = PlainText.plain(new JLabel(" "));
    private final JTextField cloudBase = new JTextField(6);
    private final JPanel variants = new JPanel();
    private final FigureTable table = new FigureTable(this::chooseFigure);
    private final DefaultListModel<RemarkView> remarks = new DefaultListModel<>();
    private final JList<RemarkView> remarkList = new JList<>(remarks);
    private final JLabel remarksTitle = PlainText.plain(new JLabel(" "));
    private final PathPicture path;
    private final JToggleButton passesButton = PlainText.plain(new JToggleButton(PassesView.NONE.summary()));
    private final PassesPanel passes;
    private final CardLayout cards = new CardLayout();
    private final JPanel below = new JPanel(cards);
    private transient Appearance appearance;
    private transient @Nullable ActView act;
    private transient @Nullable VariantView variant;

    /** @param host asked when somebody decides about a pass */
    ActPanel(Appearance appearance, Supplier<PassesHost> host) {
        this.appearance = appearance;
        passes = new PassesPanel(appearance, host);
        passesButton.setMnemonic('P');
        passesButton.addActionListener(e -> turn());
        path = new PathPicture(appearance);
        remarkList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        remarkList.getAccessibleContext().setAccessibleName("Remarks of the figure");
        cloudBase.getAccessibleContext().setAccessibleName("Cloud base in feet");
        cloudBase.addActionListener(e -> chooseByCloudBase());
        cloudBase.getDocument().addDocumentListener(new Changes(this::sayCloudBase));
        wear(appearance);
    }

    void show(ActView next) {
        if (next.equals(act)) {
            return;
        }
        ActView before = act;
        VariantView chosen = variant;
        act = next;
        title.setText(next.title());
        boolean same = before != null && chosen != null && before.title().equals(next.title());
        sayCloudBase();
        if (!same) {
            table.clearSelection();
        }
        // The same act with other passes or words stays where it was.
        choose(next.variants().stream()
                .filter(v -> same && chosen != null && v.name().equals(chosen.name()))
                .findFirst()
                .orElse(next.variants().get(0)));
    }

    void showPasses() {
        passesButton.setSelected(true);
        turn();
    }

    private void turn() {
        cards.show(below, passesButton.isSelected() ? PASSES : REMARKS);
        sayFigure();
        if (passesButton.isSelected()) {
            passes.takeFocus();
        }
    }

    /** True if everything finds its room side by side, in a window 1280 wide. */
    static boolean isRoomy(Appearance worn) {
        return worn.zoom().factor() < ROOMY_ZOOM;
    }

    void wear(Appearance worn) {
        appearance = worn;
        boolean roomy = isRoomy(worn);
        removeAll();
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(10) + " " + worn.room(6),
                roomy ? "[0:0:,grow 56,fill][0:0:,grow 44,fill]" : "[0:0:,grow,fill]",
                "[][][]" + worn.room(4) + "[0:0:,grow 57,fill][][0:0:,grow 43,fill]"));
        title.setFont(worn.strong(roomy ? TextRole.VALUE : TextRole.BODY));
        total.setForeground(worn.palette().soft());
        choice.setForeground(worn.palette().soft());
        remarksTitle.setFont(worn.strong(TextRole.BODY));
        table.wear(worn);
        remarkList.setCellRenderer(PrepareCells.remarks(worn));
        remarkList.setBackground(worn.palette().stage());
        path.wear(worn, worn.zoom().factor());
        add(title, "spanx, wmin 0, wrap");
        JLabel label = new JLabel("Cloud base, ft");
        label.setLabelFor(cloudBase);
        // So that the layout asks for its height again once it knows the width.
        variants.putClientProperty("migLayout.dynamicAspectRatio", true);
        add(variants, "spanx, growx, wmin 0, wrap");
        add(label, "spanx, split 4, growx 0");
        add(cloudBase, "growx 0, w " + worn.room(80) + "!");
        add(choice, "wmin 0, growx");
        add(total, "wmin 0, growx 0, wrap");
        JScrollPane tableScroll = new JScrollPane(table);
        // Swing does this by itself only in a window on screen; pictures are drawn without one.
        tableScroll.setColumnHeaderView(table.getTableHeader());
        add(tableScroll, "spanx, grow, wmin 0, hmin 0, wrap");
        add(remarksTitle, "spanx, split 2, wmin 0, growx");
        passesButton.setFont(worn.plain(TextRole.BODY));
        add(passesButton, "growx 0, wrap");
        JScrollPane scroll = new JScrollPane(remarkList);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        passes.wear(worn);
        below.removeAll();
        below.add(scroll, REMARKS);
        below.add(passes, PASSES);
        cards.show(below, passesButton.isSelected() ? PASSES : REMARKS);
        add(below, "grow, wmin 0, hmin 0");
        if (roomy) {
            add(path, "grow, wmin 0, hmin 0");
        }
        fillVariants();
        revalidate();
        repaint();
    }

    private void choose(VariantView next) {
        variant = next;
        total.setText(next.total());
        fillVariants();
        passesButton.setText(next.passes().summary());
        passes.show(next.passes());
        table.show(next.figures(), next.passes());
        if (next.figures().isEmpty()) {
            remarks.clear();
            path.show(SideView.NONE);
        }
    }

    private void fillVariants() {
        variants.removeAll();
        variants.setLayout(new InRows(appearance.px(4)));
        ButtonGroup group = new ButtonGroup();
        ActView shown = act;
        if (shown != null) {
            for (VariantView each : shown.variants()) {
                JToggleButton button = PlainText.plain(new JToggleButton(each.name() + ", " + each.base()));
                button.setFont(appearance.plain(TextRole.BODY));
                button.setSelected(each.equals(variant));
                button.addActionListener(e -> choose(each));
                group.add(button);
                button.setToolTipText(button.getText());
                variants.add(button);
            }
        }
        variants.revalidate();
        variants.repaint();
    }

    private void chooseFigure(int index) {
        VariantView shown = variant;
        if (shown == null || index >= shown.figures().size()) {
            return;
        }
        FigureView figure = shown.figures().get(index);
        remarks.clear();
        figure.remarks().forEach(remarks::addElement);
        sayFigure();
        path.show(
                new SideView(shown.path().stretches(), index, null, shown.path().crowdM()));
    }

    /** The line about the chosen figure: what to look for, or what its passes say. */
    private void sayFigure() {
        VariantView shown = variant;
        int index = table.getSelectedRow();
        if (shown == null || index < 0 || index >= shown.figures().size()) {
            return;
        }
        FigureView figure = shown.figures().get(index);
        remarksTitle.setText(
                passesButton.isSelected()
                        ? shown.passes().detail(index)
                        : figure.name() + ": " + (figure.remarks().isEmpty() ? "nothing to say yet" : figure.look()));
    }

    private void chooseByCloudBase() {
        ActView shown = act;
        OptionalDouble baseFt = CloudBase.read(cloudBase.getText());
        if (shown != null && baseFt.isPresent()) {
            shown.under(baseFt.getAsDouble()).ifPresent(this::choose);
        } else {
            choice.setText(CloudBase.HOW);
        }
    }

    /** At every letter what the base means, as far as it is typed. */
    private void sayCloudBase() {
        ActView shown = act;
        choice.setText(shown == null ? " " : CloudBase.said(shown, cloudBase.getText()));
    }
}
