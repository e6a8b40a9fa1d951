package crowdline.sheet.ink;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.text.Bidi;
import java.util.List;

/** Paints ink: the same strokes and the same letters on a screen, on a printer, in a PNG and in a PDF. */
public final class InkPainter {
    /** Keeps letters in the order they are handed over, and ends that. */
    private static final char AS_IT_STANDS = '\u202D';

    private static final char NO_MORE = '\u202C';

    private final Graphics2D g;

    /** @param g whose unit is that of the ink */
    public InkPainter(Graphics2D g) {
        this.g = g;
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        g.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    }

    /** From the hindmost to the foremost. */
    public void paint(List<Ink> inks) {
        inks.forEach(this::paint);
    }

    private void paint(Ink ink) {
        if (ink instanceof Ink.Stroke line) {
            float width = (float) line.widthPx();
            float dash = (float) line.dashPx();
            g.setColor(new Color(line.rgb()));
            g.setStroke(
                    dash > 0
                            ? new BasicStroke(
                                    width,
                                    BasicStroke.CAP_BUTT,
                                    BasicStroke.JOIN_ROUND,
                                    10,
                                    new float[] {dash, dash * 0.7f},
                                    0)
                            : new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            g.draw(path(line.points()));
        } else if (ink instanceof Ink.Fill area) {
            Path2D path = path(area.corners());
            path.closePath();
            g.setColor(new Color(area.rgb()));
            g.fill(path);
        } else if (ink instanceof Ink.Disc disc) {
            double r = disc.radiusPx();
            Ellipse2D round = new Ellipse2D.Double(disc.x() - r, disc.y() - r, 2 * r, 2 * r);
            g.setColor(new Color(disc.rgb()));
            g.fill(round);
            g.setColor(new Color(disc.rimRgb()));
            g.setStroke(new BasicStroke(1.5f));
            g.draw(round);
        } else if (ink instanceof Ink.Words words) {
            words(words);
        } else if (ink instanceof Ink.Drawing drawing) {
            drawing.drawn().paint(g, drawing.x(), drawing.y(), drawing.width(), drawing.height());
        }
    }

    private void words(Ink.Words words) {
        g.setColor(new Color(words.rgb()));
        double x = words.leftX();
        for (Lettering.Run run : Lettering.runs(words.text(), words.strong())) {
            g.setFont(run.face().at(words.sizePx()));
            g.drawString(asItStands(run.text()), (float) x, (float) words.y());
            x += run.widthPx(words.sizePx());
        }
    }

    private static String asItStands(String text) {
        char[] letters = text.toCharArray();
        return Bidi.requiresBidi(letters, 0, letters.length) ? AS_IT_STANDS + text + NO_MORE : text;
    }

    /** A text that was painted, without what kept its letters in order. */
    public static String letters(String painted) {
        return painted.replace(Character.toString(AS_IT_STANDS), "").replace(Character.toString(NO_MORE), "");
    }

    private static Path2D path(List<Ink.Point> points) {
        Path2D path = new Path2D.Double();
        for (int i = 0; i < points.size(); i++) {
            if (i == 0) {
                path.moveTo(points.get(i).x(), points.get(i).y());
            } else {
                path.lineTo(points.get(i).x(), points.get(i).y());
            }
        }
        return path;
    }
}
