package crowdline.console.prepare.field;

import java.util.function.IntFunction;
import javax.swing.JTable;
import javax.swing.text.JTextComponent;

/** What is being typed into a cell stays while the rows of its table are shown anew. On the event thread. */
public final class TypedCell {
    private TypedCell() {}

    /**
     * Shows rows anew, and goes on with the cell that is typed into if its row is still there.
     *
     * @param row what a row is of, which stays the same while its place may not; asked for rows there are
     * @param showing shows the rows
     */
    public static void keep(JTable table, IntFunction<Object> row, Runnable showing) {
        if (!table.isEditing() || !(table.getEditorComponent() instanceof JTextComponent field)) {
            showing.run();
            return;
        }
        Object of = row.apply(table.getEditingRow());
        int column = table.getEditingColumn();
        int columns = table.getColumnCount();
        String typed = field.getText();
        int caret = field.getCaretPosition();
        boolean hadKeys = field.isFocusOwner();
        table.getCellEditor().cancelCellEditing();
        showing.run();
        for (int i = 0; i < table.getRowCount() && table.getColumnCount() == columns; i++) {
            if (of.equals(row.apply(i))) {
                goOn(table, i, column, typed, caret, hadKeys);
                return;
            }
        }
    }

    private static void goOn(JTable table, int row, int column, String typed, int caret, boolean hadKeys) {
        if (table.editCellAt(row, column) && table.getEditorComponent() instanceof JTextComponent field) {
            field.setText(typed);
            field.setCaretPosition(caret);
            if (hadKeys) {
                field.requestFocusInWindow();
            }
        }
    }
}
