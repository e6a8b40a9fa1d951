package crowdline.console.second;

import crowdline.console.live.LivePanel;
import crowdline.console.live.SecondView;
import crowdline.console.paint.Form;
import crowdline.console.paint.Mark;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.Tone;
import javax.swing.JPanel;
import org.jspecify.annotations.Nullable;

/** What the second window holds: whose turn it is, and the rows of Live below. */
public final class SecondPanel extends JPanel {
    private static final double TURN = 0.12;
    private static final double DESIGNED_WIDTH_PX = 1280;
    private static final double DESIGNED_HEIGHT_PX = 800;
    private static final Mark NOTHING = new Mark(Form.RING, Tone.CALM, "No show is open");

    private final TurnRow turn;
    private final LivePanel rows;
    private transient Appearance appearance;

    public SecondPanel(Appearance appearance) {
        super(null);
        this.appearance = appearance;
        turn = new TurnRow(appearance);
        rows = new LivePanel(appearance);
        add(turn);
        add(rows);
        wear(appearance);
        getAccessibleContext().setAccessibleName("Second window");
    }

    /** Shows a moment, or that there is none. */
    public void show(@Nullable SecondView view) {
        turn.show(view == null ? new TurnRow.Shown(NOTHING, "") : new TurnRow.Shown(view.turn(), view.then()));
        boolean flown = view != null && view.live().incident() == null;
        if (rows.isVisible() != flown) {
            rows.setVisible(flown);
            doLayout();
        }
        if (view != null && flown) {
            rows.show(view.live());
        }
    }

    public final void wear(Appearance worn) {
        appearance = worn;
        setBackground(worn.palette().ground());
        rows.wear(worn);
        doLayout();
        repaint();
    }

    @Override
    public void doLayout() {
        int w = getWidth();
        int h = getHeight();
        int top = rows.isVisible() ? (int) Math.round(h * TURN) : h;
        turn.setBounds(0, 0, w, top);
        rows.setBounds(0, top, w, h - top);
        turn.wear(appearance, Math.max(0.4, Math.min(w / DESIGNED_WIDTH_PX, h / DESIGNED_HEIGHT_PX)));
    }
}
