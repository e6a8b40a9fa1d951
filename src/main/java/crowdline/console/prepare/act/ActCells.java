package crowdline.console.prepare.act;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FindingView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;

/** How the acts of a show and the findings of its check are painted. */
final class ActCells {
    /** More lines than any finding takes in the narrowest list: what is to be mended is never cut. */
    private static final int FINDING_LINES = 16;

    private static final double BESIDE_PX = 13;
    private static final double OVER_PX = 7;
    private static final double UNDER_HEAD_PX = 3;

    private ActCells() {}

    static CellPainter<ActView> acts(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                isLarge(appearance) ? 73 : 86,
                a -> a.slot() + ", " + a.title() + ", " + a.performer(),
                ActCells::act);
    }

    static CellPainter<FindingView> findings(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                ActCells::findingPx,
                f -> f.mark().word() + (f.where().isEmpty() ? "" : ", " + f.where()) + ": " + f.message(),
                ActCells::finding);
    }

    private static void act(Pen pen, ActView act, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        boolean large = isLarge(pen.appearance());
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * 0.06);
        double line = inner.h() * (large ? 0.23 : 0.21);
        Box top = inner.top(line);
        pen.midway(pen.line(act.slot(), TextRole.LABEL, false, top), top, soft);
        Box bottom = inner.bottom(line);
        Box middle = inner.belowTop(line).aboveBottom(bottom.h());
        pen.midway(pen.lines(act.title(), TextRole.SMALL, true, middle, 2), middle, text);
        String who = act.performer() + ", " + act.airframe();
        if (!who.equals(act.title())) {
            pen.midway(pen.line(who, TextRole.LABEL, false, bottom), bottom, soft);
        }
    }

    /** Whether words are so large that what is one line otherwise takes two. */
    private static boolean isLarge(Appearance appearance) {
        return appearance.zoom().percent() > 140;
    }

    private static double findingPx(Pen pen, FindingView finding, double widthPx) {
        Box inner = new Box(0, 0, widthPx, 1e5).inset(pen.px(BESIDE_PX), 0);
        return findingHeadPx(pen) + message(pen, finding, inner).heightPx() + pen.px(2 * OVER_PX);
    }

    private static double findingHeadPx(Pen pen) {
        return pen.lineHeightPx(true, pen.sizePx(TextRole.BODY)) + pen.px(UNDER_HEAD_PX);
    }

    private static TextBlock message(Pen pen, FindingView finding, Box box) {
        Box endless = new Box(box.x(), box.y(), box.w(), 1e5);
        return pen.at(finding.message(), false, pen.sizePx(TextRole.BODY), endless, FINDING_LINES);
    }

    private static void finding(Pen pen, FindingView finding, Box box, boolean chosen) {
        Box inner = box.inset(pen.px(BESIDE_PX), pen.px(OVER_PX));
        Box top = inner.top(findingHeadPx(pen));
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        double sizePx = pen.sizePx(TextRole.BODY);
        Box mark = top.left(pen.widthPx(finding.mark(), sizePx) + pen.px(BESIDE_PX));
        if (chosen) {
            pen.markOnChosen(finding.mark(), TextRole.BODY, mark);
        } else {
            pen.mark(finding.mark(), TextRole.BODY, mark);
        }
        Box where = top.rightOf(mark.w());
        pen.atRight(
                pen.line(finding.where(), TextRole.LABEL, false, where),
                where,
                chosen ? text : pen.palette().soft());
        pen.atTop(message(pen, finding, inner.belowTop(top.h())), inner.belowTop(top.h()), text);
    }
}
