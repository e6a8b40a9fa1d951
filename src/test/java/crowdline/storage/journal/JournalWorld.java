package crowdline.storage.journal;

import crowdline.live.event.LiveEvent;
import crowdline.live.event.ShowEvent;
import crowdline.live.state.Live;
import crowdline.live.state.LiveState;
import crowdline.live.state.RandomEvents;
import crowdline.live.state.Step;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;

/** A folder of journals on a machine whose clocks the test sets. */
final class JournalWorld {
    static final JournalShow SHOW = new JournalShow("/shows/harbour.json", "aa");

    final Path folder;
    long nanos = -7_000_000_000_000L;
    Instant wall = Instant.parse("2026-05-02T12:00:00Z");

    @Nullable
    String bootId = "boot-1";
    /** Bytes the disk still takes, over all files; a write that does not fit is cut in the middle. */
    long room = Long.MAX_VALUE;
    /** Journals that may be read and not written. */
    Predicate<Path> readOnly = path -> false;

    JournalWorld(Path folder) {
        this.folder = folder;
    }

    JournalShelf shelf() {
        return new JournalShelf(folder, new JournalMachine(() -> nanos, () -> wall, bootId), 12 * 3600, new Disks());
    }

    JournalOpening open() {
        return shelf().open(SHOW);
    }

    void pass(double seconds) {
        nanos += Math.round(seconds * 1e9);
        wall = wall.plusNanos(Math.round(seconds * 1e9));
    }

    void restartMachine(String nextBootId, double afterS) {
        wall = wall.plusNanos(Math.round(afterS * 1e9));
        nanos = 30_000_000_000L;
        bootId = nextBootId;
    }

    /** What the desk does with each event, without its thread; the states after every event that was possible. */
    static List<LiveState> play(JournalOpening opening, List<LiveEvent> events) {
        List<LiveState> states = new ArrayList<>();
        LiveState state = opening.state();
        for (LiveEvent event : events) {
            if (Live.next(state, event) instanceof Step.Moved moved) {
                opening.journal().append(event);
                state = moved.state();
                states.add(state);
            }
        }
        return states;
    }

    static List<LiveEvent> someEvents() {
        return new RandomEvents(5)
                .next(40).stream()
                        .filter(e -> !(e instanceof ShowEvent.ShowEnded))
                        .toList();
    }

    static List<String> lines(Path path) throws IOException {
        return new ArrayList<>(Files.readAllLines(path, StandardCharsets.UTF_8));
    }

    static void write(Path path, List<String> lines, String rest) throws IOException {
        Files.writeString(path, String.join("\n", lines) + "\n" + rest);
    }

    /** Real files on a disk that can be full, or take nothing at all. */
    private final class Disks implements JournalFile.Opener {
        private final JournalFile.Opener real = JournalDiskFile.opener();

        @Override
        public JournalFile open(Path file) throws IOException {
            refuse(file);
            return new Disk(real.open(file));
        }

        @Override
        public JournalFile create(Path file) throws IOException {
            refuse(file);
            return new Disk(real.create(file));
        }

        private void refuse(Path file) throws IOException {
            if (readOnly.test(file)) {
                throw new AccessDeniedException(file.toString());
            }
        }
    }

    private final class Disk implements JournalFile {
        private final JournalFile file;

        Disk(JournalFile file) {
            this.file = file;
        }

        @Override
        public long length() throws IOException {
            return file.length();
        }

        @Override
        public boolean inPlace() {
            return file.inPlace();
        }

        @Override
        public void put(long length, byte[] bytes) throws IOException {
            if (bytes.length > room) {
                byte[] part = Arrays.copyOf(bytes, (int) room);
                room = 0;
                file.put(length, part);
                throw new IOException("No space left on device");
            }
            room -= bytes.length;
            file.put(length, bytes);
        }

        @Override
        public void close() throws IOException {
            file.close();
        }
    }
}
