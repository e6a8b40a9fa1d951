package crowdline.running;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.Venue;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalOpening;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.show.CatalogueFile;
import crowdline.telemetry.Fix;
import crowdline.telemetry.FixQuality;
import crowdline.telemetry.HeightKind;
import crowdline.telemetry.LocalFrame;
import crowdline.telemetry.serial.SerialPorts;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunningShowTest {
    private static final Instant NOON = Instant.parse("2026-05-02T12:00:00Z");

    @TempDir
    private Path folder;

    /** Each event asks for a new plan. Where nobody makes plans any more that is logged, which fails this test. */
    @Test
    void whatIsStillSeenToWhileItClosesIsNoTrouble() throws Exception {
        Path file = file();
        LoadedShow loaded = loaded(file);
        Show show = loaded.show();
        Act act = show.acts().get(0);
        for (int i = 0; i < 20; i++) {
            RunningShow running = new RunningShow(
                    loaded,
                    shelf(i).open(JournalShow.of(file, Files.readAllBytes(file))),
                    new AircraftSource(System::nanoTime, new SerialPorts(folder)),
                    () -> NOON);
            for (int event = 0; event < 50; event++) {
                running.desk().post(ChosenAct.of(show, act));
            }
            running.close();
            assertThat(running.desk().snapshot().state().actId()).isEqualTo(act.id());
        }
    }

    @Test
    void anActThatTheFileHasGotSinceIsInTheRunningOrder() throws Exception {
        Path file = file();
        LoadedShow less = loaded(file);
        Act first = less.show().acts().get(0);
        List<Act> acts = List.of(first, again(first));
        LoadedShow whole = less.with(less.show().withActs(acts, less.show().remarks()));
        JournalShow identity = JournalShow.of(file, Files.readAllBytes(file));
        RunningShow morning = running(less, shelf(0).open(identity));
        morning.desk().post(ChosenAct.of(less.show(), first));
        morning.close();
        assertThat(morning.desk().snapshot().state().day().order()).containsExactly(first.id());

        RunningShow noon = running(whole, shelf(0).openChanged(identity));
        noon.close();
        assertThat(noon.desk().snapshot().state().day().order()).containsExactly(first.id(), "again");
    }

    @Test
    void anAircraftNowhereNearTheFieldIsSaidToBeElsewhere() throws Exception {
        Path file = file();
        LoadedShow loaded = loaded(file);
        Venue venue = loaded.show().venue();
        double latDeg = Objects.requireNonNull(venue.latDeg());
        double lonDeg = Objects.requireNonNull(venue.lonDeg());
        JournalOpening opening = shelf(0).open(JournalShow.of(file, Files.readAllBytes(file)));
        try (RunningShow running = running(loaded, opening);
                FollowThread follow = new FollowThread(
                        running.desk(), new LocalFrame(venue), state -> Optional.empty(), tracking -> {})) {
            assertThat(follow.elsewhere()).isEmpty();
            follow.fix(at(latDeg + 0.1, lonDeg));
            assertThat(follow.elsewhere()).isEmpty();
            // A degree of latitude is 111 km.
            follow.fix(at(latDeg + 1.5, lonDeg));
            assertThat(follow.elsewhere()).startsWith("The aircraft is 167 km from the field");
            follow.fix(at(latDeg, lonDeg));
            assertThat(follow.elsewhere()).isEmpty();
        }
    }

    private static Fix at(double latDeg, double lonDeg) {
        return new Fix(0, null, latDeg, lonDeg, 300, HeightKind.SEA_LEVEL, 60.0, 90.0, FixQuality.SATELLITE);
    }

    private static Act again(Act act) {
        return new Act(
                "again",
                "Once again",
                act.performer(),
                act.airframe(),
                act.slotStart().plusHours(1),
                act.slotMinutes(),
                act.entry(),
                act.figures(),
                act.variants(),
                List.of());
    }

    private RunningShow running(LoadedShow loaded, JournalOpening opening) {
        return new RunningShow(
                loaded, opening, new AircraftSource(System::nanoTime, new SerialPorts(folder)), () -> NOON);
    }

    private JournalShelf shelf(int number) {
        return new JournalShelf(
                folder.resolve("journals" + number), new JournalMachine(System::nanoTime, () -> NOON, "boot-1"), 3600);
    }

    private Path file() throws IOException {
        Path file = folder.resolve("day.json");
        try (InputStream in = Objects.requireNonNull(
                RunningShowTest.class.getResourceAsStream("/crowdline/storage/show/full.json"))) {
            Files.write(file, in.readAllBytes());
        }
        return file;
    }

    private LoadedShow loaded(Path file) throws ShowFileException {
        return Objects.requireNonNull(
                new ShowLoader(CatalogueFile::shipped, () -> Paces.DEFAULT, folder.resolve("passes"), Workers.ALONE)
                        .load(file, 1)
                        .loaded());
    }
}
