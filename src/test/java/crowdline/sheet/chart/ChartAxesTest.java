package crowdline.sheet.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.sheet.chart.DayChart.Curve;
import crowdline.sheet.chart.DayChart.Point;
import crowdline.sheet.chart.DayChart.Span;
import java.util.ArrayList;
import java.util.List;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.data.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The axes of a chart: what they are called, how far they go, and what is written along them. */
class ChartAxesTest {
    private static final ChartLook LOOK =
            new ChartLook(12, 20, new ChartPainter.Colours(0xFFFFFF, 0, 0xCCCCCC, 0x999999, 0x003399));

    private static DayChart chart(double fromH, double toH, double... late) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < late.length; i++) {
            points.add(new Point(fromH + i * 0.01, late[i]));
        }
        return new DayChart(
                new DayChart.Bars("Acts", List.of("Solo"), List.of(new Span(0, fromH, toH)), List.of(), List.of()),
                new DayChart.Dots("Duties", List.of(), List.of()),
                new DayChart.Dots("Line", List.of(), List.of()),
                List.of(),
                new DayChart.Curves("Late, min", List.of(new Curve("Solo", points))),
                null);
    }

    private static NumberAxis late(double... late) {
        ChartPainter painter = new ChartPainter(chart(14.5, 15, late), 12, LOOK.colours());
        return (NumberAxis) painter.late(LOOK).getRangeAxis();
    }

    private static NumberAxis hours(double fromH, double toH, double widthPx) {
        return ClockAxis.of(chart(fromH, toH, 0), LOOK, widthPx);
    }

    @Test
    void howLateIsNamedWithItsUnitAndWrittenInWholeNumbers() {
        NumberAxis axis = late(0, 3, 7);
        assertThat(axis.getLabel()).isEqualTo("Late, min");
        assertThat(axis.getStandardTickUnits().getCeilingTickUnit(0.3).getSize())
                .isEqualTo(1);
    }

    @Test
    void onTimeIsAlwaysOnIt() {
        Range late = late(3, 7).getRange();
        assertThat(late.getLowerBound()).isLessThanOrEqualTo(0);
        assertThat(late.getUpperBound()).isBetween(7.0, 8.0);
        Range early = late(-20, -5).getRange();
        assertThat(early.getLowerBound()).isBetween(-22.0, -20.0);
        assertThat(early.getUpperBound()).isGreaterThanOrEqualTo(0);
    }

    @Test
    void nearlyOnTimeIsNoMountain() {
        assertThat(late(0, 0.1, 0.05).getRange().getLength()).isGreaterThanOrEqualTo(2);
    }

    @Test
    void theHoursGoFromTheFirstToTheLastThatIsDrawn() {
        Range day = hours(14.5, 16, 600).getRange();
        assertThat(day.getLowerBound()).isCloseTo(14.5, within(0.02)).isLessThan(14.5);
        assertThat(day.getUpperBound()).isCloseTo(16, within(0.02)).isGreaterThan(16);
        assertThat(hours(14.5, 14.501, 600).getRange().getLength())
                .as("five minutes at least")
                .isGreaterThan(1 / 12.0);
    }

    @ParameterizedTest
    @CsvSource({"600, 10", "300, 30", "120, 60", "1200, 5"})
    void asManyHoursAreWrittenAsHaveRoom(double widthPx, double minutes) {
        assertThat(hours(14.5, 16, widthPx).getTickUnit().getSize() * 60).isCloseTo(minutes, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"14.5, 14:30", "24.25, 00:15", "9, 09:00", "23.9999, 00:00"})
    void anHourIsWrittenAsAClockHasIt(double hour, String said) {
        assertThat(hours(9, 25, 600).getNumberFormatOverride().format(hour)).isEqualTo(said);
    }
}
