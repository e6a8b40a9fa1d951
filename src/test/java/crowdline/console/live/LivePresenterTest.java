package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.console.live.next.NextView;
import crowdline.console.live.row.LiveMoment;
import crowdline.console.live.say.SayView;
import crowdline.console.live.say.SayView.What;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Seconds;
import crowdline.console.theme.Tone;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.LiveState;
import crowdline.patter.Plan;
import crowdline.patter.Unplaced;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.sight.SideView;
import crowdline.steer.Tracking;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class LivePresenterTest {
    private final LivePresenter presenter = new LivePresenter(SmallShow.words());

    private static Mark verdict(LiveView view) {
        return Objects.requireNonNull(view.say().verdict(), "a verdict is shown");
    }

    private static SayView.Bars bars(LiveView view) {
        return Objects.requireNonNull(view.say().bars(), "bars are shown");
    }

    @Test
    void beforeTheActItCountsDownToTheSlot() {
        LiveView view = presenter.view(SmallShow.moment(40, Plan.EMPTY, SmallShow.after()));
        assertThat(view.now().name()).isEqualTo("On in 1:00");
        assertThat(view.next().name()).isEqualTo("Loop");
        assertThat(view.next().caption()).isEqualTo("First in");
        assertThat(view.next().call()).isEqualTo("Now a loop.");
    }

    /** An act of which nothing but who flies it was known is called so. */
    @Test
    void whoFliesIsNotToldTwice() {
        Show show = SmallShow.show();
        Act act = show.acts().get(0).withTitle("Rosa Vent, Calder 200");
        LivePresenter told = new LivePresenter(SmallShow.words(show.withActs(List.of(act), show.remarks())));
        assertThat(told.view(SmallShow.moment(40, Plan.EMPTY, SmallShow.after()))
                        .now()
                        .look())
                .endsWith("begins. Rosa Vent, Calder 200.");
        assertThat(presenter
                        .view(SmallShow.moment(40, Plan.EMPTY, SmallShow.after()))
                        .now()
                        .look())
                .endsWith("begins. The Calder display: Rosa Vent, Calder 200.");
    }

    @Test
    void aSlotHoursAheadIsToldInHours() {
        assertThat(Seconds.left(59.4)).isEqualTo("59 s");
        assertThat(Seconds.left(3599)).isEqualTo("59:59");
        assertThat(Seconds.left(42_647)).isEqualTo("11 h 50 min");
    }

    @Test
    void aFigureIsShownWithItsTimeLeft() {
        LiveView view =
                presenter.view(SmallShow.moment(104, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(view.now().name()).isEqualTo("Loop");
        assertThat(view.now().look()).isEqualTo("Look at the top.");
        assertThat(view.now().left()).isEqualTo("6.0 s");
        assertThat(view.now().leftShare()).isCloseTo(0.6, within(0.01));
        assertThat(view.next().name()).isEqualTo("Stall turn");
        assertThat(view.next().in()).isEqualTo("6 s");
        assertThat(view.next().later()).extracting(NextView.Later::name).containsExactly("Low pass");
    }

    @Test
    void figuresThatWereSwappedSayWithWhichInAWordAndAShape() {
        LiveState swapped = SmallShow.after(new FlightEvent.ActStarted(100), new FlightEvent.NextSwapped(102));
        LiveView view = presenter.view(SmallShow.moment(104, Plan.EMPTY, swapped));
        assertThat(view.next().name()).isEqualTo("Low pass");
        assertThat(view.next().swapped()).isEqualTo(new Mark(Form.SWAP, Tone.CAUTION, "Swapped with Stall turn"));
        assertThat(view.next().later())
                .containsExactly(new NextView.Later(
                        "Stall turn", "in 16 s", new Mark(Form.SWAP, Tone.CAUTION, "in 16 s, swapped")));
        LiveView back = presenter.view(SmallShow.moment(
                104,
                Plan.EMPTY,
                SmallShow.after(
                        new FlightEvent.ActStarted(100),
                        new FlightEvent.NextSwapped(102),
                        new FlightEvent.NextSwapped(103))));
        assertThat(back.next().swapped()).isNull();
        assertThat(back.next().name()).isEqualTo("Stall turn");
    }

    @Test
    void aFigureOverItsTimeIsFollowedAtAnyMomentAndNotInNoSeconds() {
        LiveView view =
                presenter.view(SmallShow.moment(126, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(view.next().caption()).isEqualTo("Next");
        assertThat(view.next().in()).isEqualTo("any moment");
    }

    @Test
    void whereToLookIsToldOnlyOfAFigureThatFollowsTheOneItFollowsInThePlan() {
        LivePresenter sighted = new LivePresenter(SmallShow.wordsWithSights());
        FlightEvent start = new FlightEvent.ActStarted(100);
        assertThat(sighted.view(SmallShow.moment(104, Plan.EMPTY, SmallShow.after(start)))
                        .next()
                        .where())
                .isEqualTo("left of f2");
        assertThat(sighted.view(SmallShow.moment(
                                104, Plan.EMPTY, SmallShow.after(start, new FlightEvent.NextSwapped(102))))
                        .next()
                        .where())
                .isEmpty();
        assertThat(sighted.view(SmallShow.moment(
                                104, Plan.EMPTY, SmallShow.after(start, new FlightEvent.NextDropped(102))))
                        .next()
                        .where())
                .isEmpty();
    }

    @Test
    void clockThatStandsInForTheAircraftSaysSoAndWhetherItWaits() {
        LiveState goesOn = SmallShow.after(
                new FlightEvent.SourceChosen(99, Source.AIRCRAFT),
                new FlightEvent.ActStarted(100),
                new FlightEvent.AircraftLost(104, 101));
        LiveView view = presenter.view(SmallShow.moment(105, Plan.EMPTY, goesOn));
        assertThat(view.strip().source()).isEqualTo(new Mark(Form.CLOCK, Tone.CAUTION, "Clock"));
        assertThat(view.strip().sureness()).isEqualTo(new Mark(Form.CROSS, Tone.CAUTION, "No position"));
        assertThat(view.now().state())
                .isEqualTo(new Mark(Form.CLOCK, Tone.CAUTION, "No position: the clock carries on"));
        LiveState waits = SmallShow.after(
                new FlightEvent.SourceChosen(99, Source.AIRCRAFT),
                new FlightEvent.ActStarted(100),
                new FlightEvent.AircraftLost(125, 120));
        LiveView standing = presenter.view(SmallShow.moment(126, Plan.EMPTY, waits));
        assertThat(standing.strip().sureness().word()).isEqualTo("Over time");
        assertThat(standing.now().state())
                .isEqualTo(new Mark(Form.DIAMOND, Tone.CAUTION, "No position: Space at the next figure"));
    }

    @Test
    void beingLateIsAWordAndAShape() {
        LiveView view =
                presenter.view(SmallShow.moment(130, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(view.strip().drift().word()).isEqualTo("20 s late");
        assertThat(view.strip().drift().form()).isEqualTo(Form.DOWN);
    }

    @Test
    void theRemarkWhoseTimeHasComeIsSaidWithItsProgress() {
        Plan plan = SmallShow.plan(SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 103));
        LiveView view = presenter.view(SmallShow.moment(104, plan, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(view.say().what()).isEqualTo(What.WORDS);
        assertThat(view.say().caption()).isEqualTo("Say now");
        assertThat(view.say().saidShare()).isCloseTo(0.25, within(1e-9));
        assertThat(bars(view).thereIsS()).isCloseTo(7, within(1e-9));
        assertThat(verdict(view).word()).isEqualTo("Fits, 3 s to spare");
        assertThat(view.handles().sayId()).isEqualTo("r-say-1");
    }

    @Test
    void aDutyThePlanHasNoTimeForIsSaidLoudlyUntilItIsSaid() {
        LivePresenter warned = new LivePresenter(SmallShow.wordsWithADuty());
        Plan plan = new Plan(
                List.of(),
                List.of(
                        new Unplaced("r-duty", Unplaced.Why.TOO_LATE, "its time has passed", 3, 0),
                        new Unplaced("r-fill", Unplaced.Why.NO_GAP, "no gap", 3, 0)),
                0,
                0,
                true);
        LiveView lost = warned.view(SmallShow.moment(104, plan, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(lost.warnings())
                .containsExactly(new Mark(
                        Form.STOP, Tone.ALARM, "No time left in this act for a duty: Please stay behind the rope."));
        LiveView said = warned.view(SmallShow.moment(
                110,
                plan,
                SmallShow.after(
                        new FlightEvent.ActStarted(100), new TalkEvent.RemarkSaid(106, "r-duty", RemarkForm.FULL))));
        assertThat(said.warnings()).isEmpty();
    }

    @Test
    void aRemarkWaitsUntilItsTimeAndACallOnlyWhileSecondsAreTold() {
        Plan plan = SmallShow.plan(SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 106));
        LiveState flying = SmallShow.after(new FlightEvent.ActStarted(100));
        LiveView early = presenter.view(SmallShow.moment(103, plan, flying));
        assertThat(early.say().caption()).isEqualTo("Say in 3 s");
        assertThat(early.handles().sayWaits()).isTrue();
        LiveView due = presenter.view(SmallShow.moment(105.2, plan, flying));
        assertThat(due.say().caption()).isEqualTo("Say now");
        assertThat(due.handles().sayWaits()).isFalse();
        Plan call = SmallShow.plan(SmallShow.placed("r-call-2", "f2", RemarkKind.CALL, 128.5));
        LiveView atAnyMoment = presenter.view(SmallShow.moment(126, call, flying));
        assertThat(atAnyMoment.say().caption()).isEqualTo("Say just before it begins");
        assertThat(atAnyMoment.handles().sayWaits()).isFalse();
        Plan what = SmallShow.plan(SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 125));
        LiveView notBegun = presenter.view(SmallShow.moment(121, what, SmallShow.after()));
        assertThat(notBegun.say().caption()).isEqualTo("Say when it begins");
        assertThat(notBegun.handles().sayWaits()).isTrue();
    }

    @Test
    void aRemarkThatCannotFitSaysByHowMuch() {
        Plan plan = SmallShow.plan(
                SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 104),
                SmallShow.placed("r-call-2", "f2", RemarkKind.CALL, 106));
        LiveView view = presenter.view(SmallShow.moment(104, plan, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(verdict(view).word()).isEqualTo("Too long by 2 s");
        assertThat(verdict(view).form()).isEqualTo(Form.STOP);
    }

    @Test
    void aFigureOverItsTimeCutsNothingShort() {
        Plan plan = SmallShow.plan(SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 109));
        LiveView view = presenter.view(SmallShow.moment(111, plan, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(verdict(view).word()).isEqualTo("No hurry");
    }

    @Test
    void aRemarkToComeIsReadyWithItsSeconds() {
        Plan plan = SmallShow.plan(SmallShow.placed("r-call-2", "f2", RemarkKind.CALL, 107));
        LiveView view = presenter.view(SmallShow.moment(102, plan, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(view.say().caption()).isEqualTo("Say in 5 s");
        assertThat(view.say().saidShare()).isZero();
    }

    @Test
    void aFigureIsNotToldApartFromOneOfItsOwnName() {
        LiveMoment moment = SmallShow.moment(104, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100)));
        assertThat(presenter.view(seen(moment, "Low pass")).now().name()).isEqualTo("Loop or low pass");
        assertThat(presenter.view(seen(moment, "Loop")).now().name()).isEqualTo("Loop");
    }

    @Test
    void whereTheClockStandsInThereIsNoDoubtWhichFigureItGoesBy() {
        LiveState lost = SmallShow.after(
                new FlightEvent.SourceChosen(99, Source.AIRCRAFT),
                new FlightEvent.ActStarted(100),
                new FlightEvent.AircraftLost(103, 102));
        LiveMoment moment = SmallShow.moment(104, Plan.EMPTY, lost);
        assertThat(presenter.view(seen(moment, "Low pass")).now().name()).isEqualTo("Loop");
    }

    @Test
    void callOfTheFigureAfterOneThatMayBeginAtAnyTimeWaitsForThatOneAndTellsNoSeconds() {
        Plan call = SmallShow.plan(SmallShow.placed("r-call-2", "f2", RemarkKind.CALL, 115));
        LiveState swapped = SmallShow.after(new FlightEvent.ActStarted(100), new FlightEvent.NextSwapped(101));
        LiveView over = presenter.view(SmallShow.moment(112, call, swapped));
        assertThat(over.say().caption()).isEqualTo("Say once the next has begun");
        assertThat(over.handles().sayWaits()).isTrue();
        assertThat(presenter.view(SmallShow.moment(104, call, swapped)).say().caption())
                .isEqualTo("Say in 11 s");
    }

    private static LiveView waiting(boolean begins, FlightEvent... events) {
        SideView.Craft craft = SideView.Craft.read(new SideView.Spot(-3000, 500, 200), 0, 0, List.of(), 2.2);
        LiveMoment moment = SmallShow.moment(40, Plan.EMPTY, SmallShow.after(events));
        Tracking tracking = new Tracking(0.0, 2.2, null, craft, begins);
        return new LivePresenter(SmallShow.words())
                .view(new LiveMoment(moment.state(), moment.now(), moment.plan(), moment.clock(), tracking));
    }

    @Test
    void aircraftIsShownBeforeTheActWithTheAgeOfItsPlaceAndHowFarOffItIs() {
        LiveView view = waiting(true, new FlightEvent.SourceChosen(30, Source.AIRCRAFT));
        assertThat(view.now().caption()).isEqualTo("Before the act \u00b7 Variant: full");
        assertThat(Objects.requireNonNull(view.now().side().craft()).predicted())
                .isFalse();
        assertThat(view.now().side().craftWord()).startsWith("read 2 s ago, 3.").endsWith(" km away");
        assertThat(Objects.requireNonNull(view.strip().reading()).word()).isEqualTo("2.2 s old");
    }

    @Test
    void beforeTheActItIsSaidWhoBeginsIt() {
        FlightEvent aircraft = new FlightEvent.SourceChosen(30, Source.AIRCRAFT);
        assertThat(waiting(false).now().look()).startsWith("Press Space when the first figure begins. ");
        assertThat(waiting(true, aircraft).now().look()).startsWith("The aircraft begins it, or press Space. ");
        assertThat(waiting(false, aircraft).now().look())
                .startsWith("The aircraft cannot begin it yet: press Space when the first figure begins. ");
        assertThat(waiting(true, aircraft, new FlightEvent.AircraftBegan(35, 34), new FlightEvent.SteppedBack(37))
                        .now()
                        .look())
                .startsWith("Start taken back: press Space when the first figure begins. ");
    }

    @Test
    void startByTheAircraftIsSaidWithTheKeyThatTakesItBackAndNoLongerThanThat() {
        FlightEvent[] begun = {
            new FlightEvent.SourceChosen(30, Source.AIRCRAFT), new FlightEvent.AircraftBegan(104, 101)
        };
        LiveView view = presenter.view(SmallShow.moment(105, Plan.EMPTY, SmallShow.after(begun)));
        assertThat(view.now().state())
                .isEqualTo(new Mark(Form.AEROPLANE, Tone.CALM, "Begun by the aircraft: press Backspace if not"));
        assertThat(presenter
                        .view(SmallShow.moment(130, Plan.EMPTY, SmallShow.after(begun)))
                        .now()
                        .state())
                .isNull();
        assertThat(presenter
                        .view(SmallShow.moment(
                                105, Plan.EMPTY, SmallShow.after(begun[0], begun[1], new FlightEvent.Stepped(104.5))))
                        .now()
                        .state())
                .as("the hand has said it too")
                .isNull();
    }

    private static LiveMoment seen(LiveMoment moment, String other) {
        Tracking tracking = new Tracking(0.6, 0.2, other, null, false);
        return new LiveMoment(moment.state(), moment.now(), moment.plan(), moment.clock(), tracking);
    }

    @Test
    void noSecondsAreToldTowardsAFigureThatMayBeginAtAnyTime() {
        Plan call = SmallShow.plan(SmallShow.placed("r-call-2", "f2", RemarkKind.CALL, 115));
        LiveView over = presenter.view(SmallShow.moment(112, call, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(over.say().caption()).isEqualTo("Say just before it begins");

        Plan what = SmallShow.plan(SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 125));
        LiveView late = presenter.view(SmallShow.moment(121, what, SmallShow.after()));
        assertThat(late.say().caption()).isEqualTo("Say when it begins");
    }

    @Test
    void aRemarkSaidInAnEarlierRunOfTheActStandsThereAgain() {
        Plan plan = SmallShow.plan(SmallShow.placed("r-say-1", "f1", RemarkKind.EXPLANATION, 163));
        LiveView view = presenter.view(SmallShow.moment(
                164,
                plan,
                SmallShow.after(
                        new FlightEvent.ActStarted(100),
                        new TalkEvent.RemarkSaid(104, "r-say-1", RemarkForm.FULL),
                        new FlightEvent.ActEnded(140),
                        new FlightEvent.ActChosen(150, "a1", "full", List.of("f1", "f2", "f3"), 160.0),
                        new FlightEvent.ActStarted(160))));
        assertThat(view.handles().sayId()).isEqualTo("r-say-1");
    }

    @Test
    void inAQuietTheyAreToListen() {
        LiveView view = presenter.view(SmallShow.moment(
                114, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100), new FlightEvent.Stepped(110))));
        assertThat(view.say().what()).isEqualTo(What.LISTEN);
        assertThat(view.say().kind()).isEqualTo("hear it fade");
        assertThat(bars(view).thereIs()).isEqualTo("4 s of quiet");
    }

    @Test
    void factsOfTheFigureComeFirstAndSaidOnesGo() {
        LiveView before =
                presenter.view(SmallShow.moment(102, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100))));
        assertThat(before.handles().factIds()).containsExactly("r-fact-1", "r-fact-act");
        LiveView after = presenter.view(SmallShow.moment(
                106,
                Plan.EMPTY,
                SmallShow.after(
                        new FlightEvent.ActStarted(100), new TalkEvent.RemarkSaid(105, "r-fact-1", RemarkForm.FULL))));
        assertThat(after.handles().factIds()).containsExactly("r-fact-act");
    }

    @Test
    void holdingIsToldInWords() {
        LiveView view = presenter.view(SmallShow.moment(
                110, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100), new FlightEvent.Held(104))));
        assertThat(view.now().left()).isEqualTo("held");
        assertThat(view.strip().drift().word()).isEqualTo("On hold 6 s");
    }

    @Test
    void anIncidentShowsTheOrganisersWordsAndTheTimeNoted() {
        LiveView view = presenter.view(SmallShow.moment(
                109,
                Plan.EMPTY,
                SmallShow.after(new FlightEvent.ActStarted(100), new IncidentEvent.IncidentOpened(104))));
        assertThat(view.incident()).isNotNull();
        assertThat(view.incident().words()).containsExactly("The display has stopped.");
        assertThat(view.incident().noted()).isEqualTo("Noted 14:31:00");
    }
}
