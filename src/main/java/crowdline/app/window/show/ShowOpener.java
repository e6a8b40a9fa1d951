package crowdline.app.window.show;

import crowdline.app.window.glossary.GlossaryFill;
import crowdline.app.window.time.LoadedPredictions;
import crowdline.app.window.time.PassesKeeper;
import crowdline.app.window.work.FileWork;
import crowdline.app.window.work.FootMessages;
import crowdline.app.window.work.PendingWindow;
import crowdline.console.ConsoleFrame;
import crowdline.console.incident.IncidentView;
import crowdline.console.live.IncidentPresenter;
import crowdline.console.paint.Mark;
import crowdline.console.prepare.glance.PreparePresenter;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowLoader;
import crowdline.running.AircraftSource;
import crowdline.running.RunningShow;
import crowdline.show.DayAir;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.journal.JournalMachine;
import crowdline.storage.journal.JournalOpening;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.journal.JournalShow;
import crowdline.storage.show.ShowFile;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Opens show files on the {@code io} thread. A show whose very content was run before goes on first and is checked
 * afterwards; any other is checked first.
 */
public final class ShowOpener implements LiveShow {
    /** A show left this long ago is begun afresh: longer than any show day's pause. */
    private static final double FORGET_AFTER_S = 12 * 3600.0;

    private final JournalShelf shelf;
    private final ShowLoader loader;
    private final PendingWindow window;
    private final AircraftSource aircraft;
    private final ExecutorService io;
    private final JournalMachine machine;
    private final PassesKeeper passes;
    private final FootMessages foot;
    private final GlossaryFill glossary;
    private final OpeningProgress progress;
    private volatile @Nullable OpenShow open;
    private volatile boolean atWork;
    /** On the io thread only: what the running show was read from. */
    private ShowLoader.@Nullable Result known;
    /** Counts what was to be opened: only the last of several is. */
    private final AtomicInteger asked = new AtomicInteger();

    public ShowOpener(
            Path journals,
            Supplier<Catalogue> catalogue,
            ShowLoader loader,
            PendingWindow window,
            AircraftSource aircraft,
            ExecutorService io,
            JournalMachine machine,
            PassesKeeper passes) {
        this.shelf = new JournalShelf(journals, machine, FORGET_AFTER_S);
        this.loader = loader;
        this.window = window;
        this.aircraft = aircraft;
        this.io = io;
        this.machine = machine;
        this.passes = passes;
        foot = new FootMessages(window);
        progress = new OpeningProgress(window, foot);
        glossary = new GlossaryFill(catalogue, window, io);
    }

    @Override
    public @Nullable RunningShow running() {
        OpenShow now = open;
        return now == null ? null : now.running();
    }

    @Override
    public @Nullable Path openFile() {
        OpenShow now = open;
        return now == null ? null : now.file();
    }

    /**
     * Why this is not opened now, and what to do; empty if it may be tried.
     *
     * @param file null where it is not known yet which
     */
    public Optional<String> refusal(@Nullable Path file) {
        OpenShow now = open;
        return now == null || (file != null && now.is(file))
                ? Optional.empty()
                : Departure.refusal(now.running(), file == null ? "another show" : String.valueOf(file.getFileName()));
    }

    /** Shows the window without a show. */
    public void openNothing() {
        window.present(false, () -> io.execute(glossary::fill));
        window.send(ConsoleFrame::openEdit);
    }

    /**
     * Opens a show file, unless an act of another is in the air; from any thread, at once. The show that is open goes on
     * as it is and takes what has changed in its file.
     *
     * @param opened told on the io thread when it turned out to be a show
     */
    public void open(Path file, Consumer<Path> opened) {
        Optional<String> refusal = refusal(file);
        if (refusal.isPresent()) {
            say(OpeningMessages.refused(refusal.get()));
            return;
        }
        Wish wish = new Wish(file, asked.incrementAndGet(), opened);
        progress.begin(file);
        io.execute(() -> guarded(file, () -> {
            if (wish.isLastOf(asked.get())) {
                read(wish);
            }
        }));
    }

    private void guarded(Path file, FileWork work) {
        atWork = true;
        OpeningMessages.faultOf(file, work).ifPresent(wrong -> {
            say(wrong);
            progress.end(open != null);
            window.present(false, () -> io.execute(glossary::fill));
        });
        atWork = false;
    }

    /** Whether a show is just being read or flown, of which nothing is written. */
    public boolean isAtWork() {
        return atWork;
    }

    private void read(Wish wish) throws IOException {
        Path file = wish.file();
        byte[] content = ShowFile.bytes(file);
        OpeningMessages.mustBeText(file, content);
        JournalShow identity = JournalShow.of(file, content);
        OpenShow now = open;
        if (now != null && now.is(file)) {
            ShowLoader.Result before = known;
            if (before != null && goesOn(now, before, content, identity)) {
                progress.end(true);
                return;
            }
            if (before == null && now.identity().equals(identity)) {
                check(wish, content, identity, now.running().loaded(), true);
                return;
            }
        }
        LoadedShow soundBefore = shelf.knows(identity)
                ? loader.soundBefore(file, content, LoadedShow.FIRST_FLIGHTS).orElse(null)
                : null;
        boolean resumed = soundBefore != null && start(file, soundBefore, identity);
        // Whoever asks for the same file again stays where they are.
        boolean again = now != null && now.is(file);
        window.present(
                resumed && !again,
                () -> io.execute(() -> guarded(file, () -> check(wish, content, identity, soundBefore, again))));
    }

    /** Takes what has changed in the file of the open show; false if it has to be opened anew for that. */
    private boolean goesOn(OpenShow now, ShowLoader.Result before, byte[] content, JournalShow identity) {
        OpenAgain again = OpenAgain.of(now, before, identity, () -> loader.load(now.file(), content, 1));
        if (again.isAnew()) {
            return false;
        }
        LoadedShow taken = again.taken();
        if (taken != null) {
            now.running().take(taken);
            open = new OpenShow(now.file(), identity, now.running());
            window.send(ConsoleFrame::forgetEdit);
            window.send(ConsoleFrame::liveChanged);
        }
        say(again.said());
        show(taken == null ? before : new ShowLoader.Result(now.file(), taken, again.ofFile()));
        window.send(ConsoleFrame::openEdit);
        return true;
    }

    private void show(ShowLoader.Result result) {
        known = result;
        passes.opened(result);
        LoadedShow loaded = result.loaded();
        if (loaded != null) {
            PrepareView view = LoadedPredictions.view(loaded, result.findings());
            window.send(w -> w.showRunning(view));
        }
    }

    /**
     * Does what Live did not wait for.
     *
     * @param again whether the file was open before
     */
    private void check(Wish wish, byte[] content, JournalShow identity, @Nullable LoadedShow started, boolean again)
            throws ShowFileException {
        Path file = wish.file();
        glossary.fill();
        // Another show may have been opened before its turn came.
        if (!wish.isLastOf(asked.get())) {
            return;
        }
        progress.is("Checking it");
        ShowLoader.Result result = started == null
                ? loader.load(file, content, LoadedShow.FIRST_FLIGHTS)
                : loader.check(file, content, started);
        LoadedShow loaded = result.loaded();
        if (loaded == null) {
            PrepareView unusable = PreparePresenter.unusable(file.getFileName() + "", result.findings());
            // What is edited stays in sight.
            window.send(w -> w.tellEdit(edit -> edit.now().ifPresentOrElse(s -> {}, () -> w.showPrepare(unusable))));
            say(OpeningMessages.unusable(file, result.findings()));
            progress.end(open != null);
            return;
        }
        if (started == null) {
            window.present(start(file, loaded, identity) && !again, () -> {});
        }
        wish.opened().accept(file);
        loaded.predictAll((n, all) -> progress.is("Predicting " + n + " of " + all));
        show(result);
        window.send(ConsoleFrame::openEdit);
        progress.end(true);
        // What is running must not wait for better bands.
        io.execute(() -> guarded(file, () -> {
            ShowLoader.Result now = known;
            LoadedShow shown = now == null ? null : now.loaded();
            if (now != null && shown != null && now.file().equals(file)) {
                shown.settle();
                PrepareView view = LoadedPredictions.view(shown, now.findings());
                window.send(w -> w.showRunning(view));
            }
        }));
    }

    /** Predicts the running show again in other air, in the file or not; from any thread. */
    public void useAir(DayAir air, boolean toBeSaved) {
        io.execute(() -> {
            RunningShow show = running();
            ShowLoader.Result before = known;
            if (show != null && before != null) {
                foot.doing(OpeningMessages.FLYING);
                guarded(before.file(), () -> flyIn(air, toBeSaved, show, before));
                foot.doing(null);
            }
        });
    }

    private void flyIn(DayAir air, boolean toBeSaved, RunningShow show, ShowLoader.Result before) {
        LoadedShow again = show.loaded().inAir(air);
        again.settle();
        show.take(again);
        show(new ShowLoader.Result(before.file(), again, before.ofFile()));
        window.send(ConsoleFrame::airChanged);
        say(OpeningMessages.flown(toBeSaved));
    }

    /** Times everything anew for another speaker; from any thread. */
    public void usePaces(Paces paces) {
        io.execute(() -> {
            OpenShow now = open;
            if (now != null) {
                guarded(now.file(), () -> timeAt(paces, now.running()));
            }
        });
    }

    private void timeAt(Paces paces, RunningShow show) {
        LoadedShow again = show.loaded().atPaces(paces);
        show.take(again);
        window.send(ConsoleFrame::liveChanged);
        ShowLoader.Result before = known;
        if (before != null) {
            show(new ShowLoader.Result(before.file(), again, before.ofFile()));
        }
    }

    /**
     * Starts a show, in place of the one that is open.
     *
     * @return whether it goes on from where it was left
     * @throws ShowFileException if an act of the open one has begun meanwhile
     */
    private boolean start(Path file, LoadedShow loaded, JournalShow identity) throws ShowFileException {
        OpenShow before = open;
        if (before != null) {
            if (!before.running().leave()) {
                throw new ShowFileException(Departure.refusal(before.running(), String.valueOf(file.getFileName()))
                        .orElse("An act has just ended; open " + file.getFileName() + " again"));
            }
            window.send(ConsoleFrame::forgetEdit);
        }
        return run(file, loaded, identity, shelf.open(identity));
    }

    @Override
    public boolean run(Path file, byte[] content, LoadedShow edited) throws ShowFileException {
        ShowLoader.Result result = loader.check(file, content, edited);
        if (result.loaded() == null) {
            throw new ShowFileException(OpeningMessages.cannotRun(result.findings()));
        }
        OpenShow before = open;
        if (before != null && !before.running().leave()) {
            return false;
        }
        JournalShow identity = JournalShow.of(file, content);
        run(file, edited, identity, shelf.openChanged(identity));
        Optional.ofNullable(running()).ifPresent(RunningShow::chooseAnew);
        known = result;
        passes.opened(result);
        return true;
    }

    @Override
    public void leave() throws ShowFileException {
        OpenShow before = open;
        if (before != null && !before.running().leave()) {
            throw new ShowFileException(Departure.refusal(before.running(), "a new show")
                    .orElse("An act has just ended; ask for the new show again"));
        }
        // What is still to be opened must not come in its place.
        asked.incrementAndGet();
        known = null;
        open = null;
        window.send(frame -> frame.onAir(null));
        window.send(ConsoleFrame::forgetEdit);
    }

    @Override
    public LoadedShow empty() {
        return NewShow.on(LocalDate.now(machine.wall().withZone(ZoneId.systemDefault())), loader);
    }

    @Override
    public void openAgain(Path file) {
        open(file, opened -> {});
    }

    /** Runs a show; whatever ran before has been left. */
    private boolean run(Path file, LoadedShow loaded, JournalShow identity, JournalOpening opening) {
        if (open != null) {
            open = null;
            window.send(frame -> frame.onAir(null));
        }
        known = null;
        RunningShow now = new RunningShow(loaded, opening, aircraft, machine.wall());
        ShowOnAir onAir = new ShowOnAir(now, aircraft::isOpen);
        // Looked at once here, so that the event thread finds everything worked out.
        onAir.view();
        open = new OpenShow(file, identity, now);
        now.desk().onChange(snapshot -> {
            window.send(ConsoleFrame::liveChanged);
            foot.sayOf(snapshot);
        });
        window.send(frame -> frame.onAir(onAir));
        passes.follow(file, loaded, now.desk());
        foot.sayOf(now.desk().snapshot());
        foot.sayFound(opening.notices());
        if (opening.resumed()) {
            OpeningMessages.wentOn(now).ifPresent(this::say);
        }
        return opening.resumed();
    }

    /** The incident page while no show runs; it was called {@code openS} seconds ago. */
    public IncidentView incident(double openS) {
        return IncidentPresenter.withoutShow(LocalTime.now(machine.wall().withZone(ZoneId.systemDefault())), openS);
    }

    public void say(Mark mark) {
        foot.say(mark);
    }

    /** Says these until told others, in the show that is running; from any thread. */
    public void stand(List<Mark> marks) {
        foot.stand(marks);
    }
}
