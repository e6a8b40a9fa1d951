package crowdline.console.paint;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import javax.swing.JList;

/** Asks the rows of a list anew how high they are when it is wider or narrower: they go by their words, and the list keeps what it knew. */
public final class RowHeights extends ComponentAdapter {
    private final JList<?> list;
    private int widthPx;

    private RowHeights(JList<?> list) {
        this.list = list;
    }

    public static void follow(JList<?> list) {
        list.addComponentListener(new RowHeights(list));
    }

    @Override
    public void componentResized(ComponentEvent e) {
        if (list.getWidth() != widthPx) {
            widthPx = list.getWidth();
            list.setFixedCellHeight(1);
            list.setFixedCellHeight(-1);
        }
    }
}
