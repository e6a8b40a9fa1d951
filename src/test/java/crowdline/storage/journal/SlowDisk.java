package crowdline.storage.journal;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;

/** Journals in a real folder whose disk ends a write only when it is let. */
public final class SlowDisk {
    private final JournalFile.Opener real = JournalDiskFile.opener();
    private final Semaphore writes = new Semaphore(0);
    private final CountDownLatch busy = new CountDownLatch(1);
    private final CountDownLatch closed = new CountDownLatch(1);
    private final JournalShelf shelf;

    public SlowDisk(Path folder, JournalMachine machine) {
        shelf = new JournalShelf(folder, machine, 3600, new JournalFile.Opener() {
            @Override
            public JournalFile open(Path file) throws IOException {
                return new Slow(real.open(file));
            }

            @Override
            public JournalFile create(Path file) throws IOException {
                return new Slow(real.create(file));
            }
        });
    }

    public JournalOpening open(JournalShow show) {
        return shelf.open(show);
    }

    /** Lets so many writes end. */
    public void let(int count) {
        writes.release(count);
    }

    /** Waits until a write is under way. */
    public void awaitBusy() throws InterruptedException {
        busy.await();
    }

    /** Waits until a journal was closed, after which nothing is written to the folder. */
    public void awaitClosed() throws InterruptedException {
        closed.await();
    }

    private final class Slow implements JournalFile {
        private final JournalFile file;

        Slow(JournalFile file) {
            this.file = file;
        }

        @Override
        public long length() throws IOException {
            return file.length();
        }

        @Override
        public boolean inPlace() {
            return file.inPlace();
        }

        @Override
        public void put(long length, byte[] bytes) throws IOException {
            busy.countDown();
            writes.acquireUninterruptibly();
            file.put(length, bytes);
        }

        @Override
        public void close() throws IOException {
            file.close();
            closed.countDown();
        }
    }
}
