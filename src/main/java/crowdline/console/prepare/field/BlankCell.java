package crowdline.console.prepare.field;

import java.awt.Component;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;

/** What is typed takes the place of what stands there. */
public final class BlankCell extends DefaultCellEditor {
    public BlankCell() {
        super(new JTextField());
        setClickCountToStart(2);
    }

    @Override
    public Component getTableCellEditorComponent(JTable table, Object value, boolean isSelected, int row, int column) {
        Component field = super.getTableCellEditorComponent(table, "", isSelected, row, column);
        field.setFont(table.getFont());
        ((JTextField) field).getAccessibleContext().setAccessibleName(table.getColumnName(column));
        return field;
    }
}
