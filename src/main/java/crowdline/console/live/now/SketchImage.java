package crowdline.console.live.now;

import crowdline.console.paint.Box;
import crowdline.console.paint.Pen;
import crowdline.console.paint.TextFit;
import crowdline.console.path.SkyPainter;
import crowdline.console.path.SkyView;
import crowdline.console.theme.Appearance;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import org.jspecify.annotations.Nullable;

/** A sketch that stands still, painted once and then copied: painting it takes longer than there is between two readings. */
final class SketchImage {
    private record Key(SkyView sketch, Appearance appearance, int wide, int tall, double onePx, double scale) {}

    private @Nullable Key key;
    private @Nullable BufferedImage image;

    void paint(Pen pen, SkyView sketch, Box box) {
        Graphics2D to = pen.surface();
        AffineTransform at = to.getTransform();
        double scale = Math.max(1, at.getScaleX());
        Key now = new Key(
                sketch,
                pen.appearance(),
                (int) Math.ceil(box.w() * scale),
                (int) Math.ceil(box.h() * scale),
                pen.px(1),
                scale);
        BufferedImage shown = image;
        if (shown == null || !now.equals(key)) {
            shown = painted(now, to.getRenderingHints());
            image = shown;
            key = now;
        }
        // On whole points of the screen, or it would be blurred.
        to.setTransform(new AffineTransform());
        to.drawImage(
                shown,
                (int) Math.round(at.getTranslateX() + box.x() * at.getScaleX()),
                (int) Math.round(at.getTranslateY() + box.y() * at.getScaleY()),
                null);
        to.setTransform(at);
    }

    private static BufferedImage painted(Key of, RenderingHints hints) {
        BufferedImage image =
                new BufferedImage(Math.max(1, of.wide()), Math.max(1, of.tall()), BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setRenderingHints(hints);
            g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            g.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            g.scale(of.scale(), of.scale());
            Pen pen = new Pen(g, of.appearance(), of.onePx(), new TextFit());
            SkyPainter.paint(pen, of.sketch(), new Box(0, 0, of.wide() / of.scale(), of.tall() / of.scale()));
        } finally {
            g.dispose();
        }
        return image;
    }
}
