package crowdline.console.prepare.act;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.prepare.glance.PrepareView.ActView;
import crowdline.console.prepare.glance.PrepareView.FindingView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.Color;

/** How the acts of a show and the findings of its check are painted. */
final class ActCells {
    /** Four lines of words under what kind of finding it is. */
    private static final int FINDING_PX = 108;

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
                FINDING_PX,
                f -> f.mark().word() + ", " + f.where() + ": " + f.message(),
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

    private static void finding(Pen pen, FindingView finding, Box box, boolean chosen) {
        Box inner = box.inset(box.h() * 0.12, box.h() * 0.06);
        Box top = inner.top(inner.h() * 0.26);
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        if (chosen) {
            pen.markOnChosen(finding.mark(), TextRole.BODY, top.left(inner.w() * 0.6));
        } else {
            pen.mark(finding.mark(), TextRole.BODY, top.left(inner.w() * 0.6));
        }
        Box where = top.right(inner.w() * 0.38);
        pen.atRight(
                pen.line(finding.where(), TextRole.LABEL, false, where),
                where,
                chosen ? text : pen.palette().soft());
        Box words = inner.belowTop(inner.h() * 0.27);
        pen.atTop(pen.lines(finding.message(), TextRole.BODY, false, words, 4), words, text);
    }
}
