package crowdline.console.practice;

import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import java.awt.Frame;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JDialog;

/** Asks what is to be practised, and says how it went. Escape closes either. */
public final class PracticeWindow {
    private PracticeWindow() {}

    /**
     * Asks what is to be practised.
     *
     * @param before what was practised last
     * @param chosen told after the window is closed
     */
    public static void ask(
            Frame owner,
            Appearance appearance,
            PracticeHost host,
            Optional<PracticeChoice> before,
            Consumer<PracticeChoice> chosen) {
        JDialog dialog = OwnWindow.over(owner, "Practice flight");
        OwnWindow.show(
                dialog,
                new PracticePanel(appearance, host, before, choice -> {
                    dialog.dispose();
                    chosen.accept(choice);
                }),
                OwnWindow.size(appearance, 940, 440, owner.getSize()));
    }

    /**
     * Says how it went.
     *
     * @param again told after the window is closed, if another flight is wanted
     */
    public static void tell(Frame owner, Appearance appearance, PracticeScored scored, Consumer<PracticeChoice> again) {
        JDialog dialog = OwnWindow.over(owner, "How it went");
        ScorePanel panel = new ScorePanel(
                appearance,
                scored,
                choice -> {
                    dialog.dispose();
                    again.accept(choice);
                },
                dialog::dispose);
        dialog.addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                panel.first().requestFocusInWindow();
            }
        });
        OwnWindow.show(dialog, panel, OwnWindow.size(appearance, 1000, 620, owner.getSize()));
    }
}
