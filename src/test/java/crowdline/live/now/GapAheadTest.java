package crowdline.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.SlotTime;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Played;
import crowdline.patter.Gap;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Planner;
import crowdline.show.Act;
import crowdline.show.Gaps;
import crowdline.show.HarbourDay;
import crowdline.show.Piece;
import crowdline.show.Show;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.speech.pace.SpokenTime;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The session begins at 13:50; the acts have their slots at 14:00 and 14:20. Everything takes four seconds to say. */
class GapAheadTest {
    private static final Instant ZERO = Instant.parse("2027-06-01T13:50:00Z");
    private static final ZoneId UTC = ZoneId.of("UTC");
    private static final ActTimes TIMES = new ActTimes(
            "first",
            "full",
            List.of(
                    new FigureTime("loop", 0, 10, 9, 11),
                    new FigureTime("roll", 10, 8, 7, 9),
                    new FigureTime("spin", 18, 20, 19, 21),
                    new FigureTime("pass", 38, 6, 5, 7)));

    private static final Piece INTERVIEW = new Piece(
            "talk",
            "Interview",
            null,
            List.of(new Piece.Part("Who are you?", 30), new Piece.Part("And why?", 20), new Piece.Part("Thanks.", 0)));
    private static final Piece TO_SECOND =
            new Piece("second", "Who comes next", "second", List.of(new Piece.Part("Now for the second.", 0)));

    private static final Show SHOW = HarbourDay.of(
                    List.of(act("first", LocalTime.of(14, 0)), act("second", LocalTime.of(14, 20))),
                    Remark.of("fact", RemarkKind.FACT, "It is dry."),
                    Remark.of("joke", RemarkKind.FILLER, "The one about the hangar."),
                    Remark.of("duty", RemarkKind.DUTY, "Thank you."))
            .withGaps(new Gaps(50, List.of(TO_SECOND, INTERVIEW)));

    private final PlanAhead ahead = new PlanAhead(SHOW, text -> new SpokenTime(4, 3, 5));

    private static Act act(String id, LocalTime slot) {
        return HarbourDay.act(
                id,
                slot,
                Played.FIGURES.stream().map(figure -> Figure.of(figure, "loop")).toList(),
                Remark.of(id + "-say", RemarkKind.FACT, "A word on the act."));
    }

    private static LiveEvent chosen(double atS, String id, int minute) {
        return new FlightEvent.ActChosen(
                atS,
                id,
                "full",
                Played.FIGURES,
                List.of(),
                null,
                new SlotTime.OnClock(SHOW.date().atTime(14, minute), UTC));
    }

    private static Played opened() {
        return new Played()
                .with(new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first", "second")), chosen(1, "first", 0));
    }

    /** The first act from 600 s to 700 s. */
    private static Played between() {
        return opened().with(new FlightEvent.ActStarted(600), new FlightEvent.ActEnded(700));
    }

    private PlanRequest request(Played played, double nowS) {
        LiveNow now = LiveNow.of(played.state, Played.DURATIONS, nowS, ZERO.plusMillis(Math.round(nowS * 1000)));
        return ahead.request(played.state, now, TIMES, Optional.of(Plan.EMPTY));
    }

    private Gap gap(Played played, double nowS) {
        Gap gap = request(played, nowS).gap();
        assertThat(gap).isNotNull();
        return gap;
    }

    private List<String> planned(Played played, double nowS) {
        return new Planner()
                .plan(request(played, nowS)).placed().stream()
                        .map(p -> p.remarkId() + " " + p.startS())
                        .toList();
    }

    @Test
    void aGapEndsWhereTheCallOfTheNextActMayBegin() {
        assertThat(gap(opened(), 10).endS()).isEqualTo(592);
        assertThat(gap(between(), 710).endS()).isEqualTo(1792);
        assertThat(gap(between().with(chosen(720, "second", 20)), 730).endS()).isEqualTo(1792);
    }

    @Test
    void aDelayMakesItLonger() {
        Played later = between().with(new ShowEvent.ActsMoved(705, List.of("second"), 720));
        assertThat(gap(later, 710).endS()).isEqualTo(2510);
        later.with(new ShowEvent.ActsMoved(706, List.of("second"), 1200));
        assertThat(gap(later, 710).endS()).as("planned as it goes").isEqualTo(710 + GapAhead.FURTHEST_S - 0);
        Played sooner = between().with(new ShowEvent.ActsMoved(705, List.of("second"), -1080));
        assertThat(gap(sooner, 710).endS()).isEqualTo(712);
        sooner.with(new ShowEvent.ActsMoved(706, List.of("second"), -20));
        assertThat(gap(sooner, 710).endS()).as("nobody knows when").isEqualTo(770);
    }

    @Test
    void inTheAirAndAfterTheShowThereIsNone() {
        assertThat(request(opened().with(new FlightEvent.ActStarted(600)), 610).gap())
                .isNull();
        assertThat(request(between().with(new ShowEvent.ShowEnded(720)), 730).gap())
                .isNull();
    }

    @Test
    void afterTheLastActItIsOpen() {
        Played last = between()
                .with(chosen(720, "second", 20), new FlightEvent.ActStarted(800), new FlightEvent.ActEnded(900));
        assertThat(gap(last, 910).endS()).isEqualTo(970);
    }

    @Test
    void whatLeadsUpToAnActIsOnlyForTheGapBeforeIt() {
        assertThat(gap(opened(), 10).pieces()).extracting(Gap.Piece::last).containsExactly(false);
        assertThat(gap(between(), 710).pieces()).extracting(Gap.Piece::last).containsExactly(true, false);
    }

    /**
     * 8.6 s of duty and of the act that is over, as much quiet, 34.6 s of question, answer and breath, then 24.6 s, then 4 s; the
     * next act is introduced at 14:19:47.5.
     */
    @Test
    void theGapIsPlannedToItsEnd() {
        assertThat(planned(opened().with(new FlightEvent.ActStarted(600), new FlightEvent.ActEnded(700)), 700))
                .containsSubsequence(
                        "duty 700.0",
                        "first-say 704.6",
                        "talk (1) 717.2",
                        "talk (2) 751.8",
                        "talk (3) 776.4",
                        "second (1) 1787.5");
    }

    @Test
    void longBeforeItsSlotNothingOfTheActIsSaidAndTheShowsOwnFactsAre() {
        assertThat(planned(opened(), 10))
                .anyMatch(p -> p.startsWith("fact "))
                .noneMatch(p -> p.startsWith("first-say"));
        assertThat(planned(opened(), 430)).anyMatch(p -> p.startsWith("first-say"));
    }

    @Test
    void whatWasSaidLastIsFollowedByAsMuchQuiet() {
        Played said = between()
                .with(
                        new TalkEvent.RemarkSaid(710, "joke", RemarkForm.FULL),
                        new TalkEvent.RemarkShown(715, "fact", RemarkForm.FULL, 711));
        assertThat(gap(said, 716).lastTalk()).isEqualTo(new Gap.Stretch(706, 715));
        assertThat(gap(between(), 716).lastTalk()).isNull();
    }

    @Test
    void aPieceIsGoneOnWithInTheNextGapAndNeverBegunAgain() {
        Played played = between()
                .with(
                        new TalkEvent.RemarkSaid(740, "talk (1)", RemarkForm.FULL),
                        new TalkEvent.RemarkSaid(742, "duty", RemarkForm.FULL),
                        chosen(750, "second", 20),
                        new FlightEvent.ActStarted(760),
                        new FlightEvent.ActEnded(900));
        assertThat(planned(played, 910)).startsWith("second-say 910.0", "talk (2) 914.6", "talk (3) 939.2");
        played.with(
                new TalkEvent.RemarkSaid(940, "talk (2)", RemarkForm.FULL),
                new TalkEvent.RemarkSaid(945, "talk (3)", RemarkForm.FULL));
        assertThat(planned(played, 946)).noneMatch(p -> p.startsWith("talk"));
    }

    /** What nobody hears is not used up: the show is opened at ten for two o'clock. */
    @Test
    void longBeforeTheFirstActNothingIsPlanned() {
        LiveNow early = LiveNow.of(opened().state, Played.DURATIONS, 5, Instant.parse("2027-06-01T10:00:00Z"));
        PlanRequest request = ahead.request(opened().state, early, TIMES, Optional.of(Plan.EMPTY));
        assertThat(request.gap()).isNull();
        assertThat(request.alreadySaid()).contains("duty");
        assertThat(new Planner().plan(request).placed()).isEmpty();
    }
}
