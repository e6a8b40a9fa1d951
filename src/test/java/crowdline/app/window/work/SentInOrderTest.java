package crowdline.app.window.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SentInOrderTest {
    private final Deque<Runnable> thread = new ArrayDeque<>();
    private final SentInOrder<List<String>> window = new SentInOrder<>(thread::add);
    private final List<String> shown = new ArrayList<>();

    private void runAll() {
        while (!thread.isEmpty()) {
            thread.remove().run();
        }
    }

    @Test
    void whatWasSentBeforeItWasMadeComesInTheOrderSent() {
        for (String word : List.of("one", "two", "three")) {
            window.send(w -> w.add(word));
        }
        runAll();
        assertThat(shown).isEmpty();
        window.made(shown);
        window.send(w -> w.add("four"));
        runAll();
        assertThat(shown).containsExactly("one", "two", "three", "four");
    }

    @Test
    void oneThatFailsKeepsNothingBack() {
        window.send(w -> {
            throw new IllegalStateException("wrong");
        });
        window.send(w -> w.add("after"));
        window.made(shown);
        while (!thread.isEmpty()) {
            try {
                thread.remove().run();
            } catch (IllegalStateException wrong) {
                assertThat(wrong).hasMessage("wrong");
            }
        }
        assertThat(shown).containsExactly("after");
    }

    @Test
    void nothingIsLostOrTurnedRoundWhileItIsBeingMade() throws InterruptedException {
        for (int run = 0; run < 200; run++) {
            ExecutorService screen = Executors.newSingleThreadExecutor();
            SentInOrder<List<Integer>> ahead = new SentInOrder<>(screen);
            List<Integer> got = Collections.synchronizedList(new ArrayList<>());
            Thread sender = new Thread(() -> IntStream.range(0, 500).forEach(i -> ahead.send(w -> w.add(i))));
            sender.start();
            ahead.made(got);
            sender.join();
            CountDownLatch all = new CountDownLatch(1);
            ahead.send(w -> all.countDown());
            assertThat(all.await(20, TimeUnit.SECONDS)).isTrue();
            // What hands over has then asked for its last turn, which asks for no more.
            CountDownLatch idle = new CountDownLatch(1);
            screen.execute(idle::countDown);
            assertThat(idle.await(20, TimeUnit.SECONDS)).isTrue();
            screen.shutdown();
            assertThat(got).isEqualTo(IntStream.range(0, 500).boxed().toList());
        }
    }
}
