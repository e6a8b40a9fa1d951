package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.Released;
import crowdline.live.event.FlightEvent.SourceChosen;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.IncidentEvent.IncidentClosed;
import crowdline.live.event.IncidentEvent.IncidentOpened;
import crowdline.live.event.LiveEvent.NoteMade;
import crowdline.live.event.LiveEvent.Undone;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent.RemarkSaid;
import crowdline.live.event.TalkEvent.RemarkStarted;
import crowdline.live.state.RemarkEntry.Outcome;
import crowdline.patter.Speaking;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import org.junit.jupiter.api.Test;

class IncidentAndTakingBackTest {

    @Test
    void incidentStopsEverythingElse() {
        Played played = Played.flying()
                .with(new SourceChosen(101, Source.CLOCK), new IncidentOpened(105))
                .clockUntil(500)
                .with(new Stepped(501));

        assertThat(played.refusal).isEqualTo("The incident page is open: type RESUME to leave it.");
        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.at(120).incidentS()).isEqualTo(15);
    }

    @Test
    void incidentIsLeftOnPurposeOnly() {
        Played played = Played.flying().with(new IncidentOpened(105), new IncidentClosed(106, false));
        assertThat(played.state.incidentOpen()).isTrue();

        played.with(new IncidentClosed(107, true));
        assertThat(played.state.incidentOpen()).isFalse();
        assertThat(played.state.incidents()).containsExactly(new IncidentSpan(105, 107.0));
    }

    @Test
    void clockStandsStillAfterAnIncidentUntilItIsReleased() {
        Played played = Played.flying()
                .with(new SourceChosen(101, Source.CLOCK), new IncidentOpened(105), new IncidentClosed(300, true))
                .clockUntil(310);
        assertThat(played.state.phase()).isEqualTo(new Phase.Held(0, 100, 0, 105));

        played.with(new Released(320));
        assertThat(ClockAdvance.nextDueS(played.state, Played.DURATIONS)).hasValue(325);
    }

    @Test
    void incidentCutsARemarkShort() {
        Played played = Played.flying().with(new RemarkStarted(102, "r1", RemarkForm.FULL), new IncidentOpened(105));

        assertThat(played.state.talk().speaking()).isNull();
        assertThat(played.state.talk().entries())
                .containsExactly(
                        new RemarkEntry("r1", RemarkForm.FULL, Outcome.CUT_SHORT, false, 102.0, 105, "first", "loop"));
        assertThat(played.state.talk().said("r1")).isFalse();
    }

    @Test
    void notesCanBeMadeDuringAnIncident() {
        Played played = Played.flying().with(new IncidentOpened(105), new NoteMade(110, "fire engine at the hangar"));

        assertThat(played.state.notes()).containsExactly(new Note(110, "fire engine at the hangar", "first", "loop"));
    }

    @Test
    void lastThingDoneIsTakenBack() {
        Played played = Played.flying().with(new Stepped(104));
        assertThat(played.state.takeBack()).contains(new Stepped(104));

        played.with(new Undone(106));
        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(played.timeIn(107)).isEqualTo(7);
        assertThat(played.state.takeBack()).contains(new FlightEvent.ActStarted(100));
    }

    @Test
    void remarkMarkedAsSaidByMistakeIsTakenBack() {
        Played played = Played.flying()
                .with(new RemarkStarted(101, "r1", RemarkForm.FULL), new RemarkSaid(103, "r1", RemarkForm.FULL))
                .with(new Undone(104));

        assertThat(played.state.talk().said("r1")).isFalse();
        assertThat(played.state.talk().speaking()).isEqualTo(new Speaking("r1", RemarkForm.FULL, 101, false));
    }

    @Test
    void takingBackARemarkLeavesTheCourseAlone() {
        Played played =
                Played.flying().with(new Stepped(108), new RemarkSaid(109, "r1", RemarkForm.SHORT), new Undone(110));

        assertThat(played.state.figureId()).isEqualTo("roll");
    }

    @Test
    void remarkAlreadySaidIsNotSaidTwiceByABouncingKey() {
        Played played = Played.flying()
                .with(new RemarkSaid(102, "r1", RemarkForm.FULL), new RemarkSaid(102.1, "r1", RemarkForm.FULL));

        assertThat(played.refusal).isEqualTo("This remark is already marked as said.");
        assertThat(played.state.talk().entries()).hasSize(1);
    }

    @Test
    void takingBackHasAnEnd() {
        Played played = Played.flying();
        for (int i = 0; i < 50; i++) {
            played.with(new RemarkSaid(110 + i, "r" + i, RemarkForm.FULL));
        }

        assertThat(played.state.takeBacks()).hasSize(LiveState.MOST_TAKE_BACKS);
    }

    @Test
    void nothingHappensBeforeAShowIsOpen() {
        Played played = new Played().with(new NoteMade(1, "hello"));

        assertThat(played.refusal).isEqualTo("No show is open: press Ctrl+O to open one.");
    }

    @Test
    void nextActIsNoneThatWasFlown() {
        Played played = Played.flying().with(new FlightEvent.ActEnded(200));
        assertThat(played.state.nextActId()).contains("second");

        played.with(new FlightEvent.ActChosen(202, "third", "full", List.of("loop"), null));
        assertThat(played.state.nextActId()).contains("second");
    }

    @Test
    void showCannotEndWithAnActInTheAir() {
        Played played = Played.flying().with(new ShowEvent.ShowEnded(101));

        assertThat(played.refusal).isEqualTo("An act is still in the air: press E when it is over.");
        assertThat(played.with(new FlightEvent.ActEnded(102), new ShowEvent.ShowEnded(103))
                        .state
                        .over())
                .isTrue();
    }
}
