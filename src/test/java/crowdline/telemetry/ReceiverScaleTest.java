package crowdline.telemetry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Objects;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ReceiverScaleTest {
    private static final LocalDate DAY = LocalDate.of(2024, 12, 31);
    private final ReceiverScale scale = new ReceiverScale();

    @Test
    void midnightWithoutDateIsOneStepForward() {
        double before = moved(LocalTime.of(23, 59, 59), null).tS();

        assertThat(moved(LocalTime.MIDNIGHT, null).tS() - before).isCloseTo(1, within(1e-9));
    }

    @Test
    void dateToldOnceTurnsAtMidnight() {
        scale.next(LocalTime.of(23, 59, 59), DAY);

        assertThat(moved(LocalTime.of(0, 0, 1), null).utc()).isEqualTo(Instant.parse("2025-01-01T00:00:01Z"));
    }

    @Test
    void repeatedAndLateInstantsAreRefused() {
        scale.next(LocalTime.of(12, 0, 10), DAY);

        assertThat(scale.next(LocalTime.of(12, 0, 10), DAY)).isNull();
        assertThat(scale.next(LocalTime.of(12, 0, 3), DAY)).isNull();
        assertThat(scale.next(LocalTime.of(12, 0, 11), DAY)).isNotNull();
    }

    @Test
    void clockSetBackLetsTheScaleGoOn() {
        scale.next(LocalTime.of(12, 0, 10), LocalDate.of(2099, 1, 1));
        double before = moved(LocalTime.of(12, 0, 10, 200_000_000), LocalDate.of(2099, 1, 1))
                .tS();
        double after = moved(LocalTime.of(9, 30, 0), DAY).tS();

        assertThat(after - before).isCloseTo(0.2, within(1e-9));
    }

    @Test
    void scaleNeverGoesBackWhateverIsTold() {
        Random random = new Random(7);
        double last = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < 20_000; i++) {
            LocalTime time = LocalTime.ofNanoOfDay((long) (random.nextDouble() * 86_400e9));
            LocalDate date = random.nextBoolean() ? null : LocalDate.of(1980 + random.nextInt(100), 1, 1);
            ReceiverScale.Moment moment = scale.next(time, date);
            if (moment != null) {
                assertThat(moment.tS()).isGreaterThan(last);
                last = moment.tS();
            }
        }
    }

    private ReceiverScale.Moment moved(LocalTime time, @Nullable LocalDate date) {
        return Objects.requireNonNull(scale.next(time, date));
    }
}
