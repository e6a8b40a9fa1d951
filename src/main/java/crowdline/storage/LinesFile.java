package crowdline.storage;

import java.nio.file.Path;
import java.util.List;

/** A plain text file of one entry a line. */
public final class LinesFile {
    private LinesFile() {}

    /**
     * The lines that say something, without the space around them.
     *
     * @throws ShowFileException if the file cannot be read or is not UTF-8, with one sentence for the user
     */
    public static List<String> read(Path file) throws ShowFileException {
        ShowText text = ShowText.decode(ShowText.bytes(file));
        ShowText.Fault fault = text.fault();
        if (fault != null) {
            throw new ShowFileException(file + ", line " + fault.where().line() + ": " + fault.message());
        }
        return text.text().lines().map(String::strip).filter(l -> !l.isEmpty()).toList();
    }
}
