package crowdline.console.words;

import crowdline.console.paint.Box;
import crowdline.console.paint.CellPainter;
import crowdline.console.paint.Mark;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import crowdline.console.words.FactsView.FactRow;
import crowdline.console.words.WordsView.PlaceView;
import crowdline.console.words.WordsView.RemarkRow;
import crowdline.speech.plain.SpeechFinding;
import java.awt.Color;

/** How the rows of the Words place are painted. */
final class WordsCells {
    /** How much of a row's width says that it is a first draft. */
    private static final double DRAFT_SHARE = 0.2;

    private WordsCells() {}

    static CellPainter<PlaceView> places(Appearance appearance) {
        return new CellPainter<>(appearance, isLarge(appearance) ? 43 : 36, WordsCells::spoken, WordsCells::place);
    }

    static CellPainter<RemarkRow> remarks(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                isLarge(appearance) ? 104 : 78,
                r -> (r.draft() == null ? "" : "Draft. ") + r.kind() + ": " + r.text() + " "
                        + r.verdict().word(),
                WordsCells::remark);
    }

    static CellPainter<SpeechFinding> findings(Appearance appearance) {
        return new CellPainter<>(appearance, 62, WordsCells::spoken, WordsCells::finding);
    }

    static CellPainter<FactRow> facts(Appearance appearance) {
        return new CellPainter<>(
                appearance,
                110,
                f -> f.text() + " " + f.number() + ". " + f.mark().word(),
                WordsCells::fact);
    }

    private static String spoken(PlaceView place) {
        return (place.number().isEmpty() ? "" : place.number() + ", ") + place.name() + ", " + place.remarks()
                + (place.remarks() == 1 ? " remark" : " remarks");
    }

    private static String spoken(SpeechFinding finding) {
        return finding.message() + plainWords(finding);
    }

    private static String plainWords(SpeechFinding finding) {
        return finding.suggestion() == null ? "" : " Ctrl+. puts in: " + finding.suggestion() + ".";
    }

    private static void place(Pen pen, PlaceView place, Box box, boolean chosen) {
        boolean large = isLarge(pen.appearance());
        Box inner = box.inset(pen.px(10), box.h() * 0.1);
        Box right = inner.right(inner.w() * 0.12);
        // Large names need the whole width; the numbers show well enough what is a figure.
        Box left = inner.leftOf(inner.w() * 0.12).rightOf(place.depth() * pen.px(large ? 2 : 14));
        Box name = place.depth() < 2 ? left : left.rightOf(pen.sizePx(TextRole.LABEL) * 1.7);
        if (!place.number().isEmpty()) {
            Box number = left.left(pen.sizePx(TextRole.LABEL) * 1.5);
            pen.midway(
                    pen.line(place.number(), TextRole.LABEL, false, number),
                    number,
                    chosen ? pen.palette().onChosen() : pen.palette().soft());
        }
        pen.midway(
                pen.lines(place.name(), TextRole.BODY, place.depth() < 2, name, large ? 2 : 1),
                name,
                chosen ? pen.palette().onChosen() : pen.palette().text());
        pen.atRight(
                pen.line(Integer.toString(place.remarks()), TextRole.LABEL, false, right),
                right,
                chosen ? pen.palette().onChosen() : pen.palette().soft());
    }

    private static void remark(Pen pen, RemarkRow remark, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        boolean large = isLarge(pen.appearance());
        Box inner = box.inset(pen.sizePx(TextRole.BODY) * 0.8, box.h() * (large ? 0.05 : 0.09));
        // Large words need a line each for the kind and for the verdict.
        Box top = inner.top(inner.h() * (large ? 0.19 : 0.34));
        Box kind = top.left(inner.w() * (large ? remark.draft() == null ? 1 : 0.48 : 0.25));
        pen.midway(
                pen.line(remark.kind(), TextRole.LABEL, false, kind),
                kind,
                chosen ? text : pen.palette().soft());
        Box verdict = large ? inner.belowTop(inner.h() * 0.2).top(inner.h() * 0.33) : top.rightOf(inner.w() * 0.27);
        if (chosen) {
            pen.markOnChosen(remark.verdict(), TextRole.LABEL, verdict, large ? 2 : 1);
        } else {
            pen.mark(remark.verdict(), TextRole.LABEL, verdict, large ? 2 : 1);
        }
        Box words = inner.belowTop(inner.h() * (large ? 0.55 : 0.38));
        Mark draft = remark.draft();
        if (draft != null) {
            // Where words are large the kind leaves it half a line, and the text needs all of its own.
            Box at = large
                    ? top.right(top.w() * 0.5)
                    : words.left(words.w() * DRAFT_SHARE).top(words.h() * 0.5);
            if (chosen) {
                pen.markOnChosen(draft, TextRole.LABEL, at, 1);
            } else {
                pen.mark(draft, TextRole.LABEL, at, 1);
            }
            words = large ? words : words.rightOf(words.w() * (DRAFT_SHARE + 0.02));
        }
        pen.atTop(pen.lines(remark.text(), TextRole.BODY, false, words, 2), words, text);
    }

    /** Whether words are so large that a row of the list has no room for two things beside each other. */
    private static boolean isLarge(Appearance appearance) {
        return appearance.zoom().percent() > 105;
    }

    private static void fact(Pen pen, FactRow fact, Box box, boolean chosen) {
        Color text = chosen ? pen.palette().onChosen() : pen.palette().text();
        Box inner = box.inset(box.h() * 0.1, box.h() * 0.07);
        int markLines = isLarge(pen.appearance()) ? 2 : 1;
        Box top = inner.top(inner.h() * (markLines > 1 ? 0.31 : 0.25));
        Box number = top.left(inner.w() * 0.3);
        pen.midway(
                pen.line(fact.number(), TextRole.LABEL, true, number),
                number,
                chosen ? text : pen.palette().soft());
        Box mark = top.rightOf(inner.w() * 0.32);
        if (chosen) {
            pen.markOnChosen(fact.mark(), TextRole.LABEL, mark, markLines);
        } else {
            pen.mark(fact.mark(), TextRole.LABEL, mark, markLines);
        }
        Box words = inner.belowTop(top.h() + inner.h() * 0.04);
        pen.atTop(pen.lines(fact.text(), TextRole.BODY, false, words, 4), words, text);
    }

    private static void finding(Pen pen, SpeechFinding finding, Box box, boolean chosen) {
        Box inner = box.inset(box.h() * 0.14, box.h() * 0.08);
        pen.atTop(
                pen.lines(finding.message() + plainWords(finding), TextRole.BODY, false, inner, 3),
                inner,
                chosen ? pen.palette().onChosen() : pen.palette().text());
    }
}
