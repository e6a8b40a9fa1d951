package crowdline.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.patter.Candidate;
import crowdline.patter.PatterRules;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.patter.PlanRequest;
import crowdline.patter.Speaking;
import crowdline.patter.SpokenLength;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TakenAsSaidTest {
    private static final Plan PLAN =
            new Plan(List.of(placed("first", 10, 14), placed("second", 20, 25)), List.of(), 0, 0, true);

    private final LiveState state = act(LiveState.initial(), 0, "one");
    private final TakenAsSaid aired = new TakenAsSaid();

    @Test
    void whatStoodOnTheScreenInItsTimeIsNotPlannedAgain() {
        aired.follow(state, PLAN, 15, id -> false);
        assertThat(aired.request(request()).alreadySaid()).containsExactly("first");
    }

    @Test
    void whatIsOnTheScreenNowCountsAsBeingSaid() {
        aired.follow(state, PLAN, 21, id -> false);
        assertThat(aired.request(request()).speaking()).isEqualTo(new Speaking("second", RemarkForm.FULL, 20, false));
    }

    @Test
    void itsTimeIsFromItsFirstMomentToItsLast() {
        aired.follow(state, PLAN, 10, id -> false);
        assertThat(aired.request(request()).speaking()).isNotNull();
        assertThat(aired.ids()).isEmpty();
        aired.follow(state, PLAN, 14, id -> false);
        assertThat(aired.request(request()).speaking()).isNull();
        assertThat(aired.ids()).containsExactly("first");
    }

    /** The commentator is in another place: the words wait until somebody can read them. */
    @Test
    void whatNobodyCouldReadIsNotTakenToBeSaid() {
        aired.follow(state, PLAN, 9, id -> true);
        aired.outOfSight(state);
        assertThat(aired.toWriteDown(state, 500)).isEmpty();
        assertThat(aired.request(request()).alreadySaid()).isEmpty();
        assertThat(aired.request(request()).speaking()).isNull();
        aired.follow(state, PLAN, 15, id -> true);
        aired.outOfSight(state);
        assertThat(aired.ids()).as("what was read before stays so").containsExactly("first");
    }

    @Test
    void nothingCountsBeforeItsTime() {
        aired.follow(state, PLAN, 5, id -> false);
        PlanRequest request = aired.request(request());
        assertThat(request.alreadySaid()).isEmpty();
        assertThat(request.speaking()).isNull();
    }

    @Test
    void anotherActForgets() {
        aired.follow(state, PLAN, 15, id -> false);
        aired.follow(act(state, 16, "two"), Plan.EMPTY, 17, id -> false);
        assertThat(aired.request(request()).alreadySaid()).isEmpty();
    }

    @Test
    void theSameActFlownAgainForgets() {
        LiveState started = moved(state, new FlightEvent.ActStarted(1));
        aired.follow(started, PLAN, 15, id -> false);
        LiveState over = moved(started, new FlightEvent.ActEnded(40));
        aired.follow(over, Plan.EMPTY, 41, id -> false);
        assertThat(aired.ids()).containsExactly("first");
        aired.follow(act(over, 42, "one"), Plan.EMPTY, 43, id -> false);
        assertThat(aired.ids()).isEmpty();
    }

    @Test
    void nothingIsTakenAsSaidWhileTheIncidentPageIsOpen() {
        Step step = Live.next(state, new IncidentEvent.IncidentOpened(9));
        aired.follow(((Step.Moved) step).state(), PLAN, 15, id -> false);
        assertThat(aired.request(request()).alreadySaid()).isEmpty();
    }

    @Test
    void whatAKeySettledIsLeftToTheRecord() {
        LiveState said = moved(state, new TalkEvent.RemarkSaid(9, "first", RemarkForm.FULL));
        LiveState skipped = moved(said, new TalkEvent.RemarkSkipped(9, "second"));
        aired.follow(skipped, PLAN, 21, id -> false);
        PlanRequest request = aired.request(request());
        assertThat(request.alreadySaid()).isEmpty();
        assertThat(request.speaking()).isNull();
    }

    @Test
    void whatAKeySaidInAnEarlierActStillCountsWhenItStandsOnTheScreenAgain() {
        LiveState said = moved(state, new TalkEvent.RemarkSaid(4, "first", RemarkForm.FULL));
        aired.follow(act(said, 8, "two"), PLAN, 15, id -> false);
        assertThat(aired.request(request()).alreadySaid()).containsExactly("first");
    }

    /** It stays three seconds for a key to say more of it; then it is shown, and once. */
    @Test
    void whatIsOfTheDayIsWrittenDownAsShown() {
        aired.follow(state, PLAN, 14, "first"::equals);
        assertThat(aired.toWriteDown(state, 16.9)).isEmpty();
        aired.follow(state, Plan.EMPTY, 17, "first"::equals);
        TalkEvent.RemarkShown shown = new TalkEvent.RemarkShown(14, "first", RemarkForm.FULL, 10);
        assertThat(aired.toWriteDown(state, 17)).containsExactly(shown);
        assertThat(aired.toWriteDown(state, 18)).isEmpty();
        assertThat(aired.ids()).containsExactly("first");
        aired.follow(moved(state, shown), Plan.EMPTY, 19, "first"::equals);
        assertThat(aired.ids()).isEmpty();
    }

    @Test
    void whatIsOfTheDayIsNotForgottenWithTheAct() {
        aired.follow(state, PLAN, 15, "first"::equals);
        LiveState next = act(state, 16, "two");
        aired.follow(next, Plan.EMPTY, 17, "first"::equals);
        assertThat(aired.request(request()).alreadySaid()).containsExactly("first");
        assertThat(aired.toWriteDown(next, 17)).hasSize(1);
    }

    @Test
    void whatAKeySettledMeanwhileIsNotWrittenDown() {
        aired.follow(state, PLAN, 15, "first"::equals);
        LiveState said = moved(state, new TalkEvent.RemarkSaid(15.5, "first", RemarkForm.FULL));
        aired.follow(said, PLAN, 16, "first"::equals);
        assertThat(aired.toWriteDown(said, 20)).isEmpty();
    }

    @Test
    void whileTheIncidentPageIsOpenWritingDownWaits() {
        aired.follow(state, PLAN, 15, "first"::equals);
        LiveState open = moved(state, new IncidentEvent.IncidentOpened(16));
        assertThat(aired.toWriteDown(open, 20)).isEmpty();
        LiveState closed = moved(open, new IncidentEvent.IncidentClosed(21, true));
        assertThat(aired.toWriteDown(closed, 22)).hasSize(1);
    }

    @Test
    void whatIsReallyBeingSaidGoesFirst() {
        LiveState speaking = moved(state, new TalkEvent.RemarkStarted(19, "other", RemarkForm.FULL));
        aired.follow(speaking, PLAN, 21, id -> false);
        assertThat(aired.request(request()).speaking()).isNull();
    }

    /** The clock had passed the slot, the aircraft had not come, and nobody was told the call any more. */
    @Test
    void callOfALateActIsStillToBeSaidHoweverLateItIs() {
        Plan plan = new Plan(List.of(placed("welcome", 2, 4), placed("call", "a", 10, 12)), List.of(), 0, 0, true);
        for (double nowS = 0; nowS < 400; nowS += 1) {
            aired.follow(state, plan, nowS, id -> false);
        }
        assertThat(aired.ids()).containsExactly("welcome");
    }

    @Test
    void wordsOfAFigureThatHasNotBegunAfterAllAreStillToBeSaid() {
        LiveState flying = moved(state, new FlightEvent.ActStarted(1));
        Plan plan = new Plan(
                List.of(placed("fact", "a", 2, 4), placed("call", "b", 6, 8), placed("say", "b", 10, 12)),
                List.of(),
                0,
                0,
                true);
        aired.follow(flying, plan, 9, id -> false);
        LiveState stepped = moved(flying, new FlightEvent.Stepped(9.5));
        aired.follow(stepped, plan, 13, id -> false);
        assertThat(aired.ids()).containsExactlyInAnyOrder("fact", "call", "say");
        aired.follow(moved(stepped, new FlightEvent.SteppedBack(14)), Plan.EMPTY, 14, id -> false);
        assertThat(aired.ids()).containsExactly("fact");
        aired.follow(stepped, plan, 14, id -> false);
        aired.follow(moved(stepped, new LiveEvent.Undone(15)), Plan.EMPTY, 15, id -> false);
        assertThat(aired.ids()).as("Z does the same").containsExactly("fact");
    }

    @Test
    void whatIsNoMoreMeantIsNotBeingSaid() {
        Plan plan = new Plan(List.of(placed("call", "b", 10, 14)), List.of(), 0, 0, true);
        aired.follow(state, plan, 11, id -> false);
        assertThat(aired.request(request()).speaking())
                .as("its figure was dropped, and its words with it")
                .isNull();
    }

    @Test
    void whatWasCutShortMayStillBeTakenAsSaid() {
        LiveState cutShort = moved(
                moved(state, new TalkEvent.RemarkStarted(2, "first", RemarkForm.FULL)),
                new TalkEvent.RemarkLeft(3, "first", true));
        aired.follow(cutShort, PLAN, 15, id -> false);
        assertThat(aired.ids()).containsExactly("first");
    }

    @Test
    void whatAKeySettledSettlesNothingElse() {
        aired.follow(moved(state, new TalkEvent.RemarkSaid(9, "second", RemarkForm.FULL)), PLAN, 15, id -> false);
        assertThat(aired.ids()).containsExactly("first");
    }

    private static Placed placed(String id, String figureId, double startS, double endS) {
        return new Placed(id, figureId, RemarkKind.CALL, RemarkForm.FULL, startS, endS, false);
    }

    private static LiveState act(LiveState from, double atS, String id) {
        LiveState open = from.showTitle() == null
                ? moved(from, new ShowEvent.ShowOpened(atS, "Show", List.of("one", "two")))
                : from;
        return moved(open, new FlightEvent.ActChosen(atS, id, "full", List.of("a", "b"), null));
    }

    private static LiveState moved(LiveState from, LiveEvent event) {
        return ((Step.Moved) Live.next(from, event)).state();
    }

    private static Placed placed(String id, double startS, double endS) {
        return new Placed(id, null, RemarkKind.FACT, RemarkForm.FULL, startS, endS, false);
    }

    private static PlanRequest request() {
        List<Candidate> candidates = List.of(candidate("first"), candidate("second"));
        return new PlanRequest(30, List.of(), candidates, Set.of(), Optional.empty(), null, PatterRules.DEFAULT);
    }

    private static Candidate candidate(String id) {
        return new Candidate(Remark.of(id, RemarkKind.FACT, "Words."), null, SpokenLength.of(4), null);
    }
}
