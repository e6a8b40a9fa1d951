package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ListTextTest {
    private static final String LIST = "Loop\r\n½ Cuban – left\r\n";

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16", "windows-1252"})
    void aListIsReadAsItWasSaved(String charset) throws ListText.NoText {
        assertThat(ListText.of(LIST.getBytes(Charset.forName(charset)))).isEqualTo(LIST);
    }

    @Test
    void aMarkAheadIsNoLetter() throws ListText.NoText {
        assertThat(ListText.of(("\ufeff" + LIST).getBytes(StandardCharsets.UTF_8)))
                .isEqualTo(LIST);
        assertThat(ListText.of(("\ufeff" + LIST).getBytes(StandardCharsets.UTF_16LE)))
                .isEqualTo(LIST);
        assertThat(ListText.of(("\ufeff" + LIST).getBytes(StandardCharsets.UTF_16BE)))
                .isEqualTo(LIST);
    }

    @Test
    void nothingIsAnEmptyText() throws ListText.NoText {
        assertThat(ListText.of(new byte[0])).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'%PDF-1.7 loop', a PDF",
        "'{\\rtf1\\ansi Loop\\par}', rich text",
        "'<!DOCTYPE html><html><body>Loop', a web page",
        "'  <ul><li>Loop</li></ul>', a web page",
        "'PK\u0003\u0004 loop', a document of a word processor or a spreadsheet",
        "'loop\u0000roll', no text",
    })
    void whatIsNoTextIsSaidToBeWhatItIs(String written, String what) {
        assertThatThrownBy(() -> ListText.of(written.getBytes(StandardCharsets.ISO_8859_1)))
                .isInstanceOf(ListText.NoText.class)
                .hasMessage(what);
    }

    @Test
    void halfALetterOfTwoBytesIsNoText() {
        assertThatThrownBy(() -> ListText.of(new byte[] {(byte) 0xff, (byte) 0xfe, 76}))
                .isInstanceOf(ListText.NoText.class);
    }
}
