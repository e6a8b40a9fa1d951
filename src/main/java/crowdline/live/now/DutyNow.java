package crowdline.live.now;

import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One duty of the day at one moment.
 *
 * @param remark what is to be said
 * @param told each time it was said or shown, oldest first
 * @param state how it stands
 * @param fromS when it may be said next, on the session's scale; null unless it waits for that hour alone
 * @param untilS by when it must be said next so that all of them fit, on the session's scale; null if nothing asks for it, or
 *     nothing more is wanted
 * @param wanted whether it is to be said at this moment, if there is time
 */
public record DutyNow(
        Remark remark,
        List<Told> told,
        State state,
        @Nullable Double fromS,
        @Nullable Double untilS,
        boolean wanted) implements ToldDuty {

    /** How a duty stands. */
    public enum State {
        /** Said as often as asked, or shown. */
        DONE,
        /** Its time has not come, or has not come again. */
        LATER,
        DUE,
        /** It should have been said by now; it is said all the same. */
        OVERDUE,
        /** The act before which it was to be said has begun; it is not asked for any more. */
        MISSED
    }

    /**
     * One time.
     *
     * @param atS when it was over, on the session's scale
     * @param said true if a key said so, false if it was only on the screen
     */
    public record Told(double atS, boolean said) {}

    public DutyNow {
        told = List.copyOf(told);
    }

    @Override
    public DutyTimes asked() {
        return remark.dutyTimes();
    }
}
