package crowdline.running;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicIntegerArray;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class WorkerThreadsTest {
    private final WorkerThreads workers = new WorkerThreads(3);

    @AfterEach
    void close() {
        workers.close();
    }

    private static void everyPieceOnce(WorkerThreads workers, int count) {
        AtomicIntegerArray done = new AtomicIntegerArray(count);
        workers.each(count, done::incrementAndGet);
        for (int i = 0; i < count; i++) {
            assertThat(done.get(i)).as("piece %d of %d", i, count).isEqualTo(1);
        }
    }

    @Test
    void everyPieceIsDoneOnce() {
        for (int count : new int[] {0, 1, 2, 3, 4, 5, 1000}) {
            everyPieceOnce(workers, count);
        }
    }

    @Test
    void piecesAreDoneAtTheSameTimeOnNamedThreads() {
        CyclicBarrier all = new CyclicBarrier(4);
        Set<String> names = ConcurrentHashMap.newKeySet();
        workers.each(4, i -> {
            names.add(Thread.currentThread().getName());
            await(all); // passes only when four are at it
        });
        assertThat(names).containsExactlyInAnyOrder(Thread.currentThread().getName(), "flights");
    }

    private static void await(CyclicBarrier all) {
        try {
            all.await();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void whatAnAbandonedThreadAsksForIsLeftUndoneAndNobodyElses() throws Exception {
        AtomicInteger done = new AtomicInteger();
        String me = Thread.currentThread().getName();
        assertThatThrownBy(() -> workers.each(1000, i -> {
                    done.incrementAndGet();
                    workers.abandon(me);
                }))
                .isInstanceOf(CancellationException.class);
        assertThat(done.get()).as("each thread ends the piece it was at").isBetween(1, 4);
        assertThatThrownBy(() -> workers.each(1, i -> done.set(-1))).isInstanceOf(CancellationException.class);
        assertThat(done.get()).isPositive();
        Thread other = new Thread(() -> everyPieceOnce(workers, 10), "another");
        AtomicReference<Throwable> failed = new AtomicReference<>();
        other.setUncaughtExceptionHandler((thread, fault) -> failed.set(fault));
        other.start();
        other.join();
        assertThat(failed.get()).isNull();
    }

    @Test
    void busyThreadsAreNotWaitedFor() throws Exception {
        CyclicBarrier busy = new CyclicBarrier(5);
        CountDownLatch free = new CountDownLatch(1);
        Thread other = new Thread(() -> workers.each(4, i -> {
            await(busy);
            try {
                free.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }));
        other.start();
        busy.await();

        everyPieceOnce(workers, 10);

        free.countDown();
        other.join();
    }

    @Test
    void piecesMayHavePiecesOfTheirOwn() {
        workers.each(8, i -> everyPieceOnce(workers, 8));
    }

    @Test
    void failureComesOutOnceAllOthersAreDone() {
        AtomicIntegerArray done = new AtomicIntegerArray(100);
        assertThatThrownBy(() -> workers.each(100, i -> {
                    if (i == 7) {
                        throw new IllegalArgumentException("piece 7");
                    }
                    done.incrementAndGet(i);
                }))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("piece 7");
        for (int i = 0; i < 100; i++) {
            assertThat(done.get(i)).as("piece %d", i).isEqualTo(i == 7 ? 0 : 1);
        }
    }

    @Test
    void oneCoreAndClosedThreadsLeaveTheWorkToWhoeverAsks() {
        workers.close();
        everyPieceOnce(workers, 10);
        try (WorkerThreads none = new WorkerThreads(0)) {
            none.each(10, i -> assertThat(Thread.currentThread().getName()).isNotEqualTo("flights"));
        }
    }
}
