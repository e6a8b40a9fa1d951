package crowdline.sheet.day;

import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.DayRun.ActRun;
import crowdline.live.debrief.DayRun.Flight;
import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.DutyRun;
import crowdline.live.now.DutyNow.Told;
import crowdline.live.state.Announced;
import crowdline.sheet.chart.DayChart;
import crowdline.sheet.chart.DayChart.Bars;
import crowdline.sheet.chart.DayChart.Beside;
import crowdline.sheet.chart.DayChart.Curve;
import crowdline.sheet.chart.DayChart.Curves;
import crowdline.sheet.chart.DayChart.Dot;
import crowdline.sheet.chart.DayChart.Dots;
import crowdline.sheet.chart.DayChart.Point;
import crowdline.sheet.chart.DayChart.Shape;
import crowdline.sheet.chart.DayChart.Share;
import crowdline.sheet.chart.DayChart.Span;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;

/** The charts of a debrief: the day, with a row for each act, and each act flown, with a row for each figure. */
public final class DayCharts {
    /** Talk is told for stretches of this, seconds: of a day, and of an act. */
    private static final double STRETCH_S = 300;

    private static final double SHORT_STRETCH_S = 15;

    private final Debrief debrief;
    private final DayRun day;
    private final DayHours hours;

    DayCharts(Debrief debrief, DayHours hours) {
        this.debrief = debrief;
        day = debrief.day();
        this.hours = hours;
    }

    /**
     * The day.
     *
     * @param hour the clock at the venue at a second of the session
     * @param other another day to set beside it, or null
     */
    public static DayChart day(Debrief debrief, DoubleFunction<LocalTime> hour, @Nullable OtherDay other) {
        DayHours hours = DayHours.of(hour);
        DayCharts charts = new DayCharts(debrief, hours);
        return charts.day(other == null ? null : charts.beside(other));
    }

    /**
     * An act flown.
     *
     * @param run which of those flown, in their order, from 0
     */
    public static DayChart run(Debrief debrief, DoubleFunction<LocalTime> hour, int run, @Nullable OtherDay other) {
        return new RunChart(debrief, DayHours.of(hour), debrief.runs().get(run)).chart(other);
    }

    private DayChart day(@Nullable Beside beside) {
        List<Span> planned = new ArrayList<>();
        List<Span> flown = new ArrayList<>();
        List<Span> spoken = new ArrayList<>();
        for (int row = 0; row < day.acts().size(); row++) {
            ActRun act = day.acts().get(row);
            planned.add(new Span(row, hours.slot(act), hours.slot(act) + act.slotMinutes() / 60));
            for (Flight flight : act.flights()) {
                flown.add(span(row, flight.startS(), end(flight)));
                spoken.addAll(spoken(row, flight.startS(), end(flight)));
            }
        }
        Flight span = day.span();
        return new DayChart(
                new Bars("Acts", day.acts().stream().map(ActRun::title).toList(), planned, flown, spoken),
                duties(span),
                line(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY),
                span == null ? List.of() : talk(span.startS(), end(span), STRETCH_S),
                new Curves("Late, min", late()),
                beside);
    }

    /** What somebody said while something was flown. */
    List<Span> spoken(int row, double fromS, double toS) {
        return day.talk().stream()
                .filter(talked -> talked.fromS() < toS && talked.toS() > fromS)
                .map(talked -> span(row, Math.max(fromS, talked.fromS()), Math.min(toS, talked.toS())))
                .toList();
    }

    private Span span(int row, double fromS, double toS) {
        return new Span(row, hours.at(fromS), hours.at(toS));
    }

    /** Of one in the air nobody knows the end. */
    private static double end(Flight flight) {
        Double endS = flight.endS();
        return endS == null ? flight.startS() + 1 : endS;
    }

    /** How late every flight was as it began, and each of its figures. */
    private List<Curve> late() {
        List<Curve> curves = new ArrayList<>();
        for (ActRun act : day.acts()) {
            for (Flight flight : act.flights()) {
                double beganMinutes = lateMinutes(act, flight);
                List<Point> points = new ArrayList<>();
                points.add(new Point(hours.at(flight.startS()), beganMinutes));
                debrief.runs().stream()
                        .filter(run -> run.actId().equals(act.actId()) && run.sessionStartS() == flight.startS())
                        .flatMap(run -> run.figures().stream())
                        .forEach(figure -> {
                            Double startS = figure.startS();
                            Double lateS = figure.lateS();
                            if (startS != null && lateS != null && startS > 0) {
                                points.add(new Point(hours.at(flight.startS() + startS), beganMinutes + lateS / 60));
                            }
                        });
                curves.add(new Curve(act.title(), points));
            }
        }
        return curves;
    }

    double lateMinutes(ActRun act, Flight flight) {
        return (hours.at(flight.startS()) - hours.slot(act)) * 60;
    }

    /** Each time a duty was told; what is owed stands where it was asked for, or at the end of the day. */
    private Dots duties(@Nullable Flight span) {
        List<Dot> dots = new ArrayList<>();
        for (int row = 0; row < day.duties().size(); row++) {
            DutyRun duty = day.duties().get(row);
            for (Told one : duty.told()) {
                dots.add(dot(row, one.atS(), one.said() ? Shape.DISC : Shape.RING));
            }
            if (duty.missing() > 0 && span != null) {
                double endH = hours.at(end(span));
                LocalTime by = duty.asked().by();
                double owedH = by == null ? endH : Math.min(endH, DayHours.near(by, endH));
                dots.add(new Dot(row, Math.max(hours.at(span.startS()), owedH), Shape.CROSS));
            }
        }
        return new Dots("Duties", day.duties().stream().map(DutyRun::text).toList(), dots);
    }

    /** Each time a duty was told between two moments, in rows for those that were. */
    Dots duties(double fromS, double toS) {
        List<String> rows = new ArrayList<>();
        List<Dot> dots = new ArrayList<>();
        for (DutyRun duty : day.duties()) {
            List<Told> told = duty.told().stream()
                    .filter(one -> one.atS() >= fromS && one.atS() <= toS)
                    .toList();
            if (!told.isEmpty()) {
                told.forEach(one -> dots.add(dot(rows.size(), one.atS(), one.said() ? Shape.DISC : Shape.RING)));
                rows.add(duty.text());
            }
        }
        return new Dots("Duties", rows, dots);
    }

    /** Announcements, incidents and notes between two moments. */
    Dots line(double fromS, double toS) {
        List<String> rows = new ArrayList<>();
        List<Dot> dots = new ArrayList<>();
        List<Dot> announced = debrief.announcements().stream()
                .map(page -> dot(0, at(page), page.readAtS() == null ? Shape.RING : Shape.DISC))
                .toList();
        List<Dot> incidents = debrief.incidents().stream()
                .map(incident -> dot(0, incident.openedAtS(), Shape.DISC))
                .toList();
        List<Dot> notes = debrief.notes().stream()
                .map(note -> dot(0, note.atS(), Shape.DISC))
                .toList();
        List<List<Dot>> all = List.of(announced, incidents, notes);
        List<String> names = List.of("Announcements", "Incident page", "Notes");
        for (int i = 0; i < all.size(); i++) {
            int row = rows.size();
            List<Dot> here = all.get(i).stream()
                    .filter(dot -> dot.atH() >= hours.at(fromS) && dot.atH() <= hours.at(toS))
                    .map(dot -> new Dot(row, dot.atH(), dot.shape()))
                    .toList();
            if (!here.isEmpty()) {
                rows.add(names.get(i));
                dots.addAll(here);
            }
        }
        return new Dots("Also", rows, dots);
    }

    private static double at(Announced.Page page) {
        Double readAtS = page.readAtS();
        return readAtS == null ? page.shownAtS() : readAtS;
    }

    private Dot dot(int row, double atS, Shape shape) {
        return new Dot(row, hours.at(atS), shape);
    }

    private List<Share> talk(double fromS, double toS, double stretchS) {
        List<Share> shares = new ArrayList<>();
        for (double from = Math.floor(fromS / stretchS) * stretchS; from < toS; from += stretchS) {
            double to = from + stretchS;
            shares.add(new Share(hours.at(from), hours.at(to), 100 * day.talkS(from, to) / stretchS));
        }
        return shares;
    }

    /** Of an act, from its beginning to its end; the last stretch may be shorter. */
    List<Share> talkOfAct(double fromS, double toS) {
        List<Share> shares = new ArrayList<>();
        for (double from = fromS; from < toS; from += SHORT_STRETCH_S) {
            double to = Math.min(toS, from + SHORT_STRETCH_S);
            shares.add(new Share(hours.at(from), hours.at(to), day.talkPercent(from, to)));
        }
        return shares;
    }

    private Beside beside(OtherDay other) {
        DayHours then = DayHours.of(other.hour());
        DayHours moved = new DayHours(then.zeroH() + hours.shift(then));
        DayChart chart = new DayCharts(other.debrief(), moved).day((Beside) null);
        List<String> ids = day.acts().stream().map(ActRun::actId).toList();
        List<ActRun> others = other.debrief().day().acts();
        return new Beside(
                chart.bars().flown().stream()
                        .map(span -> new Span(ids.indexOf(others.get(span.row()).actId()), span.fromH(), span.toH()))
                        .filter(span -> span.row() >= 0)
                        .toList(),
                chart.talk(),
                chart.late().curves());
    }
}
