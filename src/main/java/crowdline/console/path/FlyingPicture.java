package crowdline.console.path;

import crowdline.console.paint.Box;
import crowdline.console.paint.Painted;
import crowdline.console.paint.Pen;
import crowdline.console.theme.Appearance;
import java.awt.Color;
import java.util.OptionalDouble;
import java.util.function.DoubleSupplier;
import javax.swing.Timer;

/**
 * A figure as the crowd sees it, to be watched: whole until it is flown, then from moment to moment at any speed, and whole
 * again at its end. It moves only while it is seen.
 */
public final class FlyingPicture extends Painted<SkyView> {
    /** Sixty pictures a second. */
    private static final int FRAME_MS = 16;

    private final transient Player player = new Player();
    private final Timer timer = new Timer(FRAME_MS, e -> look());
    private final transient DoubleSupplier clockS;
    private transient SkyView whole = SkyView.NONE;
    private transient Runnable moved = () -> {};
    private boolean begun;

    /** @param clockS seconds on a clock that never goes back */
    public FlyingPicture(Appearance appearance, DoubleSupplier clockS) {
        super("Seen from the crowd", appearance);
        this.clockS = clockS;
        timer.setCoalesce(true);
    }

    /** Tells when the moment shown has changed. */
    public void onMove(Runnable told) {
        moved = told;
    }

    /** Another figure, whole. */
    public void watch(SkyView next) {
        if (next.equals(whole)) {
            return;
        }
        whole = next;
        player.load(next.flown().fromS(), next.flown().toS());
        rest();
    }

    /** Whether there is something to be flown. */
    public boolean hasFlight() {
        return !whole.isEmpty();
    }

    public boolean isPlaying() {
        return begun && player.playing(clockS.getAsDouble());
    }

    /** The moment shown; none while the whole figure is. */
    public OptionalDouble atS() {
        return begun ? OptionalDouble.of(player.positionS(clockS.getAsDouble())) : OptionalDouble.empty();
    }

    /** How fast it is flown, such as "½×". */
    public String speed() {
        return player.inWords();
    }

    /** Flies it, or stops it where it is. */
    public void toggle() {
        if (hasFlight()) {
            begun = true;
            player.toggle(clockS.getAsDouble());
            timer.start();
            look();
        }
    }

    /** To the next moment there is something to see, or to the one before; there it stops. */
    public void step(boolean on) {
        if (!hasFlight()) {
            return;
        }
        double nowS = clockS.getAsDouble();
        double atS = begun ? player.positionS(nowS) : whole.flown().fromS() - 1;
        OptionalDouble to = on ? whole.flown().nextS(atS) : whole.flown().beforeS(atS);
        if (to.isPresent()) {
            begun = true;
            player.stop(nowS);
            player.goTo(to.getAsDouble(), nowS);
            look();
        }
    }

    /** One step faster or slower. */
    public void change(int steps) {
        player.change(steps, clockS.getAsDouble());
        moved.run();
    }

    private void rest() {
        begun = false;
        timer.stop();
        player.goTo(player.fromS(), clockS.getAsDouble());
        show(whole);
        moved.run();
    }

    private void look() {
        double nowS = clockS.getAsDouble();
        boolean played = timer.isRunning() && player.atEnd(nowS);
        if (!player.playing(nowS)) {
            timer.stop();
        }
        if (played) {
            rest();
        } else {
            show(whole.at(player.positionS(nowS)));
            moved.run();
        }
    }

    @Override
    public void removeNotify() {
        player.stop(clockS.getAsDouble());
        timer.stop();
        super.removeNotify();
    }

    @Override
    protected Color ground(Appearance worn) {
        return worn.palette().stage();
    }

    @Override
    protected String spoken(SkyView shown) {
        return shown.atS().isPresent()
                ? "The figure as the crowd sees it: " + shown.caption()
                : "A drawing of the figure as the crowd sees it";
    }

    @Override
    protected void paint(Pen pen, SkyView shown, Box box) {
        SkyPainter.paint(pen, shown, box);
    }
}
