package crowdline.running;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.speech.pace.Paces;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.show.CatalogueFile;
import crowdline.telemetry.serial.SerialPorts;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunningShowTest {
    private static final Instant NOON = Instant.parse("2026-05-02T12:00:00Z");

    @TempDir
    private Path folder;

    /** Each event asks for a new plan. Where nobody makes plans any more that is logged, which fails this test. */
    @Test
    void whatIsStillSeenToWhileItClosesIsNoTrouble() throws Exception {
        Path file = folder.resolve("day.json");
        try (InputStream in = Objects.requireNonNull(
                RunningShowTest.class.getResourceAsStream("/crowdline/storage/show/full.json"))) {
            Files.write(file, in.readAllBytes());
        }
        LoadedShow loaded = Objects.requireNonNull(
                new ShowLoader(CatalogueFile::shipped, () -> Paces.DEFAULT, folder.resolve("passes"), Workers.ALONE)
                        .load(file, 1)
                        .loaded());
        Show show = loaded.show();
        Act act = show.acts().get(0);
        for (int i = 0; i < 20; i++) {
            RunningShow running = new RunningShow(
                    loaded,
                    new JournalShelf(
                                    folder.resolve("journals" + i),
                                    new JournalMachine(System::nanoTime, () -> NOON, "boot-1"),
                                    3600)
                            .open(JournalShow.of(file, Files.readAllBytes(file))),
                    new AircraftSource(System::nanoTime, new SerialPorts(folder)),
                    () -> NOON);
            for (int event = 0; event < 50; event++) {
                running.desk().post(ChosenAct.of(show, act));
            }
            running.close();
            assertThat(running.desk().snapshot().state().actId()).isEqualTo(act.id());
        }
    }
}
