package crowdline.console.paint;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;

/** Cells of a table that show text as it stands, with a tip that has all of it where it is cut. */
public final class TextCells extends DefaultTableCellRenderer {
    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int column) {
        PlainText.plain(this);
        setHorizontalAlignment(SwingConstants.LEFT);
        Component cell = super.getTableCellRendererComponent(table, value, isSelected, hasFocus, row, column);
        boolean cut = getPreferredSize().width
                > table.getColumnModel().getColumn(column).getWidth();
        setToolTipText(cut ? PlainText.tip(getText()) : null);
        return cell;
    }
}
