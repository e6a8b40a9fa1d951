package crowdline.sheet;

import crowdline.live.debrief.DutyRun;
import crowdline.live.now.DutyNow.Told;
import crowdline.measure.Hour;
import crowdline.show.figure.DutyTimes;
import java.time.LocalTime;
import java.util.function.DoubleFunction;
import java.util.stream.Collectors;

/** What an organiser is told of a duty that was asked for. */
public final class DutySheet {

    private DutySheet() {}

    /** "Said 2 of 4 times", with what else is known; proof and what is owed come first. */
    public static String count(DutyRun duty) {
        int times = duty.asked().times();
        String said = times == 1
                ? duty.saidCount() > 0 ? "Said" : "Not said"
                : "Said " + duty.saidCount() + " of " + times + " times";
        String shown = duty.shownCount() == 0
                ? ""
                : ", shown " + (duty.shownCount() == 1 ? "once" : duty.shownCount() + " times") + " and not marked";
        String more = duty.saidCount() > times && times == 1 ? " " + duty.saidCount() + " times" : "";
        return said + more + shown;
    }

    /** "14:02, 14:31, shown 15:10", or empty. */
    public static String when(DutyRun duty, DoubleFunction<LocalTime> hour) {
        return duty.told().stream().map(t -> when(t, hour)).collect(Collectors.joining(", "));
    }

    private static String when(Told told, DoubleFunction<LocalTime> hour) {
        return (told.said() ? "" : "shown ") + Hour.toTheMinute(hour.apply(told.atS()));
    }

    /** "asked for by 16:30", or empty where no hour was asked for. */
    public static String asked(DutyRun duty) {
        DutyTimes asked = duty.asked();
        LocalTime by = asked.by();
        return by == null ? "" : "asked for by " + Hour.toTheMinute(by);
    }

    /** Everything on one line. */
    public static String line(DutyRun duty, DoubleFunction<LocalTime> hour) {
        String when = when(duty, hour);
        String asked = asked(duty);
        return "  " + count(duty) + (when.isEmpty() ? "" : " (" + when + ")") + (asked.isEmpty() ? "" : ", " + asked)
                + ": " + duty.text();
    }
}
