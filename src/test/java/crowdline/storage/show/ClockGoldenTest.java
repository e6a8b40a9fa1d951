package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Show;
import crowdline.show.figure.Asked;
import crowdline.show.figure.Figure;
import crowdline.storage.Golden;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** When figures begin by the clock of the pilot's list. */
class ClockGoldenTest {
    private static final String GOLDEN = "show-1-clock.json";

    @TempDir
    Path folder;

    private static Show read(Path file, byte[] bytes) {
        ShowReading reading = new ShowFile().read(file, bytes);
        assertThat(reading.findings()).isEmpty();
        return Objects.requireNonNull(reading.show());
    }

    @Test
    void theListsClockIsReadAsItWasMeant() {
        assertThat(read(Path.of(GOLDEN), Golden.bytes(GOLDEN)).acts().get(0).figures())
                .extracting(Figure::asked)
                .containsExactly(
                        Asked.plainly("0:20 loop").withBeginsS(20.0),
                        new Asked(
                                "0:52.5 spin",
                                null,
                                null,
                                null,
                                null,
                                null,
                                null,
                                70.0,
                                null,
                                52.5,
                                null,
                                false,
                                List.of(),
                                false));
    }

    @Test
    void itIsWrittenAsItIsRead() throws Exception {
        Show show = read(Path.of(GOLDEN), Golden.bytes(GOLDEN));
        Path file = folder.resolve("again.json");
        new ShowFile().write(file, show);

        assertThat(read(file, Files.readAllBytes(file))).isEqualTo(show);
        assertThat(Files.readString(file, StandardCharsets.UTF_8)).contains("\"beginsS\": 52.5");
    }

    @Test
    void aTimeBeforeTheActIsRefused() {
        String bad =
                new String(Golden.bytes(GOLDEN), StandardCharsets.UTF_8).replace("\"beginsS\": 20", "\"beginsS\": -1");

        assertThat(new ShowFile()
                        .read(Path.of(GOLDEN), bad.getBytes(StandardCharsets.UTF_8))
                        .findings())
                .anyMatch(finding -> finding.message().contains("beginsS"));
    }
}
