package crowdline.storage.journal;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.now.JournalHealth;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Which journal of a show is gone on with, and what may lie beside it. */
class JournalChoiceTest {
    @TempDir
    Path folder;

    private JournalWorld world;

    @BeforeEach
    void newWorld() {
        world = new JournalWorld(folder);
    }

    private JournalOpening opened(String title) {
        JournalOpening opening = world.shelf().begin(JournalWorld.SHOW);
        play(opening, new ShowEvent.ShowOpened(atS(opening), title, List.of("first")));
        return opening;
    }

    private JournalOpening flying(String title) {
        JournalOpening opening = opened(title);
        play(
                opening,
                new FlightEvent.ActChosen(atS(opening), "first", "full", List.of("loop", "roll", "spin"), null),
                new FlightEvent.ActStarted(atS(opening)));
        return opening;
    }

    private static double atS(JournalOpening opening) {
        return opening.journal().nowS();
    }

    private void play(JournalOpening opening, LiveEvent... events) {
        opening.journal().append(List.of(events));
    }

    private static Path path(JournalOpening opening) {
        return Objects.requireNonNull(opening.journal().path());
    }

    private String resumed() {
        JournalOpening again = world.open();
        again.journal().close();
        return String.valueOf(again.state().showTitle());
    }

    @Test
    void runningActGoesBeforeNewerJournalsInWhichNothingBegan() {
        JournalOpening running = flying("Running");
        world.pass(60);
        opened("Looked at").journal().close();
        world.pass(5);
        JournalOpening ended = opened("Closed again");
        play(ended, new ShowEvent.ShowEnded(atS(ended)));
        ended.journal().close();
        running.journal().close();

        assertThat(resumed()).isEqualTo("Running");
    }

    @Test
    void ofTwoActsTheOneWithTheLatestEventIsGoneOnWith() {
        JournalOpening first = flying("First");
        world.pass(60);
        JournalOpening second = flying("Second");
        world.pass(60);
        second.journal().close();
        assertThat(resumed()).isEqualTo("Second");

        play(first, new FlightEvent.Stepped(atS(first)));
        first.journal().close();
        assertThat(resumed()).isEqualTo("First");
    }

    @Test
    void actInTheAirGoesBeforeOneThatEndedAMomentAfterItsLastEvent() {
        JournalOpening first = flying("In the air");
        world.pass(30);
        JournalOpening second = flying("Tried");
        play(second, new FlightEvent.ActEnded(atS(second)));
        first.journal().close();
        second.journal().close();
        assertThat(resumed()).isEqualTo("In the air");
    }

    @Test
    void actAbandonedLongBeforeAnotherWasFlownIsNotTakenUp() {
        flying("Abandoned").journal().close();
        world.pass(1200);
        JournalOpening second = flying("Flown");
        play(second, new FlightEvent.ActEnded(atS(second)));
        second.journal().close();
        assertThat(resumed()).isEqualTo("Flown");

        JournalOpening again = world.open();
        play(again, new ShowEvent.ShowEnded(atS(again)));
        again.journal().close();
        assertThat(resumed()).isEqualTo("null");
    }

    @Test
    void withoutAnActTheOneWrittenLastIsGoneOnWith() {
        opened("First").journal().close();
        world.pass(1);
        opened("Second").journal().close();
        assertThat(resumed()).isEqualTo("Second");
    }

    @Test
    void numberingGoesOnBesideAnyNumbersAndNames() throws Exception {
        Files.createDirectories(folder);
        for (String name : List.of(
                "999999999-2026-05-02.journal",
                "99999999999999999999999999-2026-05-02.journal",
                "999999999999999999999-.journal",
                "0007-odd.journal",
                "-1-2026.journal",
                "0009.journal",
                "\u0661\u0662\u0663\u0664-2026.journal")) {
            Files.writeString(folder.resolve(name), "");
        }
        Files.createDirectories(folder.resolve("0011-2026-05-02.journal"));
        List<String> names = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            JournalOpening opening = opened("Show " + i);
            assertThat(opening.journal().health()).isEqualTo(new JournalHealth.Writing());
            opening.journal().close();
            names.add(String.valueOf(path(opening).getFileName()));
            world.pass(1);
        }
        assertThat(names)
                .containsExactly("0012-2026-05-02.journal", "0013-2026-05-02.journal", "0014-2026-05-02.journal");
        assertThat(resumed()).isEqualTo("Show 2");
    }

    @Test
    void journalWithAHugeNumberIsGoneOnWithLikeAnyOther() throws Exception {
        JournalOpening running = flying("Running");
        running.journal().close();
        Files.move(path(running), folder.resolve("999999999-2026-05-02.journal"));
        world.pass(1);
        opened("Looked at").journal().close();
        assertThat(resumed()).isEqualTo("Running");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void pipesFoldersAndDeadLinksOfAJournalsNameHoldNothingUp() throws Exception {
        flying("Running").journal().close();
        assertThat(new ProcessBuilder("mkfifo", folder.resolve("0005-x.journal").toString())
                        .start()
                        .waitFor())
                .isZero();
        Files.createDirectory(folder.resolve("0006-x.journal"));
        Files.createSymbolicLink(folder.resolve("0007-x.journal"), folder.resolve("nowhere"));
        assertThat(world.shelf().knows(JournalWorld.SHOW)).isTrue();
        assertThat(resumed()).isEqualTo("Running");
    }

    @Test
    void showOpenedThroughALinkIsTheSameShow() throws Exception {
        Path show = Files.writeString(folder.resolve("day.json"), "{}");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), show);
        byte[] before = {1};
        byte[] changed = {2};
        JournalOpening first = world.shelf().open(JournalShow.of(show, before));
        play(first, new ShowEvent.ShowOpened(0, "Harbour Day", List.of()));

        JournalOpening second = world.shelf().open(JournalShow.of(link, changed));

        assertThat(second.notices())
                .containsExactly("This show is running in another window; this one keeps a journal of its own.");
        first.journal().close();
        second.journal().close();
    }

    @Test
    void readingAJournalThatIsBeingWrittenLeavesItLocked() throws Exception {
        JournalOpening running = flying("Running");
        world.shelf().knows(JournalWorld.SHOW);
        assertThat(world.shelf().last(JournalWorld.SHOW).orElseThrow().state().showTitle())
                .isEqualTo("Running");
        Files.readAllBytes(path(running));

        JournalOpening second = world.open();
        assertThat(second.resumed()).isFalse();
        assertThat(second.journal().path()).isNotEqualTo(path(running));
        second.journal().close();
        running.journal().close();
        assertThat(resumed()).isEqualTo("Running");
    }

    @Test
    void windowThatGoesOnWithAnotherJournalIsToldOfTheFirstOne() {
        JournalOpening first = opened("First");
        world.pass(1);
        JournalOpening second = flying("Second");
        second.journal().close();

        JournalOpening again = world.open();

        assertThat(again.state().showTitle()).isEqualTo("Second");
        assertThat(again.notices()).containsExactly("This show is running in another window as well.");
        again.journal().close();
        first.journal().close();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void journalsAreTheUsersAlone() throws Exception {
        Path state = folder.resolve("state/journals");
        JournalWorld other = new JournalWorld(state);
        JournalOpening opening = other.open();
        opening.journal().close();
        for (Path path : List.of(folder.resolve("state"), state)) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path)))
                    .isEqualTo("rwx------");
        }
        Files.setPosixFilePermissions(path(opening), PosixFilePermissions.fromString("rw-r--r--"));
        Files.setPosixFilePermissions(state, PosixFilePermissions.fromString("rwxr-xr-x"));

        other.open().journal().close();

        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(state)))
                .isEqualTo("rwx------");
        try (var all = Files.list(state)) {
            assertThat(all.toList())
                    .hasSizeGreaterThan(1)
                    .allSatisfy(path -> assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(path)))
                            .isEqualTo("rw-------"));
        }
    }

    @Test
    void thousandsOfOldJournalsDoNotSlowTheStart() throws Exception {
        flying("Running").journal().close();
        Path one = folder.resolve("0001-2026-05-02.journal");
        JournalOpening other = world.shelf().begin(new JournalShow("/shows/other.json", "bb"));
        JournalWorld.play(other, JournalWorld.someEvents());
        other.journal().close();
        byte[] content = Files.readAllBytes(path(other));
        for (int i = 2; i < 5000; i++) {
            Files.write(folder.resolve(String.format("%04d-2026-05-02.journal", i)), content);
        }
        Files.move(one, folder.resolve("4990-2026-05-02-again.journal"));
        world.open().journal().close();

        long before = System.nanoTime();
        assertThat(world.shelf().knows(JournalWorld.SHOW)).isTrue();
        JournalOpening again = world.open();
        double seconds = (System.nanoTime() - before) / 1e9;

        assertThat(again.state().showTitle()).isEqualTo("Running");
        again.journal().close();
        System.getLogger(JournalChoiceTest.class.getName())
                .log(System.Logger.Level.INFO, "5,000 journals: opened in {0} s", seconds);
        // Some twentieths of a second, and some hundred times that on a busy machine.
        assertThat(seconds).isLessThan(20);
    }
}
