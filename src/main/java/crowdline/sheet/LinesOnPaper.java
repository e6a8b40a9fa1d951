package crowdline.sheet;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.print.PageFormat;
import java.awt.print.Printable;
import java.util.ArrayList;
import java.util.List;

/** Lines of text on paper, as wide as the paper allows, page after page. */
public final class LinesOnPaper implements Printable {
    private static final float LARGEST_PT = 10;
    private static final float SMALLEST_PT = 7;

    private final List<String> lines;

    public LinesOnPaper(List<String> lines) {
        this.lines = List.copyOf(lines);
    }

    @Override
    public int print(Graphics graphics, PageFormat paper, int page) {
        Font font = new Font(Font.MONOSPACED, Font.PLAIN, 1).deriveFont(LARGEST_PT);
        FontMetrics metrics = graphics.getFontMetrics(font);
        int widest = lines.stream().mapToInt(metrics::stringWidth).max().orElse(1);
        double fits = LARGEST_PT * paper.getImageableWidth() / Math.max(1, widest);
        font = font.deriveFont((float) Math.max(SMALLEST_PT, Math.min(LARGEST_PT, fits)));
        metrics = graphics.getFontMetrics(font);
        List<String> wrapped = wrapped(metrics, paper.getImageableWidth());
        int perPage = Math.max(1, (int) (paper.getImageableHeight() / metrics.getHeight()));
        if (page * perPage >= wrapped.size()) {
            return NO_SUCH_PAGE;
        }
        Graphics2D g = (Graphics2D) graphics;
        g.translate(paper.getImageableX(), paper.getImageableY());
        g.setFont(font);
        g.setColor(Color.BLACK);
        for (int i = 0; i < perPage && page * perPage + i < wrapped.size(); i++) {
            g.drawString(wrapped.get(page * perPage + i), 0, metrics.getAscent() + (float) i * metrics.getHeight());
        }
        return PAGE_EXISTS;
    }

    private List<String> wrapped(FontMetrics metrics, double widthPt) {
        int letters = Math.max(20, (int) (widthPt / Math.max(1, metrics.charWidth('m'))));
        List<String> all = new ArrayList<>();
        for (String line : lines) {
            String rest = line;
            while (rest.length() > letters) {
                int cut = rest.lastIndexOf(' ', letters);
                cut = cut < letters / 2 ? letters : cut;
                all.add(rest.substring(0, cut));
                rest = "      " + rest.substring(cut).strip();
            }
            all.add(rest);
        }
        return all;
    }
}
