package crowdline.sheet.page;

import crowdline.sheet.ink.InkPainter;
import java.awt.Graphics2D;

/** Paints a page, whatever it is painted on. */
public final class PagePainter {
    private PagePainter() {}

    /**
     * Paints it.
     *
     * @param g whose unit is the point and whose origin the upper left corner of the page
     */
    public static void paint(Graphics2D g, Page page) {
        new InkPainter(g).paint(page.inks());
    }
}
