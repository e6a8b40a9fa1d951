package crowdline.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import crowdline.loaded.LogFile;
import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.serial.SerialPorts;
import java.io.IOException;
import java.io.InputStream;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AircraftSourceTest {
    private static final String FIX = "AXXXABC\nHFDTE010126\nB1200005312000N00224000EA0030000300\n";

    @TempDir
    private Path folder;

    private final AircraftSource source = new AircraftSource(() -> 0, new SerialPorts(Path.of("serial")));

    private ThrowingCallable opening(Path where) {
        return () -> source.open(where.toString(), 1, InputStream.nullInputStream());
    }

    @Test
    void aLogThatCannotBeUsedStandsAsTheTroubleUntilSomethingElseIsChosen() throws Exception {
        Path empty = Files.createFile(folder.resolve("empty.igc"));
        assertThatThrownBy(opening(empty)).isInstanceOf(ShowFileException.class);
        assertThat(source.trouble()).isEqualTo("empty.igc is empty; export the flight again");
        assertThat(source.isOpen()).isFalse();
        assertThat(source.where()).isEmpty();
        source.open("", 1, InputStream.nullInputStream());
        assertThat(source.trouble()).isEmpty();
    }

    @Test
    void whatPlaysGoesOnWhenTheNextChoiceCannotBeUsed() throws Exception {
        Path log = Files.writeString(folder.resolve("pass.igc"), FIX + "B1300005312000N00224000EA0030000300\n");
        source.open(log.toString(), 4, InputStream.nullInputStream());
        assertThat(source.text()).isEqualTo("playing pass.igc 4 times as fast");
        assertThatThrownBy(opening(folder.resolve("no.igc")))
                .hasMessage("there is no flight log and no port " + folder.resolve("no.igc") + "; check its name");
        assertThat(source.name()).isEqualTo("pass.igc");
        assertThat(source.where()).isEqualTo(log.toString());
        assertThat(source.trouble()).isEmpty();
        source.close();
    }

    @Test
    void positionsThatCannotBePlacedAreATroubleOfWhateverIsOpen() throws Exception {
        String why = "the aircraft cannot be placed without the venue's elevationFt; add it to the show file";
        source.to(fix -> {}, () -> why);
        assertThat(source.trouble()).isEmpty();
        Path log = Files.writeString(folder.resolve("pass.igc"), FIX + "B1300005312000N00224000EA0030000300\n");
        source.open(log.toString(), 1, InputStream.nullInputStream());
        assertThat(source.trouble()).isEqualTo(why);
        source.close();
        assertThat(source.trouble()).isEmpty();
    }

    @Test
    void aFolderIsNoFlightLog() {
        assertThatThrownBy(opening(folder)).hasMessage(folder + " is a folder; name one flight log in it");
    }

    /** As large as would not go into the memory the console has. */
    @Test
    void aHugeFileIsRefusedByItsSize() throws IOException {
        Path huge = folder.resolve("huge.igc");
        try (RandomAccessFile file = new RandomAccessFile(huge.toFile(), "rw")) {
            file.setLength(3L << 30);
        }
        assertThatThrownBy(opening(huge))
                .hasMessage(huge + " has 3072 MB; a flight log has at most 24 MB, so cut it to the flight");
    }

    /** A device without an end says nothing of its size beforehand. */
    @Test
    void whatNeverEndsIsReadNoFurtherThanALogIsLong() {
        Path endless = Path.of("/dev/zero");
        assumeTrue(Files.exists(endless));
        StringBuilder told = new StringBuilder();
        assertThatThrownBy(() -> LogFile.bytes(endless, told::append))
                .hasMessage("/dev/zero does not end within 24 MB; a flight log has at most 24 MB, so cut it to the"
                        + " flight");
        assertThat(told).contains("/dev/zero is not an ordinary file and is read until it ends; Ctrl+C gives up");
    }
}
