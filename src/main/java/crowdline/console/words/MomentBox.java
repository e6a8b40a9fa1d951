package crowdline.console.words;

import crowdline.console.paint.PlainText;
import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import javax.swing.DefaultComboBoxModel;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JComboBox;
import javax.swing.JList;

/** A choice of the moments that a figure has, or none. What a remark is tied to stays in the list even if it is not there. */
final class MomentBox extends JComboBox<String> {
    private static final String NONE = "";
    private static final int SHOWN = 12;

    private final String none;
    private List<String> there = List.of();

    /**
     * @param name what is chosen, for who does not see it
     * @param none what it means to choose no moment
     */
    MomentBox(String name, String none) {
        this.none = none;
        PlainText.plain(this);
        getAccessibleContext().setAccessibleName(name);
        setMaximumRowCount(SHOWN);
        setRenderer(new Words());
        setPrototypeDisplayValue("the nose falls through");
    }

    /**
     * @param chosen the words of a moment, or empty
     * @param moments those of the figure
     */
    void show(String chosen, List<String> moments) {
        there = moments;
        List<String> all = new ArrayList<>();
        all.add(NONE);
        all.addAll(moments);
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

    /** The words of the moment chosen, empty for none. */
    String chosen() {
        return getSelectedItem() instanceof String words ? words : NONE;
    }

    private final class Words extends DefaultListCellRenderer {
        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean cellHasFocus) {
            String words = value instanceof String moment ? moment : NONE;
            String shown = words.isEmpty() ? none : there.contains(words) ? words : words + ": not in this figure";
            return super.getListCellRendererComponent(list, shown, index, isSelected, cellHasFocus);
        }
    }
}
