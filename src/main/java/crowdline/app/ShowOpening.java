package crowdline.app;

import crowdline.console.ConsoleFrame;
import crowdline.console.paint.Mark;
import crowdline.console.prepare.PreparePresenter;
import crowdline.console.prepare.PrepareView;
import crowdline.show.Catalogue;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.speech.Pace;
import crowdline.storage.JournalMachine;
import crowdline.storage.JournalOpening;
import crowdline.storage.JournalShelf;
import crowdline.storage.JournalShow;
import crowdline.storage.ShowFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Opens show files on the {@code io} thread. A show whose very content was run before goes on first and is checked
 * afterwards; any other is checked first.
 */
final class ShowOpening {
    /** A show left this long ago is begun afresh: longer than any show day's pause. */
    private static final double FORGET_AFTER_S = 12 * 3600.0;

    private final JournalShelf shelf;
    private final ShowLoader loader;
    private final WindowAhead window;
    private final AircraftSource aircraft;
    private final ExecutorService io;
    private final JournalMachine machine;
    private final PassesDesk passes;
    private final FootNews foot;
    private final GlossaryFill glossary;
    private volatile @Nullable RunningShow running;
    private volatile @Nullable Path openFile;
    /** On the io thread only: what the running show was read from. */
    private ShowLoader.@Nullable Result known;
    /** What was to be opened last, whether it is open yet or not. */
    private volatile @Nullable Path asked;

    ShowOpening(
            Path journals,
            Supplier<Catalogue> catalogue,
            ShowLoader loader,
            WindowAhead window,
            AircraftSource aircraft,
            ExecutorService io,
            JournalMachine machine,
            PassesDesk passes) {
        this.shelf = new JournalShelf(journals, machine, FORGET_AFTER_S);
        this.loader = loader;
        this.window = window;
        this.aircraft = aircraft;
        this.io = io;
        this.machine = machine;
        this.passes = passes;
        foot = new FootNews(window);
        glossary = new GlossaryFill(catalogue, window, io);
    }

    @Nullable
    RunningShow running() {
        return running;
    }

    /** The file of the running show. */
    @Nullable
    Path openFile() {
        return openFile;
    }

    /** Shows the window without a show. */
    void openNothing() {
        window.present(false, () -> io.execute(glossary::fill));
    }

    /**
     * Opens a show file; from any thread, at once.
     *
     * @param opened told on the io thread when it turned out to be a show
     */
    void open(Path file, Consumer<Path> opened) {
        asked = file;
        say(OpeningWords.opening(file));
        io.execute(() -> guarded(file, () -> read(file, opened)));
    }

    private void guarded(Path file, OpeningWords.Work work) {
        OpeningWords.faultOf(file, work).ifPresent(wrong -> {
            say(wrong);
            window.present(false, () -> io.execute(glossary::fill));
        });
    }

    private void read(Path file, Consumer<Path> opened) throws IOException {
        byte[] content = ShowFile.bytes(file);
        JournalShow identity = JournalShow.of(file, content);
        LoadedShow soundBefore = shelf.knows(identity)
                ? loader.soundBefore(file, content, LoadedShow.FIRST_FLIGHTS).orElse(null)
                : null;
        boolean resumed = soundBefore != null && start(file, soundBefore, shelf.open(identity));
        if (!resumed) {
            say(OpeningWords.opening(file));
        }
        window.present(
                resumed,
                () -> io.execute(() -> guarded(file, () -> check(file, content, identity, soundBefore, opened))));
    }

    /** Does what Live did not wait for. */
    private void check(
            Path file, byte[] content, JournalShow identity, @Nullable LoadedShow started, Consumer<Path> opened) {
        glossary.fill();
        // Another show may have been opened before its turn came.
        if (!file.equals(asked)) {
            return;
        }
        ShowLoader.Result result = started == null
                ? loader.load(file, content, LoadedShow.FIRST_FLIGHTS)
                : loader.check(file, content, started);
        LoadedShow loaded = result.loaded();
        if (loaded == null) {
            String name = String.valueOf(file.getFileName());
            showPrepare(PreparePresenter.unusable(name, result.findings()));
            say(OpeningWords.UNUSABLE);
            return;
        }
        if (started == null) {
            window.present(start(file, loaded, shelf.open(identity)), () -> {});
        } else {
            sayWhatIsRunning();
        }
        known = result;
        passes.opened(result);
        showPrepare(loaded.prepareView(result.findings()));
        opened.accept(file);
        // What is running must not wait for better bands.
        io.execute(() -> {
            ShowLoader.Result now = known;
            LoadedShow shown = now == null ? null : now.loaded();
            if (now != null && shown != null && now.file().equals(file)) {
                shown.refine(LoadedShow.FLIGHTS);
                showPrepare(shown.prepareView(now.findings()));
            }
        });
    }

    /** Predicts the running show again in other air, in the file or not; from any thread. */
    void useAir(DayAir air, boolean toBeSaved) {
        io.execute(() -> {
            RunningShow show = running;
            ShowLoader.Result before = known;
            if (show != null && before != null) {
                say(OpeningWords.FLYING);
                guarded(before.file(), () -> flyIn(air, toBeSaved, show, before));
            }
        });
    }

    private void flyIn(DayAir air, boolean toBeSaved, RunningShow show, ShowLoader.Result before) {
        LoadedShow again = show.loaded().inAir(air);
        again.refine(LoadedShow.FLIGHTS);
        ShowLoader.Result result = new ShowLoader.Result(before.file(), again, before.ofFile());
        known = result;
        passes.opened(result);
        show.take(again);
        showPrepare(again.prepareView(result.findings()));
        window.send(ConsoleFrame::airChanged);
        say(OpeningWords.flown(toBeSaved));
    }

    /** Times everything anew for another speaker; from any thread. */
    void usePace(Pace pace) {
        io.execute(() -> {
            RunningShow show = running;
            if (show == null) {
                return;
            }
            LoadedShow again = show.loaded().atPace(pace);
            show.take(again);
            window.send(ConsoleFrame::liveChanged);
            ShowLoader.Result before = known;
            if (before != null) {
                ShowLoader.Result result = new ShowLoader.Result(before.file(), again, before.ofFile());
                known = result;
                passes.opened(result);
                showPrepare(again.prepareView(result.findings()));
            }
        });
    }

    /**
     * Starts a show.
     *
     * @return whether it goes on from where it was left
     */
    private boolean start(Path file, LoadedShow loaded, JournalOpening opening) {
        RunningShow before = running;
        known = null;
        if (before != null) {
            running = null;
            before.close();
            window.send(ConsoleFrame::forgetWords);
        }
        RunningShow now = new RunningShow(loaded, opening, aircraft, () -> hour(loaded.show()));
        // Looked at once here, so that the event thread finds everything worked out.
        now.view();
        openFile = file;
        running = now;
        now.desk().onChange(snapshot -> {
            window.send(ConsoleFrame::liveChanged);
            sayWhatIsRunning();
        });
        passes.follow(file, loaded, now.desk());
        sayWhatIsRunning();
        return opening.resumed();
    }

    private LocalTime hour(Show show) {
        return LocalTime.now(machine.wall().withZone(show.venue().timeZone()));
    }

    private void showPrepare(PrepareView view) {
        window.send(w -> w.showPrepare(view));
    }

    void say(Mark mark) {
        foot.say(mark);
    }

    /** Says these until told others, in the show that is running; from any thread. */
    void stand(List<Mark> marks) {
        foot.stand(marks);
        sayWhatIsRunning();
    }

    private void sayWhatIsRunning() {
        RunningShow show = running;
        if (show != null) {
            foot.sayOf(show.desk().snapshot(), show.desk().nowS());
        }
    }
}
