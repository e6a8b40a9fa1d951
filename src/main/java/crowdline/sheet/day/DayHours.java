package crowdline.sheet.day;

import crowdline.live.debrief.DayRun.ActRun;
import java.time.LocalTime;
import java.util.function.DoubleFunction;

/**
 * Moments of a session as hours of the day, which go on after midnight.
 *
 * @param zeroH the hour at second 0 of the session
 */
record DayHours(double zeroH) {
    static final double HOUR_S = 3600;
    private static final double DAY_H = 24;

    /** @param hour the clock at the venue at a second of the session */
    static DayHours of(DoubleFunction<LocalTime> hour) {
        return new DayHours(hour.apply(0).toSecondOfDay() / HOUR_S);
    }

    double at(double sessionS) {
        return zeroH + sessionS / HOUR_S;
    }

    /** The slot of an act, on the day that is nearest to its first flight; of one not flown, in the day after the session began. */
    double slot(ActRun act) {
        if (!act.flights().isEmpty()) {
            return near(act.slot(), at(act.flights().get(0).startS()));
        }
        double slotH = act.slot().toSecondOfDay() / HOUR_S;
        return slotH < zeroH - DAY_H / 2 ? slotH + DAY_H : slotH;
    }

    /** A clock's hour on the day on which it is nearest to a moment. */
    static double near(LocalTime clock, double atH) {
        double hourH = clock.toSecondOfDay() / HOUR_S;
        return hourH + DAY_H * Math.rint((atH - hourH) / DAY_H);
    }

    /** How many hours are added to those of another session so that both fall on one day. */
    double shift(DayHours other) {
        return DAY_H * Math.rint((zeroH - other.zeroH) / DAY_H);
    }
}
