package crowdline.storage.show;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Show;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.storage.Golden;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.ObjectMapper;

/** A show that says how often its duties are to be said, as it was first written. */
class DutiesGoldenTest {
    private static Show show(String golden) throws Exception {
        ShowReading reading = Fixture.read(Golden.bytes(golden));
        assertThat(reading.findings()).noneMatch(found -> found.code().equals("unknown-key"));
        return Objects.requireNonNull(reading.show());
    }

    @Test
    void itsDutiesAreReadAsTheyWereAskedFor() throws Exception {
        String act = show("show-1-duties.json").acts().get(0).id();
        assertThat(show("show-1-duties.json").remarks())
                .extracting(Remark::duty)
                .containsExactly(
                        new DutyTimes(4, 20.5, LocalTime.of(16, 30), null, null, true),
                        new DutyTimes(1, null, null, act, null, false),
                        new DutyTimes(2, null, null, null, act, false),
                        null);
    }

    @Test
    void savedAgainItSaysTheSame() throws Exception {
        byte[] golden = Golden.bytes("show-1-duties.json");
        Show show = show("show-1-duties.json");
        ObjectMapper mapper = new ObjectMapper();
        byte[] written = new ShowFile().bytes(show, Fixture.read(golden).document());
        assertThat(mapper.readTree(written)).isEqualTo(mapper.readTree(golden));
        assertThat(Fixture.read(new ShowFile().bytes(show, null)).show()).isEqualTo(show);
    }

    @Test
    void aShowFromBeforeAsksForNothing() throws Exception {
        Show before = show("show-1.json");
        assertThat(before.everyRemark()).allMatch(r -> r.duty() == null);
        assertThat(new String(new ShowFile().bytes(before, null), StandardCharsets.UTF_8))
                .doesNotContain("\"duty\":", "\"duty\" :");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"times\":4            | \"times\":0",
                "\"times\":4            | \"times\":101",
                "\"times\":4            | \"times\":2.5",
                "\"times\":4            | \"times\":\"often\"",
                "\"apartMinutes\":20.5  | \"apartMinutes\":0.9",
                "\"apartMinutes\":20.5  | \"apartMinutes\":1441",
                "\"by\":\"16:30\"       | \"by\":\"24:00\"",
                "\"by\":\"16:30\"       | \"by\":\"half past four\"",
                "\"inActs\":true        | \"inActs\":\"yes\"",
                "\"inActs\":true        | \"inGaps\":true, \"beforeAct\":\" \"",
            })
    void whatNobodyCanMeanIsRefusedWithItsPlace(String right, String wrong) throws Exception {
        String golden =
                new ObjectMapper().readTree(Golden.bytes("show-1-duties.json")).toString();
        assertThat(golden).contains(right);
        ShowReading reading = Fixture.read(golden.replace(right, wrong).getBytes(StandardCharsets.UTF_8));
        assertThat(reading.show()).isNull();
        assertThat(reading.findings()).anyMatch(f -> f.path().startsWith("remarks[0].duty"));
    }

    @Test
    void afterAndBeforeTheSameActIsRefusedInASentence() throws Exception {
        String act = show("show-1-duties.json").acts().get(0).id();
        String golden = new ObjectMapper()
                .readTree(Golden.bytes("show-1-duties.json"))
                .toString()
                .replace(
                        "{\"afterAct\":\"" + act + "\"}",
                        "{\"afterAct\":\"" + act + "\",\"beforeAct\":\"" + act + "\"}");
        ShowReading reading = Fixture.read(golden.getBytes(StandardCharsets.UTF_8));
        assertThat(reading.show()).isNull();
        assertThat(reading.findings())
                .anyMatch(f -> f.message()
                        .contains("afterAct and beforeAct are both \"" + act
                                + "\", so the duty could never be said; name two acts, or one of them only"));
    }
}
