package crowdline.console.prepare.figure;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.MarkLine;
import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Roomy;
import crowdline.console.prepare.field.TypedText;
import crowdline.console.prepare.glance.PinField;
import crowdline.console.prepare.glance.PrepareView.FigureEdit;
import crowdline.console.prepare.glance.PrepareView.PinView;
import crowdline.console.prepare.glance.PrepareView.WrittenView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.SwingConstants;
import net.miginfocom.swing.MigLayout;

/** What can be told of the chosen figure: each thing with what is told or assumed, as a field and as a shape and a word. */
public final class PinsBar extends JPanel {
    /** A row is cut into so many at least, so that a single field is not as wide as the page. */
    private static final int FEWEST = 7;

    private static final String HAND =
            "This act was drawn by hand, figure by figure. Ctrl+Shift+L lays it out, and then places, heights and"
                    + " speeds can be set.";
    private static final String TRANSIT = "Flown between two figures, so it follows from them.";

    private final Fields fields = new Fields();
    private final Map<PinField, JComponent> inputs = new EnumMap<>(PinField.class);
    private final Map<PinField, JLabel> labels = new EnumMap<>(PinField.class);
    private final Map<PinField, MarkLine> marks = new EnumMap<>(PinField.class);
    private final JLabel none = PlainText.plain(new JLabel(" "));
    private final JLabel written = PlainText.plain(new JLabel(" "));
    private final MarkLine undrawn;
    private final transient BiConsumer<PinField, String> told;
    private transient Appearance worn;
    private transient FigureEdit figure = FigureEdit.NONE;
    private boolean showing;

    /**
     * No figure chosen yet.
     *
     * @param told told what was typed or chosen, when it is done
     */
    public PinsBar(Appearance appearance, BiConsumer<PinField, String> told) {
        this.told = told;
        worn = appearance;
        undrawn = new MarkLine("What the pilot wrote and is not drawn", appearance);
        undrawn.setVisible(false);
        none.setVerticalAlignment(SwingConstants.TOP);
        for (PinField field : PinField.values()) {
            JComponent input = field.options().isEmpty() ? typed(field) : chosen(field);
            inputs.put(field, input);
            labels.put(field, fields.over(input, field.label()));
            marks.put(field, new MarkLine(field.label(), appearance));
        }
        getAccessibleContext().setAccessibleName("What is told of the figure");
    }

    private JTextField typed(PinField field) {
        JTextField input = fields.line(field.label() + ": " + field.how());
        input.addActionListener(e -> tell(field));
        input.addFocusListener(new FocusAdapter() {
            @Override
            public void focusLost(FocusEvent event) {
                if (!event.isTemporary()) {
                    tell(field);
                }
            }
        });
        return input;
    }

    private JComboBox<String> chosen(PinField field) {
        JComboBox<String> input = fields.choice(field.label() + ": " + field.how(), field.options());
        input.addActionListener(e -> {
            if (!showing) {
                tell(field);
            }
        });
        return input;
    }

    public void show(FigureEdit next) {
        boolean same = next.id().equals(figure.id());
        boolean alike = next.pins().stream()
                .map(PinView::field)
                .toList()
                .equals(figure.pins().stream().map(PinView::field).toList());
        figure = next;
        showing = true;
        try {
            next.pins().forEach(pin -> show(pin, same));
        } finally {
            showing = false;
        }
        none.setText(next.isTransit() ? TRANSIT : HAND);
        write(next.written());
        if (!alike || next.pins().isEmpty()) {
            wear(worn);
        }
    }

    /** The pilot's own line, and first of all what of it is not in the picture. */
    private void write(WrittenView next) {
        String wrote = next.text().isEmpty() ? " " : "The pilot wrote “" + next.text() + "”";
        boolean isDrawn = next.undrawn().isEmpty();
        written.setText(wrote);
        written.setVisible(isDrawn);
        undrawn.setVisible(!isDrawn);
        String tip = wrote.isBlank() ? null : PlainText.tip(wrote);
        written.setToolTipText(tip);
        undrawn.setToolTipText(tip);
        if (!isDrawn) {
            undrawn.show(new Mark(Form.DIAMOND, Tone.CAUTION, "Not drawn: " + next.undrawn() + ". " + wrote));
        }
    }

    /** What is being typed about the same figure stays as it is typed. */
    private void show(PinView pin, boolean same) {
        MarkLine mark = marks.get(pin.field());
        if (mark != null) {
            mark.show(pin.mark());
        }
        JComponent input = inputs.get(pin.field());
        if (input instanceof JTextField text) {
            text.putClientProperty("JTextField.placeholderText", pin.value());
            if (same) {
                TypedText.follow(text, pin.told());
            } else {
                TypedText.show(text, pin.told());
            }
            text.repaint();
        } else if (input instanceof JComboBox<?>) {
            @SuppressWarnings("unchecked")
            JComboBox<String> box = (JComboBox<String>) input;
            choose(box, pin);
        }
    }

    private static void choose(JComboBox<String> box, PinView pin) {
        int own = pin.field().options().size();
        while (box.getItemCount() > own) {
            box.removeItemAt(own);
        }
        String free = pin.field().options().get(0);
        if (pin.told().isEmpty()) {
            box.setSelectedItem(free);
        } else {
            if (!pin.field().options().contains(pin.told())) {
                box.addItem(pin.told());
            }
            box.setSelectedItem(pin.told());
        }
    }

    private void tell(PinField field) {
        Optional<PinView> pin =
                figure.pins().stream().filter(p -> p.field() == field).findFirst();
        if (showing || pin.isEmpty()) {
            return;
        }
        JComponent input = inputs.get(field);
        String typed = input instanceof JTextField text
                ? text.getText().strip()
                : input instanceof JComboBox<?> box ? String.valueOf(box.getSelectedItem()) : "";
        boolean free =
                !field.options().isEmpty() && typed.equals(field.options().get(0));
        String next = free ? "" : typed;
        if (!next.equals(pin.get().told())) {
            told.accept(field, next);
        }
    }

    /** What was typed or chosen is told from now on. */
    public void taken(PinField field, String typed) {
        if (inputs.get(field) instanceof JTextField text) {
            TypedText.taken(text, typed);
        }
    }

    /** Shows again what is told, where what was typed or chosen cannot be. */
    public void refused(PinField field, String typed) {
        figure.pins().stream().filter(pin -> pin.field() == field).forEach(pin -> {
            if (inputs.get(field) instanceof JTextField text) {
                TypedText.refused(text, typed, pin.told());
            } else {
                showing = true;
                try {
                    show(pin, true);
                } finally {
                    showing = false;
                }
            }
        });
    }

    /** Puts the focus into the first field; false if there is none. */
    boolean takeFocus() {
        return !figure.pins().isEmpty()
                && Optional.ofNullable(inputs.get(figure.pins().get(0).field()))
                        .map(JComponent::requestFocusInWindow)
                        .orElse(false);
    }

    /** The height of a field with its label and its mark. */
    private int cellPx(Appearance appearance) {
        JComponent input = inputs.get(PinField.PLACE);
        JLabel label = labels.get(PinField.PLACE);
        return input == null || label == null
                ? 0
                : label.getPreferredSize().height + input.getPreferredSize().height + appearance.px(20);
    }

    public void wear(Appearance appearance) {
        worn = appearance;
        removeAll();
        fields.wear(appearance);
        inputs.forEach(
                (field, input) -> input.setToolTipText(appearance.measures().told(field.how())));
        none.setFont(appearance.plain(TextRole.BODY));
        none.setForeground(appearance.palette().soft());
        int across = Roomy.in(appearance) ? Math.max(FEWEST, figure.pins().size()) : 3;
        setLayout(new MigLayout(
                "insets 0, gap " + appearance.room(8) + " 0, wrap " + across, "[0:0:,grow,fill]".repeat(across)));
        written.setFont(appearance.plain(TextRole.BODY));
        written.setForeground(appearance.palette().soft());
        undrawn.dress(appearance);
        if (figure.pins().isEmpty()) {
            // As tall as the fields of a figure, or all below would jump from row to row.
            boolean isAmongFields = figure.isTransit() && Roomy.in(appearance);
            add(none, "spanx, wmin 0, aligny top" + (isAmongFields ? ", h " + cellPx(appearance) + "!" : ""));
        }
        for (PinView pin : figure.pins()) {
            JPanel cell = new JPanel(new MigLayout("insets 0, gap 0 0, wrap 1", "[0:0:,grow,fill]"));
            MarkLine mark = marks.get(pin.field());
            if (mark != null) {
                mark.dress(appearance);
                mark.getAccessibleContext()
                        .setAccessibleName(
                                appearance.measures().label(pin.field().label()));
                cell.add(labels.get(pin.field()), "wmin 0");
                cell.add(inputs.get(pin.field()), "wmin 0");
                cell.add(mark, "wmin 0, h " + appearance.room(20) + "!");
            }
            add(cell, "wmin 0");
        }
        if (!figure.pins().isEmpty() || figure.isTransit()) {
            JPanel line = new JPanel(new MigLayout("insets 0, hidemode 3", "[0:0:,grow,fill]"));
            line.add(written, "wmin 0, h " + appearance.room(22) + "!");
            line.add(undrawn, "cell 0 0, wmin 0, growx, h " + appearance.room(22) + "!");
            add(line, "newline, spanx, growx, wmin 0");
        }
        revalidate();
        repaint();
    }
}
