package crowdline.sheet.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.live.debrief.DayRun;
import crowdline.live.debrief.DayRun.ActRun;
import crowdline.live.debrief.DayRun.Flight;
import crowdline.live.debrief.DayRun.Talked;
import crowdline.live.debrief.Debrief;
import crowdline.live.debrief.Debrief.Fate;
import crowdline.live.debrief.Debrief.FigureRun;
import crowdline.live.debrief.Debrief.Run;
import crowdline.live.debrief.DutyRun;
import crowdline.live.event.Source;
import crowdline.live.now.DutyNow.Told;
import crowdline.live.state.Announced;
import crowdline.live.state.IncidentSpan;
import crowdline.live.state.Listened;
import crowdline.live.state.Note;
import crowdline.sheet.chart.DayChart;
import crowdline.sheet.chart.DayChart.Dot;
import crowdline.sheet.chart.DayChart.Point;
import crowdline.sheet.chart.DayChart.Shape;
import crowdline.sheet.chart.DayChart.Share;
import crowdline.sheet.chart.DayChart.Span;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/**
 * A session that begins at 12:00 and has one act of 100 s at second 3600: a loop in its time, a roll 6 s late that is held for 4 s,
 * and a spin that is not flown.
 */
class DayChartsTest {
    private static final double LATE_S = 3600;
    private static final Debrief DAY = day(LATE_S, 6);

    private static Debrief day(double startS, double lateS) {
        List<FigureRun> figures = List.of(
                figure("f1", "loop", 0, 30.0, 0),
                figure("f2", "roll", 30, 30 + lateS, 4),
                new FigureRun("f3", "spin", Fate.NOT_FLOWN, 60.0, 20.0, null, null, 0, null, false));
        return new Debrief(
                "Day",
                List.of(new Run("a", "Solo", "full", 1, startS, startS + 100, 80.0, figures, List.of(), List.of())),
                List.of(),
                List.of(new IncidentSpan(startS + 500, null)),
                List.of(
                        new Announced.Page("lost", "Lost child", startS + 50, startS + 60, List.of("He waits.")),
                        new Announced.Page("out", "Evacuation", startS + 400, null, List.of())),
                List.of(new Note(startS + 70, "gusts", "a", "f2")),
                List.of(),
                new DayRun(
                        List.of(new ActRun(
                                "a",
                                "solo",
                                LocalTime.of(12, 55),
                                5,
                                0,
                                false,
                                List.of(new Flight(startS, startS + 100)))),
                        List.of(
                                new DutyRun(
                                        "d",
                                        "Thanks.",
                                        new DutyTimes(3, 10.0, null, null, null, true),
                                        List.of(new Told(startS + 10, true), new Told(startS - 100, false))),
                                new DutyRun("later", "Mind the rope.", DutyTimes.ONCE, List.of())),
                        List.of(
                                new Talked(startS - 100, startS - 90, RemarkKind.FACT),
                                new Talked(startS + 20, startS + 50, RemarkKind.FACT))));
    }

    private static FigureRun figure(String id, String name, double plannedS, double startS, double heldS) {
        boolean first = plannedS == 0;
        return new FigureRun(
                id, name, Fate.FLOWN, plannedS, 30.0, first ? 0.0 : startS, 30.0, heldS, Source.HAND, true);
    }

    private static LocalTime hour(double sessionS) {
        return LocalTime.NOON.plusNanos(Math.round(sessionS * 1e9));
    }

    private static DayChart act(@Nullable OtherDay other) {
        return DayCharts.run(DAY, DayChartsTest::hour, 0, other);
    }

    private static double h(double actS) {
        return 13 + actS / 3600;
    }

    private static void same(Span span, int row, double fromH, double toH) {
        assertThat(span.row()).isEqualTo(row);
        assertThat(span.fromH()).isCloseTo(fromH, within(1e-9));
        assertThat(span.toH()).isCloseTo(toH, within(1e-9));
    }

    @Test
    void anActHasARowForEachFigureAndTheTimeItWasHeldBelongsToIt() {
        DayChart chart = act(null);
        assertThat(chart.bars().rows()).containsExactly("loop", "roll", "spin");
        assertThat(chart.bars().planned())
                .satisfiesExactly(
                        s -> same(s, 0, h(0), h(30)), s -> same(s, 1, h(30), h(60)), s -> same(s, 2, h(60), h(80)));
        assertThat(chart.bars().flown()).satisfiesExactly(s -> same(s, 0, h(0), h(30)), s -> same(s, 1, h(36), h(70)));
    }

    @Test
    void whatWasSaidStandsInTheFiguresItWasSaidIn() {
        assertThat(act(null).bars().spoken())
                .satisfiesExactly(s -> same(s, 0, h(20), h(30)), s -> same(s, 1, h(36), h(50)));
        assertThat(DayCharts.day(DAY, DayChartsTest::hour, null).bars().spoken())
                .as("of the act, not of the gap before it")
                .satisfiesExactly(s -> same(s, 0, h(20), h(50)));
    }

    @Test
    void anActHasATalkOfEveryFifteenSecondsToItsEnd() {
        List<Share> talk = act(null).talk();
        assertThat(talk).hasSize(7);
        assertThat(talk.get(1).percent()).isCloseTo(100 * 10 / 15.0, within(1e-9));
        assertThat(talk.get(6).toH()).isCloseTo(h(100), within(1e-9));
    }

    @Test
    void anActIsLateInSecondsAndADayInMinutes() {
        assertThat(act(null).late().name()).isEqualTo("Late, s");
        assertThat(act(null).late().curves().get(0).points())
                .extracting(Point::late)
                .containsExactly(0.0, 6.0);
        assertThat(DayCharts.day(DAY, DayChartsTest::hour, null)
                        .late()
                        .curves()
                        .get(0)
                        .points())
                .extracting(Point::late)
                .satisfiesExactly(
                        began -> assertThat(began).isCloseTo(5, within(1e-6)),
                        then -> assertThat(then).isCloseTo(5.1, within(1e-6)));
    }

    @Test
    void theTimeLineHasAnnouncementsTheIncidentPageAndNotes() {
        DayChart day = DayCharts.day(DAY, DayChartsTest::hour, null);
        assertThat(day.line().rows()).containsExactly("Announcements", "Incident page", "Notes");
        assertThat(day.line().dots())
                .containsExactly(
                        new Dot(0, 12 + 3660 / 3600.0, Shape.DISC),
                        new Dot(0, 12 + 4000 / 3600.0, Shape.RING),
                        new Dot(1, 12 + 4100 / 3600.0, Shape.DISC),
                        new Dot(2, 12 + 3670 / 3600.0, Shape.DISC));
        assertThat(act(null).line().rows()).as("within the act").containsExactly("Announcements", "Notes");
        assertThat(act(null).line().dots()).hasSize(2);
        assertThat(act(null).duties().rows()).containsExactly("Thanks.");
        assertThat(act(null).duties().dots()).hasSize(1);
    }

    @Test
    void aSessionThatBeginsAfterMidnightMeasuresAnActOfTheEveningBeforeAgainstItsOwnSlot() {
        ActRun night = new ActRun("n", "Night", LocalTime.of(23, 55), 5, 0, false, List.of(new Flight(60, 120.0)));
        DayRun run = new DayRun(List.of(night), List.of(), List.of());
        Debrief debrief = new Debrief("Day", List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), run);
        DayChart chart = DayCharts.day(debrief, s -> LocalTime.MIDNIGHT.plusSeconds(Math.round(s)), null);
        assertThat(chart.late().curves().get(0).points().get(0).late()).isCloseTo(6, within(1e-6));
    }

    @Test
    void anotherDayStandsInTheRowsOfThisOne() {
        OtherDay other = new OtherDay("last year", day(7200, 9), DayChartsTest::hour, List.of());
        DayChart.Beside day = DayCharts.day(DAY, DayChartsTest::hour, other).beside();
        assertThat(day).isNotNull();
        assertThat(day.flown()).satisfiesExactly(s -> same(s, 0, 14, 14 + 100 / 3600.0));
        DayChart.Beside act = act(other).beside();
        assertThat(act).isNotNull();
        assertThat(act.flown())
                .as("from the beginning of the act on")
                .satisfiesExactly(s -> same(s, 0, h(0), h(30)), s -> same(s, 1, h(39), h(73)));
        assertThat(act.late().get(0).points()).extracting(Point::late).containsExactly(0.0, 9.0);
    }

    @Test
    void theWordsTellHowTalkWasMeasured() {
        assertThat(words(new Listened.Span(0, 1e6)))
                .anyMatch(s -> s.contains("quiet 70%, heard by the microphone; the longest"));
        assertThat(words(new Listened.Span(3600, 3650)))
                .anyMatch(s -> s.contains("quiet 70%, 50% of the time heard by the microphone, the rest by keys;"));
    }

    /** Who never pressed S has talked all the same. */
    @Test
    void whereNothingIsMarkedNothingIsToldOfTalk() {
        DayRun silent = new DayRun(DAY.day().acts(), DAY.day().duties(), List.of());
        Debrief debrief = new Debrief("Day", DAY.runs(), List.of(), List.of(), List.of(), List.of(), List.of(), silent);
        assertThat(DayWords.day(debrief, DayChartsTest::hour))
                .anyMatch(s -> s.endsWith("How much was talked is not known: nothing is marked as said."))
                .noneMatch(s -> s.contains("quiet"));
        assertThat(DaySheet.table(debrief, DayChartsTest::hour)).anyMatch(s -> s.endsWith(",,flown"));
        DayRun heard = new DayRun(DAY.day().acts(), DAY.day().duties(), List.of(), List.of(new Listened.Span(0, 1e6)));
        assertThat(DayWords.day(
                        new Debrief("Day", DAY.runs(), List.of(), List.of(), List.of(), List.of(), List.of(), heard),
                        DayChartsTest::hour))
                .as("the microphone heard nothing")
                .anyMatch(s -> s.contains("quiet 100%, heard by the microphone"));
    }

    private static List<String> words(Listened.Span measured) {
        DayRun heard =
                new DayRun(DAY.day().acts(), DAY.day().duties(), DAY.day().talk(), List.of(measured));
        return DayWords.day(
                new Debrief("Day", DAY.runs(), List.of(), List.of(), List.of(), List.of(), List.of(), heard),
                DayChartsTest::hour);
    }

    @Test
    void theWordsTellTalkAndQuietLatenessAndDuties() {
        assertThat(DayWords.day(DAY, DayChartsTest::hour))
                .contains(
                        "Solo: planned for 12:55, began 13:00, 5 min late. Talk 30%, quiet 70%, going by the"
                                + " keys; the longest quiet lasted 0:50, from 13:00:50.",
                        "Duty: Said 1 of 3 times, shown once and not marked (13:00, shown 12:58): Thanks.",
                        "Duty: Not said: Mind the rope.");
        assertThat(DayWords.run(DAY, DayChartsTest::hour, 0))
                .contains("Latest: roll, 6 s after its time.", "Duty said 13:00:10: Thanks.");
    }
}
