package crowdline.sheet.chart;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;

/** The hours of the day along the foot of a chart. */
final class ClockAxis {
    /** Hours between two that are written. */
    private static final List<Double> UNITS =
            List.of(1 / 60.0, 2 / 60.0, 5 / 60.0, 10 / 60.0, 0.5, 1.0, 2.0, 3.0, 6.0, 12.0);
    /** A chart is not shorter, hours: five minutes. */
    private static final double LEAST_H = 1 / 12.0;
    /** What an hour takes with the room beside it, in sizes of the letters. */
    private static final double WIDE = 4.5;

    private ClockAxis() {}

    /** @param widthPx about as wide as it will be */
    static NumberAxis of(DayChart chart, ChartLook look, double widthPx) {
        NumberAxis hours = new NumberAxis();
        look.dress(hours);
        hours.setAutoRangeIncludesZero(false);
        double[] span = span(chart);
        double wide = span[1] - span[0];
        hours.setRange(span[0] - wide * 0.01, span[1] + wide * 0.01);
        double most = Math.max(2, widthPx / (look.sizePx() * WIDE));
        hours.setTickUnit(new NumberTickUnit(
                UNITS.stream().filter(unit -> wide / unit <= most).findFirst().orElse(24.0)));
        hours.setNumberFormatOverride(new Clock());
        return hours;
    }

    /** From the first hour to the last that anything is drawn at. */
    private static double[] span(DayChart chart) {
        DayChart.Beside beside = chart.beside();
        List<Double> all = Stream.of(
                        spans(chart.bars().planned()),
                        spans(chart.bars().flown()),
                        beside == null ? Stream.<Double>empty() : spans(beside.flown()),
                        shares(chart.talk()),
                        beside == null ? Stream.<Double>empty() : shares(beside.talk()),
                        chart.duties().dots().stream().map(DayChart.Dot::atH),
                        chart.line().dots().stream().map(DayChart.Dot::atH))
                .flatMap(each -> each)
                .sorted()
                .toList();
        if (all.isEmpty()) {
            return new double[] {0, 24};
        }
        double from = all.get(0);
        return new double[] {from, Math.max(all.get(all.size() - 1), from + LEAST_H)};
    }

    private static Stream<Double> spans(List<DayChart.Span> spans) {
        return spans.stream().flatMap(span -> Stream.of(span.fromH(), span.toH()));
    }

    private static Stream<Double> shares(List<DayChart.Share> shares) {
        return shares.stream().flatMap(share -> Stream.of(share.fromH(), share.toH()));
    }

    /** Hours of the day as a clock has them. */
    private static final class Clock extends NumberFormat {
        private static final long serialVersionUID = 1;

        @Override
        public StringBuffer format(double hours, StringBuffer to, FieldPosition at) {
            long minutes = Math.floorMod(Math.round(hours * 60), 24 * 60L);
            return to.append(String.format(Locale.ROOT, "%02d:%02d", minutes / 60, minutes % 60));
        }

        @Override
        public StringBuffer format(long hours, StringBuffer to, FieldPosition at) {
            return format((double) hours, to, at);
        }

        @Override
        public Number parse(String text, ParsePosition at) {
            throw new UnsupportedOperationException("nobody types into a chart");
        }
    }
}
