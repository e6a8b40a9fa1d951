package crowdline.console;

import crowdline.console.pace.PaceHost;
import crowdline.console.pace.PaceHost.Found;
import crowdline.console.pace.PacePanel;
import crowdline.console.theme.Appearance;
import java.awt.Dialog.ModalityType;
import java.awt.Frame;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.KeyStroke;

/** Asks whose pace the times are for, in a window of its own, which Escape closes. */
final class PaceDialog {
    private PaceDialog() {}

    static void ask(Frame owner, Appearance appearance, Found found, PaceHost host) {
        JDialog dialog = new JDialog(owner, "Speaker and pace", ModalityType.DOCUMENT_MODAL);
        dialog.setContentPane(new PacePanel(appearance, found, host, dialog::dispose));
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.setSize(Math.min(appearance.px(760), owner.getWidth()), Math.min(appearance.px(480), owner.getHeight()));
        dialog.setLocationRelativeTo(owner);
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        dialog.setVisible(true);
    }
}
