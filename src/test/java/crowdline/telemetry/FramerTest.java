package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FramerTest {
    private static final String ONE = "$GPVTG,054.7,T,034.4,M,005.5,N,010.2,K*48";
    private static final String TWO = "$GPRMC,,V,,,,,,,,,,N*53";

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\n", "\r", ""})
    void anyLineEndOrNoneSeparatesSentences(String lineEnd) {
        List<Frame> frames = Nmea.frames(Nmea.bytes(ONE + lineEnd + TWO + lineEnd));

        assertThat(frames).extracting(Frame::text).containsExactly(ONE, TWO);
        assertThat(frames).extracting(Frame::end).containsOnly(Frame.End.CHECKSUM);
    }

    @ParameterizedTest
    @ValueSource(strings = {"\r\n", "\n", "\r"})
    void linesAreCountedWithAnyLineEnd(String lineEnd) {
        List<Frame> frames = Nmea.frames(Nmea.bytes("# a remark" + lineEnd + lineEnd + ONE + lineEnd + TWO));

        assertThat(frames).extracting(Frame::line).containsExactly(3, 4);
    }

    @Test
    void sentenceIsGivenWithItsLastDigitAndNotLater() {
        Framer framer = new Framer();
        byte[] bytes = Nmea.bytes(ONE);
        for (int i = 0; i < bytes.length - 1; i++) {
            assertThat(framer.accept(bytes[i])).isEmpty();
        }

        assertThat(framer.accept(bytes[bytes.length - 1])).isPresent();
    }

    @Test
    void binaryMessagesBetweenSentencesAreDropped() {
        // A UBX message (sync B5 62, class 01, id 07, length 8) whose load holds a dollar, a star and line ends.
        byte[] ubx = {(byte) 0xB5, 0x62, 0x01, 0x07, 8, 0, '$', 'a', '*', '4', '\r', '\n', '!', 0, 0x12, (byte) 0xFE};
        byte[] stream = joined(Nmea.bytes(ONE + "\r\n"), ubx, Nmea.bytes(TWO + "\r\n"), ubx);

        assertThat(Nmea.frames(stream)).extracting(Frame::text).containsExactly(ONE, TWO);
    }

    @Test
    void bytesThatBreakIntoSentenceCutItAndTheNextIsWhole() {
        byte[] stream = joined(Nmea.bytes("$GPVTG,054.7,T,"), new byte[] {(byte) 0xB5, 0x62}, Nmea.bytes(TWO));

        assertThat(Nmea.frames(stream)).extracting(Frame::end).containsExactly(Frame.End.CUT, Frame.End.CHECKSUM);
    }

    @Test
    void sentenceCutByTheNextIsCut() {
        assertThat(Nmea.frames(Nmea.bytes("$GPVTG,054.7,T" + TWO)))
                .extracting(Frame::end)
                .containsExactly(Frame.End.CUT, Frame.End.CHECKSUM);
    }

    @Test
    void lineWithoutChecksumEndsAtTheLineEnd() {
        assertThat(Nmea.frames(Nmea.bytes("$GPVTG,054.7,T*4\r\n")))
                .containsExactly(new Frame("$GPVTG,054.7,T*4", 1, Frame.End.LINE_END));
    }

    @Test
    void overlongSentenceIsGivenUpAndTheNextIsWhole() {
        List<Frame> frames = Nmea.frames(Nmea.bytes("$GPGGA," + "1".repeat(100_000) + TWO));

        assertThat(frames).extracting(Frame::end).containsExactly(Frame.End.TOO_LONG, Frame.End.CHECKSUM);
        assertThat(frames.get(0).text()).hasSize(Framer.LONGEST + 1);
    }

    @Test
    void whatBeginsLikeNoSentenceIsNoise() {
        assertThat(Nmea.frames(Nmea.bytes("$1,2*33 $ !! ${json} $a*00"))).isEmpty();
    }

    private static byte[] joined(byte[]... parts) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
