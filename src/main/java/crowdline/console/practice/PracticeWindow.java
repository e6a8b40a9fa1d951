package crowdline.console.practice;

import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import java.awt.Frame;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.DoubleSupplier;
import javax.swing.JComponent;
import javax.swing.JDialog;

/** Asks what is to be practised, or what is changed in a flight. Escape closes either. */
public final class PracticeWindow {
    private PracticeWindow() {}

    /**
     * Asks what is to be practised.
     *
     * @param before what was practised last
     * @param chosen told after the window is closed
     * @param spot the same, of what is only to be watched
     */
    public static void ask(
            Frame owner,
            Appearance appearance,
            PracticeHost host,
            Optional<PracticeChoice> before,
            Consumer<PracticeChoice> chosen,
            Consumer<PracticeChoice> spot) {
        JDialog dialog = OwnWindow.over(owner, "Practice flight");
        OwnWindow.show(
                dialog,
                new PracticePanel(appearance, host, before, closing(dialog, chosen), closing(dialog, spot)),
                OwnWindow.size(appearance, 940, 560, owner.getSize()));
    }

    /**
     * Shows a flight to be watched, and asks what is changed in it.
     *
     * @param clockS seconds on a clock that never goes back
     * @param next told after the window is closed, if another flight is wanted
     */
    public static void spot(
            Frame owner, Appearance appearance, Spotted asked, DoubleSupplier clockS, Consumer<PracticeChoice> next) {
        JDialog dialog = OwnWindow.over(owner, "What did the pilot change?");
        SpotPanel panel = new SpotPanel(appearance, asked, clockS, closing(dialog, next));
        beginIn(dialog, panel);
        OwnWindow.show(dialog, panel, OwnWindow.size(appearance, 1180, 740, owner.getSize()));
    }

    private static Consumer<PracticeChoice> closing(JDialog dialog, Consumer<PracticeChoice> told) {
        return choice -> {
            dialog.dispose();
            told.accept(choice);
        };
    }

    private static void beginIn(JDialog dialog, JComponent first) {
        dialog.addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                first.requestFocusInWindow();
            }
        });
    }
}
