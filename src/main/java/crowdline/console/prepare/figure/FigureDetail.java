package crowdline.console.prepare.figure;

import crowdline.console.keys.Command;
import crowdline.console.paint.NamedList;
import crowdline.console.paint.PlainText;
import crowdline.console.passes.PassesPanel;
import crowdline.console.passes.PassesView;
import crowdline.console.path.SkyView;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.prepare.glance.PrepareView.RemarkView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.sight.SideView;
import java.awt.CardLayout;
import java.util.function.Consumer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.JToggleButton;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** The chosen figure: what is said of it, or its passes, or the search for another, beside its path and its curves. */
public final class FigureDetail extends JPanel {
    private static final String REMARKS = "REMARKS";
    private static final String PASSES = "PASSES";
    private static final String FINDER = "FINDER";
    private static final String SHAPE = "SHAPE";

    private final DefaultListModel<RemarkView> remarks = new DefaultListModel<>();
    private final JList<RemarkView> remarkList = new NamedList<>(remarks, RemarkView::text);
    private final JTextArea title = PlainText.wrapped("The chosen figure", " ");
    private final PathPicture path;
    private final CurvePicture curves;
    private final SketchPicture sketch;
    private final JToggleButton passesButton = PlainText.plain(new JToggleButton(PassesView.NONE.summary()));
    private final JToggleButton shapeButton = PlainText.plain(new JToggleButton("Shape"));
    private final PassesPanel passes;
    private final ShapePanel shape;
    private final FinderPanel finder;
    private final CardLayout cards = new CardLayout();
    private final JPanel below = new JPanel(cards);
    private String card = REMARKS;
    private transient @Nullable VariantView variant;
    private int index = -1;

    /**
     * No figure chosen yet.
     *
     * @param dragged told when the chosen figure was dragged on its picture
     */
    public FigureDetail(Appearance appearance, Tools tools, Consumer<Drag> dragged) {
        shape = new ShapePanel(appearance, tools);
        passes = new PassesPanel(appearance, tools.passes());
        finder = new FinderPanel(tools.host(), false);
        path = new PathPicture(appearance, dragged);
        curves = new CurvePicture(appearance);
        sketch = new SketchPicture(appearance);
        sketch.setVisible(false);
        passesButton.setMnemonic('P');
        passesButton.addActionListener(e -> {
            shapeButton.setSelected(false);
            turn(beside());
        });
        shapeButton.setMnemonic('S');
        shapeButton.setToolTipText("What is flown in the figure, element by element");
        shapeButton.addActionListener(e -> {
            passesButton.setSelected(false);
            turn(beside());
        });
        remarkList.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        remarkList.getAccessibleContext().setAccessibleName("Remarks of the figure");
    }

    public FinderPanel finder() {
        return finder;
    }

    public void showPasses() {
        shapeButton.setSelected(false);
        passesButton.setSelected(true);
        turn(PASSES);
    }

    public void openFinder() {
        turn(FINDER);
    }

    /** Back from the search to what was there; false if it is not open. */
    public boolean closeFinder() {
        boolean open = card.equals(FINDER);
        if (open) {
            turn(beside());
        }
        return open;
    }

    public ShapePanel shape() {
        return shape;
    }

    /** What is shown beside the pictures while no figure is looked for. */
    private String beside() {
        return shapeButton.isSelected() ? SHAPE : passesButton.isSelected() ? PASSES : REMARKS;
    }

    private void turn(String next) {
        card = next;
        cards.show(below, next);
        say();
        if (next.equals(PASSES)) {
            passes.takeFocus();
        } else if (next.equals(SHAPE)) {
            shape.takeFocus();
        }
    }

    public void show(VariantView next) {
        variant = next;
        passesButton.setText(next.passes().summary());
        passes.show(next.passes());
        if (next.figures().isEmpty()) {
            index = -1;
            remarks.clear();
            shape.show("", FigureEdit.NONE);
            title.setText("No figures yet. Press Ins to add the first.");
            seen(SideView.NONE, PrepareView.Curves.NONE, SkyView.NONE);
        }
    }

    /**
     * Shows another figure.
     *
     * @param actId of the act it is flown in
     */
    public void choose(String actId, int figure) {
        VariantView shown = variant;
        if (shown == null || figure < 0 || figure >= shown.figures().size()) {
            return;
        }
        index = figure;
        FigureView view = shown.figures().get(figure);
        remarks.clear();
        view.remarks().forEach(remarks::addElement);
        shape.show(actId, view.edit());
        say();
        seen(new SideView(shown.path().stretches(), figure, null, shown.path().crowdM()), view.curves(), view.sketch());
    }

    /** The path of the act, where any of it is predicted, and the curves of the figure or a sketch in place of them. */
    private void seen(SideView act, PrepareView.Curves figure, SkyView sketched) {
        path.show(act);
        curves.show(figure);
        sketch.show(sketched);
        boolean isSketched = !sketched.isEmpty();
        boolean isPredicted = act.stretches().stream().anyMatch(s -> !s.spots().isEmpty());
        if (sketch.isVisible() != isSketched || path.isVisible() != (isPredicted || !isSketched)) {
            sketch.setVisible(isSketched);
            curves.setVisible(!isSketched);
            path.setVisible(isPredicted || !isSketched);
            revalidate();
        }
    }

    /** The line about the chosen figure: what to look for, or what its passes say. */
    private void say() {
        VariantView shown = variant;
        if (shown == null || index < 0 || index >= shown.figures().size()) {
            return;
        }
        FigureView figure = shown.figures().get(index);
        title.setText(
                card.equals(PASSES)
                        ? shown.passes().detail(index)
                        : figure.name() + ": "
                                + (figure.remarks().isEmpty()
                                        ? "nothing to say yet. " + Command.DRAFT_FIGURE.key()
                                                + " drafts it, or write it in Words (" + Command.WORDS.key() + ")"
                                        : figure.look()));
    }

    public void wear(Appearance worn) {
        boolean roomy = Roomy.in(worn);
        removeAll();
        setLayout(new MigLayout(
                "insets 0, gap " + worn.room(10) + " " + worn.room(4),
                roomy ? "[0:0:,grow 56,fill][0:0:,grow 44,fill]" : "[0:0:,grow,fill]",
                (roomy ? "" : "[]") + "[][0:0:,grow,fill]"));
        title.setFont(worn.strong(TextRole.BODY));
        passesButton.setFont(worn.plain(TextRole.BODY));
        remarkList.setCellRenderer(FigureCells.remarks(worn));
        remarkList.setBackground(worn.palette().stage());
        path.wear(worn, worn.zoom().factor());
        curves.wear(worn, worn.zoom().factor());
        sketch.wear(worn, worn.zoom().factor());
        passes.wear(worn);
        finder.wear(worn);
        shape.wear(worn);
        shapeButton.setFont(worn.plain(TextRole.BODY));
        title.setFocusable(false);
        // Where type is large it has lines of its own, or it would be cut.
        add(title, "spanx, wmin 0, growx" + (roomy ? ", split 3" : ", wrap"));
        add(shapeButton, "growx 0" + (roomy ? "" : ", split 2"));
        add(passesButton, "growx 0, wrap");
        below.removeAll();
        below.add(Scrolling.down(remarkList), REMARKS);
        below.add(passes, PASSES);
        below.add(shape, SHAPE);
        below.add(finder, FINDER);
        cards.show(below, card);
        add(below, "grow, wmin 0, hmin 0");
        if (roomy) {
            JPanel seen =
                    new JPanel(new MigLayout("insets 0, flowy, hidemode 3, gap 0 " + worn.room(4), "[0:0:,grow,fill]"));
            seen.add(path, "grow, pushy 62, wmin 0, h 0:0:");
            seen.add(curves, "grow, pushy 38, wmin 0, h 0:0:");
            seen.add(sketch, "grow, pushy 38, wmin 0, h 0:0:");
            add(seen, "grow, wmin 0, hmin 0");
        }
        revalidate();
        repaint();
    }
}
