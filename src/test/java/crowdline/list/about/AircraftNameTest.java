package crowdline.list.about;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AircraftNameTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Pilot: Tom Wexley   Aircraft: Corvane 300|Corvane 300",
                "Aircraft: Corvane 300, Pilot: Tom Wexley|Corvane 300",
                "A/C: Wexcombe Sparrowhawk, silver/maroon|Wexcombe Sparrowhawk",
                "aeroplane = the Sprite Mk 2|Sprite Mk 2",
                "Machine: Zorza M-2 (160 hp)|Zorza M-2",
                "Margaret Ollerby, Petrel|Petrel",
                "Margaret Ollerby - Petrel|Petrel",
                "I shall be bringing the old Petrel, which is a wooden two-seat trainer from 1938.|Petrel",
                "This year I fly my little Halvard T.7 again.|Halvard T.7",
                "Here is what I'll be doing in the Tarrowby T4, the yellow one|Tarrowby T4",
                // What it is is no name.
                "Aircraft: light aerobatic biplane|",
                "Aircraft: Two-seat biplane|",
                "Plane: the red one|",
                "I am flying the glider|",
                // Places, days and figures are none.
                "Margaret Ollerby, Sunday|",
                "Margaret Ollerby - Harrier Vale Airshow|",
                "On Saturday I fly the Cuban first|",
                "We fly in the Festival at Ashmoor|",
                "Please say it in the Display Programme|",
            })
    void nameIsReadAndNothingElse(String note, @Nullable String name) {
        assertThat(AircraftName.in(List.of("Dear Bob,", note))).isEqualTo(name);
    }
}
