package crowdline.console.preview;

import crowdline.console.theme.Appearance;
import crowdline.console.window.OwnWindow;
import crowdline.paper.SheetKind;
import crowdline.show.Show;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Frame;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JOptionPane;

/** Opens the preview, and asks where a PDF is to be saved. */
public final class PreviewWindow {
    private static final String ENDING = ".pdf";

    private PreviewWindow() {}

    /**
     * Opens it and waits until it is closed.
     *
     * @param first what it shows first
     */
    public static void open(Frame owner, Appearance appearance, PaperHost host, Show show, SheetKind first) {
        JDialog dialog = OwnWindow.over(owner, "Print");
        PreviewPanel panel =
                new PreviewPanel(appearance, host, show, first, name -> file(dialog, name), dialog::dispose);
        dialog.addWindowListener(new WindowAdapter() {
            @Override
            public void windowOpened(WindowEvent event) {
                panel.takeFocus();
            }

            @Override
            public void windowClosed(WindowEvent event) {
                host.stop();
            }
        });
        OwnWindow.show(dialog, panel, size(appearance, owner.getSize()));
    }

    /** How large it is over a window of that size. */
    public static Dimension size(Appearance appearance, Dimension owner) {
        return OwnWindow.size(appearance, 1440, 980, owner);
    }

    private static Optional<Path> file(Component over, String name) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Save as PDF");
        chooser.setSelectedFile(new File(name));
        if (chooser.showSaveDialog(over) != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        File chosen = chooser.getSelectedFile();
        File file = chosen.getName().toLowerCase(Locale.ROOT).endsWith(ENDING)
                ? chosen
                : new File(chosen.getPath() + ENDING);
        boolean free = !file.exists()
                || JOptionPane.showConfirmDialog(
                                over,
                                file.getName() + " is there already. Write over it?",
                                "Save as PDF",
                                JOptionPane.OK_CANCEL_OPTION)
                        == JOptionPane.OK_OPTION;
        return free ? Optional.of(file.toPath()) : Optional.empty();
    }
}
