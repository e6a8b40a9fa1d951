package crowdline.list;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.list.line.ListLine;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A list whose lines begin by a clock. */
class BeginTimesTest {
    private static final ListReader READER = new ListReader(CatalogueFile.shipped());

    private static List<ListLine> lines(String text) {
        return READER.read(text.replace("\\n", "\n").replace("\\t", "\t")).lines();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "0:00 take-off\\n0:40 loop\\n1:05 stall turn | 0 40 65",
                "00:20 - loop\\n00:45 - slow roll\\n01:30 - spin | 20 45 90",
                "1. Loop (0:40)\\n2. Stall turn (1:05)\\n3. Slow roll (1:40) | 40 65 100",
                "T+0 loop\\nT+25 stall turn\\nT+50s slow roll | 0 25 50",
                "[0:10] loop\\n[0:35] spin\\n[1:10] low pass | 10 35 70",
                "15:10:05 loop\\n15:10:35 spin\\n15:11:20 low pass | 0 30 75",
                "1\\t0:00\\tLoop\\n2\\t0:30\\tSpin\\n3\\t1:00\\tLow pass | 0 30 60",
                "0:10-0:25 loop\\n0:30-0:50 spin\\n1:00-1:15 low pass | 10 30 60",
                "0.10 loop\\n0.35 spin\\n1.05 barrel roll\\n1.40 stall turn\\n2.10 slow roll\\n2.40 low pass | 10 35 65 100 130 160",
                "[00-15s] loop\\n[15-30s] spin\\n[30-50s] low pass | 0 15 30",
                "cue\\tT+\\twhat he does\\tspd/alt\\ndrums\\t:00\\tdive\\t200\\nguitar\\t:12\\tloop\\t160\\nbridge\\t:40\\tspin\\t\\nend\\t1:05\\tlow pass\\t120 | 0 12 40 65",
                "loop at 0:10\\nspin at 0:35\\nbarrel roll at 1:02 | 10 35 62"
            })
    void eachWayToWriteAClock(String text, String begins) {
        assertThat(lines(text).stream()
                        .map(line -> String.valueOf(Math.round(Objects.requireNonNull(line.beginsS()))))
                        .collect(Collectors.joining(" ")))
                .isEqualTo(begins);
        assertThat(lines(text)).extracting(ListLine::seconds).containsOnlyNulls();
        assertThat(lines(text)).extracting(ListLine::note).containsOnlyNulls();
    }

    @ParameterizedTest
    @CsvSource({
        "14:20 loop\\n14:25 spin\\n14:30 low pass",
        "0:40 loop\\n0:20 spin\\n0:30 low pass",
        "0:40 loop\\n1:20 spin",
        "loop 0:12\\nspin 0:15\\nlow pass 0:20",
        "1:2 loop\\n1:3 spin\\n1:4 low pass"
    })
    void whatIsNoClockOfTheActIsNone(String text) {
        assertThat(lines(text)).isNotEmpty().extracting(ListLine::beginsS).containsOnlyNulls();
    }

    @Test
    void aLineWithoutATimeStaysWithoutOne() {
        assertThat(lines("0:00 run in\nloop\n0:40 spin\n1:10 low pass, 150 kt"))
                .extracting(ListLine::beginsS)
                .containsExactly(0.0, null, 40.0, 70.0);
    }
}
