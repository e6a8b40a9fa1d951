package crowdline.telemetry;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * Makes one scale of seconds that only goes forward from what a receiver tells: times of day, with or without a date.
 * Midnight is where the time of day falls by more than half a day. A small step back is a sentence out of order. After a
 * larger one the receiver has set its clock, and the scale goes on as if it had not; a gap counts a day at most.
 */
final class ReceiverScale {
    private static final long DAY_NS = Duration.ofDays(1).toNanos();
    /** Tuned: sentences arrive some seconds out of order at most, and a clock is set by hours rather than by seconds. */
    private static final long OUT_OF_ORDER_NS = Duration.ofSeconds(20).toNanos();
    /** What a step counts while no usual one is known: the commonest rate of receivers. */
    private static final long USUAL_STEP_NS = Duration.ofSeconds(1).toNanos();

    /** What is longer is a gap, not a step. */
    private static final long LONGEST_STEP_NS = Duration.ofMinutes(1).toNanos();

    private @Nullable LocalTime time;
    private @Nullable LocalDate date;
    private long scaleNs;
    private long stepNs = USUAL_STEP_NS;

    /** A point on the scale. */
    record Moment(double tS, @Nullable Instant utc) {}

    /**
     * Moves on to an instant.
     *
     * @param next time of day, UTC
     * @param given its date, or null where only the time of day is told
     * @return null where it does not go forward
     */
    @Nullable
    Moment next(LocalTime next, @Nullable LocalDate given) {
        LocalTime last = time;
        if (last == null) {
            scaleNs = next.toNanoOfDay();
            return moved(next, given);
        }
        long rawNs = next.toNanoOfDay() - last.toNanoOfDay();
        long turns = rawNs < -DAY_NS / 2 ? 1 : rawNs > DAY_NS / 2 ? -1 : 0;
        LocalDate lastDate = date;
        LocalDate day = given != null || lastDate == null ? given : lastDate.plusDays(turns);
        long days = lastDate == null || day == null ? turns : ChronoUnit.DAYS.between(lastDate, day);
        long forwardNs = days * DAY_NS + rawNs;
        if (forwardNs <= 0 && forwardNs >= -OUT_OF_ORDER_NS) {
            return null;
        }
        scaleNs += forwardNs > 0 ? Math.min(forwardNs, DAY_NS) : stepNs;
        if (forwardNs > 0 && forwardNs <= LONGEST_STEP_NS) {
            stepNs = forwardNs;
        }
        return moved(next, day);
    }

    private Moment moved(LocalTime next, @Nullable LocalDate day) {
        time = next;
        date = day;
        Instant utc = day == null ? null : day.atTime(next).toInstant(ZoneOffset.UTC);
        return new Moment(scaleNs / 1e9, utc);
    }
}
