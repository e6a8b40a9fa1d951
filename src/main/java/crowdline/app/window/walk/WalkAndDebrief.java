package crowdline.app.window.walk;

import crowdline.app.window.show.ShowOpener;
import crowdline.app.window.work.PendingWindow;
import crowdline.console.ConsoleFrame;
import crowdline.console.debrief.DebriefHost;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.console.walk.Passes;
import crowdline.console.walk.Tour;
import crowdline.console.walk.Walk;
import crowdline.loaded.LoadedShow;
import crowdline.paper.Wanted;
import crowdline.running.RunningShow;
import crowdline.storage.journal.JournalShelf;
import crowdline.storage.settings.FigureNotesFile;
import crowdline.timing.Pass;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;

/**
 * What is made of the running show for Walk through and Debrief, when these are first looked at. Asked on the event
 * thread; what must be predicted for them is predicted on the {@code io} thread.
 */
public final class WalkAndDebrief {
    private final ShowOpener opening;
    private final PendingWindow window;
    private final Passes passes;
    private final Path notes;
    private final JournalShelf journals;
    private final Executor io;
    private final Clock clock;
    private @Nullable Path file;
    private @Nullable LoadedShow walked;
    private List<String> taught = List.of();
    private volatile @Nullable Walk walk;
    private @Nullable RunningShow debriefed;
    private @Nullable ShowDebrief debrief;

    /**
     * @param passes the timed runs of the open show
     * @param notes the folder of the notes on figures
     * @param journals where other days are found
     */
    public WalkAndDebrief(
            ShowOpener opening,
            PendingWindow window,
            Passes passes,
            Path notes,
            JournalShelf journals,
            Executor io,
            Clock clock) {
        this.opening = opening;
        this.window = window;
        this.passes = passes;
        this.notes = notes;
        this.journals = journals;
        this.io = io;
        this.clock = clock;
    }

    /** Answers with the walk through the running show as it is now: none until its acts are predicted. */
    public void askForWalk() {
        RunningShow show = opening.running();
        Path open = opening.openFile();
        if (show == null || open == null) {
            return;
        }
        turnTo(open);
        LoadedShow loaded = show.loaded();
        // A walked pass teaches nothing, so that timing one here changes nothing here.
        List<String> teaching =
                loaded.passes().stream().filter(Pass::teaches).map(Pass::id).toList();
        Walk before = walk;
        if (loaded.equals(walked) && teaching.equals(taught)) {
            window.send(frame -> frame.walk(before));
            return;
        }
        // Its words, its air or its passes have changed; until it is predicted anew the walk goes on as it was.
        walked = loaded;
        taught = teaching;
        Tour where = before == null ? null : before.tour();
        io.execute(() -> {
            Walk made = walk(open, loaded);
            if (made != null && where != null) {
                made.beginWith(where);
            }
            walk = made;
            window.send(frame -> frame.walk(made));
        });
    }

    private void turnTo(Path open) {
        if (!open.equals(file)) {
            file = open;
            walked = null;
            walk = null;
        }
    }

    private @Nullable Walk walk(Path open, LoadedShow loaded) {
        List<Tour> tours = Tours.of(loaded);
        if (tours.isEmpty()) {
            opening.say(new Mark(
                    Form.DIAMOND, Tone.CAUTION, "This show has no act to walk through; add one, with its airframe"));
            return null;
        }
        ShowNotes own = new ShowNotes(
                new FigureNotesFile(notes, open), io, why -> opening.say(new Mark(Form.DIAMOND, Tone.CAUTION, why)));
        return new Walk(tours, loaded.words(), loaded::plan, passes, own, clock::instant);
    }

    /** What was flown of the running show, or null if there is none. */
    public Wanted.@Nullable Flown flown() {
        return debrief() instanceof ShowDebrief now ? now.flown() : null;
    }

    /** The debrief of the running show, or null if there is none. */
    @Nullable
    public DebriefHost debrief() {
        RunningShow show = opening.running();
        Path open = opening.openFile();
        if (show == null || open == null) {
            return null;
        }
        turnTo(open);
        if (!show.equals(debriefed)) {
            debriefed = show;
            debrief = new ShowDebrief(
                    show::ofTheDay,
                    show.desk(),
                    passes,
                    journals,
                    io,
                    clock,
                    opening::say,
                    () -> window.send(ConsoleFrame::liveChanged));
        }
        return debrief;
    }
}
