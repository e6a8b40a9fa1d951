package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.shell.Folders;
import crowdline.flight.Workers;
import crowdline.loaded.ActPlans;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.patter.Placed;
import crowdline.show.Performer;
import crowdline.show.figure.Remark;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.CatalogueFile;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** What is said in the demo shows, as somebody who hears it would judge it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoWordsTest {
    private List<LoadedShow> shows = List.of();
    private final Map<LoadedShow, List<ActPlans.Planned>> plans = new HashMap<>();

    @BeforeAll
    void load() throws ShowFileException {
        shows = List.of(loaded("fenmarsh-air-day"), loaded("wrackenholt-evening"));
        shows.forEach(loaded -> plans.put(
                loaded,
                ActPlans.of(loaded, loaded.show().acts(), act -> act.variants().get(0))));
    }

    private static LoadedShow loaded(String name) throws ShowFileException {
        return Objects.requireNonNull(new ShowLoader(
                        CatalogueFile::shipped,
                        () -> Paces.DEFAULT,
                        Folders.here().passes(),
                        Workers.ALONE)
                .load(Path.of("demo-shows", name + ".json"), LoadedShow.FLIGHTS)
                .loaded());
    }

    private List<ActPlans.Planned> plans(LoadedShow loaded) {
        return Objects.requireNonNull(plans.get(loaded));
    }

    @Test
    void theWordsAreFinished() {
        for (LoadedShow loaded : shows) {
            assertThat(loaded.show().everyRemark()).isNotEmpty().noneMatch(Remark::draft);
        }
    }

    @Test
    void aboutHalfOfEachActIsLeftQuiet() {
        for (LoadedShow loaded : shows) {
            assertThat(plans(loaded)).hasSameSizeAs(loaded.show().acts()).allSatisfy(planned -> {
                double talk = planned.plan().talkS();
                assertThat(talk / (talk + planned.plan().quietS()))
                        .as(planned.act().id())
                        .isBetween(0.4, 0.55);
            });
        }
    }

    @Test
    void everyPerformerIsNamedInTheFirstTenSeconds() {
        for (LoadedShow loaded : shows) {
            for (ActPlans.Planned planned : plans(loaded)) {
                Performer performer =
                        loaded.show().performer(planned.act().performer()).orElseThrow();
                assertThat(planned.plan().placed().stream()
                                .filter(placed -> placed.startS() < 10)
                                .map(placed -> said(loaded, placed)))
                        .as(planned.act().id())
                        .anyMatch(text -> text.contains(performer.name()));
            }
        }
    }

    @Test
    void nothingIsExplainedOrToldTwiceInAnAct() {
        for (LoadedShow loaded : shows) {
            for (ActPlans.Planned planned : plans(loaded)) {
                assertThat(planned.plan().placed().stream().map(placed -> said(loaded, placed)))
                        .as(planned.act().id())
                        .doesNotHaveDuplicates();
            }
        }
    }

    /** A joke is one once, in whichever act; short sentences, as "Wave back.", are none. */
    @Test
    void noSentenceIsSaidInTwoActs() {
        List<String> sentences = shows.stream()
                .flatMap(loaded -> plans(loaded).stream()
                        .flatMap(planned -> planned.plan().placed().stream())
                        .map(placed -> said(loaded, placed)))
                .flatMap(text -> Arrays.stream(text.split("(?<=[.!?]) ")))
                .filter(sentence -> sentence.split(" ").length >= 5)
                .toList();
        assertThat(sentences).hasSizeGreaterThan(100).doesNotHaveDuplicates();
    }

    @Test
    void aSpinIsExplainedOnceItHasBegun() {
        for (LoadedShow loaded : shows) {
            assertThat(loaded.show().everyRemark().filter(r -> r.text().contains("stopped lifting")))
                    .isNotEmpty()
                    .allSatisfy(r ->
                            assertThat(Objects.requireNonNull(r.at()).words()).isEqualTo("the spin begins"));
        }
    }

    private static String said(LoadedShow loaded, Placed placed) {
        return loaded.show()
                .everyRemark()
                .filter(remark -> remark.id().equals(placed.remarkId()))
                .findFirst()
                .orElseThrow()
                .text();
    }
}
