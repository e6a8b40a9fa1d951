package crowdline.app.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class FlightProgressTest {
    private final CaughtTerminal caught = new CaughtTerminal();
    private final AtomicLong nowNs = new AtomicLong(Long.MAX_VALUE - 5);
    private final FlightProgress progress = new FlightProgress(caught.terminal(), nowNs::get);

    @Test
    void nothingIsSaidWithinTheFirstSecond() {
        nowNs.addAndGet(999_999_999);
        progress.accept(0.5);
        assertThat(caught.err()).isEmpty();
    }

    @Test
    void progressIsSaidOnceASecondAndNeverOnTheResultsSide() {
        nowNs.addAndGet(1_000_000_000);
        progress.accept(0.25);
        progress.accept(0.26);
        nowNs.addAndGet(1_000_000_000);
        progress.accept(0.5);
        assertThat(caught.err().lines())
                .containsExactly(
                        "crowdline: 25% of the varied flights flown", "crowdline: 50% of the varied flights flown");
        assertThat(caught.out()).isEmpty();
    }
}
