package crowdline.console;

import crowdline.console.prepare.MetarPanel;
import crowdline.console.theme.Appearance;
import crowdline.show.DayAir;
import java.awt.Dialog.ModalityType;
import java.awt.Frame;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.KeyStroke;

/** Asks for a METAR in a window of its own, which Escape closes. Given in Prepare only. */
final class MetarDialog {
    private MetarDialog() {}

    static void ask(Frame owner, Appearance appearance, DayAir before, Consumer<DayAir> chosen) {
        JDialog dialog = new JDialog(owner, "Paste a METAR", ModalityType.DOCUMENT_MODAL);
        dialog.setContentPane(new MetarPanel(appearance, before, chosen, dialog::dispose));
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.setSize(Math.min(appearance.px(640), owner.getWidth()), Math.min(appearance.px(400), owner.getHeight()));
        dialog.setLocationRelativeTo(owner);
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        dialog.setVisible(true);
    }
}
