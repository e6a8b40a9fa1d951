package crowdline.app;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Says that this build has no window yet. */
final class NoWindow implements Opening {
    @Override
    public int open(@Nullable Path show, Terminal terminal) {
        terminal.complain("this build has no window yet; see crowdline --help for what works without one");
        return ExitCode.UNUSABLE;
    }
}
