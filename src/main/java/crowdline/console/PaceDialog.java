package crowdline.console;

import crowdline.console.pace.PaceHost;
import crowdline.console.pace.PaceHost.Found;
import crowdline.console.pace.PacePanel;
import crowdline.console.theme.Appearance;
import java.awt.Dialog.ModalityType;
import java.awt.Dimension;
import java.awt.Frame;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.KeyStroke;

/** Asks whose pace the times are for, in a window of its own, which Escape closes. */
final class PaceDialog {
    private PaceDialog() {}

    /** As large as it needs to be and no larger than the window it belongs to. */
    static Dimension size(Appearance appearance, Dimension owner) {
        return new Dimension(Math.min(appearance.px(760), owner.width), Math.min(appearance.px(480), owner.height));
    }

    static void ask(Frame owner, Appearance appearance, Found found, PaceHost host) {
        JDialog dialog = new JDialog(owner, "Speaker and pace", ModalityType.DOCUMENT_MODAL);
        dialog.setContentPane(new PacePanel(appearance, found, host, dialog::dispose));
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.setSize(size(appearance, owner.getSize()));
        dialog.setLocationRelativeTo(owner);
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        dialog.setVisible(true);
    }
}
