package crowdline.console.words;

import crowdline.console.paint.PlainText;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;

/** A choice of one of some names, or none. What was chosen stays in the list even if it is not there. */
final class ChoiceBox extends JComboBox<String> {
    private static final String NONE = "";
    private static final int SHOWN = 12;

    private final String none;
    private final String absent;
    private List<String> there = List.of();
    private Map<String, String> notes = Map.of();

    /**
     * @param name what is chosen, for who does not see it
     * @param none what it means to choose none
     * @param absent what is said of a choice that is not there
     */
    ChoiceBox(String name, String none, String absent) {
        this.none = none;
        this.absent = absent;
        PlainText.plain(this);
        getAccessibleContext().setAccessibleName(name);
        setMaximumRowCount(SHOWN);
        setRenderer(new Words());
        setPrototypeDisplayValue("the nose falls through");
    }

    /**
     * @param chosen what is chosen, or empty
     * @param names those there are
     */
    void show(String chosen, List<String> names) {
        there = names;
        List<String> all = new ArrayList<>();
        all.add(NONE);
        all.addAll(names);
        if (!all.contains(chosen)) {
            all.add(chosen);
        }
        List<String> now = new ArrayList<>();
        for (int i = 0; i < getItemCount(); i++) {
            now.add(getItemAt(i));
        }
        if (!now.equals(all)) {
            setModel(new DefaultComboBoxModel<>(all.toArray(String[]::new)));
        }
        setSelectedItem(chosen);
    }

    /** Says something beside some of the names. */
    void note(Map<String, String> said) {
        notes = Map.copyOf(said);
    }

    /** What is chosen, empty for none. */
    String chosen() {
        return getSelectedItem() instanceof String words ? words : NONE;
    }

    private final class Words extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean cellHasFocus) {
            String words = value instanceof String name ? name : NONE;
            String note = there.contains(words) ? notes.getOrDefault(words, "") : absent;
            String shown = words.isEmpty() ? none : note.isEmpty() ? words : words + ": " + note;
            return super.getListCellRendererComponent(list, shown, index, isSelected, cellHasFocus);
        }
    }
}
