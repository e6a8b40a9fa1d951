package crowdline.loaded;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

@Timeout(60)
class OnceTest {
    private final AtomicInteger times = new AtomicInteger();

    @Test
    void whoAsksMeanwhileWaitsForTheSame() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch goOn = new CountDownLatch(1);
        Once<Integer> once = new Once<>(() -> {
            begun.countDown();
            try {
                goOn.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return times.incrementAndGet();
        });
        CompletableFuture<Integer> first = asked(once);
        begun.await();
        CompletableFuture<Integer> second = asked(once);
        goOn.countDown();

        assertThat(first.get()).isEqualTo(1);
        assertThat(second.get()).isEqualTo(1);
        assertThat(once.get()).isEqualTo(1);
    }

    private static CompletableFuture<Integer> asked(Once<Integer> once) {
        CompletableFuture<Integer> answer = new CompletableFuture<>();
        new Thread(() -> answer.complete(once.get())).start();
        return answer;
    }

    @Test
    void whatFailedIsTriedAgain() {
        Once<Integer> once = new Once<>(() -> {
            if (times.incrementAndGet() == 1) {
                throw new IllegalStateException("the first time");
            }
            return times.get();
        });
        assertThatThrownBy(once::get).isInstanceOf(IllegalStateException.class).hasMessage("the first time");
        assertThat(once.get()).isEqualTo(2);
    }
}
