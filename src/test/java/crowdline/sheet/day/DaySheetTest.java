package crowdline.sheet.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.DayRun.ActRun;
import crowdline.live.debrief.DayRun.Flight;
import crowdline.live.debrief.DayRun.Talked;
import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.DutyRun;
import crowdline.live.event.Source;
import crowdline.live.now.DutyNow.Told;
import crowdline.sheet.chart.ChartPainter;
import crowdline.sheet.chart.DayChart;
import crowdline.sheet.chart.DayChart.Dot;
import crowdline.sheet.chart.DayChart.Point;
import crowdline.sheet.chart.DayChart.Shape;
import crowdline.sheet.chart.DayChart.Share;
import crowdline.sheet.chart.DayChart.Span;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.RemarkKind;
import crowdline.storage.json.JsonOut;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A day whose session begins at 23:00: an act five minutes late, one cancelled after midnight, and two duties. */
class DaySheetTest {
    private static final DayRun DAY = new DayRun(
            List.of(
                    new ActRun("a", "Night, one", LocalTime.of(23, 30), 6, 0, false, List.of(new Flight(2100, 2400.0))),
                    new ActRun("b", "Night two", LocalTime.of(0, 15), 12, 600, true, List.of())),
            List.of(
                    new DutyRun(
                            "d",
                            "Thanks to the dairy.",
                            new DutyTimes(3, 10.0, null, null, null, true),
                            List.of(new Told(1800, true), new Told(2700, false))),
                    new DutyRun("r", "Mind the rope.", DutyTimes.ONCE, List.of())),
            List.of(new Talked(2100, 2160, RemarkKind.FACT), new Talked(2340, 2430, RemarkKind.DUTY)));

    private static LocalTime hour(double sessionS) {
        return LocalTime.of(23, 0).plusSeconds(Math.round(sessionS));
    }

    private static Debrief debrief(DayRun day) {
        Debrief.FigureRun late =
                new Debrief.FigureRun("f2", "loop", Debrief.Fate.FLOWN, 60.0, 10.0, 90.0, 12.0, 0, Source.HAND, true);
        return new Debrief(
                "Night Show",
                List.of(new Debrief.Run(
                        "a", "Night, one", "full", 1, 2100, 2400.0, 280.0, List.of(late), List.of(), List.of())),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                day);
    }

    /** Whoever adds a part to a debrief adds it to its values. */
    @Test
    void theValuesOfADayAreThePartsOfItsDebrief() {
        Debrief debrief = debrief(DAY);
        assertThat(JsonOut.of(DayValues.of(debrief, null))).isEqualTo(JsonOut.of(debrief));
    }

    @Test
    void theChartHasThePlanWhatWasFlownAndHowLateItWas() {
        DayChart chart = DayCharts.day(debrief(DAY), DaySheetTest::hour, null);
        assertThat(chart.bars().rows()).containsExactly("Night, one", "Night two");
        assertThat(chart.bars().planned()).containsExactly(new Span(0, 23.5, 23.6), new Span(1, 24.25, 24.45));
        assertThat(chart.bars().flown()).hasSize(1);
        assertThat(chart.bars().flown().get(0).fromH()).isCloseTo(23 + 35 / 60.0, within(1e-9));
        assertThat(chart.late().curves()).hasSize(1);
        assertThat(chart.late().curves().get(0).points())
                .extracting(Point::late)
                .satisfiesExactly(
                        began -> assertThat(began).isCloseTo(5, within(1e-9)),
                        then -> assertThat(then).isCloseTo(5.5, within(1e-9)));
    }

    @Test
    void theChartHasEachTimeADutyWasToldAndHowMuchWasTalk() {
        DayChart chart = DayCharts.day(debrief(DAY), DaySheetTest::hour, null);
        assertThat(chart.duties().rows()).containsExactly("Thanks to the dairy.", "Mind the rope.");
        assertThat(chart.duties().dots())
                .as("what is owed stands at the end")
                .containsExactly(
                        new Dot(0, 23.5, Shape.DISC),
                        new Dot(0, 23.75, Shape.RING),
                        new Dot(0, 23 + 2430 / 3600.0, Shape.CROSS),
                        new Dot(1, 23 + 2430 / 3600.0, Shape.CROSS));
        assertThat(chart.talk())
                .extracting(Share::percent)
                .satisfiesExactly(
                        first -> assertThat(first).isCloseTo(100 * 120 / 300.0, within(1e-9)),
                        then -> assertThat(then).isCloseTo(100 * 30 / 300.0, within(1e-9)));
    }

    @Test
    void theTableHasALineForEachActEachTimeADutyWasToldAndEachItIsOwed() {
        assertThat(DaySheet.table(debrief(DAY), DaySheetTest::hour))
                .containsExactly(
                        "what,name,planned,begins,ends,lateMinutes,percent,state",
                        "act,\"Night, one\",23:30:00,23:35:00,23:40:00,5.0,40,flown",
                        "act,\"Night two\",00:15:00,,,,,cancelled",
                        "duty,\"Thanks to the dairy.\",,23:30:00,,,,said",
                        "duty,\"Thanks to the dairy.\",,23:45:00,,,,shown",
                        "duty,\"Thanks to the dairy.\",,,,,,not-said",
                        "duty,\"Mind the rope.\",,,,,,not-said",
                        "talk,\"fact\",,23:35:00,23:36:00,,,",
                        "talk,\"duty\",,23:39:00,23:40:30,,,");
    }

    @Test
    void aDayOnWhichNothingHappenedIsDrawnToo() {
        DayChart empty = DayCharts.day(debrief(DayRun.NONE), DaySheetTest::hour, null);
        assertThat(colours(empty)).hasSizeGreaterThan(1);
        assertThat(DaySheet.table(debrief(DayRun.NONE), DaySheetTest::hour)).hasSize(1);
    }

    @Test
    void whatWasFlownIsSeenInItsColour() {
        int flown = 0xFF0A4A87;
        assertThat(colours(DayCharts.day(debrief(DAY), DaySheetTest::hour, null)))
                .contains(flown);
        assertThat(colours(DayCharts.day(debrief(DayRun.NONE), DaySheetTest::hour, null)))
                .doesNotContain(flown);
    }

    private static Set<Integer> colours(DayChart chart) {
        BufferedImage image = new BufferedImage(800, 500, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        new ChartPainter(chart, 11, new ChartPainter.Colours(0xFFFFFF, 0, 0xB8C0C8, 0xB8C0C8, 0x0A4A87))
                .paint(g, 0, 0, 800, 500);
        g.dispose();
        Set<Integer> colours = new HashSet<>();
        for (int x = 0; x < 800; x++) {
            for (int y = 0; y < 500; y++) {
                colours.add(image.getRGB(x, y));
            }
        }
        return colours;
    }
}
