package crowdline.sheet.page;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.Pageable;
import java.awt.print.Paper;
import java.awt.print.Printable;

/** Pages as a printer takes them; on paper of another size each is drawn as large as it fits. */
public final class PagePrint implements Pageable, Printable {
    private final Pages pages;
    private final Counting count;

    /** @param count hears each page, and may throw to stop the printing */
    public PagePrint(Pages pages, Counting count) {
        this.pages = pages;
        this.count = count;
    }

    @Override
    public int getNumberOfPages() {
        return pages.pages().size();
    }

    @Override
    public PageFormat getPageFormat(int index) {
        PaperSize size = pages.pages().get(index).size();
        Paper paper = new Paper();
        paper.setSize(size.widthPt(), size.heightPt());
        paper.setImageableArea(0, 0, size.widthPt(), size.heightPt());
        PageFormat format = new PageFormat();
        format.setPaper(paper);
        return format;
    }

    @Override
    public Printable getPrintable(int index) {
        return this;
    }

    @Override
    public int print(Graphics graphics, PageFormat format, int index) {
        if (index >= getNumberOfPages()) {
            return NO_SUCH_PAGE;
        }
        count.is(index, getNumberOfPages());
        Page page = pages.pages().get(index);
        double wide = page.size().widthPt();
        double tall = page.size().heightPt();
        double scale = Math.min(format.getWidth() / wide, format.getHeight() / tall);
        Graphics2D g = (Graphics2D) graphics.create();
        try {
            g.translate((format.getWidth() - scale * wide) / 2, (format.getHeight() - scale * tall) / 2);
            g.scale(scale, scale);
            PagePainter.paint(g, page);
        } finally {
            g.dispose();
        }
        return PAGE_EXISTS;
    }
}
