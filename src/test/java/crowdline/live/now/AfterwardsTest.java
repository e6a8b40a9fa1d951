package crowdline.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.state.Played;
import crowdline.patter.Candidate;
import crowdline.patter.PlanRequest;
import crowdline.show.RemarkPlace;
import crowdline.show.Show;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Figures f1 and f2 of ten seconds each; "That was five g." is of one of them. */
class AfterwardsTest {
    private static final ActTimes TIMES = new ActTimes(
            "a1", "full", List.of(new FigureTime("f1", 0, 10, 9, 11), new FigureTime("f2", 10, 10, 9, 11)));
    private static final Remark PAST =
            new Remark("past", RemarkKind.FACT, "That was five g.", "Five g.", null, null, 1, false);

    private static Show withPastOf(String figureId) {
        return new RemarkPlace("a1", figureId).with(SmallShow.show(), List.of(PAST));
    }

    private static PlanAhead ahead(Show show) {
        return new PlanAhead(show, text -> new SpokenTime(text.length(), 1, 99));
    }

    private static List<Candidate> past(PlanRequest request) {
        return request.candidates().stream()
                .filter(c -> c.remark().equals(PAST))
                .toList();
    }

    private static List<Candidate> past(Played played, double nowS) {
        return past(ahead(withPastOf("f1")).request(played.state, played.at(nowS), TIMES, Optional.empty()));
    }

    private static Played flying() {
        return new Played()
                .with(
                        new ShowEvent.ShowOpened(0, "Harbour Day", List.of("a1")),
                        new FlightEvent.ActChosen(1, "a1", "full", List.of("f1", "f2"), 60.0),
                        new FlightEvent.ActStarted(100));
    }

    @Test
    void whatTellsOfAFigureInThePastIsSaidWhileTheNextIsFlown() {
        assertThat(past(flying(), 104)).extracting(Candidate::figureId).containsExactly("f2");
        assertThat(past(flying().with(new FlightEvent.Stepped(110)), 111))
                .extracting(Candidate::figureId)
                .containsExactly("f2");
    }

    @Test
    void offThePlanItIsSaidAnywhereInEitherForm() {
        assertThat(past(flying().with(new FlightEvent.WentOffPlan(106)), 107))
                .singleElement()
                .satisfies(c -> {
                    assertThat(c.figureId()).isNull();
                    assertThat(c.full().seconds()).isEqualTo("That was five g.".length());
                    assertThat(Objects.requireNonNull(c.shortForm()).seconds()).isEqualTo("Five g.".length());
                });
    }

    @Test
    void onPaperWhatTheLastFigureLeavesIsSaidInIt() {
        Show show = withPastOf("f2");

        assertThat(past(ahead(show).wholeAct(show.acts().get(0), TIMES)))
                .extracting(Candidate::figureId)
                .containsExactly("f2");
    }
}
