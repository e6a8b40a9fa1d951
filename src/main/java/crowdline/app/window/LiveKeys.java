package crowdline.app.window;

import crowdline.console.keys.Command;
import crowdline.console.live.ToldPresenter;
import crowdline.console.paint.Mark;
import crowdline.live.event.LiveEvent;
import crowdline.live.now.Desk;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.loaded.ShowLookup;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.DoubleFunction;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * The keys of the running show: what each does goes to the desk, what came of it is told for some seconds. Z takes back the
 * last key, never one before it because the last did nothing. Keys come from one thread; what is told may be read by any.
 */
final class LiveKeys {
    /** What a key did is told so long, seconds. Tuned: read once with the eyes back from the sky. */
    private static final double TOLD_S = 5;
    /** Why it did nothing is longer and comes unexpected, seconds. */
    private static final double REFUSED_S = 8;

    private record Told(Mark mark, double untilS) {}

    private final Desk desk;
    private final Supplier<ShowLookup> words;
    private volatile @Nullable Told told;
    /** Which key was last, if it did nothing; done once that is known. */
    private CompletableFuture<Optional<Command>> idle = CompletableFuture.completedFuture(Optional.empty());

    LiveKeys(Desk desk, Supplier<ShowLookup> words) {
        this.desk = desk;
        this.words = words;
    }

    /** A key means this. */
    void give(Command command, DoubleFunction<? extends LiveEvent> meant) {
        LiveState before = desk.snapshot().state();
        LiveEvent event = meant.apply(desk.nowS());
        idle = desk.submit(event)
                .thenApply(step -> heard(event, before, step) ? Optional.empty() : Optional.of(command));
    }

    /** A key does nothing now, and why. */
    void refuse(Command command, String why) {
        tell(ToldPresenter.refused(why), REFUSED_S);
        idle = CompletableFuture.completedFuture(Optional.of(command));
    }

    /** The last key was a mistake. */
    void takeBack() {
        double atS = desk.nowS();
        idle = idle.thenCompose(last -> {
            if (last.isPresent()) {
                tell(ToldPresenter.nothingToTakeBack(last.get()), REFUSED_S);
                return CompletableFuture.completedFuture(Optional.empty());
            }
            LiveEvent event = new LiveEvent.Undone(atS);
            LiveState before = desk.snapshot().state();
            return desk.submit(event).thenApply(step -> {
                heard(event, before, step);
                return Optional.empty();
            });
        });
    }

    /** What is to be read at this moment, or null. */
    @Nullable
    Mark told() {
        Told latest = told;
        return latest == null || desk.nowS() >= latest.untilS() ? null : latest.mark();
    }

    private boolean heard(LiveEvent event, LiveState before, Step step) {
        if (step instanceof Step.Refused refused) {
            tell(ToldPresenter.refused(refused.reason()), REFUSED_S);
            return false;
        }
        LiveState after = ((Step.Moved) step).state();
        // What was told of an earlier key would now be read as this one's.
        told = null;
        ToldPresenter.of(event, before, after, words.get()).ifPresent(mark -> tell(mark, TOLD_S));
        return true;
    }

    private void tell(Mark mark, double seconds) {
        told = new Told(mark, desk.nowS() + seconds);
    }
}
