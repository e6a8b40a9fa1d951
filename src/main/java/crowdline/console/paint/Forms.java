package crowdline.console.paint;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;

/** Draws the shapes of state, each in a square of unit size scaled to its place, in the colour already set. */
final class Forms {
    private static final double[] OCTAGON = {.3, .02, .7, .02, .98, .3, .98, .7, .7, .98, .3, .98, .02, .7, .02, .3};
    private static final double[] AEROPLANE = {
        .5, 0, .57, .12, .57, .36, 1, .58, 1, .68, .57, .58, .56, .82, .7, .92, .7, 1, .5, .95, .3, 1, .3, .92, .44,
        .82, .43, .58, 0, .68, 0, .58, .43, .36, .43, .12
    };

    private static final double[] ARROW_DOWN = {.14, .04, .36, .04, .36, .54, .5, .54, .25, .98, 0, .54, .14, .54};
    private static final double[] ARROW_UP = {.86, .96, .64, .96, .64, .46, .5, .46, .75, .02, 1, .46, .86, .46};

    private Forms() {}

    /** How many times as wide as high the shape is. */
    static double aspect(Form form) {
        return switch (form) {
            case THREE_OF_THREE, TWO_OF_THREE, ONE_OF_THREE -> 2.2;
            default -> 1;
        };
    }

    static void draw(Graphics2D g, Form form, double x, double y, double size) {
        AffineTransform before = g.getTransform();
        g.translate(x, y);
        g.scale(size, size);
        g.setStroke(new BasicStroke(0.14f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        switch (form) {
            case DISC -> g.fill(new Ellipse2D.Double(.06, .06, .88, .88));
            case RING -> g.draw(new Ellipse2D.Double(.12, .12, .76, .76));
            case UP -> g.fill(polygon(.5, .06, 1, .92, 0, .92));
            case DOWN -> g.fill(polygon(0, .08, 1, .08, .5, .94));
            case DIAMOND -> g.fill(polygon(.5, 0, 1, .5, .5, 1, 0, .5));
            case BARS -> {
                g.fill(new Rectangle2D.Double(.12, .06, .27, .88));
                g.fill(new Rectangle2D.Double(.61, .06, .27, .88));
            }
            case CROSS -> {
                g.setStroke(new BasicStroke(0.22f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
                Path2D cross = new Path2D.Double();
                cross.moveTo(.14, .14);
                cross.lineTo(.86, .86);
                cross.moveTo(.86, .14);
                cross.lineTo(.14, .86);
                g.draw(cross);
            }
            case SWAP -> {
                g.fill(polygon(ARROW_DOWN));
                g.fill(polygon(ARROW_UP));
            }
            case STOP -> {
                Area stop = new Area(polygon(OCTAGON));
                stop.subtract(new Area(new Rectangle2D.Double(.42, .18, .16, .4)));
                stop.subtract(new Area(new Rectangle2D.Double(.42, .67, .16, .16)));
                g.fill(stop);
            }
            case SQUARE -> g.fill(new Rectangle2D.Double(.08, .08, .84, .84));
            case CLOCK -> {
                g.draw(new Ellipse2D.Double(.09, .09, .82, .82));
                Path2D hands = new Path2D.Double();
                hands.moveTo(.5, .26);
                hands.lineTo(.5, .52);
                hands.lineTo(.68, .62);
                g.draw(hands);
            }
            case AEROPLANE -> g.fill(polygon(AEROPLANE));
            case THREE_OF_THREE -> dots(g, 3);
            case TWO_OF_THREE -> dots(g, 2);
            case ONE_OF_THREE -> dots(g, 1);
        }
        g.setTransform(before);
    }

    private static void dots(Graphics2D g, int filled) {
        g.setStroke(new BasicStroke(0.1f));
        for (int i = 0; i < 3; i++) {
            double x = i * 0.76;
            if (i < filled) {
                g.fill(new Ellipse2D.Double(x, .18, .64, .64));
            } else {
                g.draw(new Ellipse2D.Double(x + .05, .23, .54, .54));
            }
        }
    }

    private static Path2D polygon(double... xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            path.lineTo(xy[i], xy[i + 1]);
        }
        path.closePath();
        return path;
    }
}
