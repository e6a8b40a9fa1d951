package crowdline.app.window.glossary;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.glossary.drill.Memory;
import crowdline.storage.settings.DrillFile;
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

class DrillKeeperTest {
    @TempDir
    Path folder;

    private final List<String> told = new ArrayList<>();
    private final Deque<Runnable> io = new ArrayDeque<>();
    private String speaker = "Ann";

    private DrillKeeper keeper() {
        return new DrillKeeper(
                new DrillFile(folder.resolve("settings").resolve("drill.json")),
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
    void whatWasLearnedIsThereAfterTheNextStartForEachSpeakerAlone() {
        Memory ann = new Memory(2, 2.36, 6, 20_500);
        DrillKeeper first = keeper();
        work();
        first.remember("loop", ann);
        speaker = "Bob \"Ä\"";
        assertThat(first.remembered()).isEmpty();
        first.remember("loop", Memory.NEW);
        work();

        DrillKeeper next = keeper();
        work();
        assertThat(next.remembered()).containsOnlyKeys("loop").containsEntry("loop", Memory.NEW);
        speaker = "Ann";
        assertThat(next.remembered()).containsEntry("loop", ann);
        assertThat(told).isEmpty();
    }

    @Test
    void whatIsAnsweredBeforeTheFileWasReadIsKeptBesideIt() {
        DrillKeeper first = keeper();
        work();
        first.remember("loop", new Memory(1, 2.5, 1, 20_500));
        first.remember("humpty bump", new Memory(1, 2.5, 1, 20_500));
        work();

        DrillKeeper next = keeper();
        Memory newer = new Memory(2, 2.5, 6, 20_501);
        next.remember("loop", newer);
        work();
        assertThat(next.remembered()).containsOnlyKeys("loop", "humpty bump").containsEntry("loop", newer);
    }

    @Test
    void damagedFileIsSetAsideAndTold() throws IOException {
        Path file = folder.resolve("settings").resolve("drill.json");
        for (String damaged : List.of(
                "",
                "{",
                "[]",
                "{\"crowdlineDrill\": 2, \"people\": {}}",
                "{\"crowdlineDrill\": 1, \"people\": {\"Ann\": {\"loop\": {\"repetitions\": 1, \"easiness\": 0.2}}}}",
                "{\"crowdlineDrill\": 1, \"people\": {\"Ann\": {\"loop\": 7}}}")) {
            Files.createDirectories(file.getParent());
            Files.writeString(file, damaged);
            told.clear();
            DrillKeeper keeper = keeper();
            work();
            assertThat(keeper.remembered()).isEmpty();
            assertThat(told).as(damaged).singleElement().asString().contains("begins anew");
            assertThat(file.resolveSibling("drill.json.broken")).hasContent(damaged);
            assertThat(file).doesNotExist();
        }
    }

    @Test
    void dayIsThatOfTheClock() {
        assertThat(keeper().today()).isEqualTo(20_575);
    }
}
