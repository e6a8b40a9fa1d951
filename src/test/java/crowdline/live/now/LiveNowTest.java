package crowdline.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.Held;
import crowdline.live.event.FlightEvent.NextDropped;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.FlightEvent.WentOffPlan;
import crowdline.live.state.Played;
import org.junit.jupiter.api.Test;

/** Worked by hand with figures of 10, 8, 20 and 6 s and an act started at 100 s. */
class LiveNowTest {

    @Test
    void slotIsCountedDown() {
        LiveNow now = Played.waiting().at(45);

        assertThat(now.toSlotS()).isEqualTo(15);
        assertThat(now.upcoming().get(1)).isEqualTo(new Upcoming(1, "roll", 25.0));
        assertThat(now.nextActId()).isEqualTo("second");
    }

    @Test
    void slotThatHasBegunCountsBelowZero() {
        assertThat(Played.waiting().at(75).toSlotS()).isEqualTo(-15);
    }

    @Test
    void figuresAheadAreCountedFromTheEndOfTheCurrentOne() {
        LiveNow now = Played.flying().at(104);

        assertThat(now.figure()).isEqualTo(new FigureNow(0, "loop", 4, 6, 0, false, false));
        assertThat(now.upcoming())
                .containsExactly(
                        new Upcoming(1, "roll", 6.0), new Upcoming(2, "spin", 14.0), new Upcoming(3, "pass", 34.0));
        assertThat(now.actTimeS()).isEqualTo(4);
        assertThat(now.lateS()).isZero();
    }

    @Test
    void stepBeforeItsTimeIsEarly() {
        LiveNow now = Played.flying().with(new Stepped(107)).at(110);

        assertThat(now.lateS()).isEqualTo(-3);
    }

    @Test
    void figureOverItsTimeGetsLaterEverySecond() {
        Played played = Played.flying();

        assertThat(played.at(112).lateS()).isEqualTo(2);
        assertThat(played.at(113).lateS()).isEqualTo(3);
        assertThat(played.at(113).upcoming().get(0).inS()).isZero();
    }

    @Test
    void heldFigureGetsLaterEverySecond() {
        Played played = Played.flying().with(new Held(104));

        assertThat(played.at(110).lateS()).isEqualTo(6);
        assertThat(played.at(110).figure()).isEqualTo(new FigureNow(0, "loop", 4, 6, 0, true, false));
    }

    @Test
    void droppedFigureIsAheadNoMore() {
        LiveNow now = Played.flying().with(new NextDropped(101)).at(104);

        assertThat(now.lateS()).isZero();
        assertThat(now.upcoming()).extracting(Upcoming::figureId).containsExactly("spin", "pass");
    }

    @Test
    void offPlanNobodyKnowsWhenTheNextBegins() {
        LiveNow now = Played.flying().with(new WentOffPlan(106)).at(111);

        assertThat(now.figure()).isNull();
        assertThat(now.offPlanS()).isEqualTo(5);
        assertThat(now.upcoming().get(0)).isEqualTo(new Upcoming(1, "roll", null));
        assertThat(now.lateS()).isEqualTo(1);
    }

    @Test
    void actTimeStopsAtItsEnd() {
        LiveNow now = Played.flying().with(new FlightEvent.ActEnded(150)).at(400);

        assertThat(now.actTimeS()).isEqualTo(50);
        assertThat(now.lateS()).isNull();
        assertThat(now.upcoming()).isEmpty();
    }

    @Test
    void holdBeforeThisOneIsNoTimeInTheFigure() {
        Played played = Played.flying().with(new Held(102), new FlightEvent.Released(105), new Held(108));

        assertThat(played.at(120).figure()).isEqualTo(new FigureNow(0, "loop", 5, 5, 0, true, false));
    }

    @Test
    void whatHasNotBegunHasNoTime() {
        assertThat(Played.waiting().at(45).actTimeS()).isNull();
        assertThat(Played.flying().at(104).incidentS()).isNull();
        assertThat(Played.flying().at(104).toSlotS()).isNull();
    }

    /** No question stands over Live then: the next key is meant for the act. The slot is at 60 s. */
    @Test
    void anActMayBeginFromFiveMinutesBeforeItsSlotUntilHalfAnHourAfter() {
        assertThat(Played.waiting().at(45).mayBegin()).isTrue();
        assertThat(Played.waiting().at(75).mayBegin()).isTrue();
        assertThat(Played.waiting().at(60 + 1801).mayBegin()).isFalse();
        assertThat(Played.flying().at(104).mayBegin()).as("it has begun").isFalse();
    }
}
