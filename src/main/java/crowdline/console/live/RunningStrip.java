package crowdline.console.live;

import crowdline.console.keys.Command;
import crowdline.console.live.strip.StripRow;
import crowdline.console.paint.PlainText;
import crowdline.console.theme.Appearance;
import crowdline.console.theme.TextRole;
import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javax.swing.BorderFactory;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.Timer;
import org.jspecify.annotations.Nullable;

/** The strip over every other place while an act is in the air, with the key that leads back to Live. */
public final class RunningStrip extends JPanel {
    private static final int LOOK_MS = 500;
    /** As in Live. */
    private static final double HEIGHT_PX = 49;

    private static final double DESIGNED_WIDTH_PX = 1280;

    private final StripRow strip;
    private final JLabel back = PlainText.plain(new JLabel(Command.LIVE.label() + " " + Command.LIVE.key()));
    private final transient Supplier<@Nullable OnAir> running;
    private final transient BooleanSupplier inLive;
    private final Timer looking = new Timer(LOOK_MS, e -> look());
    private transient Appearance appearance;

    /**
     * @param running the running show, or null
     * @param inLive whether Live is in front, which has a strip of its own
     */
    public RunningStrip(Appearance appearance, Supplier<@Nullable OnAir> running, BooleanSupplier inLive) {
        super(new BorderLayout());
        this.appearance = appearance;
        this.running = running;
        this.inLive = inLive;
        strip = new StripRow(appearance);
        strip.getAccessibleContext().setAccessibleName("Strip of the act");
        add(strip, BorderLayout.CENTER);
        add(back, BorderLayout.EAST);
        back.setBorder(BorderFactory.createEmptyBorder(0, 8, 0, 18));
        setVisible(false);
        wear(appearance);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        looking.start();
    }

    @Override
    public void removeNotify() {
        looking.stop();
        super.removeNotify();
    }

    /** Shows the present moment, or nothing where no act is in the air. */
    public void look() {
        OnAir show = running.get();
        boolean flying = show != null && !inLive.getAsBoolean() && show.inTheAir();
        if (flying != isVisible()) {
            setVisible(flying);
        }
        if (show != null && flying) {
            strip.show(show.view().strip());
        }
    }

    public final void wear(Appearance worn) {
        appearance = worn;
        setBackground(worn.palette().ground());
        back.setFont(worn.strong(TextRole.BODY));
        back.setForeground(worn.palette().text());
    }

    private double scale() {
        return Math.max(0.4, getWidth() / DESIGNED_WIDTH_PX);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(super.getPreferredSize().width, (int) Math.round(HEIGHT_PX * scale()));
    }

    @Override
    public void doLayout() {
        strip.room(getHeight());
        strip.wear(appearance, scale());
        super.doLayout();
    }
}
