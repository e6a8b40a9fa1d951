package crowdline.console.prepare.figure;

import crowdline.console.keys.Command;
import crowdline.console.keys.KeyOn;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.MarkLine;
import crowdline.console.paint.NamedList;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.Scrolling;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.page.Tools;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import crowdline.console.window.ContextMenu;
import crowdline.edit.act.CannotBe;
import crowdline.edit.shape.ElementField;
import crowdline.edit.shape.ElementKind;
import crowdline.edit.shape.Shape;
import crowdline.measure.Measures;
import crowdline.show.figure.Element;
import java.awt.KeyboardFocusManager;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.BorderFactory;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;

/** The shape of the chosen figure: its elements one below the other, and what can be told of the chosen one. */
public final class ShapePanel extends JPanel {
    private static final String OWN = "its own shape";
    private static final String CATALOGUE = "drawn from the catalogue";

    private final DefaultListModel<Shape.Row> rows = new DefaultListModel<>();
    private final JList<Shape.Row> list =
            new NamedList<>(rows, row -> row.words().strip());
    private final ElementForm form;
    private final MarkLine mark;
    private final Fields buttons = new Fields();
    private final JButton add = buttons.button("Add");
    private final JButton remove = buttons.button("Remove");
    private final JButton back = buttons.button("As in the catalogue");
    private final JLabel why = PlainText.plain(new JLabel(" "));
    private final JPanel work = new JPanel();
    private final JScrollPane formScroll;
    private final transient Tools tools;
    private transient FigureEdit figure = FigureEdit.NONE;
    private String actId = "";
    private int wanted = -1;
    private boolean showing;
    private transient Measures measures = Measures.USUAL;

    ShapePanel(Appearance appearance, Tools tools) {
        this.tools = tools;
        form = new ElementForm(this::told);
        formScroll = Scrolling.down(form);
        formScroll.setBorder(BorderFactory.createEmptyBorder());
        mark = new MarkLine("Whose shape it is", appearance);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName("Elements of the figure, in the order flown");
        ListCellRenderer<Object> words = PlainText.cells();
        list.setCellRenderer((in, row, at, isSelected, hasFocus) ->
                words.getListCellRendererComponent(in, measures.told(row.words()), at, isSelected, hasFocus));
        list.addListSelectionListener(e -> {
            if (!showing) {
                chosen().ifPresent(row -> form.show(row.element()));
            }
        });
        ContextMenu.on(list, tools.actions(), List.of(Command.ADD, Command.EARLIER, Command.LATER, Command.REMOVE));
        KeyOn.all(list, Map.of("ENTER", form::takeFocus, "RIGHT", form::takeFocus));
        add.setToolTipText("Ins: a straight line after the chosen element, which can then be made any other");
        remove.setToolTipText("Delete: takes the chosen element out");
        back.setToolTipText("Removes the figure's own shape in one step");
        add.setMnemonic('A');
        back.setMnemonic('C');
        add.addActionListener(e -> add());
        remove.addActionListener(e -> remove());
        back.addActionListener(e -> back());
        getAccessibleContext().setAccessibleName("Shape of the figure");
    }

    /** Whether what is done is done to the elements, because the focus is here. */
    public boolean hasFocusInside() {
        var owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return owner != null && SwingUtilities.isDescendingFrom(owner, this);
    }

    void takeFocus() {
        list.requestFocusInWindow();
    }

    /** From what is told of an element back to the elements; false if the focus is there already, or elsewhere. */
    public boolean leaveForm() {
        return hasFocusInside() && !list.isFocusOwner() && list.requestFocusInWindow();
    }

    public void show(String act, FigureEdit next) {
        boolean same = actId.equals(act) && figure.id().equals(next.id());
        int chosen = same ? list.getSelectedIndex() : -1;
        int before = wanted >= 0 ? wanted : Math.max(0, chosen);
        actId = act;
        figure = next;
        wanted = -1;
        mark.show(
                next.shape().isOwn() ? new Mark(Form.DISC, Tone.GOOD, OWN) : new Mark(Form.RING, Tone.CALM, CATALOGUE));
        why.setText(next.shape().why());
        boolean open = next.shape().why().isEmpty();
        why.setVisible(!open);
        work.setVisible(open);
        back.setEnabled(open && next.shape().isOwn());
        showing = true;
        try {
            rows.clear();
            next.shape().shape().rows().forEach(rows::addElement);
            list.setSelectedIndex(Math.max(0, Math.min(before, rows.size() - 1)));
        } finally {
            showing = false;
        }
        remove.setEnabled(open && !rows.isEmpty());
        boolean stays = chosen >= 0 && chosen == list.getSelectedIndex();
        chosen().ifPresentOrElse(
                        row -> {
                            if (stays) {
                                form.follow(row.element());
                            } else {
                                form.show(row.element());
                            }
                        },
                        form::clear);
        list.ensureIndexIsVisible(list.getSelectedIndex());
    }

    private Optional<Shape.Row> chosen() {
        return Optional.ofNullable(list.getSelectedValue());
    }

    private Shape shape() {
        return figure.shape().shape();
    }

    private void told(ElementField field, String typed) {
        chosen().ifPresent(row -> {
            try {
                Element next = field.with(typed);
                if (next.equals(row.element())) {
                    form.reset();
                } else {
                    change(
                            "Change the " + ElementKind.of(row.element()).word() + " of {figure}",
                            () -> shape().with(row, next));
                }
            } catch (CannotBe e) {
                tools.editor().refuse(e.why());
                form.reset();
            }
        });
    }

    /** Adds a line behind the chosen element. */
    public void add() {
        Element fresh = ElementKind.LINE.fresh();
        Shape.Row row = list.getSelectedValue();
        wanted = row == null ? 0 : list.getSelectedIndex() + 1;
        change("Add an element to {figure}", () -> {
            // Nothing straight is flown in the middle of a line: it comes behind all of that line.
            Shape.Row behind = row == null || row.inside() < 0 ? row : row.ofLine();
            return behind == null ? shape().begun(fresh) : shape().after(behind, fresh);
        });
    }

    public void remove() {
        chosen().ifPresent(row -> change(
                "Remove the " + ElementKind.of(row.element()).word() + " from {figure}", () -> shape().without(row)));
    }

    /**
     * Moves the chosen element in the figure.
     *
     * @param by places later, negative for earlier
     */
    public void move(int by) {
        chosen().ifPresent(row -> {
            wanted = Math.max(0, Math.min(rows.size() - 1, list.getSelectedIndex() + by));
            change("Move the " + ElementKind.of(row.element()).word() + " in {figure}", () -> shape().moved(row, by));
        });
    }

    private void back() {
        if (!figure.shape().isOwn()) {
            return;
        }
        list.requestFocusInWindow();
        tools.editor().make(tools.host().get().figures().asInCatalogue(actId, figure.id()));
    }

    private interface Making {
        Shape of();
    }

    private void change(String name, Making making) {
        if (!figure.shape().why().isEmpty() || !tools.editor().isOpen()) {
            return;
        }
        try {
            Shape next = making.of();
            FigureEdit before = figure;
            String act = actId;
            // What is told next is told of this one, though it is not flown yet.
            show(act, before.shaped(next));
            tools.editor()
                    .make(
                            tools.host().get().figures().shape(act, before.id(), name, next.elements()),
                            show -> {},
                            () -> takeBack(act, before));
        } catch (IllegalArgumentException e) {
            wanted = -1;
            tools.editor().refuse(String.valueOf(e.getMessage()));
            form.reset();
        }
    }

    /** What was told cannot be flown. */
    private void takeBack(String act, FigureEdit before) {
        wanted = -1;
        if (actId.equals(act) && figure.id().equals(before.id())) {
            show(act, before);
        }
    }

    public void wear(Appearance worn) {
        measures = worn.measures();
        removeAll();
        setLayout(new MigLayout("insets 0, gap 0, hidemode 3", "[0:0:,grow,fill]", "[][0:0:,grow,fill]"));
        why.setFont(worn.plain(TextRole.BODY));
        why.setForeground(worn.palette().soft());
        list.setFont(worn.plain(TextRole.BODY));
        list.setBackground(worn.palette().stage());
        list.setFixedCellHeight(worn.px(28));
        mark.dress(worn);
        buttons.wear(worn);
        form.wear(worn);
        work.removeAll();
        boolean roomy = Roomy.in(worn);
        work.setLayout(new MigLayout(
                "insets 0, gap " + worn.room(10) + " " + worn.room(4),
                roomy ? "[0:0:,grow 46,fill][0:0:,grow 54,fill]" : "[0:0:,grow,fill]",
                roomy ? "[0:0:,grow,fill][]" : "[0:0:,grow 35,fill][0:0:,grow 65,fill][]"));
        work.add(Scrolling.down(list), "grow, wmin 0, hmin 0" + (roomy ? "" : ", wrap"));
        work.add(formScroll, "grow, wmin 0, hmin 0, wrap");
        work.add(mark, "spanx, split 4, growx, wmin 0, h " + worn.room(24) + "!");
        work.add(add, "growx 0");
        work.add(remove, "growx 0");
        work.add(back, "growx 0, wmin 0");
        add(why, "cell 0 0, wmin 0");
        add(work, "cell 0 1, grow, wmin 0, hmin 0");
        revalidate();
        repaint();
    }
}
