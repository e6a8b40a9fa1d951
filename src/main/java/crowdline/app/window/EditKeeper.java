package crowdline.app.window;

import crowdline.console.ConsoleFrame;
import crowdline.console.EditOpened;
import crowdline.console.edit.EditHost;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowRemarks;
import crowdline.running.RunningShow;
import crowdline.show.Catalogue;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.speech.pace.Pace;
import crowdline.storage.file.Sha256;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowDocument;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Opens, judges and saves the edited show, on the {@code io} thread. The running show goes on as it is until it is told to
 * take it.
 */
final class EditKeeper implements EditHost {
    private static final System.Logger LOG = System.getLogger(EditKeeper.class.getName());

    private final Supplier<Catalogue> catalogue;
    private final LiveShow live;
    private final Supplier<Pace> pace;
    private final Consumer<Consumer<ConsoleFrame>> window;
    private final Executor io;
    private final ShowFile shows = new ShowFile();
    private final EditJudge judge;
    /** The newest edit that nobody has looked at yet. */
    private final AtomicReference<@Nullable Show> waiting = new AtomicReference<>();
    /** By whose times the words are judged. */
    private volatile @Nullable LoadedShow judged;
    /** On the io thread only: what is being edited. */
    private @Nullable Edited edited;

    /** The file that is edited, as it stood when it was last read or written here. */
    private record Edited(Path file, String sha256, Show show, ShowDocument document, LoadedShow loaded) {}

    /** The show that Live runs. */
    interface LiveShow {
        /** The show being run, if any. */
        @Nullable
        RunningShow running();

        /** The file it was read from, if any. */
        @Nullable
        Path openFile();

        /**
         * Has Live run what became of a show, with the journal of its file.
         *
         * @return false if an act is in the air or the incident page is open; Live then goes on as it was
         */
        boolean run(Path file, byte[] content, LoadedShow edited) throws ShowFileException;
    }

    /**
     * @param pace the speaker's of the moment
     * @param window hands work to the window once there is one
     */
    EditKeeper(
            Supplier<Catalogue> catalogue,
            LiveShow live,
            Supplier<Pace> pace,
            Consumer<Consumer<ConsoleFrame>> window,
            Executor io) {
        this.catalogue = catalogue;
        this.live = live;
        this.pace = pace;
        this.window = window;
        this.io = io;
        judge = new EditJudge(catalogue, window);
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
                say(Form.RING, Tone.CALM, "Saved as " + file + "; Live is still running " + live.openFile());
            }
        }));
    }

    @Override
    public void intoLive(Show show) {
        io.execute(() -> guarded(() -> {
            RunningShow running = live.running();
            Edited before = edited;
            if (running == null || before == null || !before.file().equals(live.openFile())) {
                say(Form.STOP, Tone.ALARM, "Live is running another file; open this one to run it");
                return;
            }
            // What Live says must still be there if the machine stops a moment later.
            write(show);
            LoadedShow now = running.loaded();
            if (ShowRemarks.none(show).equals(ShowRemarks.none(now.show().withAir(show.air())))) {
                running.take(now.withWords(show));
                window.accept(ConsoleFrame::liveChanged);
                say(Form.DISC, Tone.GOOD, "Saved; Live now uses these words");
            } else {
                run(show, before);
            }
        }));
    }

    /** Other acts, figures, aircraft or another place: never under an act that is flown. */
    private void run(Show show, Edited before) throws ShowFileException {
        LoadedShow next = before.loaded().with(show).atPace(pace.get());
        if (live.run(before.file(), ShowFile.bytes(before.file()), next)) {
            say(Form.DISC, Tone.GOOD, "Saved; Live now runs the show as it is here");
            // What is running must not wait for better bands.
            io.execute(() -> guarded(() -> {
                next.refine(LoadedShow.FLIGHTS);
                window.accept(ConsoleFrame::liveChanged);
                window.accept(ConsoleFrame::judgeAgain);
            }));
        } else {
            say(
                    Form.DIAMOND,
                    Tone.CAUTION,
                    "Saved, but an act is in the air: Live keeps its acts and figures. Press E in Live when it is over,"
                            + " then Ctrl+L again");
        }
    }

    private void read() throws ShowFileException {
        RunningShow running = live.running();
        Path file = live.openFile();
        if (running == null || file == null) {
            return;
        }
        byte[] bytes = ShowFile.bytes(file);
        ShowReading reading = shows.read(file, bytes);
        Show show = reading.show();
        if (show == null
                || !ShowRemarks.none(show)
                        .equals(ShowRemarks.none(running.loaded().show().withAir(show.air())))) {
            throw new ShowFileException(
                    file.getFileName() + " has changed since it was opened; open it again to edit it");
        }
        LoadedShow loaded = running.loaded().withWords(show);
        edited = new Edited(file, Sha256.of(bytes), show, reading.document(), loaded);
        judged = loaded;
        judge.begin();
        EditOpened opened = new EditOpened(
                String.valueOf(file.getFileName()),
                show,
                BasisForWords.basis(() -> Objects.requireNonNullElse(judged, loaded), catalogue.get(), pace));
        window.accept(frame -> frame.edit(opened));
        judge(show);
    }

    /** Flights, plan, times and findings of the show as it is now. */
    private void judge(Show show) {
        Edited now = edited;
        if (now == null) {
            return;
        }
        LoadedShow next = now.loaded().with(show.withAir(airOfToday(now, show))).atPace(pace.get());
        judged = next;
        judge.judge(next, show.equals(now.show()) ? now.document() : null, () -> waiting.get() != null);
    }

    /** What Live runs may be predicted in other air than the file has. */
    private DayAir airOfToday(Edited now, Show show) {
        RunningShow running = live.running();
        return running != null && now.file().equals(live.openFile())
                ? running.loaded().show().air()
                : show.air();
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
        edited = new Edited(file, Sha256.of(ShowFile.bytes(file)), show, document, before.loaded());
        window.accept(frame -> frame.saved(show, String.valueOf(file.getFileName())));
        say(Form.DISC, Tone.GOOD, "Saved " + file.getFileName());
    }

    private void guarded(FileWork work) {
        work.fault(
                        LOG,
                        "The edit of " + live.openFile(),
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
