package crowdline.app.window.edit;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.app.shell.Folders;
import crowdline.app.window.show.LiveShow;
import crowdline.console.ConsoleFrame;
import crowdline.flight.Workers;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.loaded.ShowRemarks;
import crowdline.running.AircraftSource;
import crowdline.running.RunningShow;
import crowdline.show.Act;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.figure.Placing;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.show.CatalogueFile;
import crowdline.storage.show.ShowFile;
import crowdline.storage.unsaved.UnsavedShelf;
import crowdline.telemetry.serial.SerialPorts;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Words on the disk and in the running show; the window is left out. */
class EditKeeperTest {
    private static final String NOTE = "\"ourNote\": \"ask for water\"";

    @TempDir
    private Path folder;

    private final AtomicLong nanos = new AtomicLong(1);
    private @Nullable Path file;
    private @Nullable RunningShow running;
    private @Nullable EditKeeper desk;
    private @Nullable FakeLive live;

    @BeforeEach
    void run() throws IOException, ShowFileException {
        try (InputStream in =
                Objects.requireNonNull(EditKeeperTest.class.getResourceAsStream("/crowdline/storage/show/full.json"))) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("\"title\": \"Harrowmere Air Day\"", "\"title\": \"Harrowmere Air Day\", " + NOTE);
            file = Files.writeString(folder.resolve("day.json"), text);
        }
        LoadedShow loaded = new ShowLoader(
                        CatalogueFile::shipped,
                        () -> Paces.DEFAULT,
                        Folders.here().passes(),
                        Workers.ALONE)
                .load(file(), 1)
                .loaded();
        JournalMachine machine = new JournalMachine(nanos::get, () -> Instant.parse("2026-05-02T12:00:00Z"), "boot-1");
        running = new RunningShow(
                Objects.requireNonNull(loaded),
                new JournalShelf(folder.resolve("journals"), machine, 3600)
                        .open(JournalShow.of(file(), Files.readAllBytes(file()))),
                new AircraftSource(nanos::get, new SerialPorts(folder)),
                () -> Instant.parse("2026-05-02T13:00:00Z"));
        live = new FakeLive(running, file);
        desk = keeper(work -> {}, Runnable::run);
        desk().open();
    }

    @AfterEach
    void close() {
        running().close();
    }

    private Path file() {
        return Objects.requireNonNull(file);
    }

    private RunningShow running() {
        return Objects.requireNonNull(running);
    }

    private EditKeeper desk() {
        return Objects.requireNonNull(desk);
    }

    private Show inFile(Path path) throws ShowFileException {
        return Objects.requireNonNull(new ShowFile().read(path).show());
    }

    private Show withFact(String text) throws ShowFileException {
        Show s = inFile(file());
        return s.withActs(s.acts(), List.of(Remark.of("new-fact", RemarkKind.FACT, text)));
    }

    private EditKeeper keeper(Consumer<Consumer<ConsoleFrame>> window, Executor io) {
        return new EditKeeper(
                CatalogueFile::shipped,
                live(),
                new UnsavedShelf(folder.resolve("unsaved")),
                () -> Paces.DEFAULT,
                Clock.fixed(Instant.parse("2026-05-02T12:00:00Z"), ZoneOffset.UTC),
                saved -> {},
                window,
                io);
    }

    private FakeLive live() {
        return Objects.requireNonNull(live);
    }

    /** Live, which takes what it is given unless an act is in the air. */
    private static final class FakeLive implements LiveShow {
        private final RunningShow running;
        private final Path file;
        private final List<Show> ran = new ArrayList<>();
        private boolean inTheAir;

        private FakeLive(@Nullable RunningShow running, @Nullable Path file) {
            this.running = Objects.requireNonNull(running);
            this.file = Objects.requireNonNull(file);
        }

        @Override
        public RunningShow running() {
            return running;
        }

        @Override
        public Path openFile() {
            return file;
        }

        @Override
        public void leave() {}

        @Override
        public LoadedShow empty() {
            return running.loaded();
        }

        @Override
        public void openAgain(Path again) {}

        @Override
        public boolean run(Path of, byte[] content, LoadedShow edited) {
            if (inTheAir) {
                return false;
            }
            ran.add(Objects.requireNonNull(new ShowFile().read(of, content).show()));
            assertThat(edited.show()).isEqualTo(ran.get(ran.size() - 1));
            return true;
        }
    }

    private Show withLongerSlot() throws ShowFileException {
        Show show = inFile(file());
        Act act = show.acts().get(0);
        List<Act> acts = new ArrayList<>(show.acts());
        acts.set(0, act.withSlot(act.slotStart(), act.slotMinutes() + 1));
        return show.withActs(acts, show.remarks());
    }

    @Test
    void moreThanWordsAreSavedAndRunByLiveAnew() throws Exception {
        Show longer = withLongerSlot();
        desk().intoLive(longer);
        assertThat(live().ran).containsExactly(longer);
        assertThat(inFile(file())).isEqualTo(longer);
    }

    @Test
    void moreThanWordsDoNotReachAnActInTheAirButAreSaved() throws Exception {
        live().inTheAir = true;
        Show longer = withLongerSlot();
        desk().intoLive(longer);
        assertThat(live().ran).isEmpty();
        assertThat(inFile(file())).isEqualTo(longer);
        Show words = withFact("New.");
        desk().intoLive(words.withActs(running().loaded().show().acts(), words.remarks()));
        assertThat(facts(running().loaded().show())).containsExactly("New.");
    }

    private static List<String> facts(Show show) {
        return show.remarks().stream().map(Remark::text).toList();
    }

    @Test
    void savedWordsAreInTheFileAndWhatIsUnknownStays() throws Exception {
        desk().save(withFact("The smoke is paraffin."));
        assertThat(facts(inFile(file()))).containsExactly("The smoke is paraffin.");
        assertThat(Files.readString(file())).contains(NOTE);
        desk().save(withFact("The smoke is oil."));
        assertThat(facts(inFile(file()))).containsExactly("The smoke is oil.");
    }

    /** The plan, the findings of the show and how acts read are for the newest words only, and off the event thread. */
    @Test
    void wordsTypedWhileTheDeskIsBusyAreJudgedOnce() throws Exception {
        List<Runnable> io = new ArrayList<>();
        AtomicInteger shown = new AtomicInteger();
        EditKeeper busy = keeper(work -> shown.incrementAndGet(), io::add);
        busy.open();
        io.remove(0).run();
        shown.set(0);
        for (int letters = 1; letters <= 40; letters++) {
            busy.edited(withFact("x".repeat(letters)));
        }
        assertThat(shown).hasValue(0);
        assertThat(io).hasSize(1);
        io.remove(0).run();
        // What it is at a glance, and then the plan.
        assertThat(shown).hasValue(2);
        busy.edited(withFact("One more."));
        io.remove(0).run();
        assertThat(shown).hasValue(4);
    }

    /** The act is shown before the flights behind its bands are flown, and again with them. */
    @Test
    void editedActIsShownAtOnceAndThenWithItsBands() throws Exception {
        AtomicInteger shown = new AtomicInteger();
        EditKeeper keeper = keeper(work -> shown.incrementAndGet(), Runnable::run);
        keeper.open();
        shown.set(0);
        Show show = inFile(file());
        keeper.edited(
                show.withActs(show.acts().stream().map(EditKeeperTest::higher).toList(), show.remarks()));
        // At once, with bands, the plan, and the facts.
        assertThat(shown).hasValue(4);
    }

    private static Act higher(Act act) {
        Placing entry = Objects.requireNonNull(act.entry());
        return new Act(
                act.id(),
                act.title(),
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes(),
                new Placing(entry.alongM(), entry.awayM(), entry.heightFt() + 100, entry.kt(), entry.heading()),
                act.figures(),
                act.variants(),
                act.remarks());
    }

    @Test
    void aFileChangedMeanwhileIsNotSavedOver() throws Exception {
        Show edited = withFact("Mine.");
        String theirs = Files.readString(file()).replace("Thank the stewards.", "Thank the bakers.");
        Files.writeString(file(), theirs);
        desk().save(edited);
        assertThat(file()).hasContent(theirs);
        Path other = folder.resolve("mine.json");
        desk().saveAs(edited, other);
        assertThat(file()).hasContent(theirs);
        assertThat(facts(inFile(other))).containsExactly("Mine.");
        desk().save(withFact("Mine again."));
        assertThat(file()).hasContent(theirs);
        assertThat(facts(inFile(other))).containsExactly("Mine again.");
    }

    @Test
    void aFileThatIsGoneIsWrittenAnew() throws Exception {
        Show edited = withFact("Mine.");
        Files.delete(file());
        desk().save(edited);
        assertThat(facts(inFile(file()))).containsExactly("Mine.");
    }

    @Test
    void liveKeepsItsWordsUntilItTakesTheNewOnesWhichAreThenSaved() throws Exception {
        Show before = running().loaded().show();
        Show edited = withFact("New.");
        desk().edited(edited);
        desk().save(edited);
        assertThat(running().loaded().show()).isEqualTo(before);
        Show more = withFact("Newer.");
        String act = running().desk().snapshot().state().actId();
        desk().intoLive(more);
        assertThat(facts(running().loaded().show())).containsExactly("Newer.");
        assertThat(facts(inFile(file()))).containsExactly("Newer.");
        assertThat(running().desk().snapshot().state().actId()).isEqualTo(act);
    }

    @Test
    void whatLiveDoesNotRunYetIsSaidWithTheKeyThatTakesIt() throws Exception {
        Show edited = withFact("New.");
        assertThat(IntoLive.left(edited, running())).startsWith("; Ctrl+L takes ");
        desk().intoLive(edited);
        assertThat(IntoLive.left(edited, running())).isEmpty();
        assertThat(IntoLive.left(edited, null)).isEmpty();
    }

    @Test
    void liveDoesNotTakeWhatCouldNotBeSaved() throws Exception {
        Show before = running().loaded().show();
        Show edited = withFact("New.");
        Files.writeString(file(), "{}");
        desk().intoLive(edited);
        assertThat(running().loaded().show()).isEqualTo(before);
    }

    @Test
    void liveDoesNotTakeTheWordsOfAnotherFile() throws Exception {
        Show before = running().loaded().show();
        Show edited = withFact("New.");
        desk().saveAs(edited, folder.resolve("other.json"));
        desk().intoLive(edited);
        assertThat(running().loaded().show()).isEqualTo(before);
    }

    @Test
    void airOfTheDayIsSavedWithTheShowAndNothingElseChanges() throws Exception {
        Show before = inFile(file());
        DayAir air = new DayAir(1004.5, 23, 250, 12.5, before.air().windsAloft(), 2500.0);
        desk().save(before.withAir(air));
        assertThat(inFile(file())).isEqualTo(before.withAir(air));
        assertThat(Files.readString(file())).contains(NOTE, "\"qnhHpa\": 1004.5");
        // Saved again with the air taken back, it is what it was.
        desk().save(before);
        assertThat(inFile(file())).isEqualTo(before);
    }

    @Test
    void showsThatDifferInMoreThanWordsAreTold() throws Exception {
        Show show = inFile(file());
        assertThat(ShowRemarks.none(withFact("x"))).isEqualTo(ShowRemarks.none(show));
        Act act = show.acts().get(0);
        Act longer = new Act(
                act.id(),
                act.title(),
                act.performer(),
                act.airframe(),
                act.slotStart(),
                act.slotMinutes() + 1,
                act.entry(),
                act.figures(),
                act.variants(),
                act.remarks());
        Show other = show.withActs(List.of(longer), show.remarks());
        assertThat(ShowRemarks.none(other)).isNotEqualTo(ShowRemarks.none(show));
    }
}
