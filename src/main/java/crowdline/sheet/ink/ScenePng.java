package crowdline.sheet.ink;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import javax.imageio.ImageIO;

/** Draws a scene as a PNG of two dots for each of its pixels, so that it prints well. */
public final class ScenePng {
    private static final int DOTS_PER_PX = 2;

    private ScenePng() {}

    public static void write(Scene scene, OutputStream out) throws IOException {
        BufferedImage image = new BufferedImage(
                scene.widthPx() * DOTS_PER_PX, scene.heightPx() * DOTS_PER_PX, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        try {
            g.setColor(new Color(scene.groundRgb()));
            g.fillRect(0, 0, image.getWidth(), image.getHeight());
            g.scale(DOTS_PER_PX, DOTS_PER_PX);
            new InkPainter(g).paint(scene.inks());
        } finally {
            g.dispose();
        }
        if (!ImageIO.write(image, "png", out)) {
            throw new IOException("this Java writes no PNG");
        }
    }
}
