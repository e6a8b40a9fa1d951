package crowdline.show.figure;

import crowdline.show.bounds.Most;
import crowdline.show.bounds.Quantity;
import crowdline.show.bounds.Written;
import java.time.LocalTime;
import org.jspecify.annotations.Nullable;

/**
 * How often and when a duty of the day is to be said.
 *
 * @param times how often, from 1
 * @param apartMinutes at least so long from one time to the next; null for {@link #USUAL_APART_MINUTES}
 * @param by the last time by this hour at the venue, or null if there is none
 * @param afterAct id of the act that must be over first, or null
 * @param beforeAct id of the act before which it is said and not any more once that has begun, or null
 * @param inActs true if it may also be said while an act is in the air, false if only between acts
 */
public record DutyTimes(
        int times,
        @Nullable Double apartMinutes,
        @Nullable LocalTime by,
        @Nullable String afterAct,
        @Nullable String beforeAct,
        boolean inActs) {
    /** What lies between two times where nobody says: long enough that nobody groans. Tuned. */
    public static final double USUAL_APART_MINUTES = 15;

    /** Of a duty of which only the words are known: once, whenever there is time. */
    public static final DutyTimes ONCE = new DutyTimes(1, null, null, null, null, true);

    public DutyTimes {
        Quantity.DUTY_TIMES.must(times);
        if (apartMinutes != null) {
            Quantity.APART_MINUTES.must(apartMinutes);
        }
        if (afterAct != null) {
            Most.mustBeText("afterAct", afterAct);
        }
        if (beforeAct != null) {
            Most.mustBeText("beforeAct", beforeAct);
            if (beforeAct.equals(afterAct)) {
                throw new IllegalArgumentException("afterAct and beforeAct are both " + Written.quoted(beforeAct)
                        + ", so the duty could never be said; name two acts, or one of them only");
            }
        }
    }

    /** What lies between two times at least, seconds. */
    public double apartS() {
        return 60 * (apartMinutes == null ? USUAL_APART_MINUTES : apartMinutes);
    }
}
