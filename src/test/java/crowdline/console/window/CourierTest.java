package crowdline.console.window;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

class CourierTest {
    private final Deque<Runnable> screen = new ArrayDeque<>();
    private final List<Integer> shown = new ArrayList<>();
    private final Courier<Integer> courier = new Courier<>(screen::add, shown::add);

    @Test
    void aSlowScreenSeesOnlyTheNewest() {
        courier.send(1);
        courier.send(2);
        courier.send(3);
        assertThat(screen).hasSize(1);
        screen.remove().run();
        assertThat(shown).containsExactly(3);
    }

    @Test
    void afterADeliveryTheNextIsSent() {
        courier.send(1);
        screen.remove().run();
        courier.send(2);
        screen.remove().run();
        assertThat(shown).containsExactly(1, 2);
    }
}
