package crowdline.running;

import crowdline.live.state.ActDurations;
import crowdline.live.state.Durations;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicBoolean;

/** Durations that never throw: one that cannot be told is not a number, and the clock waits for the hand. */
final class GuardedDurations implements ActDurations {
    private static final System.Logger LOG = System.getLogger(GuardedDurations.class.getName());

    private final ActDurations durations;
    private final AtomicBoolean told = new AtomicBoolean();

    GuardedDurations(ActDurations durations) {
        this.durations = durations;
    }

    @Override
    public Durations of(String actId, String variant, List<String> figureIds) {
        return new Durations() {
            @Override
            public double secondsOf(int index) {
                try {
                    return durations.of(actId, variant, figureIds).secondsOf(index);
                } catch (RuntimeException e) {
                    tell(index, actId, e);
                    return Double.NaN;
                }
            }

            @Override
            public double pauseS(int index, int next) {
                try {
                    return durations.of(actId, variant, figureIds).pauseS(index, next);
                } catch (RuntimeException e) {
                    tell(index, actId, e);
                    return 0;
                }
            }
        };
    }

    /**
     * Whatever is wrong with them, the show must go on; it is said once, not at every look at the clock. Nothing is wrong where
     * nobody waits for them any more.
     */
    private void tell(int index, String actId, RuntimeException e) {
        if (!(e instanceof CancellationException) && !told.getAndSet(true)) {
            LOG.log(System.Logger.Level.ERROR, "No duration of figure " + index + " of act " + actId, e);
        }
    }
}
