package crowdline.console.prepare.field;

import com.formdev.flatlaf.FlatClientProperties;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.window.TextMenu;
import java.awt.KeyboardFocusManager;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.jspecify.annotations.Nullable;

/** The fields of one page: each with a name for screen readers, all dressed together. */
public final class Fields {
    private final List<JComponent> fields = new ArrayList<>();
    private final Map<JComponent, JLabel> labels = new HashMap<>();
    private @Nullable Appearance worn;
    /** Words with knots and feet in them, by what they stand at. */
    private final Map<JComponent, String> words = new HashMap<>();

    /** A field for one line. */
    public JTextField line(String name) {
        JTextField line = named(PlainText.plain(TextMenu.on(new JTextField())), name);
        // Whoever comes by Tab types something else, as in any form; a click still goes between the letters.
        line.putClientProperty(
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY,
                FlatClientProperties.SELECT_ALL_ON_FOCUS_POLICY_ALWAYS);
        return line;
    }

    /** A field for many lines; Tab leaves it, as everywhere else. */
    public JTextArea area(String name, int rows) {
        JTextArea area = named(PlainText.plain(TextMenu.on(new JTextArea(rows, 20))), name);
        area.setLineWrap(true);
        area.setWrapStyleWord(true);
        area.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        area.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        return area;
    }

    /** A box to choose one of these from. */
    public <T> JComboBox<T> choice(String name, List<T> options) {
        JComboBox<T> box = PlainText.plain(new JComboBox<>());
        options.forEach(box::addItem);
        // The longest option must not widen the page.
        box.setRenderer(PlainText.cells());
        return named(box, name);
    }

    public JButton button(String words) {
        JButton button = PlainText.plain(new JButton(words));
        fields.add(button);
        return button;
    }

    /** A word over a field; Alt and the letter go to the field. */
    public JLabel over(JComponent field, String said) {
        JLabel label = labels.computeIfAbsent(field, f -> PlainText.plain(new JLabel()));
        label.setText(said);
        label.setLabelFor(field);
        words.put(label, said);
        Appearance now = worn;
        if (now != null) {
            dress(label, now);
        }
        return label;
    }

    private void dress(JLabel label, Appearance appearance) {
        label.setFont(appearance.plain(TextRole.LABEL));
        label.setForeground(appearance.palette().soft());
        label.setText(appearance.measures().label(words.getOrDefault(label, "")));
    }

    public <C extends JComponent> C named(C field, String name) {
        field.getAccessibleContext().setAccessibleName(name);
        words.put(field, name);
        fields.add(field);
        return field;
    }

    public void wear(Appearance appearance) {
        worn = appearance;
        fields.forEach(f -> f.setFont(appearance.plain(TextRole.BODY)));
        labels.values().forEach(label -> dress(label, appearance));
        for (JComponent field : fields) {
            String name = words.get(field);
            if (name != null) {
                field.getAccessibleContext()
                        .setAccessibleName(appearance.measures().label(name));
            }
            if (field instanceof JTextArea) {
                field.setBackground(appearance.palette().stage());
            }
        }
    }
}
