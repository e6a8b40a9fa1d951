package crowdline.console.live.next;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.live.next.NextView.FactView;
import crowdline.console.live.next.NextView.Wording;
import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.paint.TextFit;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Themes;
import crowdline.console.theme.Zoom;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FactPainterTest {
    /** The room for the words of one fact in a window of 1280 by 800. */
    private static final Box ROOM = new Box(0, 0, 330, 42);

    private static final FactView SHORT =
            new FactView(1, new Wording("Rosa learned to fly first.", "2 s"), new Wording("Rosa flew first.", "1 s"));
    private static final FactView LONG = new FactView(
            2,
            new Wording(
                    "At the bottom of the loop she weighs four and a half times as much as on the ground, and a second"
                            + " later, at the top, next to nothing.",
                    "9 s"),
            new Wording("At the bottom she weighs four and a half times as much.", "4 s"));
    private static final FactView ENDLESS = new FactView(
            3,
            new Wording("and on ".repeat(60).strip(), "60 s"),
            new Wording("and on ".repeat(40).strip(), "40 s"));

    private static Pen pen(int zoom) {
        return new Pen(
                new BufferedImage(10, 10, BufferedImage.TYPE_INT_RGB).createGraphics(),
                new Appearance(Themes.DAY, new Zoom(zoom)),
                1,
                new TextFit());
    }

    @ParameterizedTest
    @ValueSource(ints = {100, 150, 200})
    void everyFactHasTheSameSizeWhichCanBeRead(int zoom) {
        Pen pen = pen(zoom);
        double sizePx = FactPainter.sizePx(pen, List.of(SHORT, LONG, ENDLESS), ROOM);
        assertThat(sizePx).isGreaterThanOrEqualTo(15);
        for (FactView fact : List.of(SHORT, LONG, ENDLESS)) {
            TextBlock block = FactPainter.words(pen, fact, sizePx, ROOM, 2);
            assertThat(block.sizePx()).isEqualTo(sizePx);
            assertThat(block.lines()).hasSizeLessThanOrEqualTo(2);
            assertThat(block.widthPx()).isLessThanOrEqualTo(ROOM.w());
            assertThat(block.heightPx()).isLessThanOrEqualTo(ROOM.h() + 0.5);
        }
    }

    private static String words(FactView fact) {
        Pen pen = pen(100);
        TextBlock block = FactPainter.words(pen, fact, FactPainter.sizePx(pen, List.of(fact), ROOM), ROOM, 2);
        return String.join(" ", block.lines().stream().map(TextBlock.Line::text).toList());
    }

    @Test
    void aFactThatHasRoomIsShownWhole() {
        assertThat(words(SHORT)).isEqualTo(SHORT.full().text());
    }

    @Test
    void aFactTooLongForTwoLinesGivesItsShortForm() {
        assertThat(words(LONG)).isEqualTo(LONG.shorter().text());
    }

    @Test
    void whatIsTooLongEvenThenEndsInAnEllipsis() {
        assertThat(words(ENDLESS)).startsWith("and on and on").endsWith("…");
    }

    @Test
    void theSecondsAreThoseOfTheWordsShown() {
        Pen pen = pen(100);
        assertThat(FactPainter.shown(pen, SHORT, 18, ROOM, 2).takes()).isEqualTo("2 s");
        assertThat(FactPainter.shown(pen, LONG, 18, ROOM, 2).takes()).isEqualTo("4 s");
    }
}
