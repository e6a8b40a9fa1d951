package crowdline.console.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.Source;
import crowdline.patter.Plan;
import org.junit.jupiter.api.Test;

class NowPresenterTest {
    private static NowView at108(LiveEvent... events) {
        return NowPresenter.of(SmallShow.moment(108, Plan.EMPTY, SmallShow.after(events)), SmallShow.words());
    }

    @Test
    void offThePlanItSaysWhoBringsItBack() {
        NowView byHand = at108(new FlightEvent.ActStarted(100), new FlightEvent.WentOffPlan(103));
        assertThat(byHand.name()).isEqualTo("Off plan");
        assertThat(byHand.look()).isEqualTo("For 5 s. Press Space when the next figure of the plan begins.");
        NowView byAircraft = at108(
                new FlightEvent.SourceChosen(99, Source.AIRCRAFT),
                new FlightEvent.ActStarted(100),
                new FlightEvent.AircraftStrayed(103));
        assertThat(byAircraft.name()).isEqualTo("Off plan");
        assertThat(byAircraft.state()).isEqualTo(byHand.state());
        assertThat(byAircraft.look()).isEqualTo("For 5 s. It goes on by itself when the plan does; or press Space.");
    }
}
