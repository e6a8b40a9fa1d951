package crowdline.console.prepare.day;

import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import crowdline.show.DayAir;
import java.awt.Frame;
import java.util.function.Consumer;
import javax.swing.JDialog;

/** Asks for a METAR in a window of its own, which Escape closes. Given in Prepare only. */
public final class MetarDialog {
    private MetarDialog() {}

    public static void ask(
            Frame owner, Appearance appearance, DayAir before, Consumer<DayAir> chosen, Consumer<DayAir> kept) {
        JDialog dialog = OwnWindow.over(owner, "Paste a METAR");
        OwnWindow.show(
                dialog,
                new MetarPanel(appearance, before, chosen, kept, dialog::dispose),
                OwnWindow.size(appearance, 680, 400, owner.getSize()));
    }
}
