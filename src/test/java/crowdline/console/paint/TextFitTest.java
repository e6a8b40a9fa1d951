package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class TextFitTest {
    private static final Font FONT = new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    private final TextFit fit = new TextFit();

    private TextBlock fit(List<String> breaths, double most, double least, double w, double h, int lines) {
        return fit.fit(new TextFit.Wish(breaths, FONT, most, least, w, h, lines));
    }

    @Test
    void shortWordsAreSetAtTheLargestSize() {
        assertThat(fit(List.of("Loop"), 100, 20, 1000, 200, 1).sizePx()).isEqualTo(100);
    }

    @Test
    void typeHasSizesInQuartersOfAPixelAndNoneIsLargerThanWished() {
        for (double mostPx = 20; mostPx < 22; mostPx += 0.07) {
            double sizePx = fit(List.of("Loop"), mostPx, 10, 1000, 200, 1).sizePx();
            assertThat(sizePx).isLessThanOrEqualTo(mostPx).isGreaterThan(mostPx - 0.25);
            assertThat(sizePx * 4).isEqualTo(Math.rint(sizePx * 4));
        }
    }

    @Test
    void everyWordIsMeasuredOnceAndALineIsAsWideAsIfItWereMeasured() {
        List<String> measured = new ArrayList<>();
        TextFit counting = new TextFit((font, text) -> {
            measured.add(text);
            return TextFit.widthPx(font, text);
        });
        String words = "Look to the left: here he comes, low and fast, AV To Ty, 1,250 miles… and away";
        TextBlock block = counting.fit(new TextFit.Wish(List.of(words), FONT, 20, 20, 200, 1000, 20));
        assertThat(block.lines()).hasSizeGreaterThan(3);
        assertThat(measured).hasSize(1 + words.split(" ", -1).length);
        for (TextBlock.Line line : block.lines()) {
            assertThat(line.widthPx()).isCloseTo(TextFit.widthPx(block.font(), line.text()), within(0.01));
        }
    }

    @Test
    void aNumberStaysWithItsUnitAndItsLettersAreCounted() {
        double widthPx = TextFit.widthPx(FONT.deriveFont(20f), "Nothing to say for 17");
        TextBlock block = fit(List.of("Nothing to say for 17 s, then Ready 4 Sail"), 20, 20, widthPx + 1, 400, 9);
        assertThat(block.lines().get(0).text()).isEqualTo("Nothing to say for");
        assertThat(block.lines().get(1).text()).startsWith("17 s, then");
        assertThat(block.lines().get(1).from()).isEqualTo(TextBlock.letters("Nothing to say for"));

        TextBlock name =
                fit(List.of("Ready 4 Sail"), 20, 20, TextFit.widthPx(FONT.deriveFont(20f), "Ready 4 S"), 99, 2);
        assertThat(name.lines().get(0).text()).isEqualTo("Ready 4");
    }

    @Test
    void longWordsShrinkUntilTheyFit() {
        TextBlock block = fit(List.of("Reverse half Cuban"), 100, 10, 300, 200, 1);
        assertThat(block.whole()).isTrue();
        assertThat(block.widthPx()).isLessThanOrEqualTo(300);
        assertThat(block.sizePx()).isLessThan(100);
    }

    @Test
    void wordsThatFitAtNoSizeEndInAnEllipsis() {
        TextBlock block =
                fit(List.of("a very long sentence that cannot fit into so small a place"), 40, 20, 120, 50, 2);
        assertThat(block.whole()).isFalse();
        assertThat(block.widthPx()).isLessThanOrEqualTo(120);
        assertThat(block.lines().get(block.lines().size() - 1).text()).endsWith("…");
    }

    @Test
    void aLongWordBeginsOnALineThatWouldBeMostlyEmpty() {
        TextBlock block = fit(List.of("Die Donaudampfschifffahrtsstaffel"), 20, 20, 160, 30, 1);
        assertThat(block.lines().get(0).text()).matches("Die Donau.*…");
        assertThat(block.widthPx()).isBetween(120.0, 160.0);
        assertThat(fit(List.of("a very long sentence that goes on"), 20, 20, 140, 30, 1)
                        .lines()
                        .get(0)
                        .text())
                .as("otherwise words stay whole")
                .isEqualTo("a very long…");
    }

    @Test
    void everyBreathBeginsALine() {
        TextBlock block = fit(List.of("one two", "three"), 20, 20, 1000, 200, 9);
        assertThat(block.lines()).extracting(TextBlock.Line::text).containsExactly("one two", "three");
    }

    @Test
    void markUpIsText() {
        assertThat(fit(List.of("<html><b>x"), 20, 20, 1000, 200, 1)
                        .lines()
                        .get(0)
                        .text())
                .isEqualTo("<html><b>x");
    }

    @Test
    void lettersBeforeALineAreCounted() {
        TextBlock block = fit(List.of("one two", "three"), 20, 20, 1000, 200, 9);
        assertThat(block.lines().get(1).from()).isEqualTo("onetwo".length());
    }

    @Test
    void aNameOfAHundredThousandLettersIsCutBeforeItIsMeasured() {
        for (String endless : List.of("x".repeat(100_000), "ab ".repeat(33_334), "\ud83d\udee9".repeat(50_000))) {
            AtomicInteger longest = new AtomicInteger();
            AtomicInteger measured = new AtomicInteger();
            TextFit counting = new TextFit((font, text) -> {
                longest.accumulateAndGet(text.length(), Math::max);
                measured.addAndGet(text.length());
                return TextFit.widthPx(font, text);
            });
            TextBlock block = counting.fit(new TextFit.Wish(List.of(endless), FONT, 100, 26, 800, 130, 2));
            assertThat(longest.get()).isLessThan(600);
            assertThat(measured.get()).isLessThan(100_000);
            assertThat(block.whole()).isFalse();
            assertThat(block.widthPx()).isLessThanOrEqualTo(800);
            String last = block.lines().get(block.lines().size() - 1).text();
            assertThat(last).endsWith("…");
            assertThat(Character.isHighSurrogate(last.charAt(last.length() - 2)))
                    .isFalse();
        }
    }

    @Test
    void nothingIsCutForWhichThereIsRoom() {
        String narrow = "i".repeat(250);
        TextBlock block = fit(List.of(narrow), 20, 12, 1200, 20, 1);
        assertThat(block.lines().get(0).text()).isEqualTo(narrow);
        assertThat(block.whole()).isTrue();
    }

    @Test
    void inTheLargestPlaceNoMoreThanAThousandLettersAreMeasuredAtOnce() {
        AtomicInteger longest = new AtomicInteger();
        TextFit counting = new TextFit((font, text) -> {
            longest.accumulateAndGet(text.length(), Math::max);
            return TextFit.widthPx(font, text);
        });
        counting.fit(new TextFit.Wish(List.of("x".repeat(100_000)), FONT, 12, 12, 100_000, 1000, 12));
        assertThat(longest.get()).isLessThan(1100);
    }
}
