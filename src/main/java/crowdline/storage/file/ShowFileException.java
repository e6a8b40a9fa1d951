package crowdline.storage.file;

import java.io.IOException;
import java.nio.file.Path;

/** A file that cannot be read or written at all. The message is one sentence for the user: what, and what to do. */
public final class ShowFileException extends IOException {
    private static final long serialVersionUID = 1;

    public ShowFileException(String message) {
        super(message);
    }

    public ShowFileException(String message, IOException cause) {
        super(message, cause);
    }

    /** What is wrong at a place in a file. */
    public static ShowFileException at(Path file, Where where, String message) {
        return new ShowFileException(file + ", line " + where.line() + ", column " + where.column() + ": " + message);
    }

    /**
     * A folder of the program's own could not be made.
     *
     * @param what such as "the settings folder"
     */
    public static ShowFileException noFolder(String what, Path folder, IOException why) {
        return new ShowFileException(what + " " + folder + " cannot be made; check its parent", why);
    }
}
