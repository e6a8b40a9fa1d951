package crowdline.sheet.day;

import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.DayRun.ActRun;
import crowdline.live.debrief.DayRun.Flight;
import crowdline.live.debrief.DutyRun;
import crowdline.sheet.DutySheet;
import crowdline.sheet.RunningSheet;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** Two days of one show beside each other: when each act began, how late, how long it took and how much of it was talk. */
public final class DayBeside {
    private static final String UNKNOWN = "–";

    private DayBeside() {}

    /**
     * The days, act by act.
     *
     * @param hour the clock at the venue at a second of the day's session
     * @param otherHour the same of the other's
     */
    public static List<String> lines(
            DayRun day, DoubleFunction<LocalTime> hour, DayRun other, DoubleFunction<LocalTime> otherHour) {
        List<String> lines = new ArrayList<>();
        lines.add(row("", "this day", "", "", "other day", "", ""));
        lines.add(row("act", "began", "lasted", "talk", "began", "lasted", "talk"));
        for (ActRun act : day.acts()) {
            ActRun then = other.acts().stream()
                    .filter(a -> a.actId().equals(act.actId()))
                    .findFirst()
                    .orElse(null);
            String[] here = cells(day, act, hour);
            String[] there = cells(other, then, otherHour);
            lines.add(row(act.title(), here[0], here[1], here[2], there[0], there[1], there[2]));
        }
        for (DutyRun duty : day.duties()) {
            DutyRun then = other.duties().stream()
                    .filter(d -> d.remarkId().equals(duty.remarkId()))
                    .findFirst()
                    .orElse(null);
            lines.add("duty: " + duty.text() + ": " + DutySheet.count(duty) + "; on the other day "
                    + (then == null ? "unknown" : DutySheet.count(then).toLowerCase(Locale.UK)));
        }
        return lines;
    }

    private static String[] cells(DayRun day, @Nullable ActRun act, DoubleFunction<LocalTime> hour) {
        if (act == null || act.flights().isEmpty()) {
            return new String[] {act != null && act.cancelled() ? "cancelled" : UNKNOWN, UNKNOWN, UNKNOWN};
        }
        Flight flight = act.flights().get(0);
        Double endS = flight.endS();
        String began = hour.apply(flight.startS()).withNano(0).toString();
        return endS == null
                ? new String[] {began, UNKNOWN, UNKNOWN}
                : new String[] {
                    began,
                    RunningSheet.minutes(endS - flight.startS()),
                    Math.round(day.talkPercent(flight.startS(), endS)) + " %"
                };
    }

    private static String row(String... cells) {
        return String.format(
                        Locale.UK,
                        "%-32s %10s %8s %6s %12s %8s %6s",
                        cells[0].length() <= 32 ? cells[0] : cells[0].substring(0, 31) + "…",
                        cells[1],
                        cells[2],
                        cells[3],
                        cells[4],
                        cells[5],
                        cells[6])
                .stripTrailing();
    }
}
