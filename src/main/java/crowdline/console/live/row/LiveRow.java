package crowdline.console.live.row;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.theme.Appearance;

/**
 * A row of Live. Its words go by the room there is at the largest zoom, whatever the zoom, so that none finds less room
 * at a larger one; what is over is air.
 *
 * @param <V> the view of the row
 */
public abstract class LiveRow<V> extends Painted<V> {
    private double roomPx;

    protected LiveRow(String name, Appearance appearance) {
        super(name, appearance);
    }

    /** So much of the height is there at every zoom. */
    public final void room(double px) {
        if (px != roomPx) {
            roomPx = px;
            repaint();
        }
    }

    /** The room for words within the row. */
    protected final Box within(Box row) {
        return row.inset(0, Math.max(0, row.h() - roomPx) / 2).top(roomPx);
    }
}
