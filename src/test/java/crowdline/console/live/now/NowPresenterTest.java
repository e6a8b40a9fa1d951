package crowdline.console.live.now;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Tone;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.Source;
import crowdline.patter.Plan;
import crowdline.storage.show.CatalogueFile;
import org.junit.jupiter.api.Test;

class NowPresenterTest {
    private static NowView at108(LiveEvent... events) {
        return NowPresenter.of(SmallShow.moment(108, Plan.EMPTY, SmallShow.after(events)), SmallShow.words());
    }

    @Test
    void theLastFigureOverItsTimeSaysThatSpaceEndsTheAct() {
        LiveEvent[] toTheLast = {
            new FlightEvent.ActStarted(70), new FlightEvent.Stepped(80), new FlightEvent.Stepped(90)
        };
        NowView over = at108(toTheLast);
        assertThat(over.name()).isEqualTo("Low pass");
        assertThat(over.state()).isEqualTo(new Mark(Form.DIAMOND, Tone.CALM, "Over time: Space when the act is over"));
        assertThat(at108(new FlightEvent.ActStarted(70), new FlightEvent.Stepped(80))
                        .state())
                .as("a figure follows")
                .isNull();
    }

    @Test
    void aFigureThatIsOnlyTimedIsSketchedByItsName() {
        NowView view = NowPresenter.of(
                SmallShow.moment(108, Plan.EMPTY, SmallShow.after(new FlightEvent.ActStarted(100))),
                SmallShow.words(CatalogueFile.shipped()));
        assertThat(view.name()).isEqualTo("Loop");
        assertThat(view.sketch().isEmpty()).isFalse();
        assertThat(view.sketch().atS())
                .as("it stands still: nobody knows where the aircraft is")
                .isEmpty();
        assertThat(at108(new FlightEvent.ActStarted(100)).sketch().isEmpty())
                .as("of a figure nobody knows")
                .isTrue();
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
