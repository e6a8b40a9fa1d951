package crowdline.telemetry.serial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(30)
class ReaderThreadTest {
    private static final String TEXTBOOK = """
            $GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47
            $GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A
            """;

    @Test
    void readerHasItsNameAndMayBeClosedFromItsOwnCallback() throws InterruptedException {
        AtomicReference<Receiver> self = new AtomicReference<>();
        AtomicReference<String> name = new AtomicReference<>();
        CountDownLatch started = new CountDownLatch(1);
        CountDownLatch seen = new CountDownLatch(1);
        Receiver receiver = Receiver.start(stream(started), System::nanoTime, fix -> {
            name.set(Thread.currentThread().getName());
            Objects.requireNonNull(self.get()).close();
            Objects.requireNonNull(self.get()).close();
            seen.countDown();
        });
        self.set(receiver);
        started.countDown();

        assertThat(seen.await(20, TimeUnit.SECONDS)).isTrue();
        receiver.close();
        assertThat(receiver.isReading()).isFalse();
        assertThat(name.get()).isEqualTo("serial-reader");
    }

    @Test
    void linkIsReleasedByTheReaderItself() {
        AtomicReference<Thread> releaser = new AtomicReference<>();
        AtomicInteger steps = new AtomicInteger();
        CountDownLatch stepped = new CountDownLatch(3);
        ReaderThread thread = new ReaderThread("serial-reader", new ReaderThread.Steps() {
            @Override
            public long step() {
                steps.incrementAndGet();
                stepped.countDown();
                return 1;
            }

            @Override
            public void release() {
                releaser.set(Thread.currentThread());
            }
        });
        thread.start();
        await(stepped);
        thread.close();
        thread.close();

        assertThat(thread.isAlive()).isFalse();
        assertThat(releaser.get()).isNotNull().isNotSameAs(Thread.currentThread());
        assertThat(steps.get()).isGreaterThanOrEqualTo(3);
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(20, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private static LinkOpener stream(CountDownLatch started) {
        StreamOpener stream =
                new StreamOpener("test", new ByteArrayInputStream(TEXTBOOK.getBytes(StandardCharsets.US_ASCII)));
        return new LinkOpener() {
            @Override
            public String name() {
                return stream.name();
            }

            @Override
            public List<Integer> speedsBaud() {
                return stream.speedsBaud();
            }

            @Override
            public Link open(int baud) throws LinkException {
                await(started);
                return stream.open(baud);
            }
        };
    }
}
