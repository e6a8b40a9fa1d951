package crowdline.console.prepare.field;

import java.awt.Rectangle;
import javax.swing.JTable;
import javax.swing.JViewport;

/** Keeps the chosen row of a table whole where less room is left for the table, as when a bar opens under it. */
public final class InSight {
    private InSight() {}

    /** Keeps the chosen row in sight; a row that was scrolled out of it stays out. */
    public static void keep(JViewport around, JTable table) {
        int[] heightPx = {around.getHeight()};
        around.addChangeListener(e -> {
            int nowPx = around.getHeight();
            boolean isLess = nowPx < heightPx[0];
            int row = table.getSelectedRow();
            Rectangle before = new Rectangle(around.getViewPosition());
            before.setSize(around.getWidth(), heightPx[0]);
            heightPx[0] = nowPx;
            if (isLess && row >= 0) {
                Rectangle whole = table.getCellRect(row, 0, true);
                if (before.intersects(whole)) {
                    table.scrollRectToVisible(whole);
                }
            }
        });
    }
}
