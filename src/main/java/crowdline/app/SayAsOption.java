package crowdline.app;

import crowdline.show.Show;
import crowdline.speech.Spoken;
import crowdline.storage.ShowFile;
import crowdline.storage.ShowFileException;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The show whose way of saying names counts: {@code --show}. */
final class SayAsOption {
    @Option(names = "--show", paramLabel = "SHOW", description = "Say names and words as this show says (its sayAs).")
    private @Nullable Path show;

    /** How texts are said. */
    Spoken spoken() throws ShowFileException {
        Path file = show;
        if (file == null) {
            return new Spoken(Map.of());
        }
        Show read = new ShowFile().read(file).show();
        if (read == null) {
            throw new ShowFileException("the show " + file + " has errors; crowdline check " + file + " lists them");
        }
        return new Spoken(read.sayAs());
    }
}
