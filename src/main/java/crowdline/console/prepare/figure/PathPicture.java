package crowdline.console.prepare.figure;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.path.ActPainter;
import crowdline.console.path.PathStroke;
import crowdline.console.theme.Appearance;
import crowdline.sheet.PathFrame;
import crowdline.sight.PathView;
import crowdline.sight.SideView;
import java.awt.Color;
import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;

/** The act's path with the chosen figure's part of it drawn strongly, which can be dragged along the line or up and down. */
public final class PathPicture extends Painted<SideView> {
    private static final double GHOST_PX = 2;

    private final transient Consumer<Drag> dragged;
    private transient @Nullable PathFrame frame;
    private transient @Nullable Point from;
    private transient Drag drag = Drag.NONE;

    /** @param dragged told when the chosen figure was dragged somewhere */
    PathPicture(Appearance appearance, Consumer<Drag> dragged) {
        super("The act seen from the crowd and from above", appearance);
        this.dragged = dragged;
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
        setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected String spoken(SideView shown) {
        return "The predicted path; the chosen figure is number " + (shown.current() + 1);
    }

    @Override
    protected void paint(Pen pen, SideView shown, Box box) {
        Box inner = box.inset(pen.px(10), pen.px(8));
        ActPainter.whole(pen, shown, inner);
        PathFrame now = ActPainter.sideFrame(pen, shown, inner).orElse(null);
        frame = now;
        if (now != null && !drag.equals(Drag.NONE) && shown.current() >= 0) {
            PathFrame moved = new PathFrame(
                    now.originX() + drag.alongM() * now.pxPerM(),
                    now.originY() - drag.upM() * now.pxPerM(),
                    now.pxPerM());
            PathStroke.line(
                    pen,
                    shown.spots(shown.current()),
                    moved,
                    PathView.SIDE,
                    GHOST_PX,
                    pen.palette().accent());
        }
    }

    private final class Hand extends MouseAdapter {
        @Override
        public void mousePressed(MouseEvent event) {
            from = event.getButton() == MouseEvent.BUTTON1 ? event.getPoint() : null;
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            Point began = from;
            PathFrame scale = frame;
            if (began != null && scale != null) {
                drag = Drag.of(event.getX() - began.x, event.getY() - began.y, scale.pxPerM());
                repaint();
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            Drag done = drag;
            from = null;
            drag = Drag.NONE;
            repaint();
            if (!done.equals(Drag.NONE)) {
                dragged.accept(done);
            }
        }
    }
}
