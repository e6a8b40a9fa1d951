package crowdline.app.window.show;

import crowdline.loaded.LoadedShow;
import crowdline.running.RunningShow;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** The show that Live runs. */
public interface LiveShow {
    /** The show being run, if any. */
    @Nullable
    RunningShow running();

    /** The file it was read from, if any. */
    @Nullable
    Path openFile();

    /**
     * Has Live run what became of a show, with the journal of its file.
     *
     * @return false if an act is in the air or the incident page is open; Live then goes on as it was
     */
    boolean run(Path file, byte[] content, LoadedShow edited) throws ShowFileException;

    /**
     * Runs nothing from now on, so that a new show can be made.
     *
     * @throws ShowFileException if an act is in the air or the incident page is open
     */
    void leave() throws ShowFileException;

    /** An empty show, with what is computed from it. */
    LoadedShow empty();

    /** Takes a file as it stands now. */
    void openAgain(Path file);
}
