package crowdline.storage.journal;

import java.io.IOException;

/** Somebody else is writing the journal. */
final class JournalInUseException extends IOException {
    private static final long serialVersionUID = 1;

    JournalInUseException(String message) {
        super(message);
    }
}
