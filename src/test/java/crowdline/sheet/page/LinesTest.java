package crowdline.sheet.page;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.sheet.ink.Lettering;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LinesTest {
    private static final Style STYLE = new Style(14, false, 0);

    @Test
    void noLineIsWiderThanItsColumnAndNoLetterIsLost() {
        String[] pieces = {"loop", "a", "Zoë", "דנה", "سلمى", "Wrenfordshire".repeat(20), "—", "12.5", "👩‍✈️", "é"};
        Random chance = new Random(7);
        for (int round = 0; round < 60; round++) {
            StringBuilder text = new StringBuilder();
            int words = chance.nextInt(40);
            for (int i = 0; i < words; i++) {
                text.append(pieces[chance.nextInt(pieces.length)]).append(chance.nextInt(9) == 0 ? "\n" : " ");
            }
            double width = 40 + chance.nextInt(400);
            List<String> lines = Lines.of(text.toString(), STYLE, width);
            assertThat(lines)
                    .allSatisfy(l -> assertThat(Lettering.widthPx(l, 14, false)).isLessThanOrEqualTo(width + 0.01));
            assertThat(String.join("", lines).replaceAll("\\s", ""))
                    .isEqualTo(text.toString().replaceAll("\\s", ""));
        }
    }

    @Test
    void linesAreAsFullAsTheyCanBe() {
        List<String> lines = Lines.of("one two three four five six seven eight nine ten", STYLE, 100);
        for (int i = 1; i < lines.size(); i++) {
            String longer = lines.get(i - 1) + " " + lines.get(i).split(" ", -1)[0];
            assertThat(Lettering.widthPx(longer, 14, false)).isGreaterThan(100);
        }
    }

    @Test
    void aTextWithoutWordsIsOneEmptyLine() {
        assertThat(Lines.of("", STYLE, 100)).containsExactly("");
    }
}
