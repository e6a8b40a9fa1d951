package crowdline.running;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.ExpectsWarning;
import crowdline.app.shell.MonotonicTicker;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.now.JournalHealth;
import crowdline.live.now.LiveSnapshot;
import crowdline.live.state.ActDurations;
import crowdline.live.state.Flown;
import crowdline.live.state.Note;
import crowdline.live.state.Phase;
import crowdline.live.state.Step;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(30)
class LiveDeskTest {
    private static final JournalShow SHOW = new JournalShow("/shows/harbour.json", "aa");
    private static final ActDurations TEN = (act, variant, figures) -> index -> 10;

    @TempDir
    Path folder;

    private final AtomicLong nanos = new AtomicLong(5_000_000_000L);

    private LiveDesk desk() {
        return desk(folder);
    }

    private LiveDesk desk(Path where) {
        JournalMachine machine = new JournalMachine(nanos::get, () -> Instant.parse("2026-05-02T12:00:00Z"), "boot-1");
        return new LiveDesk(new JournalShelf(where, machine, 3600).open(SHOW), TEN);
    }

    private void pass(double seconds) {
        nanos.addAndGet(Math.round(seconds * 1e9));
    }

    private static void flyByClock(LiveDesk desk) {
        desk.post(atS -> new ShowEvent.ShowOpened(atS, "Harbour Day", List.of("first")));
        desk.post(atS -> new FlightEvent.ActChosen(atS, "first", "full", List.of("loop", "roll", "spin"), null));
        desk.post(atS -> new FlightEvent.SourceChosen(atS, Source.CLOCK));
        desk.submit(new FlightEvent.ActStarted(desk.nowS())).join();
    }

    @Test
    void snapshotShowsWhatWasPosted() {
        try (LiveDesk desk = desk()) {
            flyByClock(desk);

            assertThat(desk.snapshot().state().figureId()).isEqualTo("loop");
            assertThat(desk.snapshot().refusal()).isNull();
            pass(4);
            assertThat(desk.now(Instant.EPOCH).actTimeS()).isEqualTo(4);
        }
    }

    @Test
    void whatIsNotMarkedAsUnwrittenIsOnTheDisk() throws Exception {
        List<String> missing = Collections.synchronizedList(new ArrayList<>());
        try (LiveDesk desk = desk()) {
            desk.onChange(s -> {
                try {
                    String journal = Files.readString(folder.resolve("0001-2026-05-02.journal"));
                    List<Note> notes = s.state().notes();
                    notes.stream()
                            .limit(Math.max(0, notes.size() - s.unwritten()))
                            .map(Note::text)
                            .filter(text -> !journal.contains(text))
                            .forEach(missing::add);
                } catch (java.io.IOException e) {
                    missing.add(e.toString());
                }
            });
            desk.post(atS -> new ShowEvent.ShowOpened(atS, "Harbour Day", List.of()));
            for (int i = 0; i < 20; i++) {
                String text = "note number " + i;
                desk.post(atS -> new LiveEvent.NoteMade(atS, text));
                if (i % 5 == 0) {
                    desk.written().join();
                }
            }
            desk.written().join();
            assertThat(desk.snapshot().state().notes()).hasSize(20);
            assertThat(desk.snapshot().unwritten()).isZero();
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void refusedEventTellsWhyAndIsNotWritten() throws Exception {
        try (LiveDesk desk = desk()) {
            Step step = desk.submit(new FlightEvent.Stepped(0)).join();

            assertThat(step).isEqualTo(new Step.Refused("No show is open: press Ctrl+O to open one."));
            assertThat(desk.snapshot().refusal()).isEqualTo("No show is open: press Ctrl+O to open one.");
        }
        assertThat(Files.readString(folder.resolve("0001-2026-05-02.journal"))).doesNotContain("Stepped");
    }

    @Test
    void clockMovesTheActByItself() {
        try (LiveDesk desk = desk()) {
            flyByClock(desk);
            pass(10);
            desk.wake().join();

            assertThat(desk.snapshot().state().figureId()).isEqualTo("roll");
        }
    }

    @Test
    void clockMovesTheActWithoutBeingAsked() throws Exception {
        CountDownLatch moved = new CountDownLatch(1);
        JournalMachine machine = JournalMachine.here(new MonotonicTicker());
        try (LiveDesk desk = new LiveDesk(
                new JournalShelf(folder, machine, 3600).open(SHOW), (act, variant, figures) -> index -> 0.05)) {
            desk.onChange(s -> {
                if ("spin".equals(s.state().figureId())) {
                    moved.countDown();
                }
            });
            flyByClock(desk);

            assertThat(moved.await(20, TimeUnit.SECONDS)).isTrue();
            List<Flown> flown = desk.snapshot().state().course().flown();
            assertThat(flown.get(1).startedAtS() - flown.get(0).startedAtS()).isCloseTo(0.05, within());
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.data.Offset.offset(1e-9);
    }

    /** The desk is held while it tells of the first figure, so that it looks at no clock before the key is there. */
    @Test
    void keyPressedBeforeTheBoundaryIsSeenBeforeTheClock() throws Exception {
        CountDownLatch held = new CountDownLatch(1);
        CountDownLatch free = new CountDownLatch(1);
        try (LiveDesk desk = desk()) {
            desk.onChange(s -> {
                if ("loop".equals(s.state().figureId())) {
                    held.countDown();
                    await(free);
                }
            });
            double startS = desk.nowS();
            CompletableFuture<Void> flying = CompletableFuture.runAsync(() -> flyByClock(desk));
            await(held);
            pass(20);
            CompletableFuture<Step> stepped = desk.submit(new FlightEvent.Stepped(startS + 9));
            free.countDown();
            flying.join();
            stepped.join();
            desk.wake().join();

            assertThat(desk.snapshot().state().course().flown())
                    .extracting(Flown::startedAtS)
                    .containsExactly(startS, startS + 9, startS + 19);
        }
    }

    @Test
    void restartedDeskIsWhereTheClockIsByNow() {
        try (LiveDesk desk = desk()) {
            flyByClock(desk);
        }
        pass(13);

        try (LiveDesk again = desk()) {
            LiveSnapshot first = again.snapshot();
            assertThat(first.resumed()).isTrue();
            assertThat(first.state().phase()).isEqualTo(new Phase.Flying(1, 10, 0, 10));
            assertThat(again.nowS()).isEqualTo(13);
        }
    }

    @Test
    void newDurationsMoveTheNextBoundary() {
        try (LiveDesk desk = desk()) {
            flyByClock(desk);
            pass(4);
            desk.useDurations((act, variant, figures) -> index -> 3);
            desk.wake().join();

            assertThat(desk.snapshot().state().figureId()).isEqualTo("roll");
        }
    }

    @Test
    @ExpectsWarning("Listing ")
    void journalThatCannotBeWrittenIsABannerAndTheShowGoesOn() throws Exception {
        Path blocked = folder.resolve("blocked");
        Files.writeString(blocked, "a file where the folder should be");
        try (LiveDesk desk = desk(blocked)) {
            flyByClock(desk);
            assertThat(desk.snapshot().state().figureId()).isEqualTo("loop");
            assertThat(desk.snapshot().journal()).isInstanceOf(JournalHealth.NotWriting.class);

            Files.delete(blocked);
            desk.written().join();
            assertThat(desk.snapshot().journal()).isInstanceOf(JournalHealth.WritingAgain.class);
        }
        try (LiveDesk again = desk(blocked)) {
            assertThat(again.snapshot().state().figureId()).isEqualTo("loop");
        }
    }

    @Test
    @ExpectsWarning("A listener of the live desk failed")
    void failingListenerStopsNothing() {
        try (LiveDesk desk = desk()) {
            List<Long> numbers = Collections.synchronizedList(new ArrayList<>());
            desk.onChange(s -> {
                throw new IllegalStateException("meant to fail");
            });
            desk.onChange(s -> numbers.add(s.number()));
            flyByClock(desk);

            assertThat(numbers).hasSize(4).isSorted();
        }
    }

    @Test
    @ExpectsWarning("No duration of figure 0")
    void failingDurationsStopNothing() {
        try (LiveDesk desk = desk()) {
            flyByClock(desk);
            desk.useDurations((act, variant, figures) -> {
                throw new IllegalStateException("meant to fail");
            });
            Step step = desk.submit(new FlightEvent.Stepped(desk.nowS())).join();
            assertThat(step).isInstanceOf(Step.Moved.class);
        }
    }

    @Test
    void closedDeskRefuses() {
        LiveDesk desk = desk();
        CompletableFuture<Step> before = desk.submit(new ShowEvent.ShowOpened(0, "Harbour Day", List.of()));
        desk.close();
        desk.close();

        assertThat(before.join()).isInstanceOf(Step.Moved.class);
        assertThat(desk.submit(new LiveEvent.NoteMade(1, "late")).join())
                .isEqualTo(new Step.Refused("The desk is closed."));
    }
}
