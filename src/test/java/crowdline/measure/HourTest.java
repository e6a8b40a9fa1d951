package crowdline.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.time.LocalTime;
import org.junit.jupiter.api.Test;

class HourTest {
    @Test
    void hoursAreThoseOfADayOf24WithTwoDigitsEach() {
        assertThat(Hour.toTheMinute(LocalTime.of(9, 5, 59))).isEqualTo("09:05");
        assertThat(Hour.toTheSecond(LocalDateTime.of(2027, 6, 12, 23, 0, 7))).isEqualTo("23:00:07");
        assertThat(Hour.toTheMinute(LocalTime.MIDNIGHT)).isEqualTo("00:00");
    }
}
