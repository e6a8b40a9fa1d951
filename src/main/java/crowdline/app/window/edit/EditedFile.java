package crowdline.app.window.edit;

import crowdline.loaded.LoadedShow;
import crowdline.show.Show;
import crowdline.storage.file.NameLocks;
import crowdline.storage.show.ShowDocument;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What is edited.
 *
 * @param file where it is saved, or null while it has no file
 * @param sha256 what stood in the file when it was last read or written here; empty without a file
 * @param show as it stands in the file
 * @param document the file, or null while there is none
 * @param name on the shelf of unsaved edits
 * @param lock keeps others from that name, or null
 */
record EditedFile(
        @Nullable Path file,
        String sha256,
        Show show,
        @Nullable ShowDocument document,
        LoadedShow loaded,
        String name,
        NameLocks.@Nullable Held lock) {
    String called() {
        return file == null ? show.title() : String.valueOf(file.getFileName());
    }

    /** The same under another name on the shelf. */
    EditedFile keptBy(String other, NameLocks.@Nullable Held held) {
        return new EditedFile(file, sha256, show, document, loaded, other, held);
    }

    /** The same with this content in its file. */
    EditedFile knowing(String content) {
        return new EditedFile(file, content, show, document, loaded, name, lock);
    }
}
