package crowdline.console.prepare.day;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypedDateTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "2027-06-12",
                "2027/6/12",
                "12/06/2027",
                "12.6.27",
                " 12-6-2027 ",
                "12 06 2027",
                "12 June 2027",
                "12th  june 2027",
                "12 Jun 27",
                "12-Jun-2027",
                "Saturday 12 June 2027",
                "Sat, 12th of June, 2027",
                "June 12, 2027",
                "Jun. 12th 2027"
            })
    void aDayIsReadAsItIsWritten(String typed) {
        assertThat(TypedDate.of(typed)).contains(LocalDate.of(2027, 6, 12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "June",
                "12 June",
                "31/6/2027",
                "06/13/2027",
                "29 February 2027",
                "12 Junuary 2027",
                "12 Sat 2027",
                "2027-13-01",
                "12/6/027",
                "next Saturday",
                "12 Jun 2027 14:30"
            })
    void whatIsNoDayOfTheCalendarIsNone(String typed) {
        assertThat(TypedDate.of(typed)).isEmpty();
    }
}
