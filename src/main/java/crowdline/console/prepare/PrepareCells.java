package crowdline.console.prepare;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextBlock;
import crowdline.console.prepare.PrepareView.ActView;
import crowdline.console.prepare.PrepareView.FindingView;
import crowdline.console.prepare.PrepareView.RemarkView;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.show.catalogue.CatalogueEntry;
import java.awt.Color;
import java.util.List;

/** How the lists of the Prepare place paint their cells. */
final class PrepareCells {
    private PrepareCells() {}

    static CellPainter<ActView> acts(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                isLarge(appearance) ? 73 : 86,
                a -> a.slot() + ", " + a.title() + ", " + a.performer(),
                PrepareCells::act);
    }

    static CellPainter<FindingView> findings(Appearance appearance) {
        return new CellPainter<>(
                appearance, 90, f -> f.mark().word() + ", " + f.where() + ": " + f.message(), PrepareCells::finding);
    }

    static CellPainter<RemarkView> remarks(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                86,
                r -> r.kind() + ": " + r.text() + " " + r.verdict().word(),
                PrepareCells::remark);
    }

    static CellPainter<ListView.Row> read(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                66,
                r -> r.mark().word() + ": " + r.figure() + ", "
                        + appearance.measures().told(r.told()) + ", " + r.assumed() + ", written "
                        + r.text() + numbered(r.choices()),
                PrepareCells::read);
    }

    static CellPainter<CatalogueEntry> found(Appearance appearance) {
        return new CellPainter<>(
                appearance, 48, e -> e.name() + ", " + e.family() + ". " + e.lookFor(), PrepareCells::found);
    }

    private static void found(Pen pen, CatalogueEntry entry, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * 0.08);
        Box top = inner.top(inner.h() * 0.52);
        pen.midway(pen.line(entry.name(), TextRole.BODY, true, top.left(inner.w() * 0.7)), top, text);
        Box family = top.right(inner.w() * 0.28);
        pen.atRight(pen.line(entry.family(), TextRole.LABEL, false, family), family, soft);
        Box bottom = inner.bottom(inner.h() * 0.42);
        pen.midway(pen.line(entry.lookFor(), TextRole.LABEL, false, bottom), bottom, soft);
    }

    private static String numbered(List<String> choices) {
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < choices.size(); i++) {
            words.append("   ").append(i + 1).append(" ").append(choices.get(i));
        }
        return words.toString();
    }

    private static void read(Pen pen, ListView.Row row, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Color soft = chosen ? pen.palette().onChosen() : pen.palette().soft();
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * 0.08);
        Box top = inner.top(inner.h() * 0.5);
        Box verdict = top.right(inner.w() * 0.3);
        if (chosen) {
            pen.markOnChosen(row.mark(), TextRole.LABEL, verdict);
        } else {
            pen.mark(row.mark(), TextRole.LABEL, verdict);
        }
        String told = pen.appearance().measures().told(row.told());
        String said = told.isEmpty() ? row.figure() : row.figure() + ", " + told;
        Box name = top.left(inner.w() * 0.68);
        pen.midway(pen.line(said, TextRole.BODY, true, name), name, text);
        Box bottom = inner.bottom(inner.h() * 0.44);
        String more = row.choices().isEmpty()
                ? row.assumed()
                : numbered(row.choices()).strip();
        Box left = bottom.left(inner.w() * 0.48);
        pen.midway(pen.line("“" + row.text() + "”", TextRole.LABEL, false, left), left, soft);
        Box right = bottom.right(inner.w() * 0.5);
        pen.atRight(
                pen.line(more, TextRole.LABEL, !row.choices().isEmpty(), right),
                right,
                row.choices().isEmpty() ? soft : text);
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
        pen.midway(pen.line(act.performer() + ", " + act.airframe(), TextRole.LABEL, false, bottom), bottom, soft);
    }

    /** Whether words are so large that what is one line otherwise takes two. */
    private static boolean isLarge(Appearance appearance) {
        return appearance.zoom().percent() > 140;
    }

    private static void finding(Pen pen, FindingView finding, Box box, boolean chosen) {
        Box inner = box.inset(box.h() * 0.15, box.h() * 0.08);
        Box top = inner.top(inner.h() * 0.32);
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
        Box words = inner.belowTop(inner.h() * 0.34);
        pen.atTop(pen.lines(finding.message(), TextRole.BODY, false, words, 3), words, text);
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
