package crowdline.storage.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class AtomicFileTest {
    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path folder;

    private final List<Integer> pauses = new ArrayList<>();

    private Path file() {
        return folder.resolve("day.json");
    }

    @BeforeEach
    void oldFile() throws IOException {
        Files.writeString(file(), "old");
    }

    private List<String> names() throws IOException {
        try (var entries = Files.list(folder)) {
            return entries.map(p -> p.getFileName().toString()).sorted().toList();
        }
    }

    /** A disk that does as told before it does its work. */
    private abstract static class StandInDisk implements AtomicFile.Disk {
        @Override
        public void write(Path file, byte[] bytes) throws IOException {
            Files.write(file, bytes);
        }

        @Override
        public void move(Path from, Path to) throws IOException {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        }
    }

    /** Takes a few bytes and is full, at the file whose name ends so. */
    private static AtomicFile.Disk fullAt(String ending) {
        return new StandInDisk() {
            @Override
            public void write(Path file, byte[] bytes) throws IOException {
                if (file.toString().endsWith(ending)) {
                    Files.write(file, new byte[] {bytes[0]});
                    throw new IOException("No space left on device");
                }
                super.write(file, bytes);
            }
        };
    }

    private static AtomicFile.Disk busy(int times) {
        return new StandInDisk() {
            private int left = times;

            @Override
            public void move(Path from, Path to) throws IOException {
                if (left-- > 0) {
                    throw new AccessDeniedException(to.toString());
                }
                super.move(from, to);
            }
        };
    }

    @Test
    void newFileHasTheBytesAndThePreviousStaysBesideIt() throws IOException {
        new AtomicFile().write(file(), NEW);
        assertThat(file()).hasContent("new");
        assertThat(folder.resolve("day.json.previous")).hasContent("old");
        assertThat(names()).containsExactly("day.json", "day.json.previous");
    }

    @Test
    void firstSaveNeedsNoFileBefore() throws IOException {
        new AtomicFile().write(folder.resolve("first.json"), NEW);
        assertThat(names()).containsExactly("day.json", "first.json");
    }

    @Test
    void fullDiskHarmsNothingAndLeavesNothingBehind() throws IOException {
        for (String ending : List.of(".saving", ".keeping")) {
            AtomicFile full = new AtomicFile(fullAt(ending), pauses::add);
            assertThatThrownBy(() -> full.write(file(), NEW))
                    .isInstanceOf(ShowFileException.class)
                    .hasMessage(file() + " could not be saved: No space left on device; the file is as it was");
            assertThat(file()).hasContent("old");
            assertThat(names()).containsExactly("day.json");
        }
    }

    @Test
    void busyFileIsTriedAgain() throws IOException {
        new AtomicFile(busy(3), pauses::add).write(file(), NEW);
        assertThat(file()).hasContent("new");
        assertThat(pauses).containsExactly(2, 3, 4);
    }

    @Test
    void fileBusyForeverIsGivenUpUnharmed() throws IOException {
        AtomicFile never = new AtomicFile(busy(Integer.MAX_VALUE), pauses::add);
        assertThatThrownBy(() -> never.write(file(), NEW))
                .isInstanceOf(ShowFileException.class)
                .hasMessage(
                        file() + " could not be saved: it or its folder may not be written to; the file is as it was");
        assertThat(file()).hasContent("old");
        assertThat(names()).containsExactly("day.json");
    }

    /** Even the superuser, as whom tests may run, cannot write there. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void readOnlyFolderIsOneSentence() {
        Path there = Path.of("/proc/day.json");
        assertThatThrownBy(() -> new AtomicFile().write(there, NEW))
                .isInstanceOf(ShowFileException.class)
                .hasMessageStartingWith("/proc/day.json could not be saved: ");
    }

    /** A move could put another in its place, even where it may not be written. */
    @Test
    void fileMarkedReadOnlyStays() throws IOException {
        assertThat(file().toFile().setReadOnly()).isTrue();
        assertThatThrownBy(() -> new AtomicFile().write(file(), NEW))
                .isInstanceOf(ShowFileException.class)
                .hasMessage(file() + " could not be saved: it is marked as read-only; the file is as it was");
        assertThat(file()).hasContent("old");
        assertThat(names()).containsExactly("day.json");
    }

    @Test
    @EnabledOnOs(OS.LINUX)
    void permissionsAndLinksStay() throws IOException {
        Files.setPosixFilePermissions(file(), PosixFilePermissions.fromString("rw-rw----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file());
        new AtomicFile().write(link, NEW);
        assertThat(link).isSymbolicLink();
        assertThat(file()).hasContent("new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file())))
                .isEqualTo("rw-rw----");
    }

    @Test
    void leftoverOfASaveThatDiedIsReplaced() throws IOException {
        Files.writeString(folder.resolve("day.json.saving"), "half");
        new AtomicFile().write(file(), NEW);
        assertThat(file()).hasContent("new");
        assertThat(names()).containsExactly("day.json", "day.json.previous");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void whatIsNoFileIsRefusedAtOnceAndStays() throws Exception {
        Path pipe = folder.resolve("pipe.json");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor())
                .isZero();
        Path inner = Files.createDirectory(folder.resolve("inner.json"));
        for (Path one : List.of(pipe, inner)) {
            assertThatThrownBy(() -> new AtomicFile().write(one, NEW))
                    .hasMessage(one + " could not be saved: it is a folder, a pipe or a device and not a file;"
                            + " the file is as it was");
        }
        assertThat(names()).containsExactly("day.json", "inner.json", "pipe.json");
    }
}
