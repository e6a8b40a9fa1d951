package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.console.keys.Command;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.LiveState;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LiveCommandsTest {
    private static final Handles HANDLES = new Handles("r1", true, false, List.of("f1", "f2"), "fill", 2);

    private static @Nullable LiveEvent event(Command command, LiveState state) {
        return of(command, state, HANDLES) instanceof Meaning.Happens happens
                ? happens.event().apply(7)
                : null;
    }

    private static Meaning of(Command command, LiveState state, Handles handles) {
        return LiveCommands.of(command, SmallShow.words(), state, handles);
    }

    private static String refusal(Command command, LiveState state, Handles handles) {
        return of(command, state, handles) instanceof Meaning.Nothing nothing ? nothing.why() : "";
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
        assertThat(refusal(Command.SAID, state, waits))
                .isEqualTo("This remark is not due yet, so nothing was marked: press X to leave it out.");
        assertThat(refusal(Command.NOT_SAID, state, waits)).isEmpty();
        assertThat(refusal(Command.SAID, state, HANDLES)).isEmpty();
    }

    @Test
    void aKeyWithNothingToTakeSaysSo() {
        LiveState state = SmallShow.after();
        assertThat(refusal(Command.FILLER, state, Handles.NONE)).isEqualTo("No other filler is left.");
        assertThat(refusal(Command.FACT_1, state, Handles.NONE)).isEqualTo("No fact is offered now.");
        assertThat(refusal(Command.SAID, state, Handles.NONE)).isEqualTo("No remark is on the screen to be marked.");
    }

    @Test
    void aFactThatIsNotThereMeansNothing() {
        assertThat(event(Command.FACT_2, SmallShow.after()))
                .isEqualTo(new TalkEvent.RemarkStarted(7, "f2", RemarkForm.FULL));
        assertThat(event(Command.FACT_3, SmallShow.after())).isNull();
    }

    @ParameterizedTest
    @EnumSource(Command.class)
    void everyKeyOfLiveMeansSomethingAndNoOtherDoes(Command command) {
        LiveState flying = SmallShow.after(new FlightEvent.ActStarted(1));
        if (command.scope() == Command.Scope.LIVE || command == Command.INCIDENT) {
            assertThat(of(command, flying, HANDLES)).isNotNull();
        } else {
            assertThatThrownBy(() -> of(command, flying, HANDLES)).hasMessageContaining("no command of Live");
        }
    }

    @Test
    void theNextActIsNotChosenWhileOneIsInTheAir() {
        assertThat(refusal(Command.NEXT_ACT, SmallShow.after(new FlightEvent.ActStarted(1)), HANDLES))
                .endsWith("is still in the air: press E when it is over.");
    }
}
