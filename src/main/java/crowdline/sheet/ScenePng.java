package crowdline.sheet;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import javax.imageio.ImageIO;

/** Draws a scene as a PNG of two dots for each of its pixels, so that it prints well. */
final class ScenePng {
    private static final int DOTS_PER_PX = 2;

    private final Graphics2D g;

    private ScenePng(Graphics2D g) {
        this.g = g;
    }

    static void write(Scene scene, OutputStream out) throws IOException {
        BufferedImage image = new BufferedImage(
                scene.widthPx() * DOTS_PER_PX, scene.heightPx() * DOTS_PER_PX, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            g.setColor(new Color(scene.groundRgb()));
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            g.scale(DOTS_PER_PX, DOTS_PER_PX);
            ScenePng drawing = new ScenePng(g);
            scene.inks().forEach(drawing::ink);
        } finally {
            g.dispose();
        }
        if (!ImageIO.write(image, "png", out)) {
            throw new IOException("this Java writes no PNG");
        }
    }

    private void ink(Ink ink) {
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
        }
    }

    private void words(Ink.Words words) {
        g.setFont(Lettering.font(words.sizePx(), words.strong()));
        g.setColor(new Color(words.rgb()));
        double wide = Lettering.widthPx(words.text(), words.sizePx(), words.strong());
        double x = switch (words.anchor()) {
            case START -> words.x();
            case MIDDLE -> words.x() - wide / 2;
            case END -> words.x() - wide;
        };
        g.drawString(words.text(), (float) x, (float) words.y());
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
