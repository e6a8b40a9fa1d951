package crowdline.sheet.day;

import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.DayRun.ActRun;
import crowdline.live.debrief.DayRun.Flight;
import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.DutyRun;
import crowdline.live.now.DutyNow.Told;
import crowdline.measure.Hour;
import crowdline.sheet.CsvCell;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** The day as a whole as comma-separated values. */
public final class DaySheet {
    private static final String HEAD = "what,name,planned,begins,ends,lateMinutes,percent,state";

    private final DayRun day;
    private final DoubleFunction<LocalTime> hour;
    private final DayCharts charts;

    private DaySheet(Debrief debrief, DoubleFunction<LocalTime> hour) {
        this.hour = hour;
        day = debrief.day();
        charts = new DayCharts(debrief, DayHours.of(hour));
    }

    /** Acts, duties and talk, a line each; texts are quoted. */
    public static List<String> table(Debrief debrief, DoubleFunction<LocalTime> hour) {
        return new DaySheet(debrief, hour).table();
    }

    /** The same with another day's lines below; a last column tells them apart. */
    public static List<String> table(Debrief debrief, DoubleFunction<LocalTime> hour, @Nullable OtherDay other) {
        List<String> own = table(debrief, hour);
        if (other == null) {
            return own;
        }
        List<String> both = new ArrayList<>(List.of(HEAD + ",day"));
        own.stream().skip(1).forEach(line -> both.add(line + "," + CsvCell.quoted("this day")));
        table(other.debrief(), other.hour()).stream()
                .skip(1)
                .forEach(line -> both.add(line + "," + CsvCell.quoted(other.name())));
        return both;
    }

    private List<String> table() {
        List<String> lines = new ArrayList<>(List.of(HEAD));
        for (ActRun act : day.acts()) {
            String planned = Hour.toTheSecond(act.slot());
            if (act.flights().isEmpty()) {
                lines.add(line(
                        "act", act.title(), planned, "", "", null, null, act.cancelled() ? "cancelled" : "not-flown"));
            }
            for (Flight flight : act.flights()) {
                Double endS = flight.endS();
                lines.add(line(
                        "act",
                        act.title(),
                        planned,
                        clock(flight.startS()),
                        endS == null ? "" : clock(endS),
                        charts.lateMinutes(act, flight),
                        endS == null || !day.knowsTalk(flight.startS(), endS)
                                ? null
                                : Double.valueOf(day.talkPercent(flight.startS(), endS)),
                        endS == null ? "flying" : "flown"));
            }
        }
        for (DutyRun duty : day.duties()) {
            for (Told one : duty.told()) {
                lines.add(
                        line("duty", duty.text(), "", clock(one.atS()), "", null, null, one.said() ? "said" : "shown"));
            }
            for (int i = 0; i < duty.missing(); i++) {
                lines.add(line("duty", duty.text(), "", "", "", null, null, "not-said"));
            }
        }
        for (DayRun.Talked talked : day.talk()) {
            lines.add(line("talk", kind(talked), "", clock(talked.fromS()), clock(talked.toS()), null, null, ""));
        }
        return lines;
    }

    private static String kind(DayRun.Talked talked) {
        RemarkKind kind = talked.kind();
        return kind == null ? "heard" : kind.name().toLowerCase(Locale.ROOT);
    }

    private String clock(double sessionS) {
        return Hour.toTheSecond(hour.apply(sessionS));
    }

    private static String line(
            String what,
            String name,
            String planned,
            String begins,
            String ends,
            @Nullable Double lateMinutes,
            @Nullable Double percent,
            String state) {
        return String.join(
                ",",
                what,
                CsvCell.quoted(name),
                planned,
                begins,
                ends,
                lateMinutes == null ? "" : String.format(Locale.ROOT, "%.1f", lateMinutes + 0.0),
                percent == null ? "" : String.format(Locale.ROOT, "%.0f", percent),
                state);
    }
}
