package crowdline.storage.journal;

import java.time.Duration;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The session's seconds found again by a later process.
 *
 * @param sessionS the session's seconds at {@code nanos}
 * @param nanos the reading of this process's monotonic clock
 * @param notice one sentence if the time is not from the monotonic clock of one boot, or null
 */
record JournalTime(double sessionS, long nanos, @Nullable String notice) {

    /** Both clocks agree within this if the machine was not restarted. Tuned: well over what a wall clock is slewed in a day. */
    private static final double AGREE_S = 5;

    private static final double NANOS_PER_S = 1e9;

    /**
     * The session's seconds now.
     *
     * @param base the last moment at which a process took the journal up
     * @param last the last moment known on the wall clock and the session's
     */
    static JournalTime of(JournalLine.Base base, JournalLine.Base last, JournalMachine machine) {
        long nanos = machine.ticker().nanos();
        double monotonicS = base.sessionS() + (nanos - base.nanos()) / NANOS_PER_S;
        Duration gap = Duration.between(last.wall(), machine.wall().instant());
        double gapS = gap.getSeconds() + gap.getNano() / NANOS_PER_S;
        double wallS = last.sessionS() + Math.max(0, gapS);
        boolean possible = monotonicS >= last.sessionS();
        if (base.bootId() != null && machine.bootId() != null) {
            if (possible && base.bootId().equals(machine.bootId())) {
                return new JournalTime(monotonicS, nanos, null);
            }
            return new JournalTime(
                    wallS,
                    nanos,
                    "The computer was restarted; the time in the figure is from its wall clock"
                            + (gapS < 0 ? ", which was set back, so it carries on from where it stopped." : "."));
        }
        if (possible && Math.abs(monotonicS - wallS) <= AGREE_S) {
            return new JournalTime(monotonicS, nanos, null);
        }
        return new JournalTime(
                wallS,
                nanos,
                "The computer was restarted or its clock was set; the time in the figure is from its wall clock.");
    }

    /** Reading of this process's monotonic clock at which the session's seconds were 0. */
    long zeroNanos() {
        return nanos - Math.round(sessionS * NANOS_PER_S);
    }

    Optional<String> told() {
        return Optional.ofNullable(notice);
    }
}
