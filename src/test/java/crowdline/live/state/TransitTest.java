package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.FlightEvent.DropUndone;
import crowdline.live.event.FlightEvent.NextDropped;
import crowdline.live.event.FlightEvent.NextSwapped;
import crowdline.live.event.FlightEvent.Stepped;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is done to a figure ahead is done to the ways that lead to it, and to nothing else. */
class TransitTest {
    private static final List<String> PLAN =
            List.of("run in", "loop", "climb", "turn back", "spin", "dive", "roll", "fly out", "landing");
    private static final List<String> WAYS = List.of("run in", "climb", "turn back", "dive", "fly out");

    private static Played waiting() {
        return new Played()
                .with(new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first", "second")))
                .with(new FlightEvent.ActChosen(1, "first", "full", PLAN, WAYS, 60.0));
    }

    /** The loop is being flown. */
    private static Played inTheLoop() {
        return waiting().with(new FlightEvent.ActStarted(100), new Stepped(105));
    }

    private static List<String> ahead(Played played) {
        Course course = played.state.course();
        List<Integer> toFly = course.toFly();
        return toFly.stream()
                .filter(i -> course.placeOf(i) > course.placeOf(course.position()))
                .map(PLAN::get)
                .toList();
    }

    @Test
    void dropLeavesOutTheFigureAndTheWaysToIt() {
        Played played = inTheLoop().with(new NextDropped(110));

        assertThat(ahead(played)).containsExactly("dive", "roll", "fly out", "landing");
        assertThat(played.state.course().droppedIds()).containsExactly("climb", "turn back", "spin");
        assertThat(played.state.figureId()).isEqualTo("loop");
    }

    @Test
    void dropOnTheWayLeavesTheWayThatIsBeingFlown() {
        Played played = inTheLoop().with(new Stepped(120), new NextDropped(125));

        assertThat(played.state.figureId()).isEqualTo("climb");
        assertThat(ahead(played)).containsExactly("dive", "roll", "fly out", "landing");
        assertThat(played.state.course().droppedIds()).containsExactly("turn back", "spin");
    }

    @Test
    void dropTakenBackBringsTheWaysBack() {
        Played played = inTheLoop().with(new NextDropped(110), new NextDropped(111), new DropUndone(112));
        assertThat(ahead(played)).containsExactly("dive", "roll", "fly out", "landing");

        assertThat(ahead(played.with(new DropUndone(113))))
                .containsExactly("climb", "turn back", "spin", "dive", "roll", "fly out", "landing");
        assertThat(ahead(inTheLoop().with(new NextDropped(110), new LiveEvent.Undone(111))))
                .startsWith("climb", "turn back", "spin");
    }

    @Test
    void dropTakenBackOnceTheFigureAfterItBeganIsTooLate() {
        Played played = inTheLoop().with(new NextDropped(110), new Stepped(112), new Stepped(118));
        assertThat(played.state.figureId()).isEqualTo("roll");

        assertThat(played.with(new DropUndone(119)).refusal).isEqualTo("No figure ahead is dropped.");
    }

    @Test
    void swapMovesEachFigureWithItsWays() {
        Played played = inTheLoop().with(new NextSwapped(110));

        assertThat(ahead(played)).containsExactly("dive", "roll", "climb", "turn back", "spin", "fly out", "landing");
        assertThat(ahead(played.with(new NextSwapped(111))))
                .containsExactly("climb", "turn back", "spin", "dive", "roll", "fly out", "landing");
    }

    @Test
    void swapOnTheWayGoesOnWithTheWayThatIsBeingFlown() {
        Played played = inTheLoop().with(new Stepped(120), new NextSwapped(125));

        assertThat(played.state.figureId()).isEqualTo("climb");
        assertThat(ahead(played)).containsExactly("dive", "roll", "turn back", "spin", "fly out", "landing");
    }

    @Test
    void swapPassesOverWhatIsDropped() {
        Played played = inTheLoop().with(new NextDropped(110), new NextSwapped(111));

        assertThat(ahead(played)).containsExactly("fly out", "landing", "dive", "roll");
        assertThat(ahead(played.with(new DropUndone(112))))
                .as("where it was, before the two that changed places")
                .containsExactly("climb", "turn back", "spin", "fly out", "landing", "dive", "roll");
    }

    @Test
    void onlyFiguresAreSwappedWithEachOther() {
        Course course = inTheLoop().with(new NextSwapped(110)).state.course();

        assertThat(course.swappedWith(PLAN.indexOf("spin"))).containsExactly(PLAN.indexOf("roll"));
        assertThat(course.swappedWith(PLAN.indexOf("roll"))).containsExactly(PLAN.indexOf("spin"));
        assertThat(course.swappedWith(PLAN.indexOf("dive"))).isEmpty();
        assertThat(course.swappedWith(PLAN.indexOf("landing"))).isEmpty();
    }

    @Test
    void figuresAheadAreNoWays() {
        assertThat(inTheLoop().state.course().figuresAhead()).containsExactly("spin", "roll", "landing");
        assertThat(waiting().state.course().figuresAhead()).containsExactly("loop", "spin", "roll", "landing");
        Played last = waiting().with(new NextDropped(20), new NextDropped(21), new NextDropped(22));
        assertThat(last.with(new NextSwapped(23)).refusal).isEqualTo("Only one figure is left; it takes two to swap.");
        assertThat(last.with(new NextDropped(24), new NextDropped(25)).refusal)
                .isEqualTo("There are no more figures" + " to drop.");
    }

    @Test
    void otherVariantHasItsOwnWays() {
        Played played = inTheLoop()
                .with(new FlightEvent.VariantChosen(
                        110, "low", List.of("run in", "loop", "turn", "roll", "landing"), List.of("run in", "turn")));

        assertThat(played.with(new NextDropped(111)).state.course().droppedIds())
                .containsExactly("turn", "roll");
    }

    @Test
    void journalFromBeforeWaysWereToldDropsWhatItDroppedThen() {
        Played played = new Played()
                .with(new ShowEvent.ShowOpened(0, "Harbour Day", List.of("first")))
                .with(new FlightEvent.ActChosen(1, "first", "full", PLAN, 60.0))
                .with(new FlightEvent.ActStarted(100), new Stepped(105), new NextDropped(110));

        assertThat(played.state.course().droppedIds()).containsExactly("climb");
    }
}
