package crowdline.storage.journal;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.live.event.FlightEvent;
import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.Step;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to the bytes of a journal, the act goes on. */
@Timeout(120)
class JournalDamageTest {
    private static final JournalCodec CODEC = new JournalCodec();

    private static String name;
    private static byte[] whole;
    /** The state after every event, and after every event but one. */
    private static List<LiveState> possible;

    @TempDir
    Path folder;

    private JournalWorld world;
    private Path path;

    /** The bytes are the same for every test, which damages a copy. */
    @BeforeAll
    static void actInTheAir(@TempDir Path first) throws IOException {
        JournalOpening opening = new JournalWorld(first.resolve("journals")).open();
        List<LiveEvent> events = new ArrayList<>(List.of(
                new ShowEvent.ShowOpened(0, "Harbour Day \u2014 \u00fcber", List.of("first")),
                new FlightEvent.ActChosen(1, "first", "full", List.of("loop", "roll", "spin"), null),
                new FlightEvent.ActStarted(2)));
        for (int i = 0; i < 40; i++) {
            events.add(i % 9 == 8 ? new FlightEvent.Stepped(3 + i) : new LiveEvent.NoteMade(3 + i, "n\u00f8te " + i));
        }
        events.add(new FlightEvent.Stepped(50));
        // Only what was possible is written.
        LiveState state = LiveState.initial();
        for (LiveEvent event : List.copyOf(events)) {
            if (Live.next(state, event) instanceof Step.Moved moved) {
                state = moved.state();
            } else {
                events.remove(event);
            }
        }
        JournalWorld.play(opening, events);
        opening.journal().close();
        Path written = Objects.requireNonNull(opening.journal().path());
        name = String.valueOf(written.getFileName());
        whole = Files.readAllBytes(written);
        possible = new ArrayList<>(List.of(state(events)));
        for (int left = 0; left < events.size(); left++) {
            List<LiveEvent> others = new ArrayList<>(events);
            others.remove(left);
            possible.add(state(others));
        }
    }

    @BeforeEach
    void journalOnTheDisk() throws IOException {
        world = new JournalWorld(folder.resolve("journals"));
        path = Files.write(Files.createDirectories(world.folder).resolve(name), whole);
    }

    private static LiveState state(List<LiveEvent> events) {
        LiveState state = LiveState.initial();
        for (LiveEvent event : events) {
            state = Live.next(state, event) instanceof Step.Moved moved ? moved.state() : state;
        }
        return state;
    }

    private static JournalReplay replay(byte[] bytes) throws IOException {
        return JournalReplay.of(new ByteArrayInputStream(bytes), CODEC, true);
    }

    private JournalOpening resumed(byte[] bytes) throws IOException {
        try (Stream<Path> all = Files.list(path.getParent())) {
            for (Path other : all.filter(p -> !p.endsWith(JournalLocks.NAME)).toList()) {
                Files.delete(other);
            }
        }
        Files.write(path, bytes);
        JournalOpening opening = world.open();
        opening.journal().close();
        return opening;
    }

    private void costsAtMostOneEvent(byte[] bytes, String what) throws IOException {
        JournalReplay replay = replay(bytes);
        assertThat(replay.header()).as(what).isNotNull();
        assertThat(possible.contains(replay.state())).as(what).isTrue();
        boolean lost = !replay.state().equals(possible.get(0));
        assertThat(lost && replay.damagedLines().isEmpty())
                .as("%s is told", what)
                .isFalse();
    }

    @Tag("slow")
    @Test
    void oneFlippedBitCostsAtMostOneEvent() throws IOException {
        int twoLines = new String(whole, StandardCharsets.ISO_8859_1).indexOf("{\"event\"");
        Random random = new Random(11);
        for (int i = 0; i < 8 * twoLines + 2500; i++) {
            int bit = i < 8 * twoLines ? i : random.nextInt(8 * whole.length);
            byte[] bytes = whole.clone();
            bytes[bit / 8] ^= (byte) (1 << bit % 8);
            costsAtMostOneEvent(bytes, "bit " + bit);
            if (i % 197 == 0) {
                JournalOpening opening = resumed(bytes);
                assertThat(opening.resumed()).as("bit %d", bit).isTrue();
                assertThat(possible.contains(opening.state())).as("bit %d", bit).isTrue();
                assertThat(opening.notices()).as("bit %d", bit).isNotEmpty();
                assertThat(path.resolveSibling(path.getFileName() + ".damaged")).hasBinaryContent(bytes);
                JournalOpening again = world.open();
                again.journal().close();
                assertThat(again.state()).as("bit %d", bit).isEqualTo(opening.state());
                assertThat(again.notices()).as("bit %d", bit).isEmpty();
            }
        }
    }

    @Test
    void everyByteOverwrittenWithAnythingCostsAtMostOneLineOnEitherSide() throws IOException {
        Random random = new Random(12);
        for (int i = 0; i < 1500; i++) {
            byte[] bytes = whole.clone();
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
            JournalReplay replay = replay(bytes);
            assertThat(replay.header()).isNotNull();
            assertThat(replay.events()).isGreaterThanOrEqualTo(possible.size() - 2);
        }
    }

    @Test
    void aSectorOfZerosAnywhereLeavesTheRest() throws IOException {
        for (int from = 0; from < whole.length; from += 512) {
            byte[] bytes = whole.clone();
            int to = Math.min(bytes.length, from + 512);
            Arrays.fill(bytes, from, to, (byte) 0);
            JournalOpening opening = resumed(bytes);
            assertThat(opening.resumed()).as("zeros at %d", from).isTrue();
            assertThat(opening.notices()).as("zeros at %d", from).isNotEmpty();
            assertThat(opening.events()).as("zeros at %d", from).isGreaterThan(possible.size() - 8);
            assertThat(new String(Files.readAllBytes(path), StandardCharsets.UTF_8))
                    .doesNotContain("\0");
        }
    }

    @Test
    void zerosAfterTheEndAreToldAndTakenOut() throws IOException {
        JournalOpening opening = resumed(Arrays.copyOf(whole, whole.length + 5000));
        assertThat(opening.state()).isEqualTo(possible.get(0));
        assertThat(opening.notices()).singleElement().asString().contains("cannot be read; everything else was used.");
        assertThat(Files.size(path)).isLessThan(whole.length + 1000L);
    }

    @Test
    void linesGluedTogetherOrEndingLikeOtherSystemsLinesAreRead() throws IOException {
        String text = new String(whole, StandardCharsets.UTF_8);
        for (String changed : List.of(text.replace("\n", "\r\n"), text.replace("\n", ""), text.replace("\n", "\r"))) {
            JournalOpening opening = resumed(changed.getBytes(StandardCharsets.UTF_8));
            assertThat(opening.state()).isEqualTo(possible.get(0));
            JournalOpening again = world.open();
            again.journal().close();
            assertThat(again.state()).isEqualTo(possible.get(0));
            assertThat(again.notices()).isEmpty();
        }
    }

    @Test
    void aLineCutShortAndWrittenOnCostsThatLineOnly() throws IOException {
        String text = new String(whole, StandardCharsets.UTF_8);
        int cut = text.indexOf("\n", text.indexOf("te 20")) - 30;
        String glued = text.substring(0, cut) + text.substring(text.indexOf('\n', cut) + 1);
        JournalReplay replay = replay(glued.getBytes(StandardCharsets.UTF_8));
        assertThat(possible.indexOf(replay.state())).isPositive();
        assertThat(replay.damagedLines()).hasSize(1);
    }

    @Test
    void invalidTextAnywhereCostsItsLine() throws IOException {
        byte[] bytes = new byte[whole.length + 4];
        int at = 12;
        System.arraycopy(whole, 0, bytes, 0, at);
        bytes[at] = (byte) 0xC3;
        bytes[at + 1] = (byte) 0x28;
        bytes[at + 2] = (byte) 0xFF;
        bytes[at + 3] = (byte) 0xFE;
        System.arraycopy(whole, at, bytes, at + 4, whole.length - at);
        JournalOpening opening = resumed(bytes);
        assertThat(opening.state()).isEqualTo(possible.get(0));
        assertThat(opening.notices()).singleElement().asString().startsWith("Line 1 of the journal cannot be read;");
    }

    /** The same bytes over and over, which nobody holds. */
    private static final class Endless extends InputStream {
        private final byte[] piece;
        private long left;

        Endless(byte[] piece, long length) {
            this.piece = piece;
            this.left = length;
        }

        @Override
        public int read() {
            return left-- > 0 ? piece[(int) (left % piece.length)] : -1;
        }

        @Override
        public int read(byte[] bytes, int from, int count) {
            if (left <= 0) {
                return -1;
            }
            int now = (int) Math.min(Math.min(count, piece.length), left);
            System.arraycopy(piece, 0, bytes, from, now);
            left -= now;
            return now;
        }
    }

    /** A line may have 4 MB; what is taken for it is doubled as it comes, and made a text of once. */
    @Test
    void oneLineOfAnyLengthTakesTheMemoryOfOneLine() throws IOException {
        byte[] junk = new byte[64 * 1024];
        Arrays.fill(junk, (byte) 'x');
        InputStream in = new java.io.SequenceInputStream(
                new java.io.SequenceInputStream(new ByteArrayInputStream(whole), new Endless(junk, 100_000_000L)),
                new ByteArrayInputStream(whole));
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        JournalReplay replay = JournalReplay.of(in, CODEC, true);
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(40_000_000L);
        assertThat(replay.tooLarge()).isFalse();
        assertThat(replay.header()).isNotNull();
        assertThat(replay.events()).isEqualTo(2 * (possible.size() - 1));
        assertThat(replay.damagedLines()).hasSize(1);
    }

    @Test
    void journalOfMoreEventsThanAnyShowIsASentence() throws IOException {
        String event = CODEC.write(new JournalLine.Event(world.wall, 3, new FlightEvent.Stepped(3)));
        byte[] lines = (event + "\n").repeat(2000).getBytes(StandardCharsets.UTF_8);
        try (OutputStream out = Files.newOutputStream(path, java.nio.file.StandardOpenOption.APPEND)) {
            for (int i = 0; i < 60; i++) {
                out.write(lines);
            }
        }
        JournalOpening opening = world.open();
        assertThat(opening.resumed()).isFalse();
        assertThat(opening.notices())
                .containsExactly("The journal 0001-2026-05-02.journal is larger than any show's; it is left as it is.");
        opening.journal().close();
    }
}
