package crowdline.list.about;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeveralActsTest {
    @Test
    void twoHoursWithTheirLengthsAreTwoActs() {
        assertThat(
                        SeveralActs.in(
                                "Both of us fly.\n\n13:10 - me in the glider, 6 min\nloop\nspin\n\n13.20: the team, 12 mins\nbreak"))
                .containsExactly(LocalTime.of(13, 10), LocalTime.of(13, 20));
        assertThat(SeveralActs.in("Slot 1: 1405 for eight minutes\nloop\nSlot 2: 1540 for ten minutes\nroll"))
                .containsExactly(LocalTime.of(14, 5), LocalTime.of(15, 40));
        assertThat(SeveralActs.said("* 17h30 solo (7 min)\nloop\n* 17h50 pair (9 min)\nbreak"))
                .isEqualTo("More than one act seems to stand here, at 17:30 and 17:50:"
                        + " make them one at a time, each of its own lines");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Slot 14:20, 8 min\nloop\nroll",
                "Briefing 09:30, 20 min\nSlot 14:20, 8 min\nloop",
                "14:20 loop\n14:21 roll\n14:23 spin",
                "0:40 loop, 1 min\n1:40 roll, 1 min",
                "My slot is 15:10, 6 min.\n15:10 take-off, 4 min climb\nloop\nroll",
                "15:10 for 7 minutes, I repeat,\n15:10, 7 minutes\nloop",
                ""
            })
    void oneActIsOne(String letter) {
        assertThat(SeveralActs.in(letter)).isEmpty();
        assertThat(SeveralActs.said(letter)).isEmpty();
    }
}
