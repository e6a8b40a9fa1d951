package crowdline.app.window;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.ExpectsWarning;
import crowdline.app.shell.MonotonicTicker;
import crowdline.app.window.work.FootMessages;
import crowdline.console.paint.Mark;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.JournalHealth;
import crowdline.live.now.LiveSnapshot;
import crowdline.live.state.ActDurations;
import crowdline.live.state.Step;
import crowdline.running.LiveDesk;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalOpening;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.journal.SlowDisk;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** A disk that answers when the test lets it. */
@Timeout(60)
class SlowDiskTest {
    private static final JournalShow SHOW = new JournalShow("/shows/harbour.json", "aa");
    private static final ActDurations LONG = (act, variant, figures) -> index -> 1000;

    @TempDir
    Path folder;

    private final AtomicLong nanos = new AtomicLong(5_000_000_000L);
    private final JournalMachine machine =
            new JournalMachine(nanos::get, () -> Instant.parse("2026-05-02T12:00:00Z"), "boot-1");

    private void pass(double seconds) {
        nanos.addAndGet(Math.round(seconds * 1e9));
    }

    private static void fly(LiveDesk desk) {
        List<String> figures =
                IntStream.range(0, 200).mapToObj(i -> "figure " + i).toList();
        desk.post(atS -> new ShowEvent.ShowOpened(atS, "Harbour Day", List.of("first")));
        desk.post(atS -> new FlightEvent.ActChosen(atS, "first", "full", figures, null));
        desk.submit(new FlightEvent.ActStarted(desk.nowS())).join();
    }

    private List<String> foot(LiveDesk desk) {
        return FootMessages.banners(desk.snapshot()).stream().map(Mark::word).toList();
    }

    @Test
    void everythingShowsBeforeAnyWriteEnds() throws Exception {
        SlowDisk disk = new SlowDisk(folder, machine);
        try (LiveDesk desk = new LiveDesk(disk.open(SHOW), LONG)) {
            disk.awaitBusy();
            fly(desk);
            for (int i = 1; i <= 100; i++) {
                pass(1);
                assertThat(desk.submit(new FlightEvent.Stepped(desk.nowS())).join())
                        .isInstanceOf(Step.Moved.class);
                assertThat(desk.snapshot().state().figureId()).isEqualTo("figure " + i);
            }
            desk.submit(new FlightEvent.Held(desk.nowS())).join();
            desk.submit(new IncidentEvent.IncidentOpened(desk.nowS())).join();
            assertThat(desk.snapshot().state().incidentOpen()).isTrue();
            assertThat(desk.snapshot().unwritten()).isEqualTo(105);
            disk.let(100);
            desk.written().join();
            assertThat(desk.snapshot().unwritten()).isZero();
        }
        JournalOpening again = new JournalShelf(folder, machine, 3600).open(SHOW);
        assertThat(again.events()).isEqualTo(105);
        assertThat(again.state().incidentOpen()).isTrue();
        again.journal().close();
    }

    @Test
    void whatWaitsGoesToTheDiskInOneWrite() throws Exception {
        SlowDisk disk = new SlowDisk(folder, machine);
        try (LiveDesk desk = new LiveDesk(disk.open(SHOW), LONG)) {
            disk.awaitBusy();
            fly(desk);
            desk.submit(new FlightEvent.Stepped(desk.nowS())).join();
            // The beginning, and everything that came while that was written.
            disk.let(2);
            desk.written().join();
        }
    }

    @Test
    void footLineSpeaksOfASlowDiskOnlyAfterAWhileAndUntilItHasEverything() throws Exception {
        SlowDisk disk = new SlowDisk(folder, machine);
        try (LiveDesk desk = new LiveDesk(disk.open(SHOW), LONG)) {
            disk.awaitBusy();
            fly(desk);
            assertThat(desk.snapshot().unwritten()).isEqualTo(3);
            assertThat(foot(desk)).isEmpty();

            pass(0.14);
            desk.wake().join();
            assertThat(foot(desk)).isEmpty();

            LinkedBlockingQueue<LiveSnapshot> shown = new LinkedBlockingQueue<>();
            desk.onChange(shown::add);
            pass(0.02);
            desk.wake().join();
            assertThat(foot(desk)).containsExactly("The disk is slow: 3 events are not written yet.");
            assertThat(shown.take().journal()).isEqualTo(new JournalHealth.Slow(3));
            desk.wake().join();
            assertThat(shown).isEmpty();

            disk.let(100);
            assertThat(shown.take().journal()).isEqualTo(new JournalHealth.Writing());
            desk.written().join();
            assertThat(foot(desk)).isEmpty();
        }
    }

    @Test
    void footLineCountsOneEventAsOne() throws Exception {
        SlowDisk disk = new SlowDisk(folder, machine);
        try (LiveDesk desk = new LiveDesk(disk.open(SHOW), LONG)) {
            disk.awaitBusy();
            desk.submit(new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first")))
                    .join();
            pass(1);
            desk.wake().join();
            assertThat(foot(desk)).containsExactly("The disk is slow: 1 event is not written yet.");
            disk.let(100);
        }
    }

    @Test
    void slowDiskIsToldWithoutAnyoneAsking() throws Exception {
        SlowDisk disk = new SlowDisk(folder, JournalMachine.here(new MonotonicTicker()));
        try (LiveDesk desk = new LiveDesk(disk.open(SHOW), LONG)) {
            CountDownLatch told = new CountDownLatch(1);
            desk.onChange(s -> {
                if (s.journal() instanceof JournalHealth.Slow) {
                    told.countDown();
                }
            });
            desk.post(atS -> new ShowEvent.ShowOpened(atS, "Harbour Day", List.of("first")));
            assertThat(told.await(20, TimeUnit.SECONDS)).isTrue();
            disk.let(100);
        }
    }

    @Test
    void closingWaitsForADiskThatAnswers() throws Exception {
        SlowDisk disk = new SlowDisk(folder, machine);
        LiveDesk desk = new LiveDesk(disk.open(SHOW), LONG);
        disk.awaitBusy();
        fly(desk);
        CompletableFuture<Void> closed = CompletableFuture.runAsync(desk::close);
        assertThat(closed).isNotDone();
        disk.let(100);
        closed.join();

        JournalOpening again = new JournalShelf(folder, machine, 3600).open(SHOW);
        assertThat(again.events()).isEqualTo(3);
        again.journal().close();
    }

    @Test
    @ExpectsWarning("The disk did not take the last 3 events")
    void closingDoesNotWaitForADiskThatNeverAnswers() throws Exception {
        SlowDisk disk = new SlowDisk(folder, machine);
        LiveDesk desk = new LiveDesk(disk.open(SHOW), LONG, 0.05);
        disk.awaitBusy();
        fly(desk);
        desk.close();
        assertThat(desk.snapshot().state().figureId()).isEqualTo("figure 0");
        disk.let(100);
        // Else it would write into the folder while that is taken away.
        disk.awaitClosed();
    }
}
