package crowdline.running;

import crowdline.follow.FollowPlan;
import crowdline.live.event.FlightEvent;
import crowdline.live.now.Desk;
import crowdline.live.state.LiveState;
import crowdline.steer.AircraftFollowing;
import crowdline.steer.Tracking;
import crowdline.telemetry.Fix;
import crowdline.telemetry.LocalFrame;
import crowdline.telemetry.Reading;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Follows the aircraft of a running show on a thread of its own, {@code follow}. */
public final class FollowThread implements AutoCloseable {
    private static final System.Logger LOG = System.getLogger(FollowThread.class.getName());
    private static final long TICK_MS = 250;
    /** Nobody is on the way to a display from further off, metres. Tuned. */
    private static final double ELSEWHERE_M = 50_000;

    private final Desk desk;
    private final @Nullable LocalFrame frame;
    /** How far from the datum the last position was, metres. */
    private volatile double awayM;
    /** On the follow thread only. */
    private final AircraftFollowing following;

    private final Consumer<Tracking> tell;
    private final ScheduledExecutorService thread = NamedThread.scheduled("follow");

    /**
     * @param frame places positions in the display, or null if that cannot be done: then none is followed
     * @param tell hears what the screen is to say of it, on the {@code follow} thread
     */
    public FollowThread(
            Desk desk,
            @Nullable LocalFrame frame,
            Function<LiveState, Optional<FollowPlan>> plans,
            Consumer<Tracking> tell) {
        this.tell = tell;
        this.desk = desk;
        this.frame = frame;
        following = new AircraftFollowing(plans);
        var unused = thread.scheduleWithFixedDelay(this::tick, TICK_MS, TICK_MS, TimeUnit.MILLISECONDS);
    }

    private void tick() {
        guarded(desk.nowS(), () -> following.tick(desk.snapshot().state(), desk.nowS()));
    }

    /** Looks at the clock now, and waits until that and every position before it have been seen to. */
    public void wake() throws ExecutionException, InterruptedException {
        thread.submit(this::tick).get();
    }

    /** A position came in; from any thread, at once. */
    public void fix(Fix fix) {
        if (frame == null) {
            return;
        }
        double atS = desk.nowS();
        Reading reading = reading(frame, fix, atS);
        awayM = Math.hypot(reading.alongM(), reading.awayM());
        try {
            thread.execute(
                    () -> guarded(atS, () -> following.reading(desk.snapshot().state(), reading)));
        } catch (RejectedExecutionException e) {
            LOG.log(System.Logger.Level.DEBUG, "A position came after the show was closed", e);
        }
    }

    /** Says that the last position is nowhere near the display; empty if it is near, or there was none. From any thread. */
    String elsewhere() {
        double lastM = awayM;
        return lastM < ELSEWHERE_M
                ? ""
                : String.format(
                        Locale.ROOT,
                        "The aircraft is %,.0f km from the field; check the field's place on the page Show (Ctrl+2)",
                        lastM / 1000);
    }

    private static Reading reading(LocalFrame frame, Fix fix, double atS) {
        Reading r = frame.reading(fix);
        return new Reading(atS, r.alongM(), r.awayM(), r.heightM(), r.alongMps(), r.awayMps());
    }

    private void guarded(double atS, Supplier<Optional<FlightEvent>> work) {
        try {
            work.get().ifPresent(event -> {
                var unused = desk.submit(event);
            });
            tell.accept(following.tracking(atS));
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            // The root of the thread: whatever went wrong with one reading, the show goes on.
            LOG.log(System.Logger.Level.ERROR, "A reading could not be followed", e);
        }
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
