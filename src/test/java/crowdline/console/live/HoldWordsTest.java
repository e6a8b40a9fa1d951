package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.say.SayView;
import crowdline.console.live.say.SayView.What;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.TalkEvent;
import crowdline.patter.Placed;
import crowdline.patter.Plan;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import org.junit.jupiter.api.Test;

/** While the act is on hold, nothing is said of the figure that was left, nor what was broken off. */
class HoldWordsTest {
    private static SayView say(double nowS, Placed placed, LiveEvent... events) {
        Plan plan = SmallShow.plan(placed);
        return new LivePresenter(SmallShow.wordsWithADuty())
                .view(SmallShow.moment(nowS, plan, SmallShow.after(events)))
                .say();
    }

    @Test
    void whatIsToldOfTheFigureWaitsUntilItCarriesOn() {
        Placed fact = SmallShow.placed("r-fact-1", "f1", RemarkKind.FACT, 110);

        SayView held = say(110, fact, new FlightEvent.ActStarted(100), new FlightEvent.Held(104));
        assertThat(held.what()).isEqualTo(What.WAITING);
        assertThat(held.caption()).isEqualTo("Say when it carries on");

        SayView on = say(
                110, fact, new FlightEvent.ActStarted(100), new FlightEvent.Held(104), new FlightEvent.Released(110));
        assertThat(on.what()).isEqualTo(What.WORDS);
        assertThat(on.caption()).isEqualTo("Say now");
    }

    @Test
    void whatAnIncidentBrokeOffIsNotAtOnceThereAgain() {
        LiveEvent[] events = {
            new FlightEvent.ActStarted(100),
            new TalkEvent.RemarkStarted(102, "r-fact-act", RemarkForm.FULL),
            new IncidentEvent.IncidentOpened(103),
            new IncidentEvent.IncidentClosed(120, true)
        };

        SayView fact = say(121, SmallShow.placed("r-fact-act", "f1", RemarkKind.FACT, 121), events);
        assertThat(fact.what()).isEqualTo(What.WAITING);
        assertThat(fact.caption()).isEqualTo("Say when it carries on");
    }

    @Test
    void aDutyMayBeSaidWhileNothingMoves() {
        SayView duty = say(
                110,
                SmallShow.placed("r-duty", "f1", RemarkKind.DUTY, 110),
                new FlightEvent.ActStarted(100),
                new FlightEvent.Held(104));
        assertThat(duty.caption()).isEqualTo("Say now");
    }

    @Test
    void aQuietIsOverWhereNothingIsFlown() {
        LiveEvent[] events = {new FlightEvent.ActStarted(100), new FlightEvent.Stepped(110), new FlightEvent.Held(114)};
        Placed duty = SmallShow.placed("r-duty", "f2", RemarkKind.DUTY, 130);

        assertThat(say(130, duty, events).what()).isEqualTo(What.WORDS);
    }
}
