package crowdline.live.debrief;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.SmallShow;
import crowdline.live.debrief.DayRun.Talked;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.HeardEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.patter.Plan;
import crowdline.sheet.DutySheet;
import crowdline.show.Act;
import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import crowdline.timing.ActTimes;
import crowdline.timing.Pass;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a day is told to have been; every text takes four seconds to say. The session begins at 14:00. */
class DayRunTest {
    private static final DebriefSources SOURCES = new DebriefSources() {
        @Override
        public Optional<ActTimes> times(String actId, String variant) {
            return Optional.empty();
        }

        @Override
        public Optional<Plan> plan(String actId, String variant) {
            return Optional.empty();
        }

        @Override
        public String name(String actId, String variant, String figureId) {
            return figureId;
        }

        @Override
        public double spokenS(String text) {
            return 4;
        }

        @Override
        public List<Pass> passes(String actId, String variant) {
            return List.of();
        }
    };

    private static Show show() {
        Show small = SmallShow.show();
        Act act = small.acts().get(0);
        Act other = new Act(
                "a9",
                "Gliders",
                act.performer(),
                act.airframe(),
                LocalTime.of(15, 0),
                8,
                act.entry(),
                act.figures(),
                act.variants(),
                List.of());
        return small.withActs(
                List.of(act, other),
                List.of(
                        Remark.of("fact", RemarkKind.FACT, "It is dry."),
                        Remark.of("dairy", RemarkKind.DUTY, "Thanks to the dairy.")
                                .asked(new DutyTimes(3, 10.0, LocalTime.of(16, 30), null, null, true)),
                        Remark.of("rope", RemarkKind.DUTY, "Mind the rope.")));
    }

    private static DayRun day(LiveEvent... events) {
        LiveState state = LiveState.initial();
        for (LiveEvent event : events) {
            Step step = Live.next(state, event);
            assertThat(step).as(event.toString()).isInstanceOf(Step.Moved.class);
            state = ((Step.Moved) step).state();
        }
        return Debrief.of(show(), state, SOURCES).day();
    }

    private static LiveEvent opened() {
        return new ShowEvent.ShowOpened(0, "Day", List.of("a1", "a9"));
    }

    private static LiveEvent said(double atS, String id) {
        return new TalkEvent.RemarkSaid(atS, id, RemarkForm.FULL);
    }

    private static List<String> told(DayRun day) {
        return day.duties().stream()
                .map(d -> DutySheet.line(d, s -> LocalTime.of(14, 0).plusSeconds((long) s)))
                .toList();
    }

    @Test
    void ofEachDutyIsToldWhenItWasSaidAndWhatIsMissing() {
        DayRun day = day(
                opened(),
                said(60, "dairy"),
                said(660, "dairy"),
                new TalkEvent.RemarkShown(1320, "rope", RemarkForm.FULL, 1310));
        assertThat(told(day))
                .containsExactly(
                        "  Said 2 of 3 times (14:01, 14:11), asked for by 16:30: Thanks to the dairy.",
                        "  Not said, shown once and not marked (shown 14:22): Mind the rope.");
        assertThat(day.duties()).extracting(DutyRun::missing).containsExactly(1, 0);
    }

    @Test
    void whatWasNeverSaidIsToldAndWhatWasSaidIsNoMore() {
        DayRun day = day(opened(), said(60, "rope"), said(600, "rope"));
        assertThat(told(day))
                .containsExactly(
                        "  Said 0 of 3 times, asked for by 16:30: Thanks to the dairy.",
                        "  Said 2 times (14:01, 14:10): Mind the rope.");
    }

    @Test
    void everyActHasItsSlotAndEachTimeItWasFlown() {
        DayRun day = day(
                opened(),
                new FlightEvent.ActChosen(1, "a1", "full", List.of("f1"), (Double) null),
                new FlightEvent.ActStarted(100),
                new FlightEvent.ActEnded(160),
                new ShowEvent.ActsMoved(170, List.of("a9"), 300),
                new ShowEvent.ActCancelled(180, "a9"),
                new FlightEvent.ActChosen(190, "a1", "full", List.of("f1"), (Double) null),
                new FlightEvent.ActStarted(200));
        assertThat(day.acts()).extracting(DayRun.ActRun::actId).containsExactly("a1", "a9");
        assertThat(day.acts().get(0).flights())
                .containsExactly(new DayRun.Flight(100, 160.0), new DayRun.Flight(200, null));
        assertThat(day.acts().get(1).cancelled()).isTrue();
        assertThat(day.acts().get(1).movedS()).isEqualTo(300);
        assertThat(day.acts().get(1).slot()).isEqualTo(LocalTime.of(15, 0));
        assertThat(day.span()).isEqualTo(new DayRun.Flight(100, 200.0));
    }

    @Test
    void talkIsFromTheStartThatIsKnownOrAsLongAsTheWordsTakeAndNeverCountsTwice() {
        DayRun day = day(
                opened(),
                said(20, "dairy"),
                new TalkEvent.RemarkStarted(30, "fact", RemarkForm.FULL),
                said(32, "fact"),
                said(34, "rope"),
                new TalkEvent.RemarkShown(60, "dairy", RemarkForm.FULL, 55),
                new TalkEvent.RemarkSkipped(100, "fact"));
        assertThat(day.talk())
                .containsExactly(
                        new Talked(16, 20, RemarkKind.DUTY),
                        new Talked(30, 34, RemarkKind.FACT),
                        new Talked(55, 60, RemarkKind.DUTY));
        assertThat(day.talkS(18, 31)).isEqualTo(3);
        assertThat(day.talkS(60, 100)).isZero();
    }

    @Test
    void whileTheMicrophoneListensTalkIsWhatItHeard() {
        DayRun day = day(
                opened(),
                said(12, "dairy"),
                new HeardEvent.ListeningBegan(10),
                new HeardEvent.TalkHeard(25, 20, 23.5),
                said(24, "rope"),
                new HeardEvent.ListeningEnded(60),
                new TalkEvent.RemarkShown(70, "dairy", RemarkForm.FULL, 65));
        assertThat(day.talk())
                .containsExactly(
                        new Talked(8, 10, RemarkKind.DUTY),
                        new Talked(20, 23.5, null),
                        new Talked(65, 70, RemarkKind.DUTY));
        assertThat(day.measuredShare(0, 100)).isEqualTo(0.5);
        assertThat(day.measuredShare(20, 60)).isEqualTo(1);
        assertThat(day.measuredShare(60, 100)).isZero();
    }

    @Test
    void aDayOnWhichNothingHappenedHasNoSpan() {
        assertThat(day(opened()).span()).isNull();
    }
}
