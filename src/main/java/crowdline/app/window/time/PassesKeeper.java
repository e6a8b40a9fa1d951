package crowdline.app.window.time;

import crowdline.app.window.work.FileWork;
import crowdline.console.ConsoleFrame;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.passes.PassesHost;
import crowdline.console.prepare.glance.PrepareView;
import crowdline.console.theme.Tone;
import crowdline.console.walk.Passes;
import crowdline.live.state.FlownAct;
import crowdline.live.state.Note;
import crowdline.loaded.LoadedShow;
import crowdline.loaded.PassIds;
import crowdline.loaded.ShowLoader;
import crowdline.running.LiveDesk;
import crowdline.running.LivePasses;
import crowdline.show.check.LocatedFinding;
import crowdline.storage.file.ShowFileException;
import crowdline.storage.passes.PassesFile;
import crowdline.timing.HardlyFlown;
import crowdline.timing.LearnedTimes;
import crowdline.timing.Pass;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the passes of the show that is open: those flown live, and what somebody decides about any. Everything it does to
 * files is done on the {@code io} thread.
 */
public final class PassesKeeper implements PassesHost, Passes {
    private static final System.Logger LOG = System.getLogger(PassesKeeper.class.getName());
    private static final double MS_PER_S = 1000;

    private final Path folder;
    private final Path notKept;
    private final PassIds ids;
    private final Consumer<Consumer<ConsoleFrame>> window;
    private final Executor io;
    /** The show in Prepare. */
    private volatile ShowLoader.@Nullable Result opened;

    /**
     * @param folder where passes go whose show lies in a folder that may not be written to
     * @param notKept a show whose live runs are for trying out, and are not kept
     * @param window hands work to the window once there is one
     */
    public PassesKeeper(Path folder, Path notKept, PassIds ids, Consumer<Consumer<ConsoleFrame>> window, Executor io) {
        this.folder = folder;
        this.notKept = notKept.toAbsolutePath();
        this.ids = ids;
        this.window = window;
        this.io = io;
    }

    /** Prepare shows this show from now on. What of its passes cannot be used is said. */
    public void opened(ShowLoader.Result result) {
        opened = result;
        List<String> unused = result.findings().stream()
                .filter(found -> found.code().equals(ShowLoader.PASSES))
                .map(LocatedFinding::message)
                .toList();
        if (!unused.isEmpty()) {
            int others = unused.size() - 1;
            String more = others == 0 ? "" : ", and " + others + " more such " + (others == 1 ? "line" : "lines");
            say(new Mark(Form.DIAMOND, Tone.CAUTION, unused.get(0) + more));
        }
    }

    /** Keeps the acts that are flown in this show live. */
    public void follow(Path file, LoadedShow loaded, LiveDesk desk) {
        if (file.toAbsolutePath().equals(notKept)) {
            return;
        }
        LivePasses live = new LivePasses(new PassesFile(file, folder), ids, pass -> doubt(pass, loaded));
        desk.onChange(snapshot -> {
            List<FlownAct> acts = snapshot.state().course().flownActs();
            List<Note> notes = snapshot.state().notes();
            boolean timesMayDiffer = live.hasOtherActs(acts);
            if (live.isNews(acts, notes)) {
                Instant zero = ids.now().minusMillis(Math.round(desk.nowS() * MS_PER_S));
                onIo(() -> {
                    live.keep(acts, notes, zero).ifPresent(notice -> say(new Mark(Form.DIAMOND, Tone.CAUTION, notice)));
                    if (timesMayDiffer) {
                        learned(file, loaded);
                    }
                });
            }
        });
    }

    private static Optional<String> doubt(Pass pass, LoadedShow loaded) {
        if (!loaded.show().isOn(pass.begunAt())) {
            return Optional.of("it was flown on another day than the show's");
        }
        return loaded.prediction(pass.actId(), pass.variant())
                .filter(predicted -> HardlyFlown.in(pass, predicted.times()))
                .map(predicted -> "hardly anyone flies like that");
    }

    @Override
    public void count(String passId, boolean counts) {
        decided(passes -> passes.count(passId, counts, ids.now()));
    }

    @Override
    public void note(String passId, String note) {
        decided(passes -> passes.note(passId, note, ids.now()));
    }

    @Override
    public List<Pass> of(String actId, String variant) {
        ShowLoader.Result now = opened;
        LoadedShow loaded = now == null ? null : now.loaded();
        return loaded == null ? List.of() : LearnedTimes.ofAct(loaded.passes(), actId, variant);
    }

    @Override
    public void add(Pass pass) {
        ShowLoader.Result now = opened;
        LoadedShow loaded = now == null ? null : now.loaded();
        if (now == null || loaded == null) {
            return;
        }
        if (now.file().toAbsolutePath().equals(notKept)) {
            List<Pass> tried = new ArrayList<>(loaded.passes());
            tried.add(pass);
            loaded.learn(tried);
            say(new Mark(Form.RING, Tone.CALM, "Passes of the demo show are forgotten when it is closed"));
            return;
        }
        onIo(() -> {
            String notice = new PassesFile(now.file(), folder).keep(pass).notice();
            say(
                    notice == null
                            ? new Mark(Form.DISC, Tone.GOOD, "Kept as a pass")
                            : new Mark(Form.DIAMOND, Tone.CAUTION, notice));
            learned(now.file(), loaded);
        });
    }

    private interface Decision {
        PassesFile.Kept carriedOut(PassesFile passes) throws ShowFileException;
    }

    private void decided(Decision decision) {
        ShowLoader.Result now = opened;
        LoadedShow loaded = now == null ? null : now.loaded();
        if (now != null && loaded != null) {
            onIo(() -> {
                PassesFile.Kept kept = decision.carriedOut(new PassesFile(now.file(), folder));
                String notice = kept.notice();
                if (notice != null) {
                    say(new Mark(Form.DIAMOND, Tone.CAUTION, notice));
                }
                learned(now.file(), loaded);
            });
        }
    }

    /** Everything uses what is in the file now. */
    private void learned(Path file, LoadedShow loaded) throws ShowFileException {
        List<Pass> passes = new PassesFile(file, folder).read().passes();
        loaded.learn(passes);
        ShowLoader.Result now = opened;
        LoadedShow shown = now == null ? null : now.loaded();
        if (now != null && shown != null && now.file().equals(file)) {
            shown.learn(passes);
            PrepareView view = LoadedPredictions.view(shown, now.findings());
            window.accept(frame -> frame.showPrepare(view));
        }
    }

    private void say(Mark mark) {
        window.accept(frame -> frame.say(mark));
    }

    private void onIo(FileWork work) {
        try {
            io.execute(() -> guarded(work));
        } catch (RejectedExecutionException closing) {
            LOG.log(System.Logger.Level.WARNING, "A pass came while the program was closing", closing);
        }
    }

    private void guarded(FileWork work) {
        work.fault(LOG, "The passes could not be kept", fault -> "The passes could not be kept; the log has the reason")
                .ifPresent(why -> say(new Mark(Form.STOP, Tone.ALARM, why)));
    }
}
