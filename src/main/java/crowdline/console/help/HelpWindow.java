package crowdline.console.help;

import crowdline.console.place.Place;
import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import java.awt.Frame;
import javax.swing.JDialog;

/** Help in a window of its own, which Escape closes. */
public final class HelpWindow {
    private HelpWindow() {}

    /**
     * Opens it and waits until it is closed.
     *
     * @param place where it was asked for: what belongs there comes first
     */
    public static void open(Frame owner, Appearance appearance, Place place) {
        JDialog dialog = OwnWindow.over(owner, "Help");
        HelpPanel panel = new HelpPanel(appearance, HelpTopics.shipped(), place);
        OwnWindow.show(dialog, panel, OwnWindow.size(appearance, 980, 640, owner.getSize()));
    }
}
