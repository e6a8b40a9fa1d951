package crowdline.console.window;

import crowdline.console.theme.Appearance;
import java.awt.Container;
import java.awt.Dialog.ModalityType;
import java.awt.Dimension;
import java.awt.Frame;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.KeyStroke;

/** A window of its own over the main one, which Escape closes and until then has all keys. */
public final class OwnWindow {
    private OwnWindow() {}

    /** A window, to be filled and shown. */
    public static JDialog over(Frame owner, String title) {
        JDialog dialog = new JDialog(owner, title, ModalityType.DOCUMENT_MODAL);
        dialog.getRootPane()
                .registerKeyboardAction(
                        e -> dialog.dispose(), KeyStroke.getKeyStroke("ESCAPE"), JComponent.WHEN_IN_FOCUSED_WINDOW);
        dialog.setDefaultCloseOperation(JDialog.DISPOSE_ON_CLOSE);
        return dialog;
    }

    /** As large as it needs to be and no larger than the window it belongs to. */
    public static Dimension size(Appearance appearance, int widthPx, int heightPx, Dimension owner) {
        return new Dimension(
                Math.min(appearance.px(widthPx), owner.width), Math.min(appearance.px(heightPx), owner.height));
    }

    /** Shows a window until it is closed. */
    public static void show(JDialog dialog, Container content, Dimension size) {
        dialog.setContentPane(content);
        dialog.setSize(size);
        dialog.setLocationRelativeTo(dialog.getOwner());
        dialog.setVisible(true);
    }
}
