package crowdline.sheet.page;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.sheet.ink.Lettering;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
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
            assertThat(String.join("", lines).replaceAll("[\\s\u200f]", ""))
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

    /** "The aircraft is called Calder two hundred, and flies now." in Hebrew; the name in Latin letters begins a line. */
    @Test
    void aLineGoesTheWayOfItsParagraph() {
        String text =
                "\u05d4\u05de\u05d8\u05d5\u05e1 \u05e0\u05e7\u05e8\u05d0 Calder \u05d5\u05d8\u05e1 \u05e2\u05db\u05e9\u05d9\u05d5.";
        double width = Lettering.widthPx("\u05d4\u05de\u05d8\u05d5\u05e1 \u05e0\u05e7\u05e8\u05d0", 14, false) + 2;
        List<String> lines = Lines.of(text, STYLE, width);
        String second = lines.get(1);
        assertThat(second).contains("Calder");
        String seen =
                Lettering.runs(second, false).stream().map(Lettering.Run::text).collect(Collectors.joining());
        assertThat(seen).as("what is read first stands at the right").endsWith("Calder");
    }
}
