package crowdline.app.window.edit;

import crowdline.edit.ShowDifferences;
import crowdline.show.Show;
import crowdline.storage.file.Sha256;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/** Looks whether the edited file was changed by somebody else. On the {@code io} thread. */
final class OutsideLook {
    private static final String GONE = "gone";

    private final ShowFile shows = new ShowFile();
    private final Asking asking;
    private final Consumer<String> say;
    /** What was found last and told, so that it is told once. */
    private String told = "";

    /** Asks what becomes of the file. */
    interface Asking {
        /**
         * Asks once.
         *
         * @param differences what the file has against the show as edited, a line each
         * @param atSave whether it was to be saved
         */
        void ask(String file, List<String> differences, boolean atSave);
    }

    /** @param say says what needs no answer */
    OutsideLook(Asking asking, Consumer<String> say) {
        this.asking = asking;
        this.say = say;
    }

    /** Looks at the file, as when the window is turned to again. */
    void look(Show show, EditedFile now) throws ShowFileException {
        Path file = now.file();
        if (file != null && Files.exists(file)) {
            asks(show, file, now, false);
        } else if (file != null && !told.equals(GONE)) {
            told = GONE;
            say.accept(file.getFileName() + " is no longer there; Ctrl+S writes it again");
        }
    }

    /** Whether a save over the file must wait for an answer. */
    boolean stops(Show show, Path file, EditedFile now) throws ShowFileException {
        return Files.exists(file) && asks(show, file, now, true);
    }

    /** The file is as it was written here. */
    void written() {
        told = "";
    }

    private boolean asks(Show show, Path file, EditedFile now, boolean atSave) throws ShowFileException {
        byte[] bytes = ShowFile.bytes(file);
        String sha256 = Sha256.of(bytes);
        if (sha256.equals(now.sha256())) {
            told = "";
            return false;
        }
        if (atSave || !told.equals(sha256)) {
            told = sha256;
            Show theirs = shows.read(file, bytes).show();
            asking.ask(
                    String.valueOf(file.getFileName()),
                    theirs == null
                            ? List.of("It is not a show any more, or has errors")
                            : ShowDifferences.of(show, theirs),
                    atSave);
        }
        return true;
    }
}
