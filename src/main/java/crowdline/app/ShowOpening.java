package crowdline.app;

import crowdline.console.ConsoleFrame;
import crowdline.console.glossary.GlossaryView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.prepare.PreparePresenter;
import crowdline.console.prepare.PrepareView;
import crowdline.console.theme.Tone;
import crowdline.live.JournalHealth;
import crowdline.live.LiveSnapshot;
import crowdline.show.Catalogue;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.speech.Pace;
import crowdline.storage.JournalMachine;
import crowdline.storage.JournalOpening;
import crowdline.storage.JournalShelf;
import crowdline.storage.JournalShow;
import crowdline.storage.ShowFile;
import crowdline.storage.ShowFileException;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalTime;
import java.util.ArrayList;
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
    private static final System.Logger LOG = System.getLogger(ShowOpening.class.getName());
    /** A show left this long ago is begun afresh: longer than any show day's pause. */
    private static final double FORGET_AFTER_S = 12 * 3600.0;
    /** What was found on opening the journal is shown this long into a session, seconds. */
    private static final double NOTICES_S = 6;
    /** A session that goes on shows it until this snapshot, however old it is. */
    private static final int NOTICES_SNAPSHOT = 4;

    private final JournalShelf shelf;
    private final Supplier<Catalogue> catalogue;
    private final ShowLoader loader;
    private final WindowAhead window;
    private final AircraftSource aircraft;
    private final ExecutorService io;
    private final Clock clock;
    private final PassesDesk passes;
    private volatile @Nullable RunningShow running;
    private volatile @Nullable Path openFile;
    /** On the io thread only: whether the glossary's figures are drawn. */
    private boolean drawn;
    /** On the io thread only: what the running show was read from. */
    private ShowLoader.@Nullable Result known;
    /** What is said until it is mended, beside whatever else is said. */
    private volatile List<Mark> standing = List.of();
    /** What was to be opened last, whether it is open yet or not. */
    private volatile @Nullable Path asked;

    ShowOpening(
            Path journals,
            Supplier<Catalogue> catalogue,
            ShowLoader loader,
            WindowAhead window,
            AircraftSource aircraft,
            ExecutorService io,
            Clock clock,
            PassesDesk passes) {
        this.shelf = new JournalShelf(journals, JournalMachine.here(new MonotonicTicker()), FORGET_AFTER_S);
        this.catalogue = catalogue;
        this.loader = loader;
        this.window = window;
        this.aircraft = aircraft;
        this.io = io;
        this.clock = clock;
        this.passes = passes;
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
        window.present(false, () -> io.execute(this::fillGlossary));
    }

    /**
     * Opens a show file; from any thread, at once.
     *
     * @param opened told on the io thread when it turned out to be a show
     */
    void open(Path file, Consumer<Path> opened) {
        asked = file;
        say(opening(file));
        io.execute(() -> guarded(file, () -> read(file, opened)));
    }

    private static Mark opening(Path file) {
        return new Mark(Form.RING, Tone.CALM, "Opening " + file.getFileName());
    }

    /** What is done with a show file, which can go wrong in every way. */
    private interface Work {
        void run() throws IOException;
    }

    private void guarded(Path file, Work work) {
        Mark wrong;
        try {
            work.run();
            return;
        } catch (ShowFileException e) {
            wrong = new Mark(Form.STOP, Tone.ALARM, String.valueOf(e.getMessage()));
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Reading " + file, e);
            wrong = new Mark(Form.STOP, Tone.ALARM, file + " cannot be read; check that it is there");
        } catch (RuntimeException e) {
            // The root of the io thread: one sentence to the user, the rest to the log.
            LOG.log(System.Logger.Level.ERROR, "Opening " + file, e);
            wrong = new Mark(Form.STOP, Tone.ALARM, "The show could not be opened; the log has the reason");
        }
        say(wrong);
        window.present(false, () -> io.execute(this::fillGlossary));
    }

    private void read(Path file, Consumer<Path> opened) throws IOException {
        byte[] content = ShowFile.bytes(file);
        JournalShow identity = JournalShow.of(file, content);
        LoadedShow soundBefore = shelf.knows(identity)
                ? loader.soundBefore(file, content, LoadedShow.FIRST_FLIGHTS).orElse(null)
                : null;
        boolean resumed = soundBefore != null && start(file, soundBefore, shelf.open(identity));
        if (!resumed) {
            say(opening(file));
        }
        window.present(
                resumed,
                () -> io.execute(() -> guarded(file, () -> check(file, content, identity, soundBefore, opened))));
    }

    /** Does what Live did not wait for. */
    private void check(
            Path file, byte[] content, JournalShow identity, @Nullable LoadedShow started, Consumer<Path> opened) {
        fillGlossary();
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
            say(new Mark(Form.STOP, Tone.ALARM, "This show cannot be used until what is listed is mended"));
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
                say(new Mark(Form.RING, Tone.CALM, "Predicting again in this air"));
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
        say(new Mark(
                Form.DISC,
                Tone.GOOD,
                "Predicted again in this air"
                        + (toBeSaved
                                ? "; Ctrl+S writes it into the show, Ctrl+Z takes it back"
                                : ", for this session; the file is as it was")));
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
        return LocalTime.now(clock.withZone(show.venue().timeZone()));
    }

    private void fillGlossary() {
        if (drawn) {
            return;
        }
        GlossaryView glossary = GlossaryView.of(catalogue.get());
        window.send(w -> w.showGlossary(glossary));
        // Its drawings have to be flown; whatever else waits comes first.
        io.execute(() -> {
            if (!drawn) {
                drawn = true;
                GlossaryView flown = GlossaryView.drawn(catalogue.get());
                window.send(w -> w.showGlossary(flown));
            }
        });
    }

    private void showPrepare(PrepareView view) {
        window.send(w -> w.showPrepare(view));
    }

    void say(Mark mark) {
        List<Mark> marks = new ArrayList<>(List.of(mark));
        marks.addAll(standing);
        window.send(w -> w.showBanners(marks));
    }

    /** Says these until told others, in the show that is running; from any thread. */
    void stand(List<Mark> marks) {
        standing = List.copyOf(marks);
        sayWhatIsRunning();
    }

    private void sayWhatIsRunning() {
        RunningShow show = running;
        if (show != null) {
            List<Mark> marks = banners(show.desk().snapshot(), show.desk().nowS());
            marks.addAll(standing);
            window.send(w -> w.showBanners(marks));
        }
    }

    /** What the foot line says of a running show. */
    private static List<Mark> banners(LiveSnapshot snapshot, double nowS) {
        List<Mark> marks = new ArrayList<>();
        if (snapshot.journal() instanceof JournalHealth.NotWriting not) {
            marks.add(new Mark(Form.STOP, Tone.ALARM, not.reason()));
        }
        String refusal = snapshot.refusal();
        if (refusal != null) {
            marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, refusal));
        }
        if (nowS < NOTICES_S || snapshot.number() < NOTICES_SNAPSHOT) {
            snapshot.notices().forEach(n -> marks.add(new Mark(Form.DIAMOND, Tone.CAUTION, n)));
        }
        return marks;
    }
}
