package crowdline.console.window;

import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Opens a file that is dropped on the window. */
public final class FileDrop extends TransferHandler {
    private static final System.Logger LOG = System.getLogger(FileDrop.class.getName());

    private final transient Consumer<Path> open;
    private final transient Consumer<Mark> say;

    /**
     * @param open opens a file
     * @param say says why none is opened
     */
    public FileDrop(Consumer<Path> open, Consumer<Mark> say) {
        this.open = open;
        this.say = say;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDrop() && support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        try {
            Object dropped = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            if (dropped instanceof List<?> files && !files.isEmpty()) {
                take(files);
                return true;
            }
        } catch (UnsupportedFlavorException | IOException e) {
            LOG.log(System.Logger.Level.INFO, "a dropped file could not be read: {0}", e.getMessage());
        }
        return false;
    }

    /** Opens the one file dropped; of several nobody knows which is meant. */
    void take(List<?> files) {
        if (files.size() > 1) {
            say.accept(new Mark(
                    Form.DIAMOND,
                    Tone.CAUTION,
                    files.size() + " files were dropped, and none was opened; drop one show file"));
        } else if (files.get(0) instanceof File file) {
            open.accept(file.toPath());
        }
    }
}
