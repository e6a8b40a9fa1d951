package crowdline.storage.unsaved;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.show.Show;
import crowdline.storage.file.NameLocks;
import crowdline.storage.file.ShowFileException;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** Edits that are in no file of the user's, when their window is gone. */
@Timeout(60)
class UnsavedShelfTest {
    private static final Instant NOW = Instant.parse("2026-05-02T09:41:00Z");

    @TempDir
    private Path folder;

    private UnsavedShelf shelf() {
        return new UnsavedShelf(folder.resolve("unsaved"));
    }

    private static UnsavedEdit edit(int number) {
        return new UnsavedEdit(
                Path.of("/shows/Tag der offenen Tür 100 %.json"), "ab12", NOW, UnsavedChild.edit(number));
    }

    @Test
    void whatWasKeptIsFoundAsItWasUnderItsName() throws Exception {
        UnsavedEdit never = new UnsavedEdit(null, "", NOW.plusSeconds(5), UnsavedChild.edit(2));
        shelf().keep("a", edit(1));
        shelf().keep("b", never);
        assertThat(shelf().found().kept())
                .containsExactly(new UnsavedShelf.Kept("b", never), new UnsavedShelf.Kept("a", edit(1)));
        shelf().forget("b");
        assertThat(shelf().found().kept()).containsExactly(new UnsavedShelf.Kept("a", edit(1)));
        shelf().forget("a");
        assertThat(shelf().found().kept()).isEmpty();
        try (Stream<Path> left = Files.list(folder.resolve("unsaved"))) {
            assertThat(left.map(p -> p.getFileName().toString())).containsExactly("editing.lock");
        }
    }

    @Test
    void whatIsEditedInAWindowIsOfferedByNoOther() throws Exception {
        UnsavedShelf mine = shelf();
        NameLocks.Held held = mine.take("a").orElseThrow();
        mine.keep("a", edit(1));
        assertThat(shelf().take("a")).isEmpty();
        assertThat(shelf().found().kept()).isEmpty();
        held.close();
        assertThat(shelf().found().kept()).hasSize(1);
    }

    @Test
    void whatIsSetApartIsNotWrittenOver() throws Exception {
        shelf().keep("a", edit(1));
        shelf().setApart("a", "a-before");
        shelf().keep("a", edit(2));
        assertThat(shelf().found().kept())
                .extracting(k -> k.edit().show().title())
                .containsExactlyInAnyOrder("Edit 1", "Edit 2");
    }

    @Test
    void whatIsDamagedIsSetAsideAndSaidOnce() throws Exception {
        shelf().keep("a", edit(1));
        shelf().keep("b", edit(2));
        Path damaged = folder.resolve("unsaved").resolve("a.unsaved");
        byte[] whole = Files.readAllBytes(damaged);
        for (int cut : List.of(0, 5, 60, whole.length / 2, whole.length - 3)) {
            Files.write(damaged, java.util.Arrays.copyOf(whole, cut));
            UnsavedShelf.Found found = shelf().found();
            assertThat(found.kept())
                    .as("cut at %s", cut)
                    .extracting(k -> k.name())
                    .containsExactly("b");
            assertThat(found.notices()).hasSize(1);
            assertThat(found.notices().get(0)).contains("damaged").contains("a.unsaved.damaged");
            assertThat(shelf().found().notices()).isEmpty();
        }
    }

    @Test
    void aFileHasOneNameHoweverItIsNamed() throws Exception {
        Path file = Files.writeString(folder.resolve("day.json"), "{}");
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
        assertThat(UnsavedShelf.nameOf(link)).isEqualTo(UnsavedShelf.nameOf(file));
        assertThat(UnsavedShelf.nameOf(folder.resolve("x").resolve("..").resolve("other.json")))
                .isEqualTo(UnsavedShelf.nameOf(folder.resolve("other.json")));
    }

    @Test
    void whatCannotBeKeptIsSaidAndNothingElseIsHarmed() throws Exception {
        Files.writeString(folder.resolve("unsaved"), "a file where the folder should be");
        assertThatThrownBy(() -> shelf().keep("a", edit(1))).isInstanceOf(ShowFileException.class);
        assertThat(folder.resolve("unsaved")).hasContent("a file where the folder should be");
    }

    /** A real process, killed while it keeps one edit after the other. */
    @Tag("slow")
    @Test
    void killedAtAnyMomentTheLastEditThatWasSaidToBeKeptIsThere() throws Exception {
        for (int kill = 0; kill < 3; kill++) {
            Process child = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-cp",
                            System.getProperty("java.class.path"),
                            UnsavedChild.class.getName(),
                            folder.resolve("unsaved").toString())
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            int kept = 0;
            try (BufferedReader out =
                    new BufferedReader(new InputStreamReader(child.getInputStream(), StandardCharsets.UTF_8))) {
                while (kept < 20 + 7 * kill) {
                    kept = Integer.parseInt(out.readLine().substring("KEPT ".length()));
                }
                assertThat(shelf().take("the-show"))
                        .as("another process edits it")
                        .isEmpty();
                assertThat(shelf().found().kept()).isEmpty();
                child.toHandle().destroyForcibly();
                for (String line = out.readLine(); line != null; line = out.readLine()) {
                    if (line.matches("KEPT \\d+")) {
                        kept = Math.max(kept, Integer.parseInt(line.substring("KEPT ".length())));
                    }
                }
            }
            assertThat(child.waitFor(20, TimeUnit.SECONDS)).isTrue();
            UnsavedShelf.Found found = shelf().found();
            assertThat(found.notices()).isEmpty();
            assertThat(found.kept()).hasSize(1);
            Show show = found.kept().get(0).edit().show();
            int there = Integer.parseInt(show.title().substring("Edit ".length()));
            // One more may have reached the disk before it could be said.
            assertThat(there).isBetween(kept, kept + 1);
        }
    }
}
