package crowdline.running;

import java.io.InputStream;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReentrantLock;

/** What a receiver sends, when a test says so: whoever sends waits until the reader has made of it what it can. */
public final class StoppableStream extends InputStream {
    private final Lock lock = new ReentrantLock();
    private final Condition changed = lock.newCondition();
    private byte[] waiting = new byte[0];
    private boolean asked;
    private boolean closed;

    /** Sends, and waits until the reader asks for more. */
    public void send(byte[] bytes) throws InterruptedException {
        lock.lock();
        try {
            await();
            waiting = bytes;
            asked = false;
            changed.signalAll();
            await();
        } finally {
            lock.unlock();
        }
    }

    private void await() throws InterruptedException {
        while (!asked && !closed) {
            changed.await();
        }
    }

    @Override
    public int read() {
        throw new UnsupportedOperationException("read into a buffer");
    }

    @Override
    public int read(byte[] into, int from, int most) {
        lock.lock();
        try {
            while (waiting.length == 0 && !closed) {
                asked = true;
                changed.signalAll();
                changed.awaitUninterruptibly();
            }
            if (closed) {
                return -1;
            }
            int count = Math.min(most, waiting.length);
            System.arraycopy(waiting, 0, into, from, count);
            waiting = java.util.Arrays.copyOfRange(waiting, count, waiting.length);
            return count;
        } finally {
            lock.unlock();
        }
    }

    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            changed.signalAll();
        } finally {
            lock.unlock();
        }
    }
}
