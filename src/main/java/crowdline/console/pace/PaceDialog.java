package crowdline.console.pace;

import crowdline.console.pace.PaceHost.Found;
import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import java.awt.Dimension;
import java.awt.Frame;
import javax.swing.JDialog;

/** Asks whose pace the times are for, in a window of its own, which Escape closes. */
public final class PaceDialog {
    private PaceDialog() {}

    /** As large as it needs to be and no larger than the window it belongs to. */
    public static Dimension size(Appearance appearance, Dimension owner) {
        return OwnWindow.size(appearance, 760, 480, owner);
    }

    public static void ask(Frame owner, Appearance appearance, Found found, PaceHost host) {
        JDialog dialog = OwnWindow.over(owner, "Speaker and pace");
        OwnWindow.show(
                dialog, new PacePanel(appearance, found, host, dialog::dispose), size(appearance, owner.getSize()));
    }
}
