package crowdline.app.window.edit;

import crowdline.app.window.show.LiveShow;
import crowdline.app.window.work.FileWork;
import crowdline.console.ConsoleFrame;
import crowdline.console.EditOpened;
import crowdline.console.edit.EditCommands;
import crowdline.console.edit.EditHost;
import crowdline.console.edit.UnsavedOffer;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.ShowRemarks;
import crowdline.running.RunningShow;
import crowdline.show.DayAir;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.speech.pace.Paces;
import crowdline.storage.file.NameLocks;
import crowdline.storage.file.Sha256;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.show.ShowDocument;
import crowdline.storage.show.ShowFile;
import crowdline.storage.show.ShowReading;
import crowdline.storage.unsaved.UnsavedShelf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Opens, judges and saves the edited show, on the {@code io} thread. The running show goes on as it is until it is told to
 * take it.
 */
public final class EditKeeper implements EditHost {
    private static final System.Logger LOG = System.getLogger(EditKeeper.class.getName());

    private final Supplier<Catalogue> catalogue;
    private final LiveShow live;
    private final Supplier<Paces> paces;
    private final Consumer<Consumer<ConsoleFrame>> window;
    private final Executor io;
    private final ShowFile shows = new ShowFile();
    private final EditJudge judge;
    private final UnsavedShelf shelf;
    private final UnsavedKeeper unsaved;
    private final UnsavedOffers offers;
    private final OutsideLook outside;
    private final Consumer<Path> saved;
    /** The newest edit that nobody has looked at yet. */
    private final AtomicReference<@Nullable Show> waiting = new AtomicReference<>();
    /** By whose times the words are judged. */
    private volatile @Nullable LoadedShow judged;
    /** On the io thread only: what is being edited. */
    private @Nullable EditedFile edited;

    private final ApartNames apart;

    /**
     * @param shelf what is edited and not saved is kept there
     * @param paces of the moment
     * @param wall the clock on the wall
     * @param saved told of every file that was saved into
     * @param window hands work to the window once there is one
     */
    public EditKeeper(
            Supplier<Catalogue> catalogue,
            LiveShow live,
            UnsavedShelf shelf,
            Supplier<Paces> paces,
            Clock wall,
            Consumer<Path> saved,
            Consumer<Consumer<ConsoleFrame>> window,
            Executor io) {
        this.shelf = shelf;
        apart = new ApartNames(wall);
        this.saved = saved;
        unsaved = new UnsavedKeeper(shelf, wall, io, this::caution);
        outside = new OutsideLook(
                (file, differences, atSave) -> tell(edit -> edit.changedOutside(file, differences, atSave)),
                this::caution);
        offers = new UnsavedOffers(shelf, wall, offer -> tell(edit -> edit.offer(offer)), this::caution);
        this.catalogue = catalogue;
        this.live = live;
        this.paces = paces;
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
        unsaved.edited(show);
        judgeSoon(show);
    }

    private void judgeSoon(Show show) {
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
        io.execute(() -> saving(() -> write(show)));
    }

    @Override
    public void saveAs(Show show, Path file) {
        io.execute(() -> saving(() -> {
            EditedFile before = edited;
            if (before != null) {
                into(show, file.toAbsolutePath(), before);
            }
        }));
    }

    private void into(Show show, Path file, EditedFile before) throws ShowFileException, IOException {
        String name = UnsavedShelf.nameOf(file);
        NameLocks.Held lock = before.lock();
        if (!name.equals(before.name())) {
            lock = shelf.take(name)
                    .orElseThrow(() -> new ShowFileException(
                            file.getFileName() + " is being edited in another window; choose another name"));
        }
        try {
            put(show, file, before, name, lock);
        } catch (ShowFileException | RuntimeException e) {
            if (lock != null && !name.equals(before.name())) {
                lock.close();
            }
            throw e;
        }
        if (before.lock() != null && !name.equals(before.name())) {
            before.lock().close();
        }
        if (live.running() == null) {
            live.run(file, ShowFile.bytes(file), before.loaded().with(show).atPaces(paces.get()));
        } else if (!file.equals(live.openFile())) {
            say(Form.RING, Tone.CALM, "Saved as " + file + "; Live is still running " + live.openFile());
        }
    }

    @Override
    public void intoLive(Show show) {
        io.execute(() -> saving(() -> {
            RunningShow running = live.running();
            EditedFile before = edited;
            Path file = before == null ? null : before.file();
            if (running == null || before == null || file == null || !file.equals(live.openFile())) {
                say(Form.STOP, Tone.ALARM, "Live is running another file; open this one to run it");
                return;
            }
            // What Live says must still be there if the machine stops a moment later.
            if (!write(show)) {
                return;
            }
            new IntoLive(live, window, this::say)
                    .take(show, file, running, before.loaded().with(show).atPaces(paces.get()))
                    .ifPresent(io::execute);
        }));
    }

    private void read() throws ShowFileException {
        RunningShow running = live.running();
        Path file = live.openFile();
        if (running == null || file == null) {
            offers.say(null, null);
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
        letGo();
        String name = UnsavedShelf.nameOf(file);
        NameLocks.Held lock = shelf.take(name).orElse(null);
        if (lock != null) {
            // What a window that is no more has left must not be written over before it was offered.
            shelf.setApart(name, apart.next());
            begin(new EditedFile(file, Sha256.of(bytes), show, reading.document(), loaded, name, lock));
        } else {
            begin(new EditedFile(null, "", show, reading.document(), loaded, apart.next(), null));
            say(
                    Form.DIAMOND,
                    Tone.CAUTION,
                    file.getFileName()
                            + " is being edited in another window, so this one edits a copy: Ctrl+S asks for its name");
        }
        offers.say(file, edited);
    }

    private void begin(EditedFile next) {
        NameLocks.Held lock = next.lock() == null ? shelf.take(next.name()).orElse(null) : next.lock();
        EditedFile now = next.keptBy(next.name(), lock);
        edited = now;
        judged = now.loaded();
        judge.begin();
        unsaved.begin(now.name(), now.file(), now.sha256(), now.show());
        EditOpened opened = new EditOpened(
                now.called(),
                now.file() != null,
                now.show(),
                BasisForWords.basis(() -> Objects.requireNonNullElse(judged, now.loaded()), catalogue.get(), paces));
        window.accept(frame -> frame.edit(opened));
        judge(now.show());
    }

    private void letGo() {
        EditedFile before = edited;
        edited = null;
        if (before != null && before.lock() != null) {
            before.lock().close();
        }
    }

    @Override
    public void begin() {
        io.execute(() -> guarded(() -> {
            beginEmpty();
            window.accept(NewlyBegun::show);
        }));
        io.execute(() -> tell(EditCommands::begun));
    }

    private void beginEmpty() throws ShowFileException {
        live.leave();
        letGo();
        LoadedShow empty = live.empty();
        begin(new EditedFile(null, "", empty.show(), null, empty, apart.next(), null));
    }

    @Override
    public void giveUp() {
        io.execute(unsaved::end);
    }

    @Override
    public boolean isCalm() {
        RunningShow running = live.running();
        return running == null
                || !(running.desk().snapshot().state().mustNotBeLeft()
                        || running.now().mayBegin());
    }

    @Override
    public void broughtBack(UnsavedOffer offer) {
        io.execute(() -> guarded(() -> {
            if (offer.neverSaved()) {
                beginEmpty();
                window.accept(frame -> {
                    frame.showNew();
                    frame.tellEdit(edit -> edit.bringBack(offer.show()));
                });
            }
            unsaved.keep(offer.show());
            shelf.forget(offer.name());
        }));
    }

    @Override
    public void leave(UnsavedOffer offer) {
        io.execute(() -> shelf.forget(offer.name()));
    }

    @Override
    public void lookOutside(Show show) {
        io.execute(() -> guarded(() -> {
            EditedFile now = edited;
            if (now != null) {
                outside.look(show, now);
            }
        }));
    }

    @Override
    public void reload() {
        io.execute(() -> {
            EditedFile now = edited;
            Path file = now == null ? null : now.file();
            if (file != null) {
                unsaved.end();
                live.openAgain(file);
            }
        });
    }

    @Override
    public void keepMine() {
        io.execute(() -> guarded(() -> {
            EditedFile now = edited;
            Path file = now == null ? null : now.file();
            if (now != null && file != null && Files.exists(file)) {
                edited = now.knowing(Sha256.of(ShowFile.bytes(file)));
            }
        }));
    }

    /** Flights, plan, times and findings of the show as it is now. */
    private void judge(Show show) {
        EditedFile now = edited;
        if (now == null) {
            return;
        }
        LoadedShow next = now.loaded().with(show.withAir(airOfToday(now, show))).atPaces(paces.get());
        judged = next;
        boolean inFile = now.file() != null && show.equals(now.show());
        judge.judge(next, inFile ? now.document() : null, () -> waiting.get() != null);
    }

    /** What Live runs may be predicted in other air than the file has. */
    private DayAir airOfToday(EditedFile now, Show show) {
        RunningShow running = live.running();
        return running != null && Objects.equals(now.file(), live.openFile())
                ? running.loaded().show().air()
                : show.air();
    }

    /** Whether it was written; if the file was changed outside it is asked about instead. */
    private boolean write(Show show) throws ShowFileException, IOException {
        EditedFile before = edited;
        Path file = before == null ? null : before.file();
        if (before == null || file == null || outside.stops(show, file, before)) {
            return false;
        }
        put(show, file, before, before.name(), before.lock());
        return true;
    }

    private void put(Show show, Path file, EditedFile before, String name, NameLocks.@Nullable Held lock)
            throws ShowFileException, IOException {
        ShowDocument known = before.document();
        ShowDocument document = known == null ? shows.write(file, show) : shows.write(file, show, known);
        String sha256 = Sha256.of(ShowFile.bytes(file));
        edited = new EditedFile(file, sha256, show, document, before.loaded(), name, lock);
        outside.written();
        unsaved.saved(name, file, sha256, show);
        saved.accept(file);
        tell(edit -> edit.saved(show, String.valueOf(file.getFileName())));
        say(Form.DISC, Tone.GOOD, "Saved " + file.getFileName() + IntoLive.left(show, live.running()));
    }

    private void guarded(FileWork work) {
        fault(work).ifPresent(why -> say(Form.STOP, Tone.ALARM, why));
    }

    /** The same, where what could not be saved is offered to be saved elsewhere. */
    private void saving(FileWork work) {
        fault(work).ifPresent(why -> {
            tell(edit -> edit.notSaved(why));
            say(Form.STOP, Tone.ALARM, why);
        });
    }

    private Optional<String> fault(FileWork work) {
        return work.fault(
                LOG,
                "The edit of " + live.openFile(),
                fault -> fault instanceof IOException
                        ? "the show's file cannot be read; check that it is there, or save as another file"
                        : "this went wrong inside the program; save as another file, the log has the reason");
    }

    private void tell(Consumer<EditCommands> what) {
        window.accept(frame -> frame.tellEdit(what));
    }

    private void caution(String words) {
        say(Form.DIAMOND, Tone.CAUTION, words);
    }

    private void say(Form form, Tone tone, String words) {
        window.accept(frame -> frame.say(new Mark(form, tone, words)));
    }
}
