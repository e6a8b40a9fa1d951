package crowdline.console.prepare;

import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;

/** The fields of one page: each with a name for screen readers, all dressed together. */
final class Fields {
    private final List<JComponent> fields = new ArrayList<>();
    private final List<JLabel> labels = new ArrayList<>();

    /** A field for one line. */
    JTextField line(String name) {
        return named(PlainText.plain(new JTextField()), name);
    }

    /** A field for many lines; Tab leaves it, as everywhere else. */
    JTextArea area(String name, int rows) {
        JTextArea area = named(PlainText.plain(new JTextArea(rows, 20)), name);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        return area;
    }

    /** A box to choose one of these from. */
    <T> JComboBox<T> choice(String name, List<T> options) {
        JComboBox<T> box = PlainText.plain(new JComboBox<>());
        options.forEach(box::addItem);
        // The longest option must not widen the page.
        box.setRenderer(PlainText.cells());
        return named(box, name);
    }

    JButton button(String words) {
        JButton button = PlainText.plain(new JButton(words));
        fields.add(button);
        return button;
    }

    /** A word over a field; Alt and the letter go to the field. */
    JLabel over(JComponent field, String words) {
        JLabel label = PlainText.plain(new JLabel(words));
        label.setLabelFor(field);
        labels.add(label);
        return label;
    }

    <C extends JComponent> C named(C field, String name) {
        field.getAccessibleContext().setAccessibleName(name);
        fields.add(field);
        return field;
    }

    void wear(Appearance appearance) {
        fields.forEach(f -> f.setFont(appearance.plain(TextRole.BODY)));
        for (JLabel label : labels) {
            label.setFont(appearance.plain(TextRole.LABEL));
            label.setForeground(appearance.palette().soft());
        }
        for (Component field : fields) {
            if (field instanceof JTextArea) {
                field.setBackground(appearance.palette().stage());
            }
        }
    }
}
