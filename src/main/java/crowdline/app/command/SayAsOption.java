package crowdline.app.command;

import crowdline.app.shell.Terminal;
import crowdline.speech.say.Spoken;
import crowdline.storage.file.ShowFileException;
import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** The show whose way of saying names counts: {@code --show}. */
final class SayAsOption {
    @Option(names = "--show", paramLabel = "SHOW", description = "Say names and words as this show does (its sayAs).")
    private @Nullable Path show;

    /** How texts are said. */
    Spoken spoken(Terminal terminal) throws ShowFileException {
        Path file = show;
        if (file == null) {
            return new Spoken(Map.of());
        }
        return new Spoken(new UsableShow(terminal).read(file).sayAs());
    }
}
