package crowdline.console.live.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import crowdline.console.keys.Command;
import crowdline.console.live.Handles;
import crowdline.console.live.LiveCommands;
import crowdline.console.live.Meaning;
import crowdline.console.live.SmallShow;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.now.LiveNow;
import crowdline.live.state.LiveState;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.time.Instant;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How duties are told to a commentator; the session begins at 14:20 on the day of the show. */
class DutiesPresenterTest {
    private static final Instant ZERO = Instant.parse("2026-06-06T14:20:00Z");
    private static final Show SMALL = SmallShow.show();

    private static Remark duty(String id, DutyTimes asked) {
        return new Remark(id, RemarkKind.DUTY, "All of " + id, "Thanks to " + id, null, null, 1, false).asked(asked);
    }

    private static DutiesView view(double nowS, LiveState state, Remark... duties) {
        LiveNow now = LiveNow.of(state, SmallShow.TEN_SECONDS, nowS, ZERO.plusMillis(Math.round(nowS * 1000)));
        return DutiesPresenter.of(state, now, SmallShow.words(SMALL.withActs(SMALL.acts(), List.of(duties))));
    }

    private static List<String> told(DutiesView view) {
        return view.rows().stream()
                .map(r -> r.state().word() + " | " + r.count() + " | " + r.text() + " | " + r.when())
                .toList();
    }

    private static LiveEvent said(double atS, String id) {
        return new TalkEvent.RemarkSaid(atS, id, RemarkForm.FULL);
    }

    @Test
    void eachDutyIsToldInAWordWithItsTicksTheMostPressingFirst() {
        String act = SMALL.acts().get(0).id();
        LiveState state = SmallShow.after(
                said(60, "dairy"),
                said(61, "water"),
                new TalkEvent.RemarkShown(120, "shown", RemarkForm.FULL, 110),
                new FlightEvent.ActStarted(200));
        assertThat(told(view(
                        300,
                        state,
                        duty("water", DutyTimes.ONCE),
                        duty("before", new DutyTimes(1, null, null, null, act, true)),
                        duty("after", new DutyTimes(1, null, null, act, null, true)),
                        duty("shown", DutyTimes.ONCE),
                        duty("dairy", new DutyTimes(4, 10.0, null, null, null, true)),
                        duty("gate", new DutyTimes(2, 10.0, LocalTime.of(16, 0), null, null, false)),
                        duty("rope", new DutyTimes(1, null, LocalTime.of(14, 24, 59), null, null, true)))))
                .containsExactly(
                        "Overdue | 0 of 1 | Thanks to rope | by 14:24",
                        "Due | 0 of 2 | Thanks to gate | by 15:50, between acts",
                        "Later | 0 of 1 | Thanks to after | after "
                                + SMALL.acts().get(0).title(),
                        "Later | 1 of 4 | Thanks to dairy | said 14:21, again from 14:31",
                        "Too late | 0 of 1 | Thanks to before | was for before "
                                + SMALL.acts().get(0).title(),
                        "Said | 1 of 1 | Thanks to water | said 14:21",
                        "Shown | 1 of 1 | Thanks to shown | shown 14:22");
    }

    @Test
    void everyStateHasAShapeOfItsOwn() {
        LiveState state =
                SmallShow.after(said(60, "water"), new TalkEvent.RemarkShown(120, "shown", RemarkForm.FULL, 1));
        assertThat(view(
                                300,
                                state,
                                duty("water", DutyTimes.ONCE),
                                duty("shown", DutyTimes.ONCE),
                                duty("due", DutyTimes.ONCE),
                                duty("rope", new DutyTimes(1, null, LocalTime.of(14, 0), null, null, true)))
                        .rows())
                .extracting(r -> r.state().form())
                .doesNotHaveDuplicates();
    }

    @Test
    void aKeyInTheListSaysOfTheChosenOneWhateverIsOnTheScreen() {
        Handles waits = new Handles("call", true, true, List.of(), null, null).withChosenDuty("rope");
        assertThat(event(Command.SAID, waits)).isEqualTo(new TalkEvent.RemarkSaid(7, "rope", RemarkForm.FULL));
        assertThat(event(Command.NOT_SAID, waits)).isEqualTo(new TalkEvent.RemarkSkipped(7, "rope"));
        assertThat(event(Command.NOT_SAID, waits.withChosenDuty(null)))
                .isEqualTo(new TalkEvent.RemarkSkipped(7, "call"));
        assertThat(meaning(Command.SAID, waits.withChosenDuty(null))).isInstanceOf(Meaning.Nothing.class);
        assertThatIllegalArgumentException().isThrownBy(() -> meaning(Command.WORDS, waits));
    }

    private static Meaning meaning(Command command, Handles handles) {
        return LiveCommands.of(command, SmallShow.words(), SmallShow.after(), handles);
    }

    private static LiveEvent event(Command command, Handles handles) {
        return ((Meaning.Happens) meaning(command, handles)).event().apply(7);
    }
}
