package crowdline.console.live.day;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.keys.Command;
import crowdline.console.live.SmallShow;
import crowdline.console.paint.Mark;
import crowdline.live.event.AnnouncementEvent;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.IncidentEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.Source;
import crowdline.live.event.TalkEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import crowdline.running.Told;
import crowdline.show.figure.RemarkForm;
import java.util.List;
import org.junit.jupiter.api.Test;

class ToldPresenterTest {
    private static final FlightEvent START = new FlightEvent.ActStarted(100);

    private static String told(LiveState before, LiveEvent event) {
        LiveState after = ((Step.Moved) Live.next(before, event)).state();
        return ToldPresenter.of(event, before, after, SmallShow.words())
                .map(Mark::word)
                .orElse("");
    }

    /** What Z tells after these. */
    private static String back(LiveEvent... events) {
        return told(SmallShow.after(events), new LiveEvent.Undone(120));
    }

    @Test
    void whatWasTakenBackIsNamedWithItsKey() {
        assertThat(back(START)).isEqualTo("Took back: Space (\"Loop\" began)");
        assertThat(back(START, new FlightEvent.Stepped(108))).isEqualTo("Took back: Space (\"Stall turn\" began)");
        assertThat(back(START, new FlightEvent.Stepped(108), new FlightEvent.SteppedBack(109)))
                .isEqualTo("Took back: Backspace (back to \"Loop\")");
        assertThat(back(START, new FlightEvent.SteppedBack(109)))
                .isEqualTo("Took back: Backspace (back to before the act)");
        assertThat(back(START, new FlightEvent.Held(108))).isEqualTo("Took back: H (on hold)");
        assertThat(back(START, new FlightEvent.Held(108), new FlightEvent.Released(109)))
                .isEqualTo("Took back: H (carried on)");
        assertThat(back(START, new FlightEvent.NextDropped(108))).isEqualTo("Took back: D (dropped \"Stall turn\")");
        assertThat(back(START, new FlightEvent.NextSwapped(108)))
                .isEqualTo("Took back: W (\"Low pass\" now comes before \"Stall turn\")");
        assertThat(back(new FlightEvent.ActChosen(90, "a1", "full", List.of("f1"), null)))
                .as("by N, or from the running order")
                .startsWith("Took back: the choice (act \"");
        assertThat(back(START, new FlightEvent.WentOffPlan(108))).isEqualTo("Took back: O (off the plan)");
        assertThat(back(START, new FlightEvent.SourceChosen(108, Source.CLOCK)))
                .isEqualTo("Took back: C (following the clock)");
        assertThat(back(START, new FlightEvent.ActEnded(108))).isEqualTo("Took back: E (the act is over)");
        assertThat(back(START, new TalkEvent.RemarkSaid(108, "r-say-1", RemarkForm.FULL)))
                .isEqualTo("Took back: S (\"Up, over the top, and round, back to where\u2026\" said)");
        assertThat(back(START, new TalkEvent.FillerTaken(108, "r-fill", RemarkForm.FULL)))
                .isEqualTo("Took back: F (\"The smoke is only paraffin.\")");
    }

    /** The page itself shows it; whoever leaves it at once must not read there that an act is over, or a figure began. */
    @Test
    void whatAPageInFrontShowsIsNotToldAsWell() {
        for (LiveEvent event : List.of(
                new IncidentEvent.IncidentOpened(110),
                new AnnouncementEvent.AnnouncementShown(110, "stop", "Weather stop"),
                new AnnouncementEvent.BlankFilled(110, "stop", "when", "at four"))) {
            assertThat(told(SmallShow.after(START), event)).isEmpty();
            assertThat(told(SmallShow.after(START, new FlightEvent.ActEnded(105)), event))
                    .isEmpty();
        }
    }

    @Test
    void aFigureWhoseNameAnotherHasIsToldWithWhichItIs() {
        LiveState before = SmallShow.after(START, new FlightEvent.Stepped(108));
        FlightEvent drop = new FlightEvent.NextDropped(110);
        LiveState after = ((Step.Moved) Live.next(before, drop)).state();
        assertThat(ToldPresenter.of(drop, before, after, SmallShow.wordsWithTwoLoops()))
                .map(Mark::word)
                .contains("Dropped \"Loop, second\"");
    }

    @Test
    void figureIsNamedThatWasDroppedNotTheWayToIt() {
        LiveEvent onWays = new FlightEvent.ActChosen(99, "a1", "full", List.of("f1", "f2", "f3"), List.of("f2"), 60.0);
        LiveState flying = SmallShow.after(onWays, START);
        assertThat(told(flying, new FlightEvent.NextDropped(104))).isEqualTo("Dropped \"Low pass\"");
        assertThat(told(
                        SmallShow.after(onWays, START, new FlightEvent.NextDropped(104)),
                        new FlightEvent.DropUndone(105)))
                .isEqualTo("\"Low pass\" will be flown after all");
    }

    @Test
    void whatAKeyDidIsToldWhereTheRowsDoNotShowIt() {
        LiveState flying = SmallShow.after(START);
        assertThat(told(flying, new FlightEvent.NextDropped(104))).isEqualTo("Dropped \"Stall turn\"");
        assertThat(told(SmallShow.after(START, new FlightEvent.NextDropped(104)), new FlightEvent.DropUndone(105)))
                .isEqualTo("\"Stall turn\" will be flown after all");
        assertThat(told(flying, new FlightEvent.NextSwapped(104)))
                .isEqualTo("\"Low pass\" now comes before \"Stall turn\"");
        assertThat(told(flying, new FlightEvent.VariantChosen(104, "flat", List.of("f3"))))
                .isEqualTo("Variant \"flat\"");
        assertThat(told(flying, new FlightEvent.SourceChosen(104, Source.CLOCK)))
                .isEqualTo("Following the clock");
        assertThat(told(flying, new TalkEvent.RemarkSkipped(104, "r-fill")))
                .isEqualTo("Left out \"The smoke is only paraffin.\"");
        assertThat(told(flying, new FlightEvent.Stepped(104)))
                .as("the rows show it")
                .isEmpty();
        assertThat(told(flying, new FlightEvent.Held(104)))
                .as("the rows show it")
                .isEmpty();
    }

    @Test
    void aKeyThatDidNothingIsNamed() {
        assertThat(ToldPresenter.of(new Told.NothingToTakeBack(Command.HOLD.key()), SmallShow.words()))
                .map(Mark::word)
                .hasValue("The last key (H) did nothing, so nothing was taken back.");
    }
}
