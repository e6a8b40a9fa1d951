package crowdline.console.words;

import crowdline.console.paint.InnerScroll;
import crowdline.console.paint.NamedList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;

/**
 * A list of the Words place, one row of it chosen. Showing rows tells nobody; choosing one does.
 *
 * @param <V> a row
 */
final class WordsList<V> {
    private final DefaultListModel<V> rows = new DefaultListModel<>();
    private final JList<V> list;
    private boolean showing;

    /**
     * @param name for screen readers
     * @param words what a row is found by
     * @param chosen told of the number of a row that somebody chose
     */
    WordsList(String name, Function<V, String> words, IntConsumer chosen) {
        list = new NamedList<>(rows, words);
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(name);
        list.addListSelectionListener(e -> {
            if (!showing && list.getSelectedIndex() >= 0) {
                chosen.accept(list.getSelectedIndex());
            }
        });
    }

    /** The component itself. */
    JList<V> list() {
        return list;
    }

    JScrollPane scroll() {
        JScrollPane scroll = new InnerScroll(list);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }

    /** Shows rows, with whichever is chosen staying so. */
    void show(List<V> next) {
        showing = true;
        try {
            fill(next);
        } finally {
            showing = false;
        }
    }

    /**
     * Shows rows.
     *
     * @param chosen the number of the one that is chosen, -1 for none
     */
    void show(List<V> next, int chosen) {
        showing = true;
        try {
            fill(next);
            if (chosen < 0) {
                list.clearSelection();
            } else if (list.getSelectedIndex() != chosen) {
                list.setSelectedIndex(chosen);
                list.ensureIndexIsVisible(chosen);
            }
        } finally {
            showing = false;
        }
    }

    /** Only rows that changed are replaced, so that a letter typed does not repaint every list. */
    private void fill(List<V> next) {
        while (rows.size() > next.size()) {
            rows.remove(rows.size() - 1);
        }
        for (int i = 0; i < next.size(); i++) {
            if (i >= rows.size()) {
                rows.addElement(next.get(i));
            } else if (!rows.get(i).equals(next.get(i))) {
                rows.set(i, next.get(i));
            }
        }
    }
}
