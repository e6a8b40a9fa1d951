package crowdline.storage;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.Live;
import crowdline.live.LiveEvent;
import crowdline.live.LiveState;
import crowdline.live.RandomEvents;
import crowdline.live.ShowEvent;
import crowdline.live.Step;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalReplayTest {
    @TempDir
    Path folder;

    @Test
    void replayGivesTheSameState() {
        for (long seed = 0; seed < 12; seed++) {
            JournalWorld world = new JournalWorld(folder.resolve("seed" + seed));
            List<LiveState> states;
            try (Journal journal = world.open().journal()) {
                List<LiveEvent> events = new RandomEvents(seed)
                        .next(60).stream()
                                .filter(e -> !(e instanceof ShowEvent.ShowEnded))
                                .toList();
                states = JournalWorld.play(
                        new JournalOpening(journal, LiveState.initial(), false, 0, List.of()), events);
            }

            JournalOpening again = world.open();
            assertThat(again.state()).as("seed %d", seed).isEqualTo(states.get(states.size() - 1));
            assertThat(again.events()).as("seed %d", seed).isEqualTo(states.size());
            assertThat(again.notices()).as("seed %d", seed).isEmpty();
            again.journal().close();
        }
    }

    @Test
    void everyKindOfEventComesBackFromItsLine() {
        JournalCodec codec = new JournalCodec();
        Set<Class<?>> seen = new HashSet<>();
        JournalWorld world = new JournalWorld(folder);
        for (long seed = 0; seed < 12; seed++) {
            for (LiveEvent event : new RandomEvents(seed).next(100)) {
                JournalLine line = new JournalLine.Event(world.wall, 12.3456789012345, event);
                assertThat(codec.read(codec.write(line))).contains(line);
                seen.add(event.getClass());
            }
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(codec.eventTypes().values());
    }

    @Test
    void namesInJournalsStayAsTheyAre() {
        assertThat(new JournalCodec().eventTypes().keySet())
                .containsExactlyInAnyOrder(
                        "ShowOpened",
                        "ActCancelled",
                        "ActReinstated",
                        "ShowEnded",
                        "ActChosen",
                        "SlotMoved",
                        "VariantChosen",
                        "SourceChosen",
                        "ActStarted",
                        "Stepped",
                        "SteppedBack",
                        "Held",
                        "Released",
                        "NextDropped",
                        "DropUndone",
                        "NextSwapped",
                        "WentOffPlan",
                        "CameBack",
                        "JumpedTo",
                        "ClockAdvanced",
                        "AircraftBegan",
                        "AircraftSeen",
                        "AircraftLost",
                        "AircraftFound",
                        "ActEnded",
                        "RemarkStarted",
                        "RemarkSaid",
                        "RemarkSkipped",
                        "FillerTaken",
                        "IncidentOpened",
                        "IncidentClosed",
                        "NoteMade",
                        "Undone");
    }

    @Test
    void anyCutIsTolerated() throws IOException {
        JournalWorld world = new JournalWorld(folder);
        JournalOpening opening = world.open();
        List<LiveState> states = JournalWorld.play(opening, JournalWorld.someEvents());
        opening.journal().close();
        byte[] whole = Files.readAllBytes(opening.journal().path());
        JournalCodec codec = new JournalCodec();
        int lines = 0;

        for (int length = 0; length <= whole.length; length++) {
            if (length > 0 && whole[length - 1] == '\n') {
                lines++;
            }
            if (length % 31 != 0 && length > 0 && whole[length - 1] != '\n') {
                continue;
            }
            JournalReplay replay = JournalReplay.of(Arrays.copyOf(whole, length), codec);
            assertThat(replay.damagedLines()).isEmpty();
            assertThat(replay.events()).isEqualTo(Math.max(0, lines - 1));
            assertThat(replay.cutLine()).isEqualTo(length > 0 && whole[length - 1] != '\n');
            if (replay.events() > 0) {
                assertThat(replay.state()).isEqualTo(states.get(replay.events() - 1));
            }
        }
    }

    @Test
    void journalGoesOnCleanlyAfterACut() throws IOException {
        JournalWorld world = new JournalWorld(folder);
        JournalOpening opening = world.open();
        List<LiveState> states = JournalWorld.play(opening, JournalWorld.someEvents());
        opening.journal().close();
        Path path = opening.journal().path();
        Files.writeString(path, Files.readString(path) + "{\"event\":\"Step");

        JournalOpening again = world.open();
        assertThat(again.state()).isEqualTo(states.get(states.size() - 1));
        assertThat(again.notices()).isEmpty();
        List<LiveState> more = JournalWorld.play(again, List.of(new LiveEvent.NoteMade(500, "on again")));
        again.journal().close();

        assertThat(world.open().state()).isEqualTo(more.get(0));
    }

    @Test
    void anyChangedByteInTheMiddleIsNoticed() throws IOException {
        JournalWorld world = new JournalWorld(folder);
        JournalOpening opening = world.open();
        JournalWorld.play(opening, JournalWorld.someEvents());
        opening.journal().close();
        String line = JournalWorld.lines(opening.journal().path()).get(4);
        JournalCodec codec = new JournalCodec();
        assertThat(codec.read(line)).isPresent();

        for (int i = 0; i < line.length(); i++) {
            byte[] bytes = line.getBytes(StandardCharsets.ISO_8859_1);
            bytes[i] ^= 1;
            assertThat(codec.read(new String(bytes, StandardCharsets.ISO_8859_1)))
                    .as("byte %d", i)
                    .isEmpty();
        }
    }

    @Test
    void damagedLineIsReportedKeptAsideAndTheRestIsUsed() throws IOException {
        JournalWorld world = new JournalWorld(folder);
        JournalOpening opening = world.open();
        List<LiveEvent> notes = List.of(
                new ShowEvent.ShowOpened(0, "Harbour Day", List.of()),
                new LiveEvent.NoteMade(1, "one"),
                new LiveEvent.NoteMade(2, "two"),
                new LiveEvent.NoteMade(3, "three"));
        JournalWorld.play(opening, notes);
        opening.journal().close();
        Path path = opening.journal().path();
        List<String> lines = JournalWorld.lines(path);
        lines.set(3, lines.get(3).replace("two", "tow"));
        JournalWorld.write(path, lines, "");
        byte[] damaged = Files.readAllBytes(path);

        JournalOpening again = world.open();
        again.journal().close();

        assertThat(again.resumed()).isTrue();
        assertThat(again.state().notes()).extracting("text").containsExactly("one", "three");
        Path aside = path.resolveSibling(path.getFileName() + ".damaged");
        assertThat(again.notices())
                .containsExactly("Line 4 of the journal cannot be read; everything else was used."
                        + " The damaged file is kept as " + aside.getFileName() + ".");
        assertThat(aside).hasBinaryContent(damaged);
        assertThat(world.open().notices()).isEmpty();
    }

    @Test
    void journalWithoutAReadableFirstLineIsLeftAlone() throws IOException {
        JournalWorld world = new JournalWorld(folder);
        JournalOpening opening = world.open();
        opening.journal().close();
        Files.writeString(opening.journal().path(), "nonsense\n");

        JournalOpening again = world.open();
        again.journal().close();

        assertThat(again.resumed()).isFalse();
        assertThat(again.journal().path()).isNotEqualTo(opening.journal().path());
        assertThat(opening.journal().path()).hasContent("nonsense");
        assertThat(again.notices())
                .containsExactly("The journal 0001-2026-05-02.journal cannot be read; it is left as it is.");
    }

    @Test
    void refusedEventsDoNotChangeAReplay() {
        LiveState state = LiveState.initial();
        LiveState withRefused = LiveState.initial();
        for (LiveEvent event : new RandomEvents(3).next(300)) {
            Step step = Live.next(state, event);
            state = step instanceof Step.Moved moved ? moved.state() : state;
            for (int twice = 0; twice < 2 && step instanceof Step.Refused; twice++) {
                assertThat(Live.next(withRefused, event)).isEqualTo(step);
            }
            withRefused = state;
        }
        assertThat(state.course().flownActs()).isNotEmpty();
    }
}
