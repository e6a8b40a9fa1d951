package crowdline.practice;

import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.Objects;

/** The shows that come with the program, to be practised on. */
final class PracticeShows {
    private PracticeShows() {}

    static LoadedShow loaded(String name) throws ShowFileException {
        return Objects.requireNonNull(new ShowLoader(
                        CatalogueFile::shipped, () -> Paces.DEFAULT, Path.of("target", "no-passes"), Workers.ALONE)
                .load(Path.of("demo-shows", name + ".json"), 1)
                .loaded());
    }
}
