package crowdline.storage.file;

import java.io.IOException;

/** A file that cannot be read or written at all. The message is one sentence for the user: what, and what to do. */
public final class ShowFileException extends IOException {
    private static final long serialVersionUID = 1;

    public ShowFileException(String message) {
        super(message);
    }

    public ShowFileException(String message, IOException cause) {
        super(message, cause);
    }
}
