package crowdline.console.prepare.figure;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.prepare.glance.PrepareView.RemarkView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.show.catalogue.CatalogueEntry;
import java.awt.Color;

/** How the remarks of a figure and the figures of the catalogue are painted. */
final class FigureCells {
    private FigureCells() {}

    static CellPainter<RemarkView> remarks(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                86,
                r -> r.kind() + ": " + r.text() + " " + r.verdict().word(),
                FigureCells::remark);
    }

    static CellPainter<CatalogueEntry> found(Appearance appearance) {
        return new CellPainter<>(
                appearance, 48, e -> e.name() + ", " + e.family() + ". " + e.lookFor(), FigureCells::found);
    }

    private static void found(Pen pen, CatalogueEntry entry, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * 0.08);
        Box top = inner.top(inner.h() * 0.52);
        pen.midway(pen.line(entry.name(), TextRole.BODY, true, top.left(inner.w() * 0.56)), top, text);
        Box family = top.right(inner.w() * 0.42);
        pen.atRight(pen.line(entry.family(), TextRole.LABEL, false, family), family, soft);
        Box bottom = inner.bottom(inner.h() * 0.42);
        pen.midway(pen.line(entry.lookFor(), TextRole.LABEL, false, bottom), bottom, soft);
    }

    private static void remark(Pen pen, RemarkView remark, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(box.h() * 0.14, box.h() * 0.09);
        Box top = inner.top(inner.h() * 0.27);
        TextBlock kind = pen.line(remark.kind(), TextRole.LABEL, false, top.left(inner.w() * 0.28));
        pen.midway(kind, top, soft);
        Box verdict = top.right(inner.w() * 0.7);
        if (chosen) {
            pen.markOnChosen(remark.verdict(), TextRole.LABEL, verdict);
        } else {
            pen.mark(remark.verdict(), TextRole.LABEL, verdict);
        }
        double barsHeight = inner.h() * 0.2;
        Box words = inner.belowTop(inner.h() * 0.29).aboveBottom(barsHeight);
        pen.atTop(pen.lines(remark.text(), TextRole.BODY, false, words, 2), words, text);
        Box bars = inner.bottom(barsHeight);
        double scaleS = Math.max(1, Math.max(remark.thereIsS(), remark.takesAtMostS()));
        double thick = bars.h() * 0.28;
        if (remark.thereIsS() > 0) {
            pen.fill(
                    new Box(bars.x(), bars.y() + bars.h() * 0.2, bars.w() * remark.thereIsS() / scaleS, thick),
                    chosen ? text : pen.palette().accent());
        }
        double y = bars.y() + bars.h() * 0.66;
        pen.fill(new Box(bars.x(), y, bars.w() * remark.takesS() / scaleS, thick), text);
        pen.fill(new Box(bars.x(), y + thick * 0.35, bars.w() * remark.takesAtMostS() / scaleS, thick * 0.3), text);
    }
}
