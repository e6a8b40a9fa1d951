package crowdline.telemetry.serial;

import java.lang.System.Logger;
import java.lang.System.Logger.Level;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** Owns the thread that reads one link: runs its steps until they are done or it is closed. */
final class ReaderThread implements AutoCloseable {
    private static final Logger LOG = System.getLogger(ReaderThread.class.getName());
    private static final long AFTER_FAULT_MS = 1000;
    /** Longer than one read of a port waits; a stream that blocks is left to its daemon thread. */
    private static final long JOIN_MS = 1000;

    private final CountDownLatch closing = new CountDownLatch(1);
    private final Steps steps;
    private final Thread thread;

    /** What a reader does. Called by the reader thread only. */
    interface Steps {
        /** One open or one read; gives how long to wait before the next, milliseconds, or less than 0 when done. */
        long step();

        /** Closes the link, if it is open; may be called again. */
        void release();
    }

    ReaderThread(String name, Steps steps) {
        this.steps = steps;
        thread = new Thread(this::run, name);
        thread.setDaemon(true);
    }

    void start() {
        thread.start();
    }

    boolean isAlive() {
        return thread.isAlive();
    }

    /** Ends the thread, which closes its link itself; from any thread, also from its own, and as often as one likes. */
    @Override
    public void close() {
        closing.countDown();
        if (Thread.currentThread() != thread) {
            try {
                thread.join(JOIN_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void run() {
        long waitMs = 0;
        while (waitMs >= 0 && !closedAfter(waitMs)) {
            try {
                waitMs = steps.step();
            } catch (RuntimeException
                    | StackOverflowError
                    | OutOfMemoryError e) { // the thread's root: the show goes on
                LOG.log(Level.WARNING, "reading stopped and begins again", e);
                steps.release();
                waitMs = AFTER_FAULT_MS;
            }
        }
        steps.release();
    }

    private boolean closedAfter(long waitMs) {
        try {
            return closing.await(waitMs, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            return true;
        }
    }
}
