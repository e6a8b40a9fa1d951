package crowdline.console;

import java.awt.AWTEvent;
import java.awt.AWTException;
import java.awt.EventQueue;
import java.awt.Robot;
import java.awt.Toolkit;
import java.awt.event.KeyEvent;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.SwingUtilities;

/** A keyboard whose keys take their way through the system, each waited for until the event thread is done with it. */
public final class SystemKeys implements AutoCloseable {
    /** A screen without a window manager loses keys while windows change; those are waited for no longer. */
    private static final int LONGEST_MS = 40;

    private static final int LOOK_MS = 1;

    private final Robot robot = new Robot();
    private final Heard heard;

    public SystemKeys() throws AWTException {
        this(new Heard());
    }

    /** @param heard what sees every event from now on; there is one at a time */
    SystemKeys(Heard heard) throws AWTException {
        this.heard = heard;
        Toolkit.getDefaultToolkit().getSystemEventQueue().push(heard);
    }

    public Robot robot() {
        return robot;
    }

    /**
     * Presses a key and lets it go, with others held down meanwhile. The robot's own waiting for an idle screen never sees one
     * while Live is painted, and waits seconds a key.
     */
    public void press(int key, int... held) {
        int before = heard.releases.get();
        for (int each : held) {
            robot.keyPress(each);
        }
        robot.keyPress(key);
        robot.keyRelease(key);
        for (int each : held) {
            robot.keyRelease(each);
        }
        int released = before + held.length + 1;
        for (int waited = 0; waited < LONGEST_MS && heard.releases.get() < released; waited += LOOK_MS) {
            robot.delay(LOOK_MS);
        }
        try {
            SwingUtilities.invokeAndWait(() -> {});
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    /** Waits until it is done: what is posted to a queue that is being taken away is never dispatched. */
    @Override
    public void close() {
        FutureTask<Void> ended = new FutureTask<>(heard::end, null);
        SwingUtilities.invokeLater(ended);
        try {
            ended.get();
        } catch (Exception e) {
            throw new AssertionError(e);
        }
    }

    /** Counts the keys that were let go of, as far as the event thread has seen them. */
    static class Heard extends EventQueue {
        private final AtomicInteger releases = new AtomicInteger();

        private void end() {
            pop();
        }

        @Override
        protected void dispatchEvent(AWTEvent event) {
            super.dispatchEvent(event);
            if (event.getID() == KeyEvent.KEY_RELEASED) {
                releases.incrementAndGet();
            }
        }
    }
}
