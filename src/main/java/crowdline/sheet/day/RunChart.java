package crowdline.sheet.day;

import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.sheet.chart.DayChart;
import crowdline.sheet.chart.DayChart.Bars;
import crowdline.sheet.chart.DayChart.Beside;
import crowdline.sheet.chart.DayChart.Curve;
import crowdline.sheet.chart.DayChart.Curves;
import crowdline.sheet.chart.DayChart.Point;
import crowdline.sheet.chart.DayChart.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** The chart of an act flown. Another day's flight of it is set beside from its beginning on, whatever the hour was. */
final class RunChart {
    private final DayCharts charts;
    private final DayHours hours;
    private final Run run;

    RunChart(Debrief debrief, DayHours hours, Run run) {
        this.hours = hours;
        this.run = run;
        charts = new DayCharts(debrief, hours);
    }

    DayChart chart(@Nullable OtherDay other) {
        List<Span> planned = new ArrayList<>();
        List<Span> flown = new ArrayList<>();
        List<Span> spoken = new ArrayList<>();
        for (int row = 0; row < run.figures().size(); row++) {
            FigureRun figure = run.figures().get(row);
            Double plannedStartS = figure.plannedStartS();
            Double plannedS = figure.plannedS();
            if (plannedStartS != null && plannedS != null) {
                planned.add(span(row, plannedStartS, plannedS));
            }
            int of = row;
            flown(figure, row, hours, run).ifPresent(span -> {
                flown.add(span);
                spoken.addAll(charts.spoken(of, sessionS(span.fromH()), sessionS(span.toH())));
            });
        }
        double endS = end();
        return new DayChart(
                new Bars("Figures", run.figures().stream().map(FigureRun::name).toList(), planned, flown, spoken),
                charts.duties(run.sessionStartS(), endS),
                charts.line(run.sessionStartS(), endS),
                charts.talkOfAct(run.sessionStartS(), endS),
                new Curves("Late, s", List.of(new Curve(run.title(), late(run, hours)))),
                other == null
                        ? null
                        : same(run, other.debrief())
                                .map(then -> beside(then, other))
                                .orElse(null));
    }

    /** The flight of another day that is set beside this one: of the same act and variant, the same in number if there is one. */
    static Optional<Run> same(Run run, Debrief other) {
        List<Run> all = other.runs().stream()
                .filter(then ->
                        then.actId().equals(run.actId()) && then.variant().equals(run.variant()))
                .toList();
        return all.stream()
                .filter(then -> then.run() == run.run())
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    private Beside beside(Run then, OtherDay other) {
        DayHours moved = new DayHours(hours.at(run.sessionStartS()) - then.sessionStartS() / DayHours.HOUR_S);
        List<String> ids = run.figures().stream().map(FigureRun::figureId).toList();
        List<Span> flown = then.figures().stream()
                .filter(figure -> ids.contains(figure.figureId()))
                .flatMap(figure -> flown(figure, ids.indexOf(figure.figureId()), moved, then).stream())
                .toList();
        RunChart chart = new RunChart(other.debrief(), moved, then);
        return new Beside(
                flown,
                chart.charts.talkOfAct(then.sessionStartS(), chart.end()),
                List.of(new Curve(then.title(), late(then, moved))));
    }

    /** When it ended; of one in the air, when its last figure that is known did. */
    private double end() {
        Double endS = run.sessionEndS();
        return endS != null
                ? endS
                : run.figures().stream()
                        .flatMap(figure -> flown(figure, 0, hours, run).stream())
                        .mapToDouble(span -> sessionS(span.toH()))
                        .max()
                        .orElse(run.sessionStartS() + 1);
    }

    private double sessionS(double atH) {
        return (atH - hours.zeroH()) * DayHours.HOUR_S;
    }

    private Span span(int row, double startS, double lastsS) {
        double fromS = run.sessionStartS() + startS;
        return new Span(row, hours.at(fromS), hours.at(fromS + lastsS));
    }

    private static Optional<Span> flown(FigureRun figure, int row, DayHours hours, Run run) {
        Double startS = figure.startS();
        Double flownS = figure.flownS();
        if (startS == null) {
            return Optional.empty();
        }
        double fromS = run.sessionStartS() + startS;
        double lastsS = flownS == null ? 1 : flownS + figure.heldS();
        return Optional.of(new Span(row, hours.at(fromS), hours.at(fromS + lastsS)));
    }

    private static List<Point> late(Run run, DayHours hours) {
        List<Point> points = new ArrayList<>();
        for (FigureRun figure : run.figures()) {
            Double startS = figure.startS();
            Double lateS = figure.lateS();
            if (startS != null && lateS != null) {
                points.add(new Point(hours.at(run.sessionStartS() + startS), lateS));
            }
        }
        points.sort((a, b) -> Double.compare(a.atH(), b.atH()));
        return points;
    }
}
