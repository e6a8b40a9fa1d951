package crowdline.console.live;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.keys.Command;
import crowdline.console.live.day.OrderPresenter;
import crowdline.console.live.day.OrderView.Row;
import crowdline.console.live.day.ToldPresenter;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.DayNow;
import crowdline.live.now.LiveNow;
import crowdline.live.state.Day;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.loaded.DayShow;
import crowdline.loaded.ShowLookup;
import crowdline.running.ChosenAct;
import crowdline.show.Act;
import crowdline.show.Show;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Three acts of twelve minutes at 14:30, 14:45 and 15:00, each expected to take ten; the session begins at 14:20. */
class RunningOrderTest {
    private static final Instant ZERO = Instant.parse("2026-06-06T14:20:00Z");
    private static final LocalDate TODAY = LocalDate.of(2026, 6, 6);

    private final Show planned = planned(LocalTime.of(14, 30), LocalTime.of(14, 45), LocalTime.of(15, 0));
    private Show show = planned;
    private LiveState state = LiveState.initial();

    private static Show planned(LocalTime... slots) {
        Show one = SmallShow.show();
        List<Act> acts = new ArrayList<>();
        for (int i = 0; i < slots.length; i++) {
            Act act = one.acts().get(0);
            acts.add(new Act(
                    "a" + (i + 1),
                    List.of("Loops", "Rolls", "Spins", "Waves").get(i),
                    act.performer(),
                    act.airframe(),
                    slots[i],
                    12,
                    act.entry(),
                    act.figures(),
                    act.variants(),
                    List.of()));
        }
        return one.withActs(acts, List.of());
    }

    private RunningOrderTest happens(LiveEvent... events) {
        if (state.showTitle() == null) {
            state = moved(new ShowEvent.ShowOpened(
                    0, "Day", show.acts().stream().map(Act::id).toList()));
            state = moved(ChosenAct.of(show, show.acts().get(0)).apply(1));
        }
        for (LiveEvent event : events) {
            state = moved(event);
            show = DayShow.of(planned, state.day().added());
        }
        return this;
    }

    private LiveState moved(LiveEvent event) {
        Step step = Live.next(state, event);
        assertThat(step).as(event.toString()).isInstanceOf(Step.Moved.class);
        return ((Step.Moved) step).state();
    }

    private ShowLookup words() {
        return SmallShow.words(show);
    }

    private DayNow day(double nowS) {
        Instant wall = ZERO.plusMillis(Math.round(nowS * 1000));
        return DayNow.of(state, show, act -> 600, LiveNow.of(state, SmallShow.TEN_SECONDS, nowS, wall));
    }

    private List<Row> rows(double nowS) {
        return OrderPresenter.of(day(nowS), TODAY, words()).rows();
    }

    private static List<String> said(List<Row> rows) {
        return rows.stream()
                .map(r -> (r.title() + " | " + r.state().word() + " | " + r.slot() + " " + r.moved() + " | "
                                + r.expected())
                        .strip())
                .toList();
    }

    private Meaning give(Command command, String actId) {
        return LiveCommands.of(command, words(), state, Handles.NONE.withChosenAct(actId));
    }

    private void press(Command command, String actId, double atS) {
        happens(((Meaning.Happens) give(command, actId)).event().apply(atS));
    }

    private String refused(Command command, String actId) {
        return ((Meaning.Nothing) give(command, actId)).why();
    }

    @Test
    void howLongAnActLastsIsRounded() {
        happens();
        DayNow now = DayNow.of(state, show, act -> 289, LiveNow.of(state, SmallShow.TEN_SECONDS, 60, ZERO));
        assertThat(OrderPresenter.of(now, TODAY, words()).rows())
                .extracting(Row::lasts)
                .containsOnly("5 min");
    }

    @Test
    void everyActIsThereWithItsSlot() {
        assertThat(said(happens().rows(60)))
                .containsExactly("Loops | Next | 14:30  |", "Rolls | Waiting | 14:45  |", "Spins | Waiting | 15:00  |");
    }

    @Test
    void whatIsLatePushesWhatComesAfterIt() {
        happens(new FlightEvent.ActStarted(600 + 8 * 60));
        // Begun at 14:38 and expected to take ten minutes: over at 14:48, and the next slot began at 14:45.
        assertThat(said(rows(600 + 9 * 60)))
                .containsExactly(
                        "Loops | Flying | 14:30  | began 14:38",
                        "Rolls | Waiting | 14:45  | expect 14:48",
                        "Spins | Waiting | 15:00  |");
    }

    @Test
    void actThatIsOverSaysWhenItBeganAndHowLongItTook() {
        happens(new FlightEvent.ActStarted(660), new FlightEvent.ActEnded(660 + 7 * 60));
        Row first = rows(2000).get(0);
        assertThat(said(List.of(first))).containsExactly("Loops | Flown | 14:30  | began 14:31");
        assertThat(first.lasts()).isEqualTo("7 min");
        assertThat(OrderPresenter.of(day(2000), TODAY, words()).first()).isEqualTo(1);
    }

    @Test
    void slotThatIsPastIsExpectedNow() {
        happens();
        assertThat(said(rows(45 * 60)))
                .containsExactly(
                        "Loops | Next | 14:30  | expect 15:05",
                        "Rolls | Waiting | 14:45  | expect 15:15",
                        "Spins | Waiting | 15:00  | expect 15:25");
    }

    @Test
    void delayMovesThisActAndAllAfterIt() {
        happens().press(Command.ALL_MUCH_LATER, "a2", 30);
        press(Command.ALL_LATER, "a2", 31);
        press(Command.ALL_LATER, "a2", 32);
        assertThat(said(rows(60)))
                .containsExactly(
                        "Loops | Next | 14:30  |",
                        "Rolls | Waiting | 14:57 12 min later |",
                        "Spins | Waiting | 15:12 12 min later |");
        press(Command.ONE_EARLIER, "a3", 33);
        assertThat(rows(60).get(2).moved()).isEqualTo("11 min later");
        press(Command.ALL_EARLIER, "a2", 34);
        press(Command.ALL_MUCH_EARLIER, "a2", 35);
        assertThat(rows(60).get(1).moved()).isEqualTo("1 min later");
    }

    @Test
    void waitingActCountsDownToTheSlotItWasMovedTo() {
        happens().press(Command.ALL_MUCH_LATER, "a1", 30);
        Instant wall = ZERO.plusSeconds(60);
        assertThat(LiveNow.of(state, SmallShow.TEN_SECONDS, 60, wall).toSlotS()).isEqualTo(19 * 60);
    }

    @Test
    void actsThatHaveBegunAreNotMoved() {
        happens(new FlightEvent.ActStarted(660));
        assertThat(refused(Command.ONE_LATER, "a1"))
                .isEqualTo("That act has begun, so its slot can no longer be" + " moved.");
        press(Command.ALL_LATER, "a1", 700);
        assertThat(state.day().laterS("a1")).isZero();
        assertThat(state.day().laterS("a2")).isEqualTo(60);
    }

    @Test
    void actThatIsToBeFlownAgainIsMoved() {
        happens(new FlightEvent.ActStarted(660), new FlightEvent.ActEnded(700));
        assertThat(refused(Command.ONE_LATER, "a1")).contains("can no longer be moved");
        press(Command.CHOOSE_ACT, "a1", 710);
        press(Command.ONE_LATER, "a1", 720);
        assertThat(state.day().laterS("a1")).isEqualTo(60);
    }

    @Test
    void actsThatChangePlacesChangeSlots() {
        happens().press(Command.ACT_UP, "a3", 30);
        assertThat(said(rows(60)))
                .containsExactly(
                        "Loops | Next | 14:30  |",
                        "Spins | Waiting | 14:45 15 min earlier |",
                        "Rolls | Waiting | 15:00 15 min later |");
        assertThat(state.nextActId()).contains("a3");
        press(Command.ACT_DOWN, "a3", 31);
        assertThat(said(rows(60)).get(1)).isEqualTo("Rolls | Waiting | 14:45  |");
        assertThat(refused(Command.ACT_UP, "a1")).isEqualTo("It is the first act already.");
        assertThat(refused(Command.ACT_DOWN, "a3")).isEqualTo("It is the last act already.");
    }

    @Test
    void cancelledActIsBroughtBackByTheSameKey() {
        happens().press(Command.CANCEL_ACT, "a2", 30);
        assertThat(said(rows(60)).get(1)).isEqualTo("Rolls | Cancelled | 14:45  |");
        press(Command.CANCEL_ACT, "a2", 31);
        assertThat(rows(60).get(1).state().word()).isEqualTo("Waiting");
    }

    @Test
    void cancelledActTakesNobodysTime() {
        happens(new FlightEvent.ActStarted(600 + 14 * 60));
        press(Command.CANCEL_ACT, "a2", 1500);
        // The first is over at 14:54 at the earliest.
        assertThat(said(rows(1600)).get(2)).isEqualTo("Spins | Waiting | 15:00  |");
    }

    @Test
    void actThatIsOverIsChosenAgain() {
        happens(new FlightEvent.ActStarted(660), new FlightEvent.ActEnded(900));
        press(Command.CHOOSE_ACT, "a1", 950);
        assertThat(state.actId()).isEqualTo("a1");
        assertThat(rows(960).get(0).state().word()).isEqualTo("Next");
        happens(new FlightEvent.ActStarted(970));
        assertThat(rows(980).get(0).state().word()).isEqualTo("Flying");
    }

    @Test
    void anyActIsChosenNext() {
        happens().press(Command.CHOOSE_ACT, "a3", 30);
        assertThat(state.actId()).isEqualTo("a3");
        assertThat(state.nextActId()).contains("a1");
    }

    @Test
    void actNobodyPlannedIsPutInAndFlown() {
        happens();
        happens(((Meaning.Happens) LiveCommands.putIn(words(), state, "A wave for Kim, 4 min", "a2"))
                .event()
                .apply(40));
        assertThat(said(rows(60)))
                .containsExactly(
                        "Loops | Next | 14:30  |",
                        "Rolls | Waiting | 14:45  |",
                        "A wave for Kim | Waiting | 14:57  |",
                        "Spins | Waiting | 15:00  | expect 15:07");
        String id = state.runningOrder().get(2);
        assertThat(show.act(id).orElseThrow().slotMinutes()).isEqualTo(4);
        assertThat(words().who(show.act(id).orElseThrow())).isEqualTo("put in on the day");
        press(Command.CHOOSE_ACT, id, 50);
        happens(new FlightEvent.ActStarted(60));
        assertThat(words().name(show.act(id).orElseThrow(), state.variant(), id))
                .isEqualTo("A wave for Kim");
        happens(new FlightEvent.ActEnded(300));
        assertThat(state.flown(id)).isTrue();
    }

    @Test
    void actPutInBehindOneThatWasMovedComesAsMuchLater() {
        happens().press(Command.ALL_MUCH_LATER, "a2", 30);
        happens(((Meaning.Happens) LiveCommands.putIn(words(), state, "Wave 3", "a2"))
                .event()
                .apply(40));
        assertThat(rows(60).get(2).slot()).isEqualTo("15:07");
    }

    @Test
    void namesAndMinutesAreReadAsPeopleTypeThem() {
        happens();
        for (String typed :
                List.of("Fly-past, 5", "Fly-past 5", "Fly-past, 5 min", "Fly-past: 5'", "Fly-past - 5 minutes.")) {
            ShowEvent.ActAdded added =
                    (ShowEvent.ActAdded) ((Meaning.Happens) LiveCommands.putIn(words(), state, typed, null))
                            .event()
                            .apply(9);
            assertThat(added).as(typed).isEqualTo(new ShowEvent.ActAdded(9, "put-in-1", "Fly-past", 5, null));
        }
        ShowEvent.ActAdded named =
                (ShowEvent.ActAdded) ((Meaning.Happens) LiveCommands.putIn(words(), state, "Formation of 4, 7.5", null))
                        .event()
                        .apply(9);
        assertThat(named.title()).isEqualTo("Formation of 4");
        assertThat(named.minutes()).isEqualTo(7.5);
        for (String typed : List.of("Fly-past", "5", "5 min", ", 5", "Fly-past, 0", "   ")) {
            assertThat(LiveCommands.putIn(words(), state, typed, null))
                    .as(typed)
                    .isEqualTo(new Meaning.Nothing(
                            "An act needs a name and its minutes, such as: Fly-past, 5. Nothing was put in."));
        }
    }

    @Test
    void actThatIsPutInIsNoLongerThanAFigureOfAShow() {
        happens();
        assertThat(LiveCommands.putIn(words(), state, "Lunch, 121", null))
                .isEqualTo(new Meaning.Nothing("An act that is put in takes 120 minutes at most. Nothing was put in."));
        happens(((Meaning.Happens) LiveCommands.putIn(words(), state, "Lunch, 120", null))
                .event()
                .apply(40));
        assertThat(show.act("put-in-1").orElseThrow().figures().get(0).durationS())
                .isEqualTo(7200);
    }

    @Test
    void actsPastMidnightAndOfAnotherDayNameTheirDay() {
        Show night = planned(LocalTime.of(23, 50), LocalTime.of(0, 20));
        show = night;
        state = moved(new ShowEvent.ShowOpened(0, "Night", List.of("a1", "a2")));
        List<Row> rows = OrderPresenter.of(
                        DayNow.of(state, night, act -> 600, LiveNow.of(state, SmallShow.TEN_SECONDS, 0, ZERO)),
                        TODAY,
                        SmallShow.words(night))
                .rows();
        assertThat(rows).extracting(Row::slot).containsExactly("23:50", "Sun 00:20");
        assertThat(rows).extracting(Row::expected).containsExactly("", "");
    }

    @Test
    void whatAKeyDidIsToldInTheStrip() {
        happens();
        assertThat(told(Command.ALL_LATER, "a2")).isEqualTo("All acts from \"Rolls\" on are 1 min later");
        assertThat(told(Command.ALL_LATER, "a2")).isEqualTo("All acts from \"Rolls\" on are 2 min later");
        assertThat(told(Command.ONE_EARLIER, "a3")).isEqualTo("\"Spins\" is 1 min later");
        assertThat(told(Command.ONE_EARLIER, "a3")).isEqualTo("\"Spins\" is on time again");
        assertThat(told(Command.ACT_UP, "a3")).isEqualTo("\"Spins\" now comes before \"Rolls\"");
        assertThat(told(Command.CANCEL_ACT, "a2")).isEqualTo("\"Rolls\" is cancelled");
        assertThat(told(Command.CANCEL_ACT, "a2")).isEqualTo("\"Rolls\" will be flown after all");
        LiveState before = state;
        happens(new LiveEvent.Undone(99));
        assertThat(ToldPresenter.of(new LiveEvent.Undone(99), before, state, words()))
                .map(m -> m.word())
                .contains("Took back: the running order (\"Rolls\" will be flown after all)");
    }

    private String told(Command command, String actId) {
        LiveState before = state;
        LiveEvent event = ((Meaning.Happens) give(command, actId)).event().apply(50);
        happens(event);
        return ToldPresenter.of(event, before, state, words()).orElseThrow().word();
    }

    @Test
    void withoutTheRunningOrderThereIsNoActToMove() {
        happens();
        assertThat(LiveCommands.of(Command.ALL_LATER, words(), state, Handles.NONE))
                .isEqualTo(new Meaning.Nothing("No act is chosen in the running order: press R for it."));
    }

    @Test
    void freshIdsAreUnlikeAnyOther() {
        happens(new ShowEvent.ActAdded(5, "put-in-2", "First", 3, null));
        assertThat(DayShow.freshId(state.day())).isEqualTo("put-in-3");
        Day day = state.day();
        assertThat(DayShow.of(planned, day.added()).acts()).hasSize(4);
    }
}
