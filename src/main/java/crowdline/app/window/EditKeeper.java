package crowdline.app.window;

import crowdline.console.ConsoleFrame;
import crowdline.console.EditOpened;
import crowdline.console.edit.EditHost;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.console.words.WordsPlan;
import crowdline.loaded.ActPlans;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowRemarks;
import crowdline.running.RunningShow;
import crowdline.show.Catalogue;
import crowdline.show.LocatedFinding;
import crowdline.show.Show;
import crowdline.show.ShowRules;
import crowdline.speech.pace.Pace;
import crowdline.speech.plain.ActReading;
import crowdline.speech.say.Spoken;
import crowdline.storage.file.Sha256;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowDocument;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Opens, judges and saves the words of the show that is open, on the {@code io} thread. The running show goes on with its
 * own words until it is told to take these.
 */
final class EditKeeper implements EditHost {
    private static final System.Logger LOG = System.getLogger(EditKeeper.class.getName());

    private final Supplier<Catalogue> catalogue;
    private final Supplier<@Nullable RunningShow> running;
    private final Supplier<@Nullable Path> openFile;
    private final Supplier<Pace> pace;
    private final Consumer<Consumer<ConsoleFrame>> window;
    private final Executor io;
    private final ShowFile shows = new ShowFile();
    /** The newest edit that nobody has looked at yet. */
    private final AtomicReference<@Nullable Show> waiting = new AtomicReference<>();
    /** By whose times the words are judged. */
    private volatile @Nullable LoadedShow judged;
    /** On the io thread only: what is being edited. */
    private @Nullable Edited edited;

    /** The file that is edited, as it stood when it was last read or written here. */
    private record Edited(Path file, String sha256, ShowDocument document, LoadedShow loaded, ActReading reading) {}

    /**
     * @param running the show being run, if any
     * @param openFile the file it was read from, if any
     * @param pace the speaker's of the moment
     * @param window hands work to the window once there is one
     */
    EditKeeper(
            Supplier<Catalogue> catalogue,
            Supplier<@Nullable RunningShow> running,
            Supplier<@Nullable Path> openFile,
            Supplier<Pace> pace,
            Consumer<Consumer<ConsoleFrame>> window,
            Executor io) {
        this.catalogue = catalogue;
        this.running = running;
        this.openFile = openFile;
        this.pace = pace;
        this.window = window;
        this.io = io;
    }

    @Override
    public void open() {
        io.execute(() -> guarded(this::read));
    }

    @Override
    public void edited(Show show) {
        if (waiting.getAndSet(show) == null) {
            io.execute(() -> guarded(() -> {
                Show newest = waiting.getAndSet(null);
                if (newest != null) {
                    judge(newest);
                }
            }));
        }
    }

    @Override
    public void save(Show show) {
        io.execute(() -> guarded(() -> write(show)));
    }

    @Override
    public void saveAs(Show show, Path file) {
        io.execute(() -> guarded(() -> {
            Edited before = edited;
            if (before != null) {
                put(show, file.toAbsolutePath(), before);
                say(Form.RING, Tone.CALM, "Saved as " + file + "; Live is still running " + openFile.get());
            }
        }));
    }

    @Override
    public void intoLive(Show show) {
        io.execute(() -> guarded(() -> {
            RunningShow live = running.get();
            Edited before = edited;
            if (live == null || before == null || !before.file().equals(openFile.get())) {
                say(Form.STOP, Tone.ALARM, "Live is running another file; open this one to run it");
                return;
            }
            // What Live says must still be there if the machine stops a moment later.
            write(show);
            Show running = live.loaded().show();
            if (!ShowRemarks.none(show.withAir(running.air())).equals(ShowRemarks.none(running))) {
                say(
                        Form.DIAMOND,
                        Tone.CAUTION,
                        "Saved. More than the words has changed, so open the show again for Live to run it as it is now");
                return;
            }
            live.take(live.loaded().withWords(show));
            window.accept(ConsoleFrame::liveChanged);
            say(Form.DISC, Tone.GOOD, "Saved; Live now uses these words");
        }));
    }

    private void read() throws ShowFileException, IOException {
        RunningShow live = running.get();
        Path file = openFile.get();
        if (live == null || file == null) {
            return;
        }
        byte[] bytes = ShowFile.bytes(file);
        ShowReading reading = shows.read(file, bytes);
        Show show = reading.show();
        if (show == null
                || !ShowRemarks.none(show)
                        .equals(ShowRemarks.none(live.loaded().show().withAir(show.air())))) {
            throw new ShowFileException(
                    file.getFileName() + " has changed since it was opened; open it again to edit its words");
        }
        LoadedShow loaded = live.loaded().withWords(show);
        edited = new Edited(
                file, Sha256.of(bytes), reading.document(), loaded, new ActReading(new Spoken(show.sayAs())::expand));
        judged = loaded;
        EditOpened opened = new EditOpened(
                String.valueOf(file.getFileName()),
                show,
                BasisForWords.basis(loaded, () -> Objects.requireNonNullElse(judged, loaded), catalogue.get(), pace));
        window.accept(frame -> frame.edit(opened));
        judge(show);
        var facts = ShowFacts.of(loaded);
        window.accept(frame -> frame.showFacts(facts));
    }

    /** Plan, times and findings of the words as they are now. */
    private void judge(Show show) {
        Edited now = edited;
        if (now == null) {
            return;
        }
        LoadedShow loaded = lastJudged(inAirOfToday(now)).atPace(pace.get()).edited(show);
        judged = loaded;
        List<LocatedFinding> findings = new ArrayList<>();
        findings.addAll(now.document().locate(ShowRules.check(show, catalogue.get())));
        findings.addAll(loaded.findings());
        var view = LoadedPredictions.view(loaded, findings);
        window.accept(frame -> frame.showPrepare(view));
        if (waiting.get() != null) {
            // Something newer is to be judged; what takes longest is planned for that.
            return;
        }
        WordsPlan plan = new WordsPlan(
                RemarkStandings.of(
                        ActPlans.of(loaded, show.acts(), act -> act.variants().get(0))),
                now.reading().all(show));
        window.accept(frame -> frame.showPlan(plan));
    }

    /** What was judged last, so that nothing is predicted twice; the show as it was opened if the air is another by now. */
    private LoadedShow lastJudged(LoadedShow opened) {
        LoadedShow last = judged;
        return last != null && last.show().air().equals(opened.show().air()) ? last : opened;
    }

    /** What is running may have been predicted again in other air since the words were opened. */
    private LoadedShow inAirOfToday(Edited now) {
        RunningShow live = running.get();
        boolean same = live == null
                || !now.file().equals(openFile.get())
                || live.loaded().show().air().equals(now.loaded().show().air());
        if (same) {
            return now.loaded();
        }
        LoadedShow again = live.loaded().withWords(now.loaded().show());
        edited = new Edited(now.file(), now.sha256(), now.document(), again, now.reading());
        judged = again;
        return again;
    }

    private void write(Show show) throws ShowFileException, IOException {
        Edited before = edited;
        if (before == null) {
            return;
        }
        Path file = before.file();
        if (Files.exists(file) && !Sha256.of(ShowFile.bytes(file)).equals(before.sha256())) {
            throw new ShowFileException(file.getFileName()
                    + " was changed by another program, so it was not overwritten; save as another file");
        }
        put(show, file, before);
    }

    private void put(Show show, Path file, Edited before) throws ShowFileException, IOException {
        ShowDocument document = shows.write(file, show, before.document());
        edited = new Edited(file, Sha256.of(ShowFile.bytes(file)), document, before.loaded(), before.reading());
        window.accept(frame -> frame.saved(show, String.valueOf(file.getFileName())));
        say(Form.DISC, Tone.GOOD, "Saved " + file.getFileName());
    }

    private void guarded(FileWork work) {
        work.fault(
                        LOG,
                        "The words of " + openFile.get(),
                        fault -> fault instanceof IOException
                                ? "the show's file cannot be read; check that it is there, or save as another file"
                                : "this went wrong inside the program; save as another file, the log has the reason")
                .ifPresent(this::failed);
    }

    private void failed(String why) {
        window.accept(ConsoleFrame::notSaved);
        say(Form.STOP, Tone.ALARM, why);
    }

    private void say(Form form, Tone tone, String words) {
        window.accept(frame -> frame.say(new Mark(form, tone, words)));
    }
}
