package crowdline.running;

import crowdline.flight.Workers;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;

/**
 * Does work on every core there is: the thread that asks and threads of its own, {@code flights}, which begin with the first
 * work. Whoever asks does not wait for these to be free. May be asked from any thread, also from its own, and once it is
 * closed leaves the work to whoever asks.
 */
public final class WorkerThreads implements Workers, AutoCloseable {
    private final int helpers;
    private final ExecutorService threads;
    private volatile String abandoned = "";

    public WorkerThreads() {
        this(Runtime.getRuntime().availableProcessors() - 1);
    }

    /** @param helpers how many threads besides the one that asks, 0 or more */
    WorkerThreads(int helpers) {
        this.helpers = helpers;
        threads = Executors.newFixedThreadPool(Math.max(1, helpers), NamedThread.factory("flights"));
    }

    /**
     * @throws RuntimeException what a piece failed with, once all others are done
     * @throws CancellationException if the thread that asks has been {@linkplain #abandon abandoned}
     */
    @Override
    public void each(int count, IntConsumer work) {
        String asking = Thread.currentThread().getName();
        Share share = new Share(count, work, () -> asking.equals(abandoned));
        try {
            for (int i = 0; i < Math.min(helpers, count - 1); i++) {
                threads.execute(share);
            }
        } catch (RejectedExecutionException closed) {
            // Whoever asks does all of it.
        }
        share.run();
        share.awaitOthers();
    }

    /**
     * Leaves undone what threads of a name wait for, and what they ask for from now on: nobody needs it. Pieces that were begun
     * are done.
     */
    public void abandon(String asking) {
        abandoned = asking;
    }

    /** Pieces that are taken one by one by whoever has time. */
    private static final class Share implements Runnable {
        private final int count;
        private final IntConsumer work;
        private final BooleanSupplier left;
        private final AtomicInteger next = new AtomicInteger();
        private final CountDownLatch open;
        private final AtomicReference<@Nullable Throwable> failure = new AtomicReference<>();

        Share(int count, IntConsumer work, BooleanSupplier left) {
            this.count = count;
            this.work = work;
            this.left = left;
            open = new CountDownLatch(count);
        }

        @Override
        public void run() {
            for (int i = next.getAndIncrement(); i < count; i = next.getAndIncrement()) {
                try {
                    if (left.getAsBoolean()) {
                        throw new CancellationException("nobody waits for it any more");
                    }
                    work.accept(i);
                } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
                    failure.compareAndSet(null, e);
                } finally {
                    open.countDown();
                }
            }
        }

        /** Waits for the pieces that others are at. */
        void awaitOthers() {
            boolean interrupted = false;
            while (open.getCount() > 0) {
                try {
                    open.await();
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
            Throwable failed = failure.get();
            if (failed instanceof RuntimeException e) {
                throw e;
            }
            if (failed instanceof Error e) {
                throw e;
            }
        }
    }

    @Override
    public void close() {
        threads.shutdown();
    }
}
