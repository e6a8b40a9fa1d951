package crowdline.app.window.edit;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.shell.Folders;
import crowdline.console.words.PlaceFacts;
import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.show.RemarkPlace;
import crowdline.sight.fact.CrowdFact;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The facts that stand beside the remarks of the demo show. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ShowFactsTest {
    private static final String SOLO = "jackanapes-solo";

    private Map<RemarkPlace, PlaceFacts> facts = Map.of();

    @BeforeAll
    void compute() throws ShowFileException {
        LoadedShow loaded = new ShowLoader(
                        CatalogueFile::shipped,
                        () -> Paces.DEFAULT,
                        Folders.here().passes(),
                        Workers.ALONE)
                .load(Path.of("src/test/resources/crowdline/shows/fenmarsh-air-day.json"), 1)
                .loaded();
        facts = ShowFacts.of(Objects.requireNonNull(loaded));
    }

    private PlaceFacts of(String figureId) {
        return Objects.requireNonNull(facts.get(new RemarkPlace(SOLO, figureId)));
    }

    @Test
    void aFigureHasItsOwnFactsTheMostTellingFirst() {
        PlaceFacts loop = of("first-loop");
        assertThat(loop.variant()).isEqualTo("full");
        assertThat(loop.facts()).isNotEmpty().allMatch(fact -> "first-loop".equals(fact.figureId()));
        assertThat(loop.facts())
                .isSortedAccordingTo(
                        Comparator.comparingDouble(CrowdFact::telling).reversed());
    }

    @Test
    void anActHasTheFactsOfTheWholeAct() {
        PlaceFacts act = Objects.requireNonNull(facts.get(new RemarkPlace(SOLO, null)));
        assertThat(act.facts()).isNotEmpty().allMatch(fact -> fact.figureId() == null);
    }

    @Test
    void aFigureFlownOnlyUnderLowCloudHasTheFactsOfThatVariant() {
        assertThat(of("barrel-roll").variant()).isEqualTo("rolling");
        assertThat(of("flat-turn-left").variant()).isEqualTo("flat");
        assertThat(of("barrel-roll").facts()).isNotEmpty();
    }

    @Test
    void aFigureThatWasOnlyTimedHasNone() {
        assertThat(of("landing").facts()).isEmpty();
    }
}
