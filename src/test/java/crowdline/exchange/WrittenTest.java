package crowdline.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalTime;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WrittenTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        14:30          | 14:30
        12 noon        | 12:00
        9:05           | 09:05
        14.30          | 14:30
        14h30          | 14:30
        1430           | 14:30
        1430Z          | 14:30
        1430 hrs       | 14:30
        14:30:00       | 14:30
        2:30 pm        | 14:30
        2.30PM         | 14:30
        12:15 am       | 00:15
        12 p.m.        | 12:00
        2pm            | 14:00
        14:30 local    | 14:30
        at 14:30       | 14:30
        14:30 - 14:42  | 14:30
        14:30–14:42    | 14:30
        24:00          | 00:00
        """)
    void timeOfDayIsReadAsPeopleWriteIt(String written, LocalTime time) {
        assertThat(Written.clock(written)).contains(time);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "noonish", "25:00", "14:60", "13 pm", "0 am", "12", "12 min", "143", "14:3", "tbc", "=A1"})
    void whatIsNoTimeOfDayIsNone(String written) {
        assertThat(Written.clock(written)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
        12             | 12
        12 min         | 12
        12 mins.       | 12
        12'            | 12
        7,5            | 7.5
        7.5 minutes    | 7.5
        about 8        | 8
        ~8             | 8
        0:12           | 12
        00:12          | 12
        12:30          | 12.5
        0:12:00        | 12
        00:12:30       | 12.5
        90 s           | 1.5
        90 sec         | 1.5
        6 min 30 s     | 6.5
        6m 30          | 6.5
        """)
    void lengthIsReadInMinutes(String written, double minutes) {
        assertThat(Written.minutes(written).getAsDouble()).isCloseTo(minutes, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0", "0:00", "-5", "long", "10 - 12", "12 kt", "=A1", "1e3", "NaN", "1234"})
    void whatIsNoLengthIsNone(String written) {
        assertThat(Written.minutes(written)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"14:30 - 14:42, 14:42", "14:30–14:42, 14:42", "2.30-2.42 pm, 14:42"})
    void rangeHasAnEnd(String written, LocalTime end) {
        assertThat(Written.rangeEnd(written)).contains(end);
    }
}
