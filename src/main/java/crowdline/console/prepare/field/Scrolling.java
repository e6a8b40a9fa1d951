package crowdline.console.prepare.field;

import crowdline.console.paint.InnerScroll;
import javax.swing.JComponent;
import javax.swing.JScrollPane;

/** Scrolls up and down only: what is too wide finds room in another way. */
public final class Scrolling {
    private Scrolling() {}

    public static JScrollPane down(JComponent inside) {
        JScrollPane scroll = new InnerScroll(inside);
        scroll.setHorizontalScrollBarPolicy(JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        return scroll;
    }
}
