package crowdline.console.prepare.cells;

import crowdline.console.prepare.page.Editor;
import crowdline.console.prepare.page.PrepareHost;
import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import java.awt.Frame;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import javax.swing.JDialog;

/** Cells of a spreadsheet in a window of their own, which Escape closes. */
public final class CellsWindow {
    private CellsWindow() {}

    /**
     * Opens it.
     *
     * @param text what stands in it to begin with
     * @param taken told when rows were taken, and the window is closed
     */
    public static void open(
            Frame owner, Appearance appearance, Editor editor, PrepareHost host, String text, Runnable taken) {
        JDialog dialog = OwnWindow.over(owner, "Cells of a spreadsheet");
        CellsPanel panel = new CellsPanel(appearance, editor, host, () -> {
            dialog.dispose();
            onceInFront(owner, taken);
        });
        if (!text.isEmpty()) {
            panel.paste(text);
        }
        OwnWindow.show(dialog, panel, OwnWindow.size(appearance, 1100, 600, owner.getSize()));
    }

    /** The keys come back to a window some time after the one over it is gone; what moves them waits for that. */
    private static void onceInFront(Frame owner, Runnable then) {
        if (owner.isFocused()) {
            then.run();
            return;
        }
        owner.addWindowFocusListener(new WindowAdapter() {
            @Override
            public void windowGainedFocus(WindowEvent event) {
                owner.removeWindowFocusListener(this);
                then.run();
            }
        });
    }
}
