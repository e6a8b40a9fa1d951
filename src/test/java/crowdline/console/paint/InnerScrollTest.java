package crowdline.console.paint;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Dimension;
import java.awt.event.MouseWheelEvent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import org.junit.jupiter.api.Test;

/** The wheel over a list scrolls the page where the list has nothing more to scroll that way. */
class InnerScrollTest {
    private final JPanel rows = new JPanel();
    private final InnerScroll inner = new InnerScroll(rows);
    private final JScrollPane page;

    InnerScrollTest() {
        JPanel whole = new JPanel(null);
        whole.setPreferredSize(new Dimension(180, 2000));
        whole.add(inner);
        page = new JScrollPane(whole);
        page.setSize(200, 400);
        page.doLayout();
        page.getViewport().doLayout();
        inner.setBounds(0, 0, 150, 100);
    }

    private void rowsAreHigh(int px) {
        rows.setPreferredSize(new Dimension(100, px));
        inner.doLayout();
        inner.getViewport().doLayout();
    }

    private void wheel(int rotation) {
        inner.dispatchEvent(new MouseWheelEvent(
                inner,
                MouseWheelEvent.MOUSE_WHEEL,
                0,
                0,
                10,
                10,
                0,
                false,
                MouseWheelEvent.WHEEL_UNIT_SCROLL,
                3,
                rotation));
    }

    private int pageAt() {
        return page.getVerticalScrollBar().getValue();
    }

    private int innerAt() {
        return inner.getVerticalScrollBar().getValue();
    }

    @Test
    void aListThatFitsLeavesTheWheelToThePage() {
        rowsAreHigh(50);
        wheel(1);
        assertThat(pageAt()).isPositive();
    }

    @Test
    void aListThatDoesNotFitScrollsToItsEndAndThenThePage() {
        rowsAreHigh(160);
        wheel(1);
        assertThat(innerAt()).isPositive();
        assertThat(pageAt()).isZero();
        inner.getVerticalScrollBar().setValue(inner.getVerticalScrollBar().getMaximum());
        int end = innerAt();
        wheel(1);
        assertThat(innerAt()).isEqualTo(end);
        assertThat(pageAt()).isPositive();
        wheel(-1);
        assertThat(innerAt()).as("back in the list first").isLessThan(end);
    }
}
