package crowdline.sheet;

import java.awt.Font;
import java.awt.font.FontRenderContext;

/** The type of pictures, and how wide words are in it. */
final class Lettering {
    private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);

    private Lettering() {}

    static Font font(double sizePx, boolean strong) {
        return new Font(Font.SANS_SERIF, strong ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) sizePx);
    }

    static double widthPx(String text, double sizePx, boolean strong) {
        return font(sizePx, strong).getStringBounds(text, CONTEXT).getWidth();
    }

    /** As much of a text as is no wider than this, with a mark where something is missing. */
    static String fitted(String text, double sizePx, boolean strong, double mostPx) {
        String shown = text;
        int end = text.length();
        while (end > 0 && widthPx(shown, sizePx, strong) > mostPx) {
            end = text.offsetByCodePoints(end, -1);
            shown = text.substring(0, end).stripTrailing() + "…";
        }
        return shown;
    }
}
