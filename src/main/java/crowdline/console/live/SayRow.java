package crowdline.console.live;

import crowdline.console.live.SayView.Bars;
import crowdline.console.live.SayView.What;
import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.theme.Tone;
import java.awt.Color;
import java.util.List;

/** Paints what to say now on the calmest surface, with the time there is and the time it takes under it. */
final class SayRow extends Painted<SayView> {

    /** The column at the right for the verdict and the seconds, wide enough for the longest of them. */
    private static final double WORDS_SHARE = 0.22;

    /** Below this the breaths are given up for larger words, whatever the zoom. */
    private static final double LEAST_IN_BREATHS_PX = 28;

    SayRow(Appearance appearance) {
        super("Say now", appearance);
    }

    @Override
    protected String spoken(SayView v) {
        Mark verdict = v.verdict();
        return v.kind() + ". " + String.join(" ", v.breaths()) + " " + (verdict == null ? "" : verdict.word());
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected void paint(Pen pen, SayView v, Box box) {
        pen.fill(box.top(pen.px(1)), pen.palette().rule());
        pen.fill(box.bottom(pen.px(1)), pen.palette().rule());
        boolean words = v.what() == What.WORDS;
        pen.fill(
                box.left(pen.px(8)),
                words ? pen.palette().accent() : pen.palette().sunk());
        Box inner = box.inset(pen.px(20), pen.px(10)).rightOf(pen.px(8));
        double captionHeight = Math.min(pen.sizePx(TextRole.VALUE) * 1.3, inner.h() * 0.14);
        caption(pen, v, inner.top(captionHeight));
        double barsHeight = Math.min(pen.sizePx(TextRole.VALUE) * 2.5, inner.h() * 0.27);
        Box text = inner.belowTop(captionHeight).aboveBottom(barsHeight).inset(0, pen.px(4));
        words(pen, v, text);
        Bars bars = v.bars();
        if (bars != null) {
            bars(pen, isAlarm(v), bars, inner.bottom(barsHeight));
        }
    }

    private static void caption(Pen pen, SayView v, Box box) {
        double verdictWidth = box.w() * WORDS_SHARE;
        Box left = box.leftOf(verdictWidth);
        TextBlock caption = pen.line(v.caption(), TextRole.VALUE, false, left);
        pen.midway(caption, left, pen.palette().soft());
        Box kind = left.rightOf(caption.widthPx() + pen.px(14));
        pen.midway(
                pen.line(v.kind(), TextRole.VALUE, true, kind),
                kind,
                pen.palette().text());
        Mark verdict = v.verdict();
        if (verdict != null) {
            pen.mark(verdict, TextRole.VALUE, box.right(verdictWidth));
        }
    }

    private static void words(Pen pen, SayView v, Box box) {
        if (v.breaths().isEmpty()) {
            return;
        }
        double most = pen.sizePx(v.what() == What.LISTEN ? TextRole.FIGURE : TextRole.REMARK)
                * (v.what() == What.LISTEN ? 0.75 : 1);
        boolean strong = v.what() != What.NOTHING;
        TextBlock block =
                pen.block(v.breaths(), strong ? pen.strong() : pen.plain(), most, pen.px(LEAST_IN_BREATHS_PX), box, 12);
        if (!block.whole()) {
            block = pen.block(List.of(String.join(" ", v.breaths())), pen.strong(), most, pen.leastPx() * 1.4, box, 12);
        }
        int letters = v.breaths().stream().mapToInt(String::length).sum();
        double y = box.y() + (box.h() - block.heightPx()) * 0.4;
        Color colour =
                v.what() == What.NOTHING ? pen.palette().soft() : pen.palette().text();
        block.draw(pen.surface(), box.x(), y, colour, pen.palette().past(), wholeWords(v, (int)
                Math.floor(v.saidShare() * letters)));
    }

    /** Letters said, back to the last whole word, so that no word is ever half dimmed. */
    private static int wholeWords(SayView v, int letters) {
        int before = 0;
        for (String breath : v.breaths()) {
            if (letters < before + breath.length()) {
                int space = breath.lastIndexOf(' ', letters - before);
                return space < 0 ? before : before + space + 1;
            }
            before += breath.length();
        }
        return before;
    }

    private static boolean isAlarm(SayView v) {
        Mark verdict = v.verdict();
        return verdict != null && verdict.tone() == Tone.ALARM;
    }

    private static void bars(Pen pen, boolean over, Bars bars, Box box) {
        double scaleS = Math.max(1, Math.max(bars.thereIsS(), bars.takesAtMostS()));
        double wordWidth = box.w() * WORDS_SHARE;
        Box upper = box.top(box.h() / 2);
        Box lower = box.bottom(box.h() / 2);
        stretch(
                pen,
                upper,
                wordWidth,
                bars.thereIsS() / scaleS,
                0,
                bars.goneS() / scaleS,
                pen.palette().accent());
        label(pen, bars.thereIs(), upper.right(wordWidth));
        if (bars.takesS() > 0) {
            stretch(
                    pen,
                    lower,
                    wordWidth,
                    bars.takesS() / scaleS,
                    bars.takesAtMostS() / scaleS,
                    bars.goneS() / scaleS,
                    over ? pen.palette().alarm() : pen.palette().text());
            label(pen, bars.takes(), lower.right(wordWidth));
        }
    }

    private static void stretch(
            Pen pen, Box box, double wordWidth, double share, double atMostShare, double goneShare, Color colour) {
        double thick = Math.min(pen.px(16), box.h() * 0.55);
        Box line = box.leftOf(wordWidth + pen.px(16));
        Box bar = new Box(line.x(), line.midY() - thick / 2, line.w(), thick);
        if (atMostShare > share) {
            Box band = bar.left(bar.w() * atMostShare).rightOf(bar.w() * share);
            double thin = thick * 0.34;
            pen.fill(new Box(band.x(), band.midY() - thin / 2, band.w(), thin), colour);
        }
        pen.fill(bar.left(bar.w() * share), colour);
        Box gone = bar.left(bar.w() * Math.min(share, goneShare));
        pen.fill(gone, pen.palette().sunk());
    }

    private static void label(Pen pen, String words, Box box) {
        pen.midway(
                pen.line(words, TextRole.VALUE, true, box), box, pen.palette().text());
    }
}
