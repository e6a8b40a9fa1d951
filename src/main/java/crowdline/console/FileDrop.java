package crowdline.console;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Opens a file that is dropped on the window. */
final class FileDrop extends TransferHandler {
    private static final System.Logger LOG = System.getLogger(FileDrop.class.getName());

    private final transient Consumer<Path> open;

    FileDrop(Consumer<Path> open) {
        this.open = open;
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
            if (dropped instanceof List<?> files && !files.isEmpty() && files.get(0) instanceof File file) {
                open.accept(file.toPath());
                return true;
            }
        } catch (UnsupportedFlavorException | IOException e) {
            LOG.log(System.Logger.Level.INFO, "a dropped file could not be read: {0}", e.getMessage());
        }
        return false;
    }
}
