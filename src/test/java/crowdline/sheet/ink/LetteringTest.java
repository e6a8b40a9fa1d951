package crowdline.sheet.ink;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;
import com.ibm.icu.text.Bidi;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LetteringTest {
    private static String seen(String line) {
        return Lettering.runs(line, false).stream().map(Lettering.Run::text).collect(Collectors.joining());
    }

    /** ICU, which orders and shapes text in another way, is the judge. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "loop",
                "דנה כהן",
                "דנה (כהן) 12",
                "Now דנה כהן flies",
                "سلمى الطيار",
                "لا إله",
                "محمد 12 بن علي",
                "The سلمى loop"
            })
    void lettersStandAsTheyAreReadWhateverTheirDirection(String line) throws ArabicShapingException {
        String shaped = new ArabicShaping(ArabicShaping.LETTERS_SHAPE
                        | ArabicShaping.TEXT_DIRECTION_LOGICAL
                        | ArabicShaping.LENGTH_GROW_SHRINK)
                .shape(line);
        String judged = new Bidi(shaped, Bidi.LEVEL_DEFAULT_LTR).writeReordered(Bidi.DO_MIRRORING);
        assertThat(seen(line)).isEqualTo(judged);
    }

    /** By hand: ICU does not shape the letters of Persian. */
    @Test
    void lettersOfPersianAreJoinedAsWell() {
        assertThat(seen("گل")).isEqualTo("\uFEDE\uFB94");
        assertThat(seen("پرویز")).isEqualTo("\uFEB0\uFBFE\uFEED\uFEAE\uFB58");
    }

    @Test
    void whatHasNoWidthIsNotPrinted() {
        assertThat(seen("a\u200Db\u200F\u202Ec\uFE0F")).doesNotContain("\u200D", "\u200F", "\u202E", "\uFE0F");
        assertThat(seen("one\ttwo\nthree")).isEqualTo("one two three");
    }

    @Test
    void lettersThatTheFirstFaceLacksComeFromTheOther() {
        assertThat(Lettering.runs("Dana דנה", true))
                .extracting(Lettering.Run::face)
                .contains(Face.BOLD);
        assertThat(Lettering.runs("سلمى", false))
                .extracting(Lettering.Run::face)
                .containsOnly(Face.MORE_REGULAR);
        assertThat(Lettering.isLacking('山')).isTrue();
        assertThat(Lettering.isLacking('é')).isFalse();
    }

    @Test
    void aTextIsCutWhereItFits() {
        String text = "Wrenfordshire ".repeat(400);
        for (double width : List.of(10.0, 60.0, 333.0)) {
            String cut = Lettering.fitted(text, 12, true, width);
            assertThat(cut).endsWith("…");
            assertThat(Lettering.widthPx(cut, 12, true))
                    .isLessThanOrEqualTo(Math.max(width, Lettering.widthPx("…", 12, true)));
            assertThat(Lettering.widthPx(text.substring(0, cut.length() + 2) + "…", 12, true))
                    .isGreaterThan(width);
        }
        assertThat(Lettering.fitted("loop", 12, false, 100)).isEqualTo("loop");
    }
}
