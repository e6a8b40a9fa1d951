package crowdline.console.practice;

import crowdline.console.paint.PlainText;
import java.awt.Component;
import java.util.function.Function;
import javax.swing.JList;
import javax.swing.ListCellRenderer;

/**
 * Shows the rows of a list by their words.
 *
 * @param words of a row
 */
record RowCells<V>(Function<V, String> words, ListCellRenderer<Object> plain) implements ListCellRenderer<V> {
    RowCells(Function<V, String> words) {
        this(words, PlainText.cells());
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends V> list, V value, int index, boolean isSelected, boolean cellHasFocus) {
        return plain.getListCellRendererComponent(list, words.apply(value), index, isSelected, cellHasFocus);
    }
}
