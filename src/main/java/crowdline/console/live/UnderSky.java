package crowdline.console.live;

import javax.swing.JComponent;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** The rows of Live, and above them the sky while a flight is practised on: one looks up to it, as on the day. */
final class UnderSky extends JPanel {
    /** Of the height; tuned so that the words below can still be read. */
    private static final double SKY = 0.38;

    private final JComponent rows;
    private @Nullable JComponent sky;

    UnderSky(JComponent rows) {
        super(null);
        this.rows = rows;
        add(rows);
    }

    /** Shows this above the rows, or nothing. */
    void put(@Nullable JComponent next) {
        if (sky != null) {
            remove(sky);
        }
        sky = next;
        if (next != null) {
            add(next);
        }
        revalidate();
        repaint();
    }

    @Override
    public void doLayout() {
        int above = 0;
        if (sky != null) {
            above = (int) Math.round(getHeight() * SKY);
            sky.setBounds(0, 0, getWidth(), above);
        }
        rows.setBounds(0, above, getWidth(), getHeight() - above);
    }
}
