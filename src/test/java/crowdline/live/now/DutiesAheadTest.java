package crowdline.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Played;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.show.Act;
import crowdline.show.HarbourDay;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the plan is asked for of the duties of the day. */
class DutiesAheadTest {
    private static final ActTimes TIMES = new ActTimes(
            "first",
            "full",
            List.of(
                    new FigureTime("loop", 0, 10, 9, 11),
                    new FigureTime("roll", 10, 8, 7, 9),
                    new FigureTime("spin", 18, 20, 19, 21),
                    new FigureTime("pass", 38, 6, 5, 7)));

    private static final Act ACT = HarbourDay.act(
            "first",
            LocalTime.NOON,
            Played.FIGURES.stream().map(id -> Figure.of(id, "loop")).toList(),
            Remark.of("act-say", RemarkKind.FACT, "A word on the act."));

    /** The show's duty is asked for twice, ten minutes apart. */
    private static PlanAhead ahead(boolean inActs) {
        Remark duty = Remark.of("sponsor", RemarkKind.DUTY, "Thank you.")
                .asked(new DutyTimes(2, 10.0, null, null, null, inActs));
        Show show = HarbourDay.of(List.of(ACT), duty);
        return new PlanAhead(show, text -> new SpokenTime(4, 3, 5));
    }

    private static PlanRequest request(PlanAhead ahead, Played played, double nowS) {
        return ahead.request(played.state, played.at(nowS), TIMES, Optional.of(Plan.EMPTY));
    }

    private static List<String> candidates(PlanRequest request) {
        return request.candidates().stream().map(c -> c.remark().id()).toList();
    }

    private static TalkEvent said(double atS, String id) {
        return new TalkEvent.RemarkSaid(atS, id, RemarkForm.FULL);
    }

    @Test
    void aDutyOfTheDayIsWantedAgainInTheSameActOnceItIsDue() {
        Played played = Played.flying().with(said(101, "sponsor"));
        PlanAhead ahead = ahead(true);
        assertThat(request(ahead, played, 700.9).alreadySaid()).contains("sponsor");
        assertThat(request(ahead, played, 701).alreadySaid()).doesNotContain("sponsor");
        played.with(said(701, "sponsor"));
        assertThat(request(ahead, played, 5000).alreadySaid()).contains("sponsor");
    }

    @Test
    void aDutyBetweenActsIsNotPlannedInOne() {
        PlanAhead ahead = ahead(false);
        assertThat(request(ahead, Played.flying(), 104).alreadySaid()).containsExactly("sponsor");
        Played over = Played.flying().with(new FlightEvent.ActEnded(150));
        assertThat(request(ahead, over, 151).alreadySaid()).doesNotContain("sponsor");
    }

    @Test
    void longBeforeItsSlotAnActLeavesTheTimeToTheDutiesOfTheDay() {
        Played early = new Played()
                .with(
                        new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first", "second")),
                        new FlightEvent.ActChosen(1, "first", "full", Played.FIGURES, 4000.0));
        assertThat(candidates(request(ahead(false), early, 5))).containsExactly("sponsor");
    }

    @Test
    void onPaperAnActHasNoDutiesThatAreForTheGaps() {
        assertThat(candidates(ahead(false).wholeAct(ACT, TIMES))).doesNotContain("sponsor");
        assertThat(candidates(ahead(true).wholeAct(ACT, TIMES))).contains("sponsor");
    }
}
