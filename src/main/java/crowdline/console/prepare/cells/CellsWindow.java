package crowdline.console.prepare.cells;

import crowdline.console.prepare.page.Editor;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import java.awt.Frame;
import javax.swing.JDialog;

/** Cells of a spreadsheet in a window of their own, which Escape closes. */
public final class CellsWindow {
    private CellsWindow() {}

    public static void open(Frame owner, Appearance appearance, Editor editor, PrepareHost host) {
        JDialog dialog = OwnWindow.over(owner, "Cells of a spreadsheet");
        OwnWindow.show(
                dialog,
                new CellsPanel(appearance, editor, host, dialog::dispose),
                OwnWindow.size(appearance, 1100, 600, owner.getSize()));
    }
}
