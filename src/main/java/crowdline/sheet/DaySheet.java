package crowdline.sheet;

import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.DayRun.ActRun;
import crowdline.live.debrief.DayRun.Flight;
import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.DutyRun;
import crowdline.live.now.DutyNow.Told;
import crowdline.sheet.chart.DayChart;
import crowdline.sheet.chart.DayChart.Curve;
import crowdline.sheet.chart.DayChart.Dot;
import crowdline.sheet.chart.DayChart.Point;
import crowdline.sheet.chart.DayChart.Share;
import crowdline.sheet.chart.DayChart.Span;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** The day as a whole: as a chart, and as comma-separated values. */
public final class DaySheet {
    private static final double HOUR_S = 3600;
    private static final double HALF_A_DAY_H = 12;
    /** Talk is told for stretches of this, seconds. */
    private static final double STRETCH_S = 300;

    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.UK);
    private static final String HEAD = "what,name,planned,begins,ends,lateMinutes,percent,state";

    private final Debrief debrief;
    private final DayRun day;
    private final DoubleFunction<LocalTime> hour;
    /** The hour of the day at second 0 of the session. */
    private final double zeroH;

    private DaySheet(Debrief debrief, DoubleFunction<LocalTime> hour) {
        this.debrief = debrief;
        this.hour = hour;
        day = debrief.day();
        zeroH = hour.apply(0).toSecondOfDay() / HOUR_S;
    }

    /** The chart of a day. */
    public static DayChart chart(Debrief debrief, DoubleFunction<LocalTime> hour) {
        return new DaySheet(debrief, hour).chart();
    }

    /** Acts, duties and talk, a line each; texts are quoted. */
    public static List<String> table(Debrief debrief, DoubleFunction<LocalTime> hour) {
        return new DaySheet(debrief, hour).table();
    }

    private double atH(double sessionS) {
        return zeroH + sessionS / HOUR_S;
    }

    /** The slot of an act in hours that go on after midnight, as near to the session as a day allows. */
    private double slotH(ActRun act) {
        double slotH = act.slot().toSecondOfDay() / HOUR_S;
        return slotH < zeroH - HALF_A_DAY_H ? slotH + 2 * HALF_A_DAY_H : slotH;
    }

    private double lateMinutes(ActRun act, Flight flight) {
        return (atH(flight.startS()) - slotH(act)) * 60;
    }

    private DayChart chart() {
        List<Span> planned = new ArrayList<>();
        List<Span> flown = new ArrayList<>();
        List<Curve> late = new ArrayList<>();
        for (int row = 0; row < day.acts().size(); row++) {
            ActRun act = day.acts().get(row);
            planned.add(new Span(row, slotH(act), slotH(act) + act.slotMinutes() / 60));
            for (Flight flight : act.flights()) {
                Double endS = flight.endS();
                flown.add(new Span(row, atH(flight.startS()), atH(endS == null ? flight.startS() + 1 : endS)));
                late.add(new Curve(act.title(), curve(act, flight)));
            }
        }
        List<Dot> told = new ArrayList<>();
        for (int row = 0; row < day.duties().size(); row++) {
            for (Told one : day.duties().get(row).told()) {
                told.add(new Dot(row, atH(one.atS()), one.said()));
            }
        }
        return new DayChart(
                day.acts().stream().map(ActRun::title).toList(),
                planned,
                flown,
                day.duties().stream().map(DutyRun::text).toList(),
                told,
                talk(),
                late);
    }

    /** How late each of its figures began, and the act itself. */
    private List<Point> curve(ActRun act, Flight flight) {
        double beganMinutes = lateMinutes(act, flight);
        List<Point> points = new ArrayList<>(List.of(new Point(atH(flight.startS()), beganMinutes)));
        for (Run run : debrief.runs()) {
            if (run.actId().equals(act.actId()) && run.sessionStartS() == flight.startS()) {
                for (FigureRun figure : run.figures()) {
                    Double startS = figure.startS();
                    Double lateS = figure.lateS();
                    if (startS != null && lateS != null && startS > 0) {
                        points.add(new Point(atH(flight.startS() + startS), beganMinutes + lateS / 60));
                    }
                }
            }
        }
        return points;
    }

    private List<Share> talk() {
        Flight span = day.span();
        Double endS = span == null ? null : span.endS();
        List<Share> shares = new ArrayList<>();
        if (span != null && endS != null) {
            for (double fromS = Math.floor(span.startS() / STRETCH_S) * STRETCH_S; fromS < endS; fromS += STRETCH_S) {
                double toS = fromS + STRETCH_S;
                shares.add(new Share(atH(fromS), atH(toS), 100 * day.talkS(fromS, toS) / STRETCH_S));
            }
        }
        return shares;
    }

    private List<String> table() {
        List<String> lines = new ArrayList<>(List.of(HEAD));
        for (ActRun act : day.acts()) {
            String planned = CLOCK.format(act.slot());
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
                        lateMinutes(act, flight),
                        endS == null ? null : Double.valueOf(day.talkPercent(flight.startS(), endS)),
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
            lines.add(line(
                    "talk",
                    talked.kind().name().toLowerCase(Locale.ROOT),
                    "",
                    clock(talked.fromS()),
                    clock(talked.toS()),
                    null,
                    null,
                    ""));
        }
        return lines;
    }

    private String clock(double sessionS) {
        return CLOCK.format(hour.apply(sessionS));
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
