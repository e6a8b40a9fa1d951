package crowdline.console.prepare.figure;

import crowdline.console.paint.PlainText;
import crowdline.console.prepare.field.Fields;
import crowdline.console.prepare.field.Tall;
import crowdline.console.prepare.field.Typed;
import crowdline.console.prepare.field.TypedText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.edit.shape.ElementField;
import crowdline.edit.shape.ElementFields;
import crowdline.measure.Measures;
import crowdline.measure.Measures.Dimension;
import crowdline.show.figure.Element;
import java.awt.KeyboardFocusManager;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;

/** What can be told of one element: its kind and whatever that kind has, each under its word and its unit. */
final class ElementForm extends Tall {
    private final Map<String, JComponent> inputs = new LinkedHashMap<>();
    private final transient BiConsumer<ElementField, String> told;
    private transient Fields fields = new Fields();
    private transient List<ElementField> shown = List.of();
    private transient @Nullable Element element;
    private transient @Nullable Appearance worn;
    private boolean showing;

    /** @param told told what was typed or chosen, when it is done */
    ElementForm(BiConsumer<ElementField, String> told) {
        super(new MigLayout());
        this.told = told;
        getAccessibleContext().setAccessibleName("The chosen element");
    }

    /** Shows another element, whatever stands in the fields. */
    void show(Element next) {
        show(next, TypedText::show);
    }

    /** Shows what has become of the element; what is typed meanwhile stays until it is told. */
    void follow(Element next) {
        show(next, TypedText::follow);
    }

    private void show(Element next, BiConsumer<JTextField, String> into) {
        List<ElementField> before = shown;
        element = next;
        shown = ElementFields.of(next);
        if (!alike(before, shown)) {
            build();
        }
        showing = true;
        try {
            shown.forEach(field -> put(field, into));
        } finally {
            showing = false;
        }
    }

    public void clear() {
        element = null;
        shown = List.of();
        build();
    }

    /** Shows again how it stands, where what was typed cannot be. */
    void reset() {
        Element now = element;
        if (now != null) {
            follow(now);
        }
    }

    void takeFocus() {
        inputs.values().stream().findFirst().ifPresent(JComponent::requestFocusInWindow);
    }

    private static boolean alike(List<ElementField> before, List<ElementField> after) {
        return before.stream()
                .map(f -> f.label() + f.options())
                .toList()
                .equals(after.stream().map(f -> f.label() + f.options()).toList());
    }

    /** The fields made anew; the one that had the focus has it again. */
    private void build() {
        String focused = inputs.entrySet().stream()
                .filter(e -> e.getValue()
                        == KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner())
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("");
        inputs.clear();
        fields = new Fields();
        for (ElementField field : shown) {
            inputs.put(field.label(), field.options().isEmpty() ? typed(field) : chosen(field));
        }
        if (worn != null) {
            wear(worn);
        }
        JComponent again = inputs.get(focused);
        if (again != null) {
            again.requestFocusInWindow();
        }
    }

    private JTextField typed(ElementField field) {
        JTextField input = fields.line(field.label() + ": " + field.how());
        input.setToolTipText(field.how());
        Typed.into(input, () -> {
            String typed = input.getText();
            TypedText.taken(input, typed);
            tell(field.label(), typed);
        });
        return input;
    }

    private JComboBox<String> chosen(ElementField field) {
        JComboBox<String> input = fields.choice(field.label(), field.options());
        input.setMaximumRowCount(field.options().size());
        // Arrows look through the list and Enter takes from it: a kind that is refused is passed by like any other.
        input.putClientProperty("JComboBox.isTableCellEditor", true);
        input.addActionListener(e -> tell(field.label(), String.valueOf(input.getSelectedItem())));
        return input;
    }

    private void put(ElementField field, BiConsumer<JTextField, String> into) {
        JComponent input = inputs.get(field.label());
        if (input instanceof JTextField text) {
            into.accept(text, shown(field));
        } else if (input instanceof JComboBox<?> box) {
            box.setSelectedItem(field.value());
        }
    }

    private Measures measures() {
        Appearance now = worn;
        return now == null ? Measures.USUAL : now.measures();
    }

    private String shown(ElementField field) {
        return measures().shown(field.value().replace(",", ""), Dimension.of(field.label()));
    }

    private void tell(String label, String typed) {
        Optional<ElementField> field =
                shown.stream().filter(f -> f.label().equals(label)).findFirst();
        if (!showing && field.isPresent() && !typed.strip().equals(shown(field.get()))) {
            told.accept(field.get(), measures().meant(typed, Dimension.of(label)));
        }
    }

    public void wear(Appearance appearance) {
        worn = appearance;
        removeAll();
        fields.wear(appearance);
        setLayout(new MigLayout(
                "insets 0, gap " + appearance.room(8) + " " + appearance.room(2) + ", wrap 3",
                "[][0:0:,grow 40,fill][0:0:,grow 60,fill]"));
        showing = true;
        shown.forEach(field -> put(field, TypedText::follow));
        showing = false;
        for (ElementField field : shown) {
            JComponent input = inputs.get(field.label());
            if (input != null) {
                add(fields.over(input, field.label()), "wmin 0");
                add(input, field.options().isEmpty() ? "wmin 0" : "w 0:0:, spanx 2");
                if (field.options().isEmpty()) {
                    JLabel range = PlainText.plain(
                            new JLabel(appearance.measures().numbers(field.range(), Dimension.of(field.label()))));
                    range.setFont(appearance.plain(TextRole.LABEL));
                    range.setForeground(appearance.palette().soft());
                    range.setToolTipText(field.how());
                    add(range, "wmin 0");
                }
            }
        }
        fields.wear(appearance);
        revalidate();
        repaint();
    }
}
