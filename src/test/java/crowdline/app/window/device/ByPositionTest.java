package crowdline.app.window.device;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.glossary.GlossaryHost.Belief;
import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.show.Act;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Paces;
import crowdline.steer.Tracking.Guess;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** The figures of a plan are called by their names in the glossary. */
class ByPositionTest {
    @Test
    void figuresHaveTheNamesOfTheGlossaryAndWaysAreNone() throws ShowFileException {
        LoadedShow show = Objects.requireNonNull(new ShowLoader(
                        CatalogueFile::shipped, () -> Paces.DEFAULT, Path.of("target", "no-passes"), Workers.ALONE)
                .load(Path.of("demo-shows", "wrackenholt-evening.json"), 1)
                .loaded());
        Act act = show.show().act("quickthorn-solo").orElseThrow();
        List<String> ids =
                act.inOrder(act.variants().get(0)).stream().map(Figure::id).toList();
        List<Guess> guesses = List.of(
                new Guess(ids.indexOf("to-tail-slide"), 0.4),
                new Guess(ids.indexOf("lomcovak"), 0.2),
                new Guess(ids.indexOf("tail-slide"), 0.3),
                new Guess(99, 0.1));

        assertThat(ByPosition.of(show, act.id(), ids, guesses))
                .containsExactly(new Belief("tail slide", 0.3), new Belief("lomcovak", 0.2));
        assertThat(ByPosition.of(show, null, List.of(), guesses)).isEmpty();
        assertThat(ByPosition.of(null)).isEmpty();
    }
}
