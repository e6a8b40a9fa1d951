package crowdline.console.prepare.field;

import java.awt.Cursor;
import java.awt.Point;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.function.ToIntFunction;
import javax.swing.JComponent;

/** Drags a row of a list or a table to the place of another. */
public final class RowDrag extends MouseAdapter {
    private static final int NONE = -1;

    private final ToIntFunction<Point> rowAt;
    private final Dropped dropped;
    private int from = NONE;

    private RowDrag(ToIntFunction<Point> rowAt, Dropped dropped) {
        this.rowAt = rowAt;
        this.dropped = dropped;
    }

    /** Told which row was dropped where. */
    public interface Dropped {
        void at(int from, int to);
    }

    /**
     * Lets rows be dragged.
     *
     * @param rowAt the row at a point, below 0 for none
     */
    public static void on(JComponent rows, ToIntFunction<Point> rowAt, Dropped dropped) {
        RowDrag drag = new RowDrag(rowAt, dropped);
        rows.addMouseListener(drag);
        rows.addMouseMotionListener(drag);
    }

    @Override
    public void mousePressed(MouseEvent event) {
        from = event.getButton() == MouseEvent.BUTTON1 ? rowAt.applyAsInt(event.getPoint()) : NONE;
    }

    @Override
    public void mouseDragged(MouseEvent event) {
        if (from != NONE) {
            event.getComponent().setCursor(Cursor.getPredefinedCursor(Cursor.MOVE_CURSOR));
        }
    }

    @Override
    public void mouseReleased(MouseEvent event) {
        int began = from;
        int to = rowAt.applyAsInt(event.getPoint());
        from = NONE;
        event.getComponent().setCursor(null);
        if (began >= 0 && to >= 0 && to != began) {
            dropped.at(began, to);
        }
    }
}
