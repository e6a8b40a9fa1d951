package crowdline.live.now;

import crowdline.live.event.LiveEvent;
import crowdline.live.state.ActDurations;
import crowdline.live.state.Step;
import java.time.Instant;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;

/** The running show as screens, keys and followers use it. Every method may be called from any thread; none waits. */
public interface Desk {

    /** The latest snapshot. */
    LiveSnapshot snapshot();

    /** The session's seconds now. */
    double nowS();

    /**
     * What can be read off the latest snapshot now.
     *
     * @param wall the clock on the wall, for slots
     */
    LiveNow now(Instant wall);

    /**
     * Something happened at the time the event says.
     *
     * @return done once what comes of it is published, or it is refused; whether the disk has it is told by
     *     {@link LiveSnapshot#unwritten()}
     */
    CompletableFuture<Step> submit(LiveEvent event);

    /**
     * Something happens now; what comes of it is in the next snapshot. The time is taken in the caller's thread, so a busy
     * desk does not make it late.
     *
     * @param event makes the event for a time, such as {@code FlightEvent.Stepped::new}
     */
    void post(DoubleFunction<? extends LiveEvent> event);

    /** The clock uses these from now on. */
    void useDurations(ActDurations next);

    /**
     * Calls {@code listener} after every snapshot, on the {@code live} thread and without a lock; it must not wait. What it
     * throws is logged and goes no further.
     */
    void onChange(Consumer<LiveSnapshot> listener);

    /** No more calls of {@code listener}. */
    void forget(Consumer<LiveSnapshot> listener);
}
