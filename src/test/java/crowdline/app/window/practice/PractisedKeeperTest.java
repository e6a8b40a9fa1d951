package crowdline.app.window.practice;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.practice.Level;
import crowdline.practice.PracticeScore;
import crowdline.practice.PracticeScore.About;
import crowdline.practice.PracticeScore.Count;
import crowdline.practice.PracticeScore.Line;
import crowdline.storage.settings.PractisedFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PractisedKeeperTest {
    private static final PracticeScore SCORE = new PracticeScore(
            List.of(new Line(About.STEPS, false, "You were in step with 8 of 9 figures.")),
            List.of(new Count(About.PLAN, 1, 2), new Count(About.STEPS, 8, 9)));

    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();
    private final Deque<Runnable> io = new ArrayDeque<>();
    private String speaker = "Ann";

    private PractisedKeeper keeper() {
        return new PractisedKeeper(
                new PractisedFile(folder.resolve("practice.json")),
                () -> speaker,
                Clock.fixed(Instant.parse("2026-05-02T10:00:00Z"), ZoneOffset.UTC),
                told::add,
                io::add);
    }

    private void work() {
        while (!io.isEmpty()) {
            io.remove().run();
        }
    }

    @Test
    void howItWentIsThereAfterTheNextStartForEachSpeakerAndLevelAlone() {
        PractisedKeeper first = keeper();
        work();
        first.keep(Level.TWO, "Solo", 17, SCORE);
        work();

        PractisedKeeper next = keeper();
        work();
        assertThat(next.past(Level.TWO))
                .containsExactly("2 May, Solo, flight 17: when the plan broke 1 of 2, in step 8 of 9.");
        assertThat(next.past(Level.ONE)).isEmpty();
        speaker = "Bob";
        assertThat(next.past(Level.TWO)).isEmpty();
        assertThat(told).isEmpty();
    }

    @Test
    void theNewestOfALevelComeFirstAndTheOldestAreForgotten() {
        PractisedKeeper keeper = keeper();
        work();
        keeper.keep(Level.ONE, "Solo", 99, SCORE);
        for (int flight = 1; flight <= PractisedKeeper.KEPT + 2; flight++) {
            keeper.keep(Level.TWO, "Solo", flight, SCORE);
        }

        assertThat(keeper.past(Level.TWO)).hasSize(PractisedKeeper.KEPT);
        assertThat(keeper.past(Level.TWO).get(0)).contains("flight " + (PractisedKeeper.KEPT + 2) + ":");
        assertThat(keeper.past(Level.ONE)).singleElement().asString().contains("flight 99:");
    }

    @Test
    void ofAPracticeWithNothingToTellNothingIsKept() {
        PractisedKeeper keeper = keeper();
        work();
        keeper.keep(Level.ONE, "Solo", 1, PracticeScore.NOTHING);
        work();

        assertThat(keeper.past(Level.ONE)).isEmpty();
        assertThat(folder.resolve("practice.json")).doesNotExist();
    }

    @Test
    void whatWasFlownBeforeTheFileWasReadStandsBehindWhatItHolds() {
        PractisedKeeper first = keeper();
        work();
        first.keep(Level.ONE, "Solo", 1, SCORE);
        work();

        PractisedKeeper next = keeper();
        next.keep(Level.ONE, "Solo", 2, SCORE);
        work();
        assertThat(next.past(Level.ONE)).hasSize(2);
        assertThat(next.past(Level.ONE).get(0)).contains("flight 2:");
    }

    @Test
    void damagedFileIsSetAsideAndTold() throws IOException {
        Path file = folder.resolve("practice.json");
        for (String damaged : List.of(
                "[]",
                "{\"crowdlinePractice\": 1, \"people\": {\"Ann\": 7}}",
                "{\"crowdlinePractice\": 1, \"people\": {\"Ann\": [{\"level\": 2}]}}",
                "{\"crowdlinePractice\": 1, \"people\": {\"Ann\": [{\"level\": 2, \"day\": 99999999999999, \"act\": \"a\","
                        + "\"flight\": 1}]}}")) {
            Files.writeString(file, damaged);
            told.clear();
            PractisedKeeper keeper = keeper();
            work();
            assertThat(keeper.past(Level.TWO)).isEmpty();
            assertThat(told).as(damaged).singleElement().asString().contains("What practice had kept");
            assertThat(file.resolveSibling("practice.json.broken")).hasContent(damaged);
        }
    }
}
