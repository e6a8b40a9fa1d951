package crowdline.console.prepare.act;

import crowdline.console.keys.Clicked;
import crowdline.console.keys.KeyOn;
import crowdline.console.paint.InnerScroll;
import crowdline.console.prepare.field.InSight;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.Tall;
import crowdline.console.prepare.figure.FigureCommands;
import crowdline.console.prepare.figure.FigureDetail;
import crowdline.console.prepare.figure.FigureTable;
import crowdline.console.prepare.figure.PinsBar;
import crowdline.console.prepare.figure.ShapePanel;
import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FigureView;
import crowdline.console.prepare.glance.PrepareView.VariantView;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.measure.Measures;
import java.awt.BorderLayout;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** One act: its variants, the figures of the chosen one, what can be told of the chosen figure, and what is said of it. */
public final class ActPanel extends Tall {
    /** From this zoom on there is one column instead of two; tuned for a window 1280 wide. */
    private final ActHead head;

    private final VariantBar variants;
    private final FigureTable table;
    private final PinsBar pins;
    private final FigureDetail detail;
    private final transient Tools tools;
    private transient Measures measures = Measures.USUAL;
    private transient @Nullable ActView act;
    private transient @Nullable VariantView variant;
    /** Name of the variant to choose once it is there; empty for the one that is chosen. */
    private String wanted = "";

    public ActPanel(Appearance appearance, Tools tools) {
        super(new BorderLayout());
        this.tools = tools;
        head = new ActHead(tools);
        variants = new VariantBar(appearance, tools, this::choose, this::chooseNext);
        table = new FigureTable(this::chooseFigure, this::typed);
        pins = new PinsBar(appearance, this::tell);
        detail = new FigureDetail(appearance, tools, drag -> commands().ifPresent(c -> c.drag(drag)));
        KeyOn.all(table, Map.of("ENTER", this::replace));
        table.addMouseListener(new Clicked(this::replace));
        wear(appearance);
    }

    public void show(ActView next) {
        if (next.equals(act)) {
            return;
        }
        ActView before = act;
        VariantView chosen = variant;
        act = next;
        head.show(next.head());
        boolean same = before != null && chosen != null && before.id().equals(next.id());
        variants.show(next);
        if (!same) {
            table.clearSelection();
        }
        // The same act with other passes or words stays where it was.
        choose(next.variants().stream()
                .filter(v -> same && v.name().equals(wanted))
                .findFirst()
                .or(() -> next.variants().stream()
                        .filter(v -> same && chosen != null && v.name().equals(chosen.name()))
                        .findFirst())
                .orElse(next.variants().get(0)));
        if (variant != null && variant.name().equals(wanted)) {
            wanted = "";
        }
    }

    /** Chooses a variant as soon as it is there. */
    private void chooseNext(String name) {
        ActView shown = act;
        Optional<VariantView> there = shown == null
                ? Optional.empty()
                : shown.variants().stream().filter(v -> v.name().equals(name)).findFirst();
        wanted = there.isPresent() ? "" : name;
        there.ifPresent(this::choose);
    }

    /** Chooses a figure as soon as its act is shown, in whichever variant it is flown. */
    void chooseNext(String actId, String figureId) {
        ActView shown = act;
        VariantView flown = variant;
        if (shown != null && flown != null && shown.id().equals(actId) && !has(flown, figureId)) {
            shown.variants().stream().filter(v -> has(v, figureId)).findFirst().ifPresent(this::choose);
        }
        table.chooseNext(figureId);
    }

    private static boolean has(VariantView flown, String figureId) {
        return flown.figures().stream().anyMatch(f -> f.edit().id().equals(figureId));
    }

    /** The id of the chosen figure; null if there is none. */
    @Nullable
    String chosenFigure() {
        return commands()
                .map(FigureCommands::chosen)
                .map(figure -> figure.edit().id())
                .orElse(null);
    }

    public void showPasses() {
        detail.showPasses();
    }

    boolean closeFinder() {
        boolean closed = detail.closeFinder();
        if (closed) {
            table.requestFocusInWindow();
        }
        return closed;
    }

    /** One step back towards the figures: from the search, or out of the shape; false if there is none. */
    public boolean back() {
        return closeFinder()
                || detail.shape().leaveForm()
                || (detail.shape().hasFocusInside() && table.requestFocusInWindow());
    }

    /** Begins to edit what stands at the head of the act. */
    boolean editHead() {
        return head.takeFocus();
    }

    public ShapePanel shape() {
        return detail.shape();
    }

    /** The shape of the chosen figure, while somebody works in it. */
    public Optional<ShapePanel> shapeInWork() {
        return Optional.of(detail.shape()).filter(ShapePanel::hasFocusInside);
    }

    FigureTable table() {
        return table;
    }

    /** What can be done from where the choice stands; empty while there is no act. */
    public Optional<FigureCommands> commands() {
        ActView shown = act;
        VariantView flown = variant;
        return shown == null || flown == null || !tools.editor().isOpen()
                ? Optional.empty()
                : Optional.of(new FigureCommands(tools, shown, flown, table.getSelectedRow()));
    }

    /** Asks for a figure to come behind the chosen one. */
    public void add() {
        commands().ifPresent(c -> {
            detail.openFinder();
            c.askToAdd(detail.finder(), this::closeFinder, table::chooseNext);
        });
    }

    private void replace() {
        commands().filter(c -> c.chosen() != null).ifPresent(c -> {
            FigureView chosen = c.chosen();
            if (chosen != null && !chosen.edit().isTransit()) {
                detail.openFinder();
                c.askToReplace(detail.finder(), this::closeFinder);
            }
        });
    }

    private void tell(PinField field, String typed) {
        commands()
                .ifPresent(c -> c.pin(
                        field,
                        measures.meant(typed, field.dimension()),
                        () -> pins.taken(field, typed),
                        () -> pins.refused(field, typed)));
    }

    /** A number was typed into the table. */
    private void typed(PinField field, String typed) {
        tell(field, typed);
    }

    public void wear(Appearance worn) {
        measures = worn.measures();
        removeAll();
        setLayout(new MigLayout(
                "insets 0, gap 0 " + worn.room(6),
                "[0:0:,grow,fill]",
                "[][][]" + worn.room(4)
                        + (Roomy.in(worn)
                                ? "[0:0:,grow 50,fill][][0:0:,grow 50,fill]"
                                // Too large to be seen at once: it scrolls.
                                : "[" + worn.room(150) + "!,fill][][" + worn.room(320) + "!,fill]")));
        head.wear(worn);
        variants.wear(worn);
        table.wear(worn);
        pins.wear(worn);
        detail.wear(worn);
        add(head, "growx, wmin 0, wrap");
        add(variants.buttons(), "growx, wmin 0, wrap");
        add(variants, "growx, wmin 0, wrap");
        JScrollPane tableScroll = new InnerScroll(table);
        // Swing does this by itself only in a window on screen; pictures are drawn without one.
        tableScroll.setColumnHeaderView(table.getTableHeader());
        InSight.keep(tableScroll.getViewport(), table);
        add(tableScroll, "grow, wmin 0, hmin 0, wrap");
        add(pins, "growx, wmin 0, wrap");
        add(detail, "grow, wmin 0, hmin 0");
        revalidate();
        repaint();
    }

    /** The variants know how many lines they take only once they know their width. */
    @Override
    public void doLayout() {
        super.doLayout();
        JPanel buttons = variants.buttons();
        if (buttons.getPreferredSize().height > buttons.getHeight()) {
            invalidate();
            super.doLayout();
        }
    }

    private void choose(VariantView next) {
        variant = next;
        variants.choose(next);
        detail.show(next);
        table.show(next.figures(), next.passes());
        if (next.figures().isEmpty()) {
            pins.show(PrepareView.FigureEdit.NONE);
        }
        chooseFigure(table.getSelectedRow());
    }

    private void chooseFigure(int index) {
        VariantView shown = variant;
        if (shown == null || index < 0 || index >= shown.figures().size()) {
            return;
        }
        ActView of = act;
        detail.choose(of == null ? "" : of.id(), index);
        pins.show(shown.figures().get(index).edit());
    }
}
