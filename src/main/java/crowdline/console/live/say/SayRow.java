package crowdline.console.live.say;

import crowdline.console.live.row.LiveRow;
import crowdline.console.live.row.Settled;
import crowdline.console.live.say.SayView.Bars;
import crowdline.console.live.say.SayView.What;
import crowdline.console.paint.Box;
import crowdline.console.paint.Digits;
import crowdline.console.paint.Growth;
import crowdline.console.paint.Growth.Item;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import java.awt.Color;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Paints what to say. Words to say now stand at full strength on the calmest surface, behind a solid bar, with the time
 * there is and the time it takes under them; words that wait are smaller and fainter in a hollow card, under a large
 * word of when.
 */
public final class SayRow extends LiveRow<SayView> {
    private static final double BAR_PX = 14;
    private static final double LEAST_WORDS_PX = 18;
    private static final double LEAST_CAPTION_PX = 20;
    /** Below this the breaths are given up for larger words. */
    private static final double LEAST_IN_BREATHS_PX = 34;
    /** Above it they are given up only for words this much larger. */
    private static final double WORTH = 1.15;
    /** Words that wait are this large against the same words now. */
    private static final double WAITING = 0.68;

    private static final int MOST_LINES = 12;

    private static final int WORDS = 0;
    private static final int SECONDS = 1;
    private static final int CAPTION = 2;

    private final transient Settled settled = new Settled();

    public SayRow(Appearance appearance) {
        super("Say now", appearance);
    }

    @Override
    protected String spoken(SayView v) {
        Mark verdict = v.verdict();
        return v.caption() + ". " + v.kind() + ". " + String.join(" ", v.breaths()) + " "
                + (verdict == null ? "" : verdict.word());
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected void paint(Pen pen, SayView v, Box box) {
        Box row = within(box);
        if (v.what() == What.WAITING) {
            pen.fill(box, pen.palette().ground());
        }
        pen.fill(box.top(pen.px(1)), pen.palette().rule());
        pen.fill(box.bottom(pen.px(1)), pen.palette().rule());
        if (v.what() == What.WAITING) {
            pen.hollow(
                    row.inset(pen.px(12), pen.px(5)), pen.px(2), pen.palette().soft());
        } else {
            pen.fill(
                    box.left(pen.px(BAR_PX)),
                    v.what() == What.WORDS
                            ? pen.palette().accent()
                            : pen.palette().sunk());
        }
        Box inner = row.inset(pen.px(28), pen.px(8));
        double[] sizes = sizes(pen, v, inner);
        double captionHeight = captionHeight(pen, sizes[CAPTION]);
        SayCaption.paint(pen, v, sizes[CAPTION], inner.top(captionHeight));
        double barsHeight = barsHeight(pen, v, sizes[SECONDS]);
        words(pen, v, sizes[WORDS], inner.belowTop(captionHeight).aboveBottom(barsHeight));
        Bars bars = v.bars();
        if (bars != null) {
            SayBars.paint(pen, v, bars, sizes[SECONDS], inner.bottom(barsHeight));
        }
    }

    /** What the sizes depend on; the digits of a countdown change nothing. */
    private record Texts(
            What what,
            List<String> breaths,
            String caption,
            String kind,
            @Nullable String verdict,
            boolean bars,
            Box box) {}

    private double[] sizes(Pen pen, SayView v, Box box) {
        Mark verdict = v.verdict();
        Texts texts = new Texts(
                v.what(),
                v.breaths(),
                Digits.still(v.caption()),
                v.kind(),
                verdict == null ? null : Digits.still(verdict.word()),
                v.bars() != null,
                box);
        double caption = pen.designedPx(v.what() == What.WAITING ? TextRole.NEXT : TextRole.VALUE);
        return settled.sizes(
                texts,
                pen,
                () -> Growth.sizes(
                        List.of(
                                Item.stays(pen.px(LEAST_WORDS_PX), mostWordsPx(pen, v)),
                                Item.stays(pen.px(LEAST_CAPTION_PX), pen.designedPx(TextRole.VALUE)),
                                Item.stays(pen.px(LEAST_CAPTION_PX), caption)),
                        sizes -> holds(pen, v, box, sizes),
                        pen.appearance().zoom()));
    }

    private static double mostWordsPx(Pen pen, SayView v) {
        return switch (v.what()) {
            case LISTEN -> pen.designedPx(TextRole.FIGURE) * 0.75;
            case WAITING -> pen.designedPx(TextRole.REMARK) * WAITING;
            case WORDS, NOTHING -> pen.designedPx(TextRole.REMARK);
        };
    }

    private static boolean holds(Pen pen, SayView v, Box box, double[] sizes) {
        double words = captionHeight(pen, sizes[CAPTION]) + barsHeight(pen, v, sizes[SECONDS]);
        return wordsFit(pen, v, sizes[WORDS], box.aboveBottom(words))
                && (sizes[CAPTION] <= pen.px(LEAST_CAPTION_PX) || SayCaption.widthPx(pen, v, sizes[CAPTION]) <= box.w())
                && (sizes[SECONDS] <= pen.px(LEAST_CAPTION_PX)
                        || SayBars.widthPx(pen, v, sizes[SECONDS]) <= box.w() * 0.4);
    }

    private static double captionHeight(Pen pen, double sizePx) {
        return pen.lineHeightPx(true, sizePx) * 1.16;
    }

    private static double barsHeight(Pen pen, SayView v, double sizePx) {
        return v.bars() == null ? 0 : SayBars.heightPx(pen, v.what(), sizePx);
    }

    /** Broken at the breaths where they have room, else as one. */
    private static TextBlock laid(Pen pen, SayView v, double sizePx, Box box) {
        TextBlock inBreaths = pen.at(v.breaths(), strong(v), sizePx, box, MOST_LINES);
        return inBreaths.whole() ? inBreaths : asOne(pen, v, sizePx, box);
    }

    private static TextBlock asOne(Pen pen, SayView v, double sizePx, Box box) {
        return pen.at(String.join(" ", v.breaths()), strong(v), sizePx, box, MOST_LINES);
    }

    /** Whether the words fit at a size; the breaths are given up only for words so much larger, or where they must. */
    private static boolean wordsFit(Pen pen, SayView v, double sizePx, Box box) {
        if (sizePx <= pen.px(LEAST_WORDS_PX)
                || pen.at(v.breaths(), strong(v), sizePx, box, MOST_LINES).whole()) {
            return true;
        }
        double inBreathsPx = pen.block(
                        v.breaths(),
                        strong(v) ? pen.strong() : pen.plain(),
                        sizePx,
                        pen.px(LEAST_WORDS_PX),
                        box,
                        MOST_LINES)
                .sizePx();
        boolean must = inBreathsPx < pen.px(LEAST_IN_BREATHS_PX) || sizePx <= pen.px(LEAST_IN_BREATHS_PX);
        return (must || sizePx >= WORTH * inBreathsPx)
                && asOne(pen, v, sizePx, box).whole();
    }

    private static boolean strong(SayView v) {
        return v.what() == What.WORDS || v.what() == What.LISTEN;
    }

    private static void words(Pen pen, SayView v, double sizePx, Box box) {
        if (v.breaths().isEmpty()) {
            return;
        }
        TextBlock block = laid(pen, v, sizePx, box);
        double y = box.y() + (box.h() - block.heightPx()) * 0.45;
        block.draw(
                pen.surface(),
                box.x(),
                y,
                strong(v) ? pen.palette().text() : pen.palette().soft(),
                pen.palette().past(),
                lettersSaid(v));
    }

    /** Letters said, back to the last whole word, so that no word is ever half dimmed. */
    private static int lettersSaid(SayView v) {
        String[] words = String.join(" ", v.breaths()).split(" ", -1);
        double said = v.saidShare()
                * Arrays.stream(words).mapToInt(TextBlock::letters).sum();
        int whole = 0;
        for (String word : words) {
            if (whole + TextBlock.letters(word) > said) {
                break;
            }
            whole += TextBlock.letters(word);
        }
        return whole;
    }

    /** True if the words find no room. */
    static boolean isAlarm(SayView v) {
        Mark verdict = v.verdict();
        return verdict != null && verdict.tone() == Tone.ALARM;
    }
}
