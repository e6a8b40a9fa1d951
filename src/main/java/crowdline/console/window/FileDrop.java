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
import java.util.regex.Pattern;
import javax.swing.TransferHandler;

/** Opens a file that is dropped on the window. */
public final class FileDrop extends TransferHandler {
    private static final System.Logger LOG = System.getLogger(FileDrop.class.getName());

    private final transient Consumer<Path> open;
    private final transient Consumer<Mark> say;

    private static final Pattern FLIGHT_LOG = Pattern.compile("(?i).*\\.(?:igc|nmea|gpx)");
    /** A show also under the names its earlier and its rescued copies have. */
    private static final Pattern TAKEN = Pattern.compile("(?i).*\\.json.*|.*\\.(?:txt|text|eml|csv|tsv|journal)|[^.]+");

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
            String name = file.getName();
            if (FLIGHT_LOG.matcher(name).matches()) {
                say.accept(new Mark(
                        Form.DIAMOND,
                        Tone.CAUTION,
                        name + " is a flight log; to play it in Live, choose it with Ctrl+R"));
            } else if (!TAKEN.matcher(name).matches()) {
                say.accept(
                        new Mark(
                                Form.DIAMOND,
                                Tone.CAUTION,
                                name
                                        + " cannot be used here; drop a show, a letter as text or e-mail, a table (CSV) or a journal"));
            } else {
                open.accept(file.toPath());
            }
        }
    }
}
