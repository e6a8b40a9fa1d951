package crowdline.storage.passes;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.storage.Golden;
import crowdline.storage.file.ShowFileException;
import crowdline.timing.Pass;
import crowdline.timing.Pass.How;
import crowdline.timing.Pass.TimedFigure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Passes as they lie on disks, and what they say. What is expected is written here by hand. */
class PassesGoldenTest {
    private static final Pass WALKED = new Pass(
            "p1",
            "first",
            "full",
            How.WALKED,
            Instant.parse("2026-11-25T09:30:00Z"),
            "",
            List.of(new TimedFigure("loop", 0, 12.5), new TimedFigure("roll", 13.25, 20)),
            true,
            0.4);
    private static final Pass BY_HAND = new Pass(
            "p2",
            "first",
            "full",
            How.BY_HAND,
            Instant.parse("2026-11-25T10:30:00.25Z"),
            "gusty — “rough”",
            List.of(new TimedFigure("loop", 0, 11)),
            false,
            0.5);
    private static final Pass BY_LOG = new Pass(
            "p3", "second", "low", How.BY_LOG, Instant.parse("2026-11-26T10:30:00Z"), "", List.of(), true, 0.1);
    private static final Pass LIVE = new Pass(
            "p4",
            "second",
            "low",
            How.LIVE,
            Instant.parse("2026-11-27T10:30:00Z"),
            "",
            List.of(new TimedFigure("spin-1", 1.125, 9.875)),
            true,
            0.25);

    private static final List<PassLine> LINES = List.of(
            new PassLine.Timed(WALKED),
            new PassLine.Timed(BY_HAND),
            new PassLine.Timed(BY_LOG),
            new PassLine.Timed(LIVE),
            new PassLine.Change("p1", Instant.parse("2026-11-28T08:00:00Z"), false, null),
            new PassLine.Change("p2", Instant.parse("2026-11-28T08:01:00Z"), null, "calm after all"),
            new PassLine.Change("p4", Instant.parse("2026-11-28T08:02:00Z"), false, "not mine"));

    @TempDir
    Path folder;

    @Test
    void passesAreReadAsTheyWereMeant() throws IOException, ShowFileException {
        Path show = folder.resolve("harbour.json");
        Files.write(folder.resolve("harbour.json.passes"), Golden.bytes("passes-1.jsonl"));

        assertThat(new PassesFile(show, folder.resolve("none")).read())
                .isEqualTo(new PassesFile.Reading(
                        List.of(
                                WALKED.counting(false),
                                BY_HAND.withNote("calm after all"),
                                BY_LOG,
                                LIVE.counting(false).withNote("not mine")),
                        List.of()));
        assertThat(Stream.of(WALKED, BY_HAND, BY_LOG, LIVE).map(Pass::how))
                .as("ways of timing in the golden file")
                .containsExactlyInAnyOrderElementsOf(Arrays.asList(How.values()));
    }

    @Test
    @DisabledOnOs(value = OS.WINDOWS, disabledReason = "the file is named after a path of the other systems")
    void passesOfAFolderThatMayNotBeWrittenToAreFound() throws IOException, ShowFileException {
        // After the name, the SHA-256 of the show's path, its first twelve digits.
        Files.write(folder.resolve("harbour.json-71994751ac56.passes"), Golden.bytes("passes-1.jsonl"));
        assertThat(new PassesFile(Path.of("/shows/harbour.json"), folder).read().passes())
                .hasSize(4);
    }

    @Test
    void passesAreWrittenAsTheyAlwaysWere() {
        assertThat(LINES.stream().map(PassCodec::write))
                .containsExactlyElementsOf(new String(Golden.bytes("passes-1.jsonl"), StandardCharsets.UTF_8)
                        .lines()
                        .toList());
    }
}
