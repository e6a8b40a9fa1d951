package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.ActEnded;
import crowdline.live.event.FlightEvent.AircraftSeen;
import crowdline.live.event.FlightEvent.CameBack;
import crowdline.live.event.FlightEvent.DropUndone;
import crowdline.live.event.FlightEvent.Held;
import crowdline.live.event.FlightEvent.NextDropped;
import crowdline.live.event.FlightEvent.NextSwapped;
import crowdline.live.event.FlightEvent.SourceChosen;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.SteppedBack;
import crowdline.live.event.FlightEvent.VariantChosen;
import crowdline.live.event.FlightEvent.WentOffPlan;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.Source;
import crowdline.live.now.LiveNow;
import crowdline.live.now.Upcoming;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked by hand with a loop, a roll, a spin and a pass of 10, 8, 20 and 6 s, begun at 100 s. */
class SwapTest {

    private static List<String> ahead(Played played, double nowS) {
        return played.at(nowS).upcoming().stream().map(Upcoming::figureId).toList();
    }

    private static Played swapped() {
        return Played.flying().with(new NextSwapped(104));
    }

    @Test
    void theOneAfterTheNextComesFirst() {
        LiveNow now = swapped().at(104);

        assertThat(now.upcoming())
                .containsExactly(
                        new Upcoming(2, "spin", 6.0), new Upcoming(1, "roll", 26.0), new Upcoming(3, "pass", 34.0));
        assertThat(now.lateS()).isZero();
    }

    @Test
    void stepsFollowTheNewOrderToTheEndOfTheAct() {
        Played played = swapped().with(new Stepped(110), new Stepped(130), new Stepped(138), new Stepped(144));

        assertThat(played.state.phase()).isEqualTo(new Phase.ActDone(144));
        FlownAct act = played.state.course().flownActs().get(0);
        assertThat(act.flown()).extracting(Flown::figureId).containsExactly("loop", "spin", "roll", "pass");
        assertThat(act.figureIds()).isEqualTo(Played.FIGURES);
        assertThat(act.idsAsFlown()).containsExactly("loop", "spin", "roll", "pass");
    }

    @Test
    void latenessIsCountedInTheNewOrder() {
        Played played = swapped().with(new Stepped(110));

        assertThat(played.at(115).lateS())
                .as("the spin ends at 130 as it should")
                .isZero();
        assertThat(played.with(new Stepped(133)).at(135).lateS()).isEqualTo(3);
    }

    @Test
    void clockGoesByTheNewOrder() {
        Played played = swapped().with(new SourceChosen(105, Source.CLOCK)).clockUntil(131);

        assertThat(played.state.figureId()).isEqualTo("roll");
        assertThat(played.state.course().flown()).extracting(Flown::startedAtS).containsExactly(100.0, 110.0, 130.0);
    }

    @Test
    void aircraftIsSeenByTheIndexOfTheVariant() {
        Played played = swapped().with(new SourceChosen(105, Source.AIRCRAFT), new AircraftSeen(110, 2));

        assertThat(played.state.figureId()).isEqualTo("spin");
        assertThat(ahead(played, 111)).containsExactly("roll", "pass");
    }

    @Test
    void figurePassedOverAndThenSeenWasSwappedThoughNobodySaidSo() {
        Played played = Played.flying().with(new SourceChosen(101, Source.AIRCRAFT), new AircraftSeen(110, 2));
        assertThat(ahead(played, 111)).containsExactly("pass");

        played.with(new AircraftSeen(130, 1));
        assertThat(played.state.figureId()).isEqualTo("roll");
        assertThat(ahead(played, 131)).as("the spin is flown").containsExactly("pass");
        assertThat(played.at(131).lateS()).isZero();
    }

    @Test
    void figureSeenForAMomentOnlyIsStillToCome() {
        Played played = Played.flying()
                .with(new SourceChosen(101, Source.AIRCRAFT), new AircraftSeen(110, 2), new AircraftSeen(114, 1));

        assertThat(ahead(played, 115)).containsExactly("spin", "pass");
    }

    /** Eight seconds are really flown, a quarter of a second less was a mistake of the follower's. */
    @Test
    void figureIsReallyFlownFromEightSecondsOn() {
        Played played = Played.flying().with(new SourceChosen(101, Source.AIRCRAFT), new AircraftSeen(110, 2));
        assertThat(ahead(played.with(new AircraftSeen(118, 1)), 119)).containsExactly("pass");

        Played sooner = Played.flying()
                .with(new SourceChosen(101, Source.AIRCRAFT), new AircraftSeen(110, 2), new AircraftSeen(117.75, 1));
        assertThat(ahead(sooner, 119)).containsExactly("spin", "pass");
    }

    /** A follower that holds an act of more figures, or a journal of one, names a figure this variant has not. */
    @Test
    void figureBeyondTheVariantIsNoneOfIt() {
        Played played = Played.flying().with(new SourceChosen(101, Source.AIRCRAFT), new AircraftSeen(120, 4));

        assertThat(played.refusal).isEqualTo("This variant has no such figure.");
        assertThat(ahead(played, 121)).containsExactly("roll", "spin", "pass");
    }

    @Test
    void figureSeenAfterOneOfTheVariantFlownBeforeIsNoSwap() {
        Played played = Played.flying()
                .with(
                        new WentOffPlan(105),
                        new VariantChosen(106, "flat", List.of("roll", "spin")),
                        new SourceChosen(107, Source.AIRCRAFT),
                        new AircraftSeen(120, 1));

        assertThat(played.state.figureId()).isEqualTo("spin");
        assertThat(ahead(played, 121)).isEmpty();
        assertThat(played.state.course().idsAsFlown()).containsExactly("roll", "spin");
    }

    /** Nobody goes back to fly what was left out three figures ago: there the follower had been wrong. */
    @Test
    void figureFarBehindIsNoSwap() {
        Played played = Played.flying()
                .with(new SourceChosen(101, Source.AIRCRAFT), new AircraftSeen(110, 3), new AircraftSeen(130, 0));
        assertThat(played.state.course().idsAsFlown()).containsExactly("loop", "roll", "spin", "pass");

        Played near = Played.flying()
                .with(new SourceChosen(101, Source.AIRCRAFT), new AircraftSeen(110, 3), new AircraftSeen(130, 1));
        assertThat(near.state.course().idsAsFlown()).containsExactly("loop", "spin", "pass", "roll");
    }

    @Test
    void figureSeenAgainIsNoSwap() {
        Played played = Played.flying()
                .with(
                        new SourceChosen(101, Source.AIRCRAFT),
                        new AircraftSeen(110, 1),
                        new AircraftSeen(118, 2),
                        new AircraftSeen(138, 1));

        assertThat(ahead(played, 139)).containsExactly("spin", "pass");
    }

    @Test
    void swappingAgainSwapsBack() {
        assertThat(ahead(swapped().with(new NextSwapped(105)), 106)).containsExactly("roll", "spin", "pass");
    }

    @Test
    void swapIsTakenBackAlone() {
        Played played = swapped().with(new LiveEvent.Undone(106));

        assertThat(ahead(played, 107)).containsExactly("roll", "spin", "pass");
        assertThat(played.timeIn(107)).isEqualTo(7);
        assertThat(Played.flying().with(new NextSwapped(104)).state.takeBack()).contains(new NextSwapped(104));
    }

    @Test
    void steppingBackKeepsTheSwap() {
        Played played = swapped().with(new Stepped(106), new SteppedBack(107));

        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(ahead(played, 108)).containsExactly("spin", "roll", "pass");
    }

    @Test
    void figureSwappedForwardCanBeSwappedOn() {
        Played played = swapped().with(new Stepped(110), new NextSwapped(112));

        assertThat(ahead(played, 113)).containsExactly("pass", "roll");
        assertThat(played.state.course().swappedWith(3)).containsExactly(1);
        assertThat(played.state.course().swappedWith(1)).containsExactly(2, 3);
    }

    @Test
    void whatWasSwappedWithADroppedFigureIsInItsPlace() {
        Played played = swapped().with(new NextDropped(105));

        assertThat(ahead(played, 106)).startsWith("roll");
        assertThat(played.state.course().swappedWith(1)).isEmpty();
        assertThat(played.state.course().toFly()).containsExactly(0, 1, 3);
    }

    @Test
    void droppedFigureBetweenIsPassedOverAndComesBackInItsPlace() {
        Played played = Played.flying().with(new NextDropped(101), new NextSwapped(102));
        assertThat(ahead(played, 103)).containsExactly("pass", "spin");

        assertThat(ahead(played.with(new DropUndone(104)), 105)).containsExactly("roll", "pass", "spin");
    }

    @Test
    void swappedFigureCanBeDroppedAndUndropped() {
        Played played = swapped().with(new NextDropped(105));
        assertThat(ahead(played, 106)).containsExactly("roll", "pass");

        played.with(new Stepped(110), new DropUndone(111));
        assertThat(played.refusal).as("the spin's place is behind").isEqualTo("No figure ahead is dropped.");
    }

    @Test
    void firstFigureOfTheActIsDroppedAndComesBackAsAnyOther() {
        Played played = Played.waiting().with(new NextDropped(20));
        assertThat(ahead(played, 21)).containsExactly("roll", "spin", "pass");

        assertThat(ahead(played.with(new DropUndone(22)), 23)).containsExactly("loop", "roll", "spin", "pass");
    }

    @Test
    void dropOfAFigureThatThisVariantHasNotIsPassedOver() {
        Played played = Played.flying()
                .with(
                        new NextDropped(101),
                        new NextDropped(102),
                        new VariantChosen(103, "flat", List.of("loop", "roll", "pass")));
        assertThat(ahead(played, 104)).containsExactly("pass");

        assertThat(ahead(played.with(new DropUndone(105)), 106)).containsExactly("roll", "pass");
    }

    @Test
    void canBeToldBeforeTheActInAHoldAndOffThePlan() {
        assertThat(ahead(Played.waiting().with(new NextSwapped(20)), 30))
                .containsExactly("roll", "loop", "spin", "pass");
        assertThat(ahead(Played.flying().with(new Held(103), new NextSwapped(105)), 106))
                .startsWith("spin", "roll");
        Played off = Played.flying().with(new WentOffPlan(103), new NextSwapped(105));
        assertThat(ahead(off, 106)).startsWith("spin", "roll");
        assertThat(ahead(off.with(new CameBack(110, 2)), 111)).containsExactly("roll", "pass");
    }

    @Test
    void actBegunInASwappedOrderBeginsWithTheOtherFigure() {
        Played played = Played.waiting().with(new NextSwapped(20), new FlightEvent.ActStarted(60));

        assertThat(played.state.figureId()).isEqualTo("roll");
        assertThat(ahead(played, 61)).containsExactly("loop", "spin", "pass");
        assertThat(played.at(63).lateS()).isZero();
    }

    @Test
    void twoMustBeLeft() {
        Played played = Played.flying().with(new Stepped(110), new Stepped(118), new NextSwapped(120));
        assertThat(played.refusal).isEqualTo("Only one figure is left; it takes two to swap.");

        played.with(new Stepped(138), new NextSwapped(139));
        assertThat(played.refusal).isEqualTo("There are no more figures to swap.");

        played.with(new ActEnded(144), new NextSwapped(150));
        assertThat(played.refusal).isEqualTo("There are no more figures to swap.");
    }

    @Test
    void nothingIsSwappedInAnIncident() {
        Played played = Played.flying().with(new IncidentEvent.IncidentOpened(103), new NextSwapped(104));

        assertThat(played.refusal).isEqualTo("The incident page is open: type RESUME to leave it.");
        assertThat(ahead(played, 105)).startsWith("roll");
    }

    @Test
    void anotherVariantHasItsOwnOrderAndTakingItBackTheSwap() {
        Played played = swapped().with(new VariantChosen(105, "flat", List.of("loop", "roll", "spin")));
        assertThat(ahead(played, 106)).containsExactly("roll", "spin");

        assertThat(ahead(played.with(new LiveEvent.Undone(107)), 108)).containsExactly("spin", "roll", "pass");
    }

    @Test
    void orderThatIsNotOneIsRefused() {
        assertThatThrownBy(() -> new Sequence(Played.FIGURES, List.of(), List.of(0, 1, 1, 3), List.of()))
                .hasMessageContaining("order is [0, 1, 1, 3]");
    }
}
