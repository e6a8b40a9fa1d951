package crowdline.console.prepare.cells;

import crowdline.console.prepare.page.Editor;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import java.awt.Frame;
import javax.swing.JDialog;
import javax.swing.SwingUtilities;

/** Cells of a spreadsheet in a window of their own, which Escape closes. */
public final class CellsWindow {
    private CellsWindow() {}

    /**
     * Opens it.
     *
     * @param taken told when rows were taken, before the window is closed
     */
    public static void open(Frame owner, Appearance appearance, Editor editor, PrepareHost host, Runnable taken) {
        JDialog dialog = OwnWindow.over(owner, "Cells of a spreadsheet");
        OwnWindow.show(
                dialog,
                new CellsPanel(appearance, editor, host, () -> {
                    taken.run();
                    // The keys go back to where they are wanted by then.
                    SwingUtilities.invokeLater(dialog::dispose);
                }),
                OwnWindow.size(appearance, 1100, 600, owner.getSize()));
    }
}
