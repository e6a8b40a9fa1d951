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

    @Test
    void anHourIsReadAsPeopleTypeIt() {
        for (String text :
                new String[] {"16:30", "16.30", "16h30", "1630", " 16 30 ", "4.30pm", "4:30 p.m.", "16:30 hrs"}) {
            assertThat(Hour.typed(text)).as(text).contains(LocalTime.of(16, 30));
        }
        assertThat(Hour.typed("9:05")).contains(LocalTime.of(9, 5));
        assertThat(Hour.typed("905")).contains(LocalTime.of(9, 5));
        assertThat(Hour.typed("12.10am")).contains(LocalTime.of(0, 10));
        assertThat(Hour.typed("12.10pm")).contains(LocalTime.of(12, 10));
    }

    @Test
    void whatIsNoHourIsNone() {
        for (String text :
                new String[] {"", "16", "24:00", "16:60", "13.00pm", "0.30am", "half past four", "16:3", "16:300"}) {
            assertThat(Hour.typed(text)).as(text).isEmpty();
        }
    }
}
