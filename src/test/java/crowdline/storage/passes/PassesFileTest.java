package crowdline.storage.passes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.storage.file.AppendingFile;
import crowdline.storage.file.ShowFileException;
import crowdline.timing.Pass;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

public class PassesFileTest {
    private static final Instant THEN = Instant.parse("2030-06-01T12:00:00Z");

    @TempDir
    Path folder;

    private PassesFile passes() {
        return new PassesFile(folder.resolve("show.json"), folder.resolve("state"));
    }

    public static Pass pass(String id) {
        return new Pass(
                id,
                "dawn",
                "full",
                Pass.How.BY_HAND,
                THEN,
                "wind \"strong\"\nü",
                List.of(new Pass.TimedFigure("loop", 0, 12.25), new Pass.TimedFigure("roll", 12.25, 18)),
                true,
                0.25);
    }

    @Test
    void passesComeBackAsTheyWere() throws Exception {
        PassesFile.Kept kept = passes().keep(pass("a"));
        passes().keep(pass("b").withMarkErrorS(0.125).counting(false));
        assertThat(kept).isEqualTo(new PassesFile.Kept(folder.resolve("show.json.passes"), null));
        assertThat(passes().read())
                .isEqualTo(new PassesFile.Reading(
                        List.of(pass("a"), pass("b").withMarkErrorS(0.125).counting(false)), List.of()));
        assertThat(Files.readAllLines(folder.resolve("show.json.passes"))).hasSize(2);
    }

    @Test
    void morePassesThanAnybodyFliesAreRefusedInOneSentence() throws Exception {
        Files.writeString(folder.resolve("show.json.passes"), "x\n".repeat(5_000_000));
        assertThatThrownBy(() -> passes().read())
                .isInstanceOf(ShowFileException.class)
                .hasMessage(
                        folder.resolve("show.json.passes") + ": the limit is 20,000 lines; check that it is the right"
                                + " file, or split it into smaller ones");
    }

    @Test
    void noFileIsNoPass() throws Exception {
        assertThat(passes().read()).isEqualTo(new PassesFile.Reading(List.of(), List.of()));
    }

    @Test
    void decisionsAreFurtherLinesAndTheLastHolds() throws Exception {
        passes().keep(pass("a"));
        String line = Files.readString(passes().file());
        passes().count("a", false, THEN.plusSeconds(10));
        passes().note("a", "cut short", THEN.plusSeconds(20));
        passes().count("a", true, THEN.plusSeconds(30));
        passes().count("a", false, THEN.plusSeconds(40));
        assertThat(Files.readString(passes().file())).startsWith(line);
        assertThat(passes().read().passes())
                .containsExactly(pass("a").counting(false).withNote("cut short"));
    }

    @Test
    void damagedLineIsReportedKeptAndHarmsNoOther() throws Exception {
        passes().keep(pass("a"));
        Files.writeString(passes().file(), "{\"crowdlinePass\":1,\"id\":\"x\n", StandardOpenOption.APPEND);
        Files.write(passes().file(), new byte[] {'{', (byte) 0xC3, '\n'}, StandardOpenOption.APPEND);
        Files.writeString(passes().file(), """
                {"crowdlinePass":1,"id":"y","act":"dawn","variant":"full","how":"by-hnad","begunAt":"2030-06-01T12:00:00Z","figures":[]}
                {"crowdlinePass":1,"id":"z","act":"dawn","variant":"full","how":"by-hand","begunAt":"2030-06-01T12:00:00Z","figures":[{"figure":"loop","startS":5,"endS":4}]}
                {"crowdlinePass":7}
                {"crowdlinePassChange":1,"id":"gone","at":"2030-06-01T12:00:00Z","counts":false}
                """, StandardOpenOption.APPEND);
        byte[] before = Files.readAllBytes(passes().file());
        passes().keep(pass("b"));

        PassesFile.Reading reading = passes().read();

        assertThat(reading.passes()).containsExactly(pass("a"), pass("b"));
        assertThat(reading.findings()).hasSize(6);
        assertThat(reading.findings().get(0))
                .contains("show.json.passes, line 2, column ")
                .endsWith("not used");
        assertThat(reading.findings().get(1)).contains("line 3, column 2").contains("0xC3");
        assertThat(reading.findings().get(2))
                .contains("line 4")
                .contains("by-hnad")
                .contains("by-hand");
        assertThat(reading.findings().get(3))
                .contains("line 5")
                .contains("loop")
                .contains("end must be after");
        assertThat(reading.findings().get(4)).contains("line 6").contains("version is 7");
        assertThat(reading.findings().get(5)).contains("gone");
        assertThat(Files.readAllBytes(passes().file())).startsWith(before);
    }

    @Test
    void tornLastLineStaysALineOfItsOwn() throws Exception {
        passes().keep(pass("a"));
        Files.writeString(passes().file(), "{\"crowdlinePa", StandardOpenOption.APPEND);
        passes().keep(pass("b"));
        PassesFile.Reading reading = passes().read();
        assertThat(reading.passes()).containsExactly(pass("a"), pass("b"));
        assertThat(reading.findings()).hasSize(1);
        assertThat(reading.findings().get(0)).contains("line 2");
    }

    @Test
    void twoPassesOfOneNameAreReportedAndTheFirstHolds() throws Exception {
        passes().keep(pass("a"));
        passes().keep(pass("a"));
        assertThat(passes().read().findings()).as("the same line twice").isEmpty();
        passes().keep(pass("a").withNote("other"));
        assertThat(passes().read().passes()).containsExactly(pass("a"));
        assertThat(passes().read().findings()).hasSize(1);
    }

    @Test
    void folderThatMayNotBeWrittenToSendsLinesElsewhereAndSaysSo() throws Exception {
        passes().keep(pass("a"));
        PassesFile locked = new PassesFile(folder.resolve("show.json"), folder.resolve("state"), (file, line) -> {
            if (!file.startsWith(folder.resolve("state"))) {
                throw new AccessDeniedException(file.toString());
            }
            AppendingFile.append(file, line);
        });
        PassesFile.Kept kept = locked.keep(pass("b"));
        locked.count("a", false, THEN.plusSeconds(5));
        assertThat(kept.file()).startsWith(folder.resolve("state"));
        assertThat(kept.notice())
                .contains("show.json.passes cannot be written to (its folder may not be written to)")
                .contains(kept.file().toString());
        assertThat(passes().read().passes()).containsExactly(pass("a").counting(false), pass("b"));

        passes().count("a", true, THEN.plusSeconds(9));
        assertThat(passes().read().passes()).as("the later decision holds").containsExactly(pass("a"), pass("b"));
    }

    @Test
    void whenNoDiskTakesItOneSentenceSaysSo() {
        PassesFile full = new PassesFile(folder.resolve("show.json"), folder.resolve("state"), (file, line) -> {
            throw new IOException("No space left on device");
        });
        assertThatThrownBy(() -> full.keep(pass("a")))
                .isInstanceOf(ShowFileException.class)
                .hasMessageStartingWith("the pass could not be kept: ")
                .hasMessageContaining("No space left on device");
    }

    @Test
    void showsOfOneNameInTwoFoldersDoNotShareTheOtherFile() throws Exception {
        PassesFile.Appender nothingBeside = (file, line) -> {
            if (!file.startsWith(folder.resolve("state"))) {
                throw new IOException("no");
            }
            AppendingFile.append(file, line);
        };
        Path one = new PassesFile(folder.resolve("one/show.json"), folder.resolve("state"), nothingBeside)
                .keep(pass("a"))
                .file();
        Path two = new PassesFile(folder.resolve("two/show.json"), folder.resolve("state"), nothingBeside)
                .keep(pass("a"))
                .file();
        assertThat(one).isNotEqualTo(two);
    }

    @Tag("slow")
    @Test
    void twoProgramsAddingAtOnceLoseNoLine() throws Exception {
        List<Process> programs = new ArrayList<>();
        for (String name : List.of("p", "q")) {
            programs.add(new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-cp",
                            System.getProperty("java.class.path"),
                            Adding.class.getName(),
                            folder.resolve("show.json").toString(),
                            name)
                    .redirectErrorStream(true)
                    .start());
        }
        List<String> said = new ArrayList<>();
        for (Process program : programs) {
            said.add(new String(program.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
            assertThat(program.waitFor()).as(said.toString()).isZero();
        }
        PassesFile.Reading reading = passes().read();
        assertThat(reading.findings()).isEmpty();
        assertThat(reading.passes()).hasSize(2 * Adding.TIMES);
        assertThat(folder.resolve("state")).doesNotExist();
    }

    /** A program that adds passes. */
    static final class Adding {
        static final int TIMES = 60;

        private Adding() {}

        public static void main(String[] args) throws ShowFileException {
            PassesFile file = new PassesFile(Path.of(args[0]), Path.of(args[0]).resolveSibling("state"));
            for (int i = 0; i < TIMES; i++) {
                file.keep(pass(args[1] + i));
            }
        }
    }
}
