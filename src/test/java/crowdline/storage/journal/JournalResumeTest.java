package crowdline.storage.journal;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.ExpectsWarning;
import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.JournalHealth;
import crowdline.live.state.LiveState;
import crowdline.live.state.Phase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalResumeTest {
    private static final Offset<Double> MILLISECOND = Offset.offset(0.001);

    @TempDir
    Path folder;

    private JournalWorld world;

    @BeforeEach
    void newWorld() {
        world = new JournalWorld(folder);
    }

    /** A show left 20 s after it was opened, 5 s into its second figure. */
    private Path leftInTheSecondFigure() {
        JournalOpening opening = world.open();
        world.pass(15);
        JournalWorld.play(
                opening,
                List.of(
                        new ShowEvent.ShowOpened(1, "Harbour Day", List.of("first")),
                        new FlightEvent.ActChosen(2, "first", "full", List.of("loop", "roll", "spin"), null),
                        new FlightEvent.ActStarted(5),
                        new FlightEvent.Stepped(15)));
        world.pass(5);
        opening.journal().close();
        return Objects.requireNonNull(opening.journal().path());
    }

    private static void isInTheSecondFigure(LiveState state) {
        assertThat(state.actId()).isEqualTo("first");
        assertThat(state.phase()).isEqualTo(new Phase.Flying(1, 15, 0, 15));
    }

    @Test
    void onlyContentThatWasRunIsKnown() {
        assertThat(world.shelf().knows(JournalWorld.SHOW)).isFalse();
        leftInTheSecondFigure();

        assertThat(world.shelf().knows(JournalWorld.SHOW)).isTrue();
        assertThat(world.shelf().knows(new JournalShow("/moved/harbour.json", "aa")))
                .isTrue();
        assertThat(world.shelf().knows(new JournalShow(JournalWorld.SHOW.path(), "bb")))
                .isFalse();
    }

    @Test
    void contentTheShowWasChangedToIsNotKnownForGoingOn() {
        leftInTheSecondFigure();
        JournalShow changed = new JournalShow(JournalWorld.SHOW.path(), "bb");

        world.shelf().open(changed).journal().close();

        assertThat(world.shelf().knows(changed)).isFalse();
    }

    @Test
    void sessionGoesOnWithTheMonotonicClock() {
        leftInTheSecondFigure();
        world.pass(7);

        JournalOpening again = world.open();

        assertThat(again.resumed()).isTrue();
        isInTheSecondFigure(again.state());
        assertThat(again.journal().nowS()).isEqualTo(27, MILLISECOND);
        assertThat(again.notices()).isEmpty();
    }

    @Test
    void wallClockChangesDoNotMatterWithinABoot() {
        leftInTheSecondFigure();
        world.pass(7);
        world.wall = world.wall.minus(Duration.ofDays(400));

        JournalOpening again = world.open();

        assertThat(again.journal().nowS()).isEqualTo(27, MILLISECOND);
        assertThat(again.notices()).isEmpty();
    }

    @Test
    void wallClockCountsAcrossARestartOfTheMachine() {
        leftInTheSecondFigure();
        world.restartMachine("boot-2", 90);

        JournalOpening again = world.open();

        isInTheSecondFigure(again.state());
        assertThat(again.journal().nowS()).isEqualTo(110, MILLISECOND);
        assertThat(again.notices())
                .containsExactly("The computer was restarted; the time in the figure is from its wall clock.");
    }

    @Test
    void timeStandsStillAcrossARestartWithTheWallClockSetBack() {
        leftInTheSecondFigure();
        world.restartMachine("boot-2", -3600);

        JournalOpening again = world.open();

        // The last line was written 15 s into the session.
        assertThat(again.journal().nowS()).isEqualTo(15, MILLISECOND);
        assertThat(again.notices()).singleElement().asString().contains("was set back");
    }

    @Test
    void everyLaterProcessOfTheNextBootGoesByTheMonotonicClockAgain() {
        leftInTheSecondFigure();
        world.restartMachine("boot-2", 90);
        world.open().journal().close();
        world.pass(3);
        world.wall = world.wall.plus(Duration.ofHours(1));

        assertThat(world.open().journal().nowS()).isEqualTo(113, MILLISECOND);
    }

    @Test
    void withoutABootNameTheClocksMustAgree() {
        world.bootId = null;
        leftInTheSecondFigure();
        world.pass(7);
        JournalOpening agreed = world.open();
        assertThat(agreed.journal().nowS()).isEqualTo(27, MILLISECOND);
        assertThat(agreed.notices()).isEmpty();
        agreed.journal().close();

        world.nanos = 5_000_000_000L;
        world.wall = world.wall.plusSeconds(60);
        JournalOpening restarted = world.open();

        assertThat(restarted.journal().nowS()).isEqualTo(87, MILLISECOND);
        assertThat(restarted.notices())
                .containsExactly("The computer was restarted or its clock was set; the time in the figure is from its"
                        + " wall clock.");
    }

    @Test
    void finishedShowIsNotGoneOnWith() {
        JournalOpening opening = world.open();
        JournalWorld.play(
                opening, List.of(new ShowEvent.ShowOpened(0, "Harbour Day", List.of()), new ShowEvent.ShowEnded(4)));
        opening.journal().close();

        JournalOpening again = world.open();

        assertThat(again.resumed()).isFalse();
        assertThat(again.state()).isEqualTo(LiveState.initial());
        assertThat(again.journal().nowS()).isZero();
    }

    @Test
    void showLeftYesterdayIsNotGoneOnWith() {
        leftInTheSecondFigure();
        world.pass(13 * 3600);

        assertThat(world.open().resumed()).isFalse();
    }

    @Test
    void journalsOfOtherShowsArePassedOver() {
        Path path = leftInTheSecondFigure();
        world.shelf().open(new JournalShow("/shows/other.json", "bb")).journal().close();

        JournalOpening again = world.open();

        assertThat(again.journal().path()).isEqualTo(path);
    }

    @Test
    void showFileChangedInBetweenIsTold() {
        leftInTheSecondFigure();

        JournalOpening again = world.shelf().open(new JournalShow(JournalWorld.SHOW.path(), "changed"));

        isInTheSecondFigure(again.state());
        assertThat(again.notices())
                .containsExactly(
                        "The show file has changed since this show was started; it goes on with the file as it is now.");
    }

    @Test
    void showFileChangedByHandIsNoNewsToWhoeverChangedIt() {
        leftInTheSecondFigure();

        JournalOpening again = world.shelf().openChanged(new JournalShow(JournalWorld.SHOW.path(), "changed"));

        isInTheSecondFigure(again.state());
        assertThat(again.notices()).isEmpty();
    }

    /** Whoever changed the show by hand is not told at the next start that somebody did; nor is anybody told twice. */
    @Test
    void aChangeThatIsKnownIsNoNewsAtTheNextStart() {
        leftInTheSecondFigure();
        JournalShow changed = new JournalShow(JournalWorld.SHOW.path(), "changed");
        world.shelf().openChanged(changed).journal().close();

        JournalOpening next = world.shelf().open(changed);
        assertThat(next.resumed()).isTrue();
        assertThat(next.notices()).isEmpty();
        next.journal().close();

        JournalOpening other = world.shelf().open(new JournalShow(JournalWorld.SHOW.path(), "changed outside"));
        assertThat(other.notices()).singleElement().asString().startsWith("The show file has changed since");
    }

    @Test
    void secondProcessKeepsAJournalOfItsOwn() {
        JournalOpening first = world.open();
        first.journal().retry();
        JournalOpening second = world.open();

        assertThat(second.resumed()).isFalse();
        assertThat(second.journal().path()).isNotEqualTo(first.journal().path());
        assertThat(second.notices())
                .containsExactly("This show is running in another window; this one keeps a journal of its own.");
        assertThat(second.journal().health()).isEqualTo(new JournalHealth.Writing());
    }

    @Test
    @ExpectsWarning("No space left on device")
    void fullDiskStopsTheJournalAndNotTheShow() {
        JournalOpening opening = world.open();
        world.room = 50;
        opening.journal().append(new ShowEvent.ShowOpened(0, "Harbour Day", List.of()));
        JournalHealth health = opening.journal().append(new LiveEvent.NoteMade(1, "one"));

        assertThat(health).isInstanceOfSatisfying(JournalHealth.NotWriting.class, no -> {
            assertThat(no.reason())
                    .startsWith("Nothing is being written down: No space left on device.")
                    .doesNotContain("Exception");
            assertThat(no.waiting()).isEqualTo(2);
        });
    }

    @Test
    @ExpectsWarning("No space left on device")
    void whatWaitedForRoomIsWrittenWhenThereIsSome() {
        JournalOpening opening = world.open();
        world.room = 50;
        opening.journal().append(new ShowEvent.ShowOpened(0, "Harbour Day", List.of()));
        opening.journal().append(new LiveEvent.NoteMade(1, "one"));
        world.room = Long.MAX_VALUE;

        assertThat(opening.journal().retry())
                .isEqualTo(new JournalHealth.WritingAgain(
                        "Everything is being written down again, in the journal 0001-2026-05-02.journal."));
        world.pass(30);
        assertThat(opening.journal().retry()).isEqualTo(new JournalHealth.Writing());
        opening.journal().close();
        JournalOpening again = world.open();
        assertThat(again.events()).isEqualTo(2);
        assertThat(again.notices()).isEmpty();
    }

    @Test
    @ExpectsWarning("Listing ")
    void showStartsWithoutAFolderToWriteTo() throws Exception {
        Path blocked = folder.resolve("blocked");
        Files.writeString(blocked, "a file where the folder should be");
        JournalWorld elsewhere = new JournalWorld(blocked);

        JournalOpening opening = elsewhere.open();
        assertThat(opening.journal().health()).isInstanceOf(JournalHealth.NotWriting.class);

        Files.delete(blocked);
        opening.journal().append(new ShowEvent.ShowOpened(0, "Harbour Day", List.of()));
        opening.journal().close();
        assertThat(elsewhere.open().state().showTitle()).isEqualTo("Harbour Day");
    }
}
