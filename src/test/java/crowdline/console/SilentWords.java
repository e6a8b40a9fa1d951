package crowdline.console;

import crowdline.console.words.WordsHost;
import crowdline.show.Show;
import java.nio.file.Path;

/** A host of words that never answers. */
final class SilentWords implements WordsHost {
    @Override
    public void open() {}

    @Override
    public void edited(Show show) {}

    @Override
    public void save(Show show) {}

    @Override
    public void saveAs(Show show, Path file) {}

    @Override
    public void intoLive(Show show) {}
}
