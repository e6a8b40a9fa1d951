package crowdline.running;

import crowdline.live.event.LiveEvent;
import crowdline.live.now.Desk;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;

/**
 * The keys of the running show: what each does goes to the desk, and what came of it is told. Taking back takes back the last
 * key, never one before it because the last did nothing. Keys come from one thread; they are told of on any.
 */
public final class LiveKeys {
    private final Desk desk;
    private final Consumer<Optional<Told>> tell;
    /** Which key was last, if it did nothing; done once that is known. */
    private CompletableFuture<Optional<String>> idle = CompletableFuture.completedFuture(Optional.empty());

    /** @param tell hears what the last key did; empty while that is being found out */
    public LiveKeys(Desk desk, Consumer<Optional<Told>> tell) {
        this.desk = desk;
        this.tell = tell;
    }

    /**
     * A key means this.
     *
     * @param key how it is called, such as "Space"
     */
    public void give(String key, DoubleFunction<? extends LiveEvent> meant) {
        LiveState before = desk.snapshot().state();
        LiveEvent event = meant.apply(desk.nowS());
        idle = desk.submit(event).thenApply(step -> heard(event, before, step) ? Optional.empty() : Optional.of(key));
    }

    /** A key does nothing now, and why. */
    public void refuse(String key, String why) {
        tell.accept(Optional.of(new Told.Refused(why)));
        idle = CompletableFuture.completedFuture(Optional.of(key));
    }

    /** The last key was a mistake. */
    public void takeBack() {
        double atS = desk.nowS();
        idle = idle.thenCompose(last -> {
            if (last.isPresent()) {
                tell.accept(Optional.of(new Told.NothingToTakeBack(last.get())));
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

    private boolean heard(LiveEvent event, LiveState before, Step step) {
        if (step instanceof Step.Refused refused) {
            tell.accept(Optional.of(new Told.Refused(refused.reason())));
            return false;
        }
        tell.accept(Optional.of(new Told.Did(event, before, ((Step.Moved) step).state())));
        return true;
    }
}
