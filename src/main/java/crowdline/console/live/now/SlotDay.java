package crowdline.console.live.now;

import crowdline.console.live.row.LiveMoment;
import crowdline.live.event.SlotTime;
import crowdline.show.Act;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * The day of a slot against today at the venue.
 *
 * @param slot date and hour of the slot
 * @param today at the venue
 * @param isToday true if it is told by the hour alone, which is so of a slot some hours away, midnight or not
 */
record SlotDay(LocalDateTime slot, LocalDate today, boolean isToday) {
    /** A slot this near is of this day or night, seconds. */
    private static final double NEAR_S = 6 * 3600.0;

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.UK);
    private static final DateTimeFormatter DAY_AND_YEAR = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.UK);

    static SlotDay of(LiveMoment moment, Act act) {
        LocalDate today = moment.clock().toLocalDate();
        Double toSlotS = moment.now().toSlotS();
        if (!(moment.state().course().slot() instanceof SlotTime.OnClock slot) || toSlotS == null) {
            return new SlotDay(today.atTime(act.slotStart()), today, true);
        }
        LocalDateTime at = moment.state().day().slot(act.id(), slot.at());
        boolean near = at.toLocalDate().equals(today) || Math.abs(toSlotS) < NEAR_S;
        return new SlotDay(at, today, near);
    }

    /** When the slot is, or was, where the hour alone would mislead. */
    String when() {
        LocalTime hour = slot.toLocalTime();
        LocalDate day = slot.toLocalDate();
        if (day.equals(today.plusDays(1))) {
            return "Tomorrow, " + hour;
        }
        return day.equals(today.minusDays(1))
                ? "Due yesterday, " + hour
                : (day.isBefore(today) ? "Due on " : "") + day(day) + ", " + hour;
    }

    /** That it is another day: the day of the slot stands large above. */
    String told() {
        return "Today is " + day(today) + ".";
    }

    private String day(LocalDate day) {
        boolean thisYear = day.getYear() == today.getYear() && slot.getYear() == today.getYear();
        return (thisYear ? DAY : DAY_AND_YEAR).format(day);
    }
}
