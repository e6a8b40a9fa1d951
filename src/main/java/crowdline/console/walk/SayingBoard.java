package crowdline.console.walk;

import crowdline.console.paint.Box;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.walk.WalkView.Saying;
import crowdline.console.walk.WalkView.ScoreLine;
import crowdline.console.walk.WalkView.Words;
import java.awt.Color;
import java.util.List;
import java.util.stream.Collectors;

/** Paints what is said, large enough for two to read, or how a practice run went. */
final class SayingBoard extends Painted<Saying> {
    private static final double LEAST_REMARK_PX = 20;

    SayingBoard(Appearance appearance) {
        super("What is said", appearance);
    }

    @Override
    protected String spoken(Saying v) {
        if (!v.score().isEmpty()) {
            return v.score().stream().map(SayingBoard::words).collect(Collectors.joining(". "));
        }
        Words now = v.now();
        String note = v.note().isEmpty() ? "" : " Note: " + v.note();
        return (now == null ? v.silence() : now.kind() + ". " + now.text()) + note;
    }

    private static String words(ScoreLine line) {
        Mark mark = line.mark();
        return mark == null ? line.text() : mark.word();
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected void paint(Pen pen, Saying v, Box box) {
        Words now = v.now();
        pen.fill(
                box.left(pen.px(6)),
                now != null ? pen.palette().accent() : pen.palette().sunk());
        Box inner = box.inset(pen.px(18), pen.px(10)).rightOf(pen.px(6));
        if (!v.score().isEmpty()) {
            score(pen, v.score(), inner);
            return;
        }
        double noteHeight = v.note().isEmpty() ? 0 : inner.h() * 0.18;
        if (noteHeight > 0) {
            note(pen, v.note(), inner.bottom(noteHeight));
        }
        Box rest = inner.aboveBottom(inner.h() * 0.18 + pen.px(6));
        double nextHeight = rest.h() * 0.3;
        Words next = v.next();
        if (next != null) {
            next(pen, next, rest.bottom(nextHeight));
        }
        Box main = rest.aboveBottom(nextHeight + pen.px(8));
        if (now == null) {
            pen.midway(
                    pen.lines(v.silence(), TextRole.LOOK, false, main, 3),
                    main,
                    pen.palette().soft());
        } else {
            now(pen, now, main);
        }
    }

    private static void now(Pen pen, Words now, Box box) {
        double captionHeight = Math.min(pen.sizePx(TextRole.VALUE) * 1.3, box.h() * 0.16);
        Box caption = box.top(captionHeight);
        TextBlock kind = pen.line(now.kind(), TextRole.VALUE, true, caption.left(box.w() * 0.4));
        pen.midway(kind, caption, pen.palette().accent());
        Box when = caption.rightOf(kind.widthPx() + pen.px(16));
        pen.midway(
                pen.line(now.when(), TextRole.VALUE, false, when),
                when,
                now.open() ? pen.palette().caution() : pen.palette().soft());
        double thick = pen.px(10);
        Box bar = box.bottom(thick);
        pen.bar(bar, now.share(), pen.palette().accent(), pen.palette().sunk());
        Box text = box.belowTop(captionHeight).aboveBottom(thick + pen.px(8));
        pen.midway(
                pen.block(
                        List.of(now.text()),
                        pen.plain(),
                        pen.sizePx(TextRole.REMARK),
                        pen.px(LEAST_REMARK_PX),
                        text,
                        12),
                text,
                pen.palette().text());
    }

    private static void next(Pen pen, Words next, Box box) {
        pen.fill(box.top(pen.px(1)), pen.palette().rule());
        double captionHeight = Math.min(pen.sizePx(TextRole.SMALL) * 1.3, box.h() * 0.3);
        Box caption = box.belowTop(pen.px(4)).top(captionHeight);
        pen.midway(
                pen.line("Next, " + lower(next.kind()) + ", " + next.when(), TextRole.SMALL, false, caption),
                caption,
                pen.palette().soft());
        Box text = box.belowTop(captionHeight + pen.px(6));
        pen.atTop(
                pen.lines(next.text(), TextRole.READ, false, text, 5),
                text,
                pen.palette().text());
    }

    private static String lower(String word) {
        return word.isEmpty() ? word : Character.toLowerCase(word.charAt(0)) + word.substring(1);
    }

    private static void note(Pen pen, String note, Box box) {
        pen.fill(box.top(pen.px(1)), pen.palette().rule());
        Box label = box.belowTop(pen.px(4)).left(pen.sizePx(TextRole.SMALL) * 3);
        pen.atTop(
                pen.line("Note", TextRole.SMALL, true, label),
                label,
                pen.palette().caution());
        Box text = box.belowTop(pen.px(4)).rightOf(label.w());
        pen.atTop(
                pen.lines(note, TextRole.SMALL, false, text, 5),
                text,
                pen.palette().text());
    }

    private static void score(Pen pen, List<ScoreLine> lines, Box box) {
        double each = Math.min(pen.sizePx(TextRole.VALUE) * 1.7, box.h() / lines.size());
        double markPx = pen.sizePx(TextRole.VALUE);
        double detailPx = pen.sizePx(TextRole.SMALL);
        Box first = box.top(each);
        Box detail = first.rightOf(pen.px(26));
        // One size for every row, the largest at which the longest fits.
        for (ScoreLine line : lines) {
            Mark mark = line.mark();
            if (mark == null) {
                detailPx = Math.min(
                        detailPx,
                        pen.line(line.text(), TextRole.SMALL, false, detail).sizePx());
            } else {
                double most = Math.min(
                        pen.sizePx(TextRole.VALUE),
                        pen.line(mark.word(), TextRole.VALUE, true, first).sizePx());
                markPx = Math.min(markPx, most * Math.min(1, first.w() / pen.widthPx(mark, most)));
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            ScoreLine line = lines.get(i);
            Box row = box.belowTop(i * each).top(each);
            Mark mark = line.mark();
            if (mark != null) {
                pen.mark(mark, markPx, row);
            } else {
                Box text = row.rightOf(pen.px(26));
                pen.midway(
                        pen.at(line.text(), false, detailPx, text, 1),
                        text,
                        pen.palette().text());
            }
        }
    }
}
