package crowdline.paper;

import crowdline.sheet.ink.Ink;
import crowdline.sheet.ink.Ink.Anchor;
import crowdline.sheet.page.Area;
import crowdline.sheet.page.Flow;
import crowdline.sheet.page.Style;
import java.util.ArrayList;
import java.util.List;

/** Where a pilot signs. */
final class SignatureBox {
    private static final double LINE_PT = 44;

    private SignatureBox() {}

    static void on(Flow flow, Type type, String pilot) {
        double line = type.pt(LINE_PT);
        flow.gap(type.pt(18));
        flow.keep(3 * line + type.head().leadingPt());
        flow.bookmark("To sign", 1);
        flow.text("head", "To sign", type.head());
        flow.text("sign for", "I have read this sheet, and my corrections are on it. " + pilot, type.words());
        double width = flow.room().width();
        flow.picture("signatures", 0, width, 2 * line, area -> lines(area, line, type));
    }

    private static List<Ink> lines(Area area, double line, Type type) {
        Style small = type.small();
        double column = area.width() * 0.62;
        List<Ink> inks = new ArrayList<>();
        String[] who = {"Pilot", "Commentator"};
        for (int i = 0; i < who.length; i++) {
            double y = area.y() + (i + 1) * line - small.leadingPt() - 2;
            inks.add(Ink.line(area.x(), y, area.x() + column - 16, y, Type.BLACK, 0.8));
            inks.add(Ink.line(area.x() + column, y, area.right(), y, Type.BLACK, 0.8));
            inks.add(words(who[i], area.x(), y + small.sizePt() + 2, small));
            inks.add(words("Date", area.x() + column, y + small.sizePt() + 2, small));
        }
        return inks;
    }

    private static Ink words(String text, double x, double y, Style style) {
        return new Ink.Words(text, x, y, style.sizePt(), style.strong(), Anchor.START, style.rgb());
    }
}
