package crowdline.live.state;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.event.ShowEvent.ActAdded;
import crowdline.live.event.ShowEvent.ActCancelled;
import crowdline.live.event.ShowEvent.ActRestored;
import crowdline.live.event.ShowEvent.ActsMoved;
import crowdline.live.event.ShowEvent.ActsSwapped;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The running order on the day: three acts, the first chosen and waiting. */
class DayTest {
    private static List<String> order(Played played) {
        return played.state.runningOrder();
    }

    private static Day day(Played played) {
        return played.state.day();
    }

    private static Played flownFirst() {
        return Played.flying().with(new FlightEvent.ActEnded(150));
    }

    @Test
    void movesAddUpAndAreTakenBackOneByOne() {
        Played played = Played.waiting()
                .with(new ActsMoved(10, List.of("second", "third"), 600), new ActsMoved(11, List.of("third"), -60));

        assertThat(day(played).laterS("first")).isZero();
        assertThat(day(played).laterS("second")).isEqualTo(600);
        assertThat(day(played).laterS("third")).isEqualTo(540);
        assertThat(day(played.with(new LiveEvent.Undone(12))).laterS("third")).isEqualTo(600);
        assertThat(day(played.with(new LiveEvent.Undone(13))).laterS()).isEmpty();
    }

    @Test
    void whatIsMovedBackIsAtItsTime() {
        Played played = Played.waiting()
                .with(new ActsMoved(10, List.of("second"), 60), new ActsMoved(11, List.of("second"), -60));
        assertThat(day(played).laterS()).isEmpty();
    }

    @Test
    void actsAreMovedWhileOneIsInTheAir() {
        Played played = Played.flying().with(new ActsMoved(101, List.of("second"), 300));
        assertThat(day(played).laterS("second")).isEqualTo(300);
        assertThat(played.state.figureId()).isEqualTo("loop");
        assertThat(day(played.with(new LiveEvent.Undone(102))).laterS("second")).isZero();
        assertThat(played.state.figureId()).isEqualTo("loop");
    }

    @Test
    void actsThatAreNotThereCannotBeMoved() {
        assertThat(Played.waiting().with(new ActsMoved(10, List.of("tenth"), 60)).refusal)
                .isEqualTo("That act is not in the running order of this show.");
        assertThat(Played.waiting().with(new ActsMoved(10, List.of(), 60)).refusal)
                .isEqualTo("There are no more acts to move.");
    }

    @Test
    void swappedActsComeInEachOthersPlace() {
        Played played = flownFirst().with(new ActsSwapped(160, "second", "third", 900, -720));

        assertThat(order(played)).containsExactly("first", "third", "second");
        assertThat(day(played).laterS("second")).isEqualTo(900);
        assertThat(day(played).laterS("third")).isEqualTo(-720);
        assertThat(played.state.nextActId()).contains("third");
        assertThat(order(played.with(new LiveEvent.Undone(161)))).containsExactly("first", "second", "third");
    }

    @Test
    void whatWasFlownOrIsInTheAirStaysWhereItWas() {
        String stays = "One of the two has begun; only acts that have not begun can change places.";
        assertThat(flownFirst().with(new ActsSwapped(160, "first", "third", 0, 0)).refusal)
                .isEqualTo(stays);
        assertThat(Played.flying().with(new ActsSwapped(101, "second", "first", 0, 0)).refusal)
                .isEqualTo(stays);
        assertThat(flownFirst().with(new ActCancelled(160, "first")).refusal)
                .isEqualTo("That act has already been flown; it stays where it is.");
        assertThat(Played.flying().with(new ActCancelled(101, "first")).refusal)
                .isEqualTo("That act is in the air: press E when it is over.");
        assertThat(flownFirst().with(new ActsSwapped(160, "second", "second", 0, 0)).refusal)
                .isEqualTo("That act is not in the running order of this show.");
    }

    @Test
    void cancelledActIsPassedOverUntilItIsBroughtBack() {
        Played played = flownFirst().with(new ActCancelled(160, "second"));

        assertThat(order(played)).containsExactly("first", "second", "third");
        assertThat(played.state.nextActId()).contains("third");
        assertThat(played.with(new FlightEvent.ActChosen(161, "second", "full", Played.FIGURES, null)).refusal)
                .isEqualTo("That act is cancelled: press R and bring it back first.");
        assertThat(played.with(new ActCancelled(161, "second")).refusal).isEqualTo("That act is cancelled already.");
        assertThat(played.with(new ActRestored(162, "second")).state.nextActId())
                .contains("second");
        assertThat(played.with(new ActRestored(163, "second")).refusal).isEqualTo("That act is not cancelled.");
    }

    @Test
    void chosenActThatIsCancelledIsChosenNoMore() {
        Played played = Played.waiting().with(new ActCancelled(10, "first"));

        assertThat(played.state.actId()).isNull();
        assertThat(played.state.nextActId()).contains("second");
        assertThat(played.with(new LiveEvent.Undone(11)).state.actId()).isEqualTo("first");
        assertThat(day(played).isCancelled("first")).isFalse();
    }

    @Test
    void cancellingKeepsWhatWasFlown() {
        Played played = flownFirst()
                .with(
                        new FlightEvent.ActChosen(160, "second", "full", Played.FIGURES, null),
                        new ActCancelled(161, "second"));
        assertThat(played.state.flown("first")).isTrue();
        assertThat(played.state.course().earlierRunEndS()).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    @Test
    void actIsPutInAfterAnotherOrFirst() {
        Played played = Played.waiting().with(new ActAdded(10, "in", "A fly-past", 4, "second"));
        assertThat(order(played)).containsExactly("first", "second", "in", "third");
        assertThat(order(played.with(new ActAdded(11, "run", "Engine run", 3, null))))
                .containsExactly("run", "first", "second", "in", "third");
        assertThat(played.with(new ActAdded(12, "in", "Again", 3, null)).refusal)
                .isEqualTo("There is an act of that name already.");
        assertThat(order(played.with(new LiveEvent.Undone(13)))).containsExactly("first", "second", "in", "third");
        assertThat(played.with(new FlightEvent.ActChosen(14, "in", "as told", List.of("in"), null)).refusal)
                .isNull();
    }

    @Test
    void showFileThatChangesKeepsWhatTheDayMadeOfIt() {
        Played put = Played.waiting()
                .with(
                        new ActsMoved(10, List.of("second"), 60),
                        new ActAdded(11, "in", "A fly-past", 4, "second"),
                        new ShowEvent.ShowOpened(12, "Harbour Day", List.of("third", "second", "fourth", "first")));
        assertThat(order(put))
                .as("the file's order, as the day has none")
                .containsExactly("third", "second", "in", "fourth", "first");
        assertThat(day(put).laterS("second")).isEqualTo(60);

        Played swapped = Played.waiting()
                .with(
                        new ActsSwapped(10, "second", "third", 0, 0),
                        new ActAdded(11, "in", "A fly-past", 4, "third"),
                        new ShowEvent.ShowOpened(12, "Harbour Day", List.of("zero", "first", "second", "fourth")));
        assertThat(order(swapped)).as("the day's order").containsExactly("zero", "first", "in", "second", "fourth");
    }

    @Test
    void nothingIsChangedOnceTheShowIsOver() {
        Played over = flownFirst().with(new ShowEvent.ShowEnded(200));
        assertThat(over.with(new ActsMoved(201, List.of("second"), 60)).refusal).isEqualTo("The show is already over.");
    }
}
