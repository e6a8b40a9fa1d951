package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import crowdline.show.check.LocatedFinding;
import crowdline.storage.file.ShowFileException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Files that are no show at all. */
class HostileInputTest {
    private static String only(ShowReading reading) {
        assertThat(reading.show()).isNull();
        assertThat(reading.findings()).hasSize(1);
        return reading.findings().get(0).asLine();
    }

    @Test
    void emptyFileIsSaidToBeEmpty() {
        assertThat(only(Fixture.read(""))).isEqualTo("day.json:1:1: error: the file is empty; it must begin with {");
    }

    @Test
    void cutShortFileSaysSo() {
        String cut = Fixture.FULL.substring(0, Fixture.FULL.indexOf("\"entry\""));
        assertThat(only(Fixture.read(cut)))
                .startsWith("day.json:26:")
                .endsWith(
                        "error: the file ends before every bracket and quote is closed; it may have been cut short, so"
                                + " get it again or go back to the .previous file beside it");
    }

    @Test
    void webPageIsNamedAsOne() {
        assertThat(only(Fixture.read("<!doctype html>\n<html></html>")))
                .isEqualTo(
                        "day.json:1:1: error: this is a web page or XML, not a show file; a show file begins with {");
    }

    @Test
    void whatBeginsWithoutABracketIsNamedAsNoShow() {
        assertThat(only(Fixture.read("AXXX001\nHFDTE291126\n")))
                .isEqualTo("day.json:1:1: error: this is not a show file, which begins with {; choose the file that was"
                        + " saved as a show");
    }

    @Test
    void listIsNoShow() {
        assertThat(only(Fixture.read("[1, 2]")))
                .isEqualTo("day.json:1:1: error: the file holds a list and not a show; a show file begins with {");
    }

    @Test
    void textAfterTheEndIsShown() {
        assertThat(only(Fixture.read(Fixture.FULL + "{}")))
                .isEqualTo(
                        "day.json:55:1: error: there is something after the closing bracket of the file; take it out");
    }

    @Test
    void olderEncodingIsPointedAt() {
        byte[] latin = "{\n \"title\": \"Café\"}".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(only(Fixture.read(latin)))
                .isEqualTo(
                        "day.json:2:15: error: the byte 0xE9 here is not UTF-8; the file may be in an older encoding,"
                                + " so save it as UTF-8");
    }

    @Test
    void utf16IsNamed() {
        assertThat(only(Fixture.read(Fixture.FULL.getBytes(StandardCharsets.UTF_16))))
                .isEqualTo("day.json:1:1: error: the file is UTF-16 text; save it as UTF-8");
    }

    @Test
    void byteOrderMarkIsNoMatter() {
        assertThat(Fixture.read('\uFEFF' + Fixture.FULL).findings()).isEmpty();
    }

    @Test
    void deepNestingIsRefusedAtItsPlaceWithoutOverflow() {
        String deep = "[".repeat(19_000_000);
        String said = assertTimeoutPreemptively(Duration.ofSeconds(20), () -> only(Fixture.read(deep)));
        assertThat(said)
                .isEqualTo(
                        "day.json:1:65: error: the file nests brackets deeper than 64 levels; a show file needs about"
                                + " 10, so this is something else");
    }

    @Test
    void objectsNestTooDeepJustTheSame() {
        assertThat(only(Fixture.read("{\"a\":".repeat(1000)))).contains("deeper than 64 levels");
    }

    @Test
    void sixtyFourLevelsAreRead() {
        String nested = "[".repeat(63) + "]".repeat(63);
        ShowReading reading = Fixture.read(Fixture.changed("\"date\"", "\"odd\": " + nested + ", \"date\""));
        assertThat(reading.show()).isNotNull();
    }

    @Test
    void endlessListIsRefused() {
        assertThat(only(Fixture.read("[" + "0,".repeat(1_000_000) + "0]")))
                .contains("the file holds more than 200,000 values");
    }

    @Test
    void moreActsThanAnyShowHasAreOneSentenceWhateverTheyAre() {
        String start = "{\"crowdline\": 1, \"acts\": [";
        assertThat(only(Fixture.read(start + "1,".repeat(4_999) + "1]}")))
                .isEqualTo(
                        "day.json:1:26: error: acts has 5,000 entries; the limit is 200. Take some out, or check that it"
                                + " is the right file");
    }

    @Test
    void moreMistakesThanAnybodyReadsAreGivenUp() {
        String act = "{\"figures\": [" + "{},".repeat(299) + "{}]}";
        ShowReading reading = Fixture.read("{\"crowdline\": 1, \"acts\": [" + (act + ",").repeat(9) + act + "]}");
        assertThat(reading.findings()).hasSize(501);
        assertThat(reading.findings().get(500).message()).isEqualTo("there are many more findings; fix these first");
    }

    @Test
    void textLongerThanAnybodySaysIsRefusedWithItsLength() {
        String endless = Fixture.changed("\"Harrowmere Air Day\"", "\"" + "x".repeat(10_000_000) + "\"");
        assertThat(only(Fixture.read(endless)))
                .isEqualTo("day.json:3:12: error: title is 10,000,000 letters long; the limit is 5,000. Shorten it, or"
                        + " check that it is the right file");
    }

    @Test
    void utf16WithoutItsMarkIsNamedToo() {
        String said = "day.json:1:1: error: the file is UTF-16 text; save it as UTF-8";
        assertThat(only(Fixture.read(Fixture.FULL.getBytes(StandardCharsets.UTF_16LE))))
                .isEqualTo(said);
        assertThat(only(Fixture.read(Fixture.FULL.getBytes(StandardCharsets.UTF_16BE))))
                .isEqualTo(said);
    }

    @Test
    void hugeFileIsRefusedUnread(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("huge.json");
        byte[] block = new byte[1_000_000];
        Arrays.fill(block, (byte) '[');
        try (OutputStream out = Files.newOutputStream(file)) {
            for (int i = 0; i < 100; i++) {
                out.write(block);
            }
        }
        assertThatThrownBy(() -> new ShowFile().read(file))
                .isInstanceOf(ShowFileException.class)
                .hasMessage(
                        file
                                + " is 100.0 MB large; the limit is 20 MB. Check that it is the right file, or split it into smaller ones");
    }

    /** Opening a pipe that nobody writes into waits for ever. */
    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    @Timeout(value = 20, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
    void aNamedPipeIsOneSentenceAtOnce(@TempDir Path folder) throws Exception {
        Path pipe = folder.resolve("show.json");
        Process made = new ProcessBuilder("mkfifo", pipe.toString()).start();
        assertThat(made.waitFor()).isZero();
        assertThatThrownBy(() -> new ShowFile().read(pipe))
                .isInstanceOf(ShowFileException.class)
                .hasMessage(pipe + " is a pipe or a device and not a file; name a file");
    }

    @Test
    void missingFileAndFolderAreOneSentence(@TempDir Path folder) {
        Path missing = folder.resolve("none.json");
        assertThatThrownBy(() -> new ShowFile().read(missing))
                .isInstanceOf(ShowFileException.class)
                .hasMessage("there is no file " + missing + "; check its name and folder");
        assertThatThrownBy(() -> new ShowFile().read(folder))
                .isInstanceOf(ShowFileException.class)
                .hasMessage(folder + " is a folder; name the file in it");
    }

    @Test
    void numbersOfManyDigitsAreHarmless() {
        String text = Fixture.changed("\"windKt\": 9", "\"windKt\": 9." + "1".repeat(900))
                .replace("\"weight\": 2", "\"weight\": 1e-400000000")
                .replace("\"elevationFt\": 310", "\"elevationFt\": 3.1e0000000000000000000000000002");
        assertThat(Fixture.read(text).findings())
                .extracting(LocatedFinding::message)
                .containsExactly("acts[0].figures[1].remarks[0].weight is 0.0; it must be from 0.001 to 1000");
    }

    /** Any byte of a sound file replaced, dropped or doubled: a show or findings, never an exception. */
    @Test
    void damagedFilesNeverThrow() {
        byte[] sound = Fixture.FULL.getBytes(StandardCharsets.UTF_8);
        ShowFile files = new ShowFile();
        SplittableRandom random = new SplittableRandom(20270612);
        for (int i = 0; i < 1500; i++) {
            byte[] damaged = sound.clone();
            int at = random.nextInt(damaged.length);
            switch (random.nextInt(3)) {
                case 0 -> damaged[at] = (byte) random.nextInt(256);
                case 1 -> damaged = Arrays.copyOf(damaged, at);
                default -> System.arraycopy(sound, at, damaged, 0, sound.length - at);
            }
            ShowReading reading = files.read(Path.of("day.json"), damaged);
            assertThat(reading.show() != null || reading.blocked())
                    .as("damage %d at byte %d", i, at)
                    .isTrue();
            assertThat(reading.findings()).allSatisfy(f -> {
                assertThat(f.line()).isPositive();
                assertThat(f.column()).isPositive();
                assertThat(f.message()).doesNotContain("Exception").doesNotContain("JsonReadFeature");
            });
        }
    }
}
