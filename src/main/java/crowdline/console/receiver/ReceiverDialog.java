package crowdline.console.receiver;

import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import java.awt.Frame;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JDialog;
import javax.swing.JFileChooser;

/** Asks where the aircraft's position comes from: Enter chooses, Escape leaves it as it is. */
public final class ReceiverDialog {
    private ReceiverDialog() {}

    public static void ask(Frame owner, Appearance appearance, Receivers found, ReceiverPanel.Chosen chosen) {
        JDialog dialog = OwnWindow.over(owner, "Receiver");
        OwnWindow.show(
                dialog,
                new ReceiverPanel(appearance, found, chosen, () -> log(owner), dialog::dispose),
                OwnWindow.size(appearance, 640, 400, owner.getSize()));
    }

    private static Optional<Path> log(Frame owner) {
        JFileChooser files = new JFileChooser();
        files.setDialogTitle("A flight log: NMEA 0183, IGC or GPX");
        return files.showOpenDialog(owner) == JFileChooser.APPROVE_OPTION
                ? Optional.of(files.getSelectedFile().toPath())
                : Optional.empty();
    }
}
