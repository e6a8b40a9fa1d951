package crowdline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts that a spreadsheet would run. */
class CsvCellTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "  =1",
                "\u00a0=1",
                "\u0000=1",
                "\u0007=1",
                "\u001f@A",
                "\ufeff=1",
                "\u200b=1",
                "\u200e\u202e-1",
                "\u00ad=1",
                "\u2060\t +1",
                "\uff1d1",
                "\uff0b1",
                "\uff0d1",
                "\uff201",
                "\ufe661",
                "\u22121",
                "\u2028=1",
                "\"=1",
                "\ud800=1"
            })
    void whatASpreadsheetWouldRunBeginsWithAQuoteMark(String text) {
        assertThat(CsvCell.quoted(text)).startsWith("\"'").doesNotContainPattern("[\\r\\n\\t\\x00]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Loop", "45 degrees =", "3 - 2", "£5", "", "Café", "\ud83d\ude00 smile", "#1", "(=)"})
    void otherTextStaysAsItIs(String text) {
        assertThat(CsvCell.quoted(text)).isEqualTo('"' + text + '"');
    }

    @Test
    void quotesAreDoubledAndLinesJoined() {
        assertThat(CsvCell.quoted("a \"b\"\nc")).isEqualTo("\"a \"\"b\"\" c\"");
    }
}
