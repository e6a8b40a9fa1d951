package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.keys.Command;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.RemarkForm;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.LiveState;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class CommandEventsTest {
    private static final Handles HANDLES = new Handles("r1", true, false, List.of("f1", "f2"), "fill", 2);

    private static @Nullable LiveEvent event(Command command, LiveState state) {
        return CommandEvents.of(command, state, HANDLES)
                .map(make -> make.apply(7))
                .orElse(null);
    }

    @Test
    void nextStartsAnActThatWaits() {
        assertThat(event(Command.NEXT, SmallShow.after())).isEqualTo(new FlightEvent.ActStarted(7));
    }

    @Test
    void nextStepsInTheAir() {
        assertThat(event(Command.NEXT, SmallShow.after(new FlightEvent.ActStarted(1))))
                .isEqualTo(new FlightEvent.Stepped(7));
    }

    @Test
    void nextOffThePlanComesBackToTheNextFigure() {
        assertThat(event(Command.NEXT, SmallShow.after(new FlightEvent.ActStarted(1), new FlightEvent.WentOffPlan(2))))
                .isEqualTo(new FlightEvent.CameBack(7, 2));
    }

    @Test
    void holdReleasesWhatIsHeld() {
        LiveState flying = SmallShow.after(new FlightEvent.ActStarted(1));
        LiveState held = SmallShow.after(new FlightEvent.ActStarted(1), new FlightEvent.Held(2));
        assertThat(event(Command.HOLD, flying)).isEqualTo(new FlightEvent.Held(7));
        assertThat(event(Command.HOLD, held)).isEqualTo(new FlightEvent.Released(7));
    }

    @Test
    void swapSwapsTheNextTwo() {
        assertThat(event(Command.SWAP, SmallShow.after(new FlightEvent.ActStarted(1))))
                .isEqualTo(new FlightEvent.NextSwapped(7));
    }

    @Test
    void saidMeansTheRemarkOnTheScreenInItsForm() {
        assertThat(event(Command.SAID, SmallShow.after()))
                .isEqualTo(new TalkEvent.RemarkSaid(7, "r1", RemarkForm.SHORT));
    }

    @Test
    void saidIsRefusedWhileTheRemarkWaitsAndLeavingItOutIsNot() {
        Handles waits = new Handles("r1", true, true, List.of(), null, 2);
        LiveState state = SmallShow.after();
        assertThat(CommandEvents.refusal(Command.SAID, state, waits))
                .hasValue("This remark is not due yet, so nothing was marked: press X to leave it out.");
        assertThat(CommandEvents.refusal(Command.NOT_SAID, state, waits)).isEmpty();
        assertThat(CommandEvents.refusal(Command.SAID, state, HANDLES)).isEmpty();
    }

    @Test
    void aKeyWithNothingToTakeSaysSo() {
        LiveState state = SmallShow.after();
        assertThat(CommandEvents.refusal(Command.FILLER, state, Handles.NONE)).hasValue("No filler is left.");
        assertThat(CommandEvents.refusal(Command.FACT_1, state, Handles.NONE)).hasValue("No fact is offered now.");
        assertThat(CommandEvents.refusal(Command.SAID, state, Handles.NONE))
                .hasValue("No remark is on the screen to be marked.");
    }

    @Test
    void aFactThatIsNotThereMeansNothing() {
        assertThat(event(Command.FACT_2, SmallShow.after()))
                .isEqualTo(new TalkEvent.RemarkStarted(7, "f2", RemarkForm.FULL));
        assertThat(event(Command.FACT_3, SmallShow.after())).isNull();
    }
}
