package crowdline.live.event;

import crowdline.measure.Must;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;

/** When the slot of an act begins. */
public sealed interface SlotTime {

    /**
     * How long until it begins, in seconds; negative once it has.
     *
     * @param nowS the moment on the session's scale
     * @param wall the same moment by the clock on the wall, as it is set now
     */
    double secondsUntil(double nowS, Instant wall);

    /**
     * By the clocks of the venue, whatever becomes of the computer's: a clock that is put right, a closed lid or a night of
     * summer time changes when it comes, as it does for everybody on the field.
     *
     * @param at date and hour as planned; an hour that a change of the clocks leaves out is as much later
     * @param zone whose clocks
     */
    record OnClock(LocalDateTime at, ZoneId zone) implements SlotTime {
        @Override
        public double secondsUntil(double nowS, Instant wall) {
            return Duration.between(wall, at.atZone(zone).toInstant()).toMillis() / 1000.0;
        }
    }

    /** On the session's scale, negative if before the session, as journals from before have it. */
    record InSession(double startS) implements SlotTime {
        public InSession {
            Must.beFinite("slot startS", startS);
        }

        @Override
        public double secondsUntil(double nowS, Instant wall) {
            return startS - nowS;
        }
    }
}
