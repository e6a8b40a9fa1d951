package crowdline.storage.journal;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.RandomEvents;
import crowdline.live.state.Step;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalReplayTest {
    @TempDir
    Path folder;

    private static Path pathOf(JournalOpening opening) {
        return Objects.requireNonNull(opening.journal().path());
    }

    private static Optional<JournalLine> read(JournalCodec codec, String line) {
        byte[] bytes = line.getBytes(StandardCharsets.UTF_8);
        return codec.read(bytes, 0, bytes.length);
    }

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
                assertThat(read(codec, codec.write(line))).contains(line);
                seen.add(event.getClass());
            }
        }
        assertThat(seen).containsExactlyInAnyOrderElementsOf(new JournalEvents().types());
    }

    @Test
    void anyCutIsTolerated() throws IOException {
        JournalWorld world = new JournalWorld(folder);
        JournalOpening opening = world.open();
        List<LiveState> states = JournalWorld.play(opening, JournalWorld.someEvents());
        opening.journal().close();
        byte[] whole = Files.readAllBytes(pathOf(opening));
        JournalCodec codec = new JournalCodec();
        int events = 0;
        int from = 0;

        for (int length = 0; length <= whole.length; length++) {
            boolean lineFeed = length > 0 && whole[length - 1] == '\n';
            if (lineFeed) {
                from = length;
            } else if (codec.read(whole, from, length).orElse(null) instanceof JournalLine.Event) {
                events++;
            } else if (length % 31 != 0) {
                continue;
            }
            JournalReplay replay = JournalReplay.of(new ByteArrayInputStream(whole, 0, length), codec, true);
            assertThat(replay.damagedLines()).isEmpty();
            assertThat(replay.events()).isEqualTo(events);
            assertThat(replay.form())
                    .isEqualTo(length == 0 || lineFeed ? JournalLines.Form.CLEAN : JournalLines.Form.CUT);
            if (events > 0) {
                assertThat(replay.state()).isEqualTo(states.get(events - 1));
            }
        }
        assertThat(events).isEqualTo(states.size());
    }

    @Test
    void journalGoesOnCleanlyAfterACut() throws IOException {
        JournalWorld world = new JournalWorld(folder);
        JournalOpening opening = world.open();
        List<LiveState> states = JournalWorld.play(opening, JournalWorld.someEvents());
        opening.journal().close();
        Path path = pathOf(opening);
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
        String line = JournalWorld.lines(pathOf(opening)).get(4);
        JournalCodec codec = new JournalCodec();
        assertThat(read(codec, line)).isPresent();

        for (int i = 0; i < line.length(); i++) {
            byte[] bytes = line.getBytes(StandardCharsets.ISO_8859_1);
            bytes[i] ^= 1;
            assertThat(codec.read(bytes, 0, bytes.length)).as("byte %d", i).isEmpty();
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
        Path path = pathOf(opening);
        List<String> lines = JournalWorld.lines(path);
        lines.set(4, lines.get(4).replace("two", "tow"));
        JournalWorld.write(path, lines, "");
        byte[] damaged = Files.readAllBytes(path);

        JournalOpening again = world.open();
        again.journal().close();

        assertThat(again.resumed()).isTrue();
        assertThat(again.state().notes()).extracting("text").containsExactly("one", "three");
        Path aside = path.resolveSibling(path.getFileName() + ".damaged");
        assertThat(again.notices())
                .containsExactly("Line 5 of the journal cannot be read; everything else was used."
                        + " The damaged file is kept as " + aside.getFileName() + ".");
        assertThat(aside).hasBinaryContent(damaged);
        assertThat(world.open().notices()).isEmpty();
    }

    @Test
    void journalWithoutAReadableFirstLineIsLeftAlone() throws IOException {
        JournalWorld world = new JournalWorld(folder);
        JournalOpening opening = world.open();
        opening.journal().close();
        Files.writeString(pathOf(opening), "nonsense\n");

        JournalOpening again = world.open();
        again.journal().close();

        assertThat(again.resumed()).isFalse();
        assertThat(pathOf(again)).isNotEqualTo(pathOf(opening));
        assertThat(pathOf(opening)).hasContent("nonsense");
        assertThat(again.notices())
                .containsExactly("The journal 0001-2026-05-02.journal cannot be read; it is left as it is.");
    }

    @Test
    void refusedEventsDoNotChangeAReplay() {
        LiveState state = LiveState.initial();
        LiveState withRefused = LiveState.initial();
        for (LiveEvent event : new RandomEvents(3).next(900)) {
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
