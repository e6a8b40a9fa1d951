package crowdline.console.words;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.Path2D;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.JTextComponent;
import javax.swing.text.Position;
import javax.swing.text.View;

/** A wavy line under what listeners may not follow. */
final class FindingUnderline extends DefaultHighlighter.DefaultHighlightPainter {
    private static final double WAVE_SHARE = 0.12;

    private final Color colour;

    FindingUnderline(Color colour) {
        super(colour);
        this.colour = colour;
    }

    @Override
    public Shape paintLayer(Graphics g, int from, int to, Shape bounds, JTextComponent text, View view) {
        Rectangle box;
        try {
            box = view.modelToView(from, Position.Bias.Forward, to, Position.Bias.Backward, bounds)
                    .getBounds();
        } catch (BadLocationException e) {
            return bounds;
        }
        double wave = Math.max(1.5, box.height * WAVE_SHARE / 2);
        double y = box.getMaxY() - wave;
        Path2D line = new Path2D.Double();
        line.moveTo(box.x, y);
        boolean up = true;
        for (double x = box.x + wave; x <= box.getMaxX(); x += wave) {
            line.lineTo(x, y + (up ? -wave : wave) / 2);
            up = !up;
        }
        Graphics2D surface = (Graphics2D) g.create();
        surface.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        surface.setColor(colour);
        surface.setStroke(new BasicStroke((float) Math.max(1.2, wave / 2)));
        surface.draw(line);
        surface.dispose();
        return box;
    }
}
