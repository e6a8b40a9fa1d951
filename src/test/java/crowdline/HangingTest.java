package crowdline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A test that hangs is ended and says where; without that it takes the whole run with it, and nobody learns which it was. */
class HangingTest {
    @RegisterExtension
    final Asked asked = new Asked();

    /** Keeps what the run was told. */
    static final class Asked implements BeforeEachCallback {
        private @Nullable ExtensionContext context;

        @Override
        public void beforeEach(ExtensionContext now) {
            context = now;
        }

        String told(String key) {
            return Objects.requireNonNull(context)
                    .getConfigurationParameter("junit.jupiter.execution.timeout." + key)
                    .orElse("nothing");
        }
    }

    @Test
    void isEndedAfterMinutes() {
        assertThat(asked.told("default")).matches("\\d+ m");
        long minutes = Long.parseLong(asked.told("default").replace(" m", ""));
        assertThat(Duration.ofMinutes(minutes)).isBetween(Duration.ofMinutes(3), Duration.ofMinutes(6));
    }

    @Test
    void saysWhatEveryThreadWasDoing() {
        assertThat(asked.told("threaddump.enabled")).isEqualTo("true");
    }
}
