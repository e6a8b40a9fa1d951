package crowdline.app.window.time;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.ConsoleFrame;
import crowdline.flight.Workers;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.ShowEvent;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.PassIds;
import crowdline.loaded.ShowLoader;
import crowdline.running.LiveDesk;
import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.passes.PassesFile;
import crowdline.storage.show.CatalogueFile;
import crowdline.timing.Pass;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Passes on the disk and in what the show goes by; the window is left out. */
@Timeout(60)
class PassesKeeperTest {
    private static final Instant NOON = Instant.parse("2027-06-12T12:00:00Z");

    @TempDir
    private Path folder;

    private final AtomicLong nanos = new AtomicLong(1);
    private final Queue<Consumer<ConsoleFrame>> sent = new ConcurrentLinkedQueue<>();
    private @Nullable LoadedShow loaded;

    @BeforeEach
    void load() throws IOException, ShowFileException {
        try (InputStream in = Objects.requireNonNull(
                PassesKeeperTest.class.getResourceAsStream("/crowdline/storage/show/full.json"))) {
            Files.write(show(), in.readAllBytes());
        }
        loaded = new ShowLoader(CatalogueFile::shipped, () -> Paces.DEFAULT, folder.resolve("state"), Workers.ALONE)
                .load(show(), 1)
                .loaded();
    }

    private Path show() {
        return folder.resolve("day.json");
    }

    private LoadedShow loaded() {
        return Objects.requireNonNull(loaded);
    }

    private PassesKeeper desk(Path notKept) {
        return desk(notKept, NOON);
    }

    private PassesKeeper desk(Path notKept, Instant now) {
        PassIds ids = new PassIds(Clock.fixed(now, ZoneOffset.UTC), new AtomicInteger()::incrementAndGet);
        return new PassesKeeper(folder.resolve("state"), notKept, ids, sent::add, Runnable::run);
    }

    private List<Pass> kept() throws ShowFileException {
        return new PassesFile(show(), folder.resolve("state")).read().passes();
    }

    private double clockS() {
        Act act = loaded().show().acts().get(0);
        Variant variant = act.variants().get(0);
        return loaded().durations()
                .of(act.id(), variant.name(), variant.order())
                .secondsOf(0);
    }

    /** Flies the first act by hand, twice as long as predicted. */
    private void fly(PassesKeeper desk) {
        Act act = loaded().show().acts().get(0);
        Variant variant = act.variants().get(0);
        List<String> ids = act.inOrder(variant).stream().map(Figure::id).toList();
        double figureS = 2 * clockS();
        JournalMachine machine = new JournalMachine(nanos::get, () -> NOON, "boot-1");
        try (LiveDesk live = new LiveDesk(
                new JournalShelf(folder.resolve("journals"), machine, 3600).open(new JournalShow("day.json", "aa")),
                loaded().durations())) {
            desk.follow(show(), loaded(), live);
            live.post(atS -> new ShowEvent.ShowOpened(atS, "Day", List.of(act.id())));
            live.post(atS -> new FlightEvent.ActChosen(atS, act.id(), variant.name(), ids, null));
            live.submit(new FlightEvent.ActStarted(live.nowS())).join();
            for (int i = 0; i < ids.size(); i++) {
                nanos.addAndGet(Math.round(figureS * 1e9));
                live.submit(new FlightEvent.Stepped(live.nowS())).join();
            }
        }
    }

    @Test
    void actFlownLiveIsKeptAndTheClockLearnsFromIt() throws Exception {
        double before = clockS();
        PassesKeeper desk = desk(folder.resolve("demo.json"));
        desk.opened(new ShowLoader.Result(show(), loaded(), List.of()));
        fly(desk);
        assertThat(kept()).hasSize(1);
        assertThat(kept().get(0).how()).isEqualTo(Pass.How.LIVE);
        assertThat(clockS()).isGreaterThan(1.1 * before);
        assertThat(sent).as("a new view of Prepare").isNotEmpty();
    }

    /** Somebody tries the keys on an evening before. */
    @Test
    void actFlownOnAnotherDayIsKeptAndTheClockLearnsNothingFromIt() throws Exception {
        double before = clockS();
        PassesKeeper desk = desk(folder.resolve("demo.json"), NOON.minus(Duration.ofDays(1)));
        desk.opened(new ShowLoader.Result(show(), loaded(), List.of()));
        fly(desk);
        assertThat(kept())
                .singleElement()
                .satisfies(pass -> assertThat(pass.counts()).isFalse());
        assertThat(clockS()).isEqualTo(before);
    }

    @Test
    void otherWordsLearnTheSame() {
        LoadedShow words = loaded().withWords(loaded().show());
        fly(desk(folder.resolve("demo.json")));
        assertThat(words.passes()).hasSize(1);
        assertThat(words.durations()
                        .of(
                                "ada-solo",
                                "full",
                                loaded().show().acts().get(0).variants().get(0).order())
                        .secondsOf(0))
                .isEqualTo(clockS());
    }

    @Test
    void decisionsReachTheFileAndTheClock() throws Exception {
        double before = clockS();
        PassesKeeper desk = desk(folder.resolve("demo.json"));
        desk.opened(new ShowLoader.Result(show(), loaded(), List.of()));
        fly(desk);
        String id = kept().get(0).id();
        desk.note(id, "too slow");
        desk.count(id, false);
        assertThat(kept().get(0).counts()).isFalse();
        assertThat(kept().get(0).note()).isEqualTo("too slow");
        assertThat(clockS()).isEqualTo(before);
    }

    @Test
    void showForTryingOutKeepsNoPass() throws Exception {
        fly(desk(show()));
        assertThat(kept()).isEmpty();
    }

    @Test
    void passesOfTheFileAreLearnedWhenTheShowIsLoaded() throws Exception {
        fly(desk(folder.resolve("demo.json")));
        double learnedS = clockS();
        load();
        assertThat(loaded().passes()).hasSize(1);
        assertThat(clockS()).isEqualTo(learnedS);
    }
}
