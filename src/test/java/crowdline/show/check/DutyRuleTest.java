package crowdline.show.check;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Act;
import crowdline.show.HarbourDay;
import crowdline.show.Show;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.figure.DutyTimes;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Two acts of ten minutes at 14:00 and at 15:00. */
class DutyRuleTest {
    private static final Remark DUTY = Remark.of("thanks", RemarkKind.DUTY, "Thank the stewards.");

    private static Act act(String id, LocalTime slot, Remark... remarks) {
        return HarbourDay.act(id, slot, List.of(), remarks);
    }

    private static List<String> found(List<Act> acts, Remark... remarks) {
        Show show = HarbourDay.of(acts, remarks);
        List<String> found = new ArrayList<>();
        new DutyRule()
                .check(
                        show,
                        new Catalogue(List.of()),
                        f -> found.add(f.severity() + " " + f.code() + " " + f.path() + ": " + f.message()));
        return found;
    }

    private static List<String> of(
            int times,
            @Nullable Double apartMinutes,
            @Nullable LocalTime by,
            @Nullable String after,
            @Nullable String before) {
        return found(
                List.of(act("solo", LocalTime.of(14, 0)), act("last", LocalTime.of(15, 0))),
                DUTY.asked(new DutyTimes(times, apartMinutes, by, after, before, false)));
    }

    /** 70 minutes from the first slot to the end of the last. */
    @Test
    void aDutyIsAskedForNoOftenerThanThereIsTime() {
        assertThat(of(8, 10.0, null, null, null)).isEmpty();
        assertThat(of(9, 10.0, null, null, null))
                .containsExactly(
                        "WARNING duty-does-not-fit remarks[0].duty: the duty \"Thank the stewards.\" is asked for 9 times, 10"
                                + " minutes apart, but there are only 70 minutes for it; ask for it less often, or closer"
                                + " together");
        assertThat(of(5, null, null, null, null)).isEmpty();
        assertThat(of(6, null, null, null, null)).hasSize(1);
    }

    @Test
    void itsTimeEndsWithItsHourOrTheActAfterIt() {
        assertThat(of(4, 10.0, LocalTime.of(14, 30), null, null)).isEmpty();
        assertThat(of(4, 10.0, LocalTime.of(14, 29), null, null)).hasSize(1);
        assertThat(of(6, 10.0, null, "solo", "last")).isEmpty();
        assertThat(of(7, 10.0, null, "solo", "last")).hasSize(1);
        assertThat(of(1, null, null, "last", "solo"))
                .containsExactly(
                        "WARNING duty-does-not-fit remarks[0].duty: the duty \"Thank the stewards.\" is to be said before its"
                                + " time begins; change afterAct, beforeAct or by");
        assertThat(of(1, null, LocalTime.of(13, 0), null, null))
                .as("before the first act there is time too")
                .isEmpty();
    }

    @Test
    void howOftenIsAskedAboutBeyondWhatAnybodyListensTo() {
        assertThat(of(20, 1.0, null, null, null)).isEmpty();
        assertThat(of(21, 1.0, null, null, null))
                .containsExactly(
                        "WARNING duty-very-often remarks[0].duty.times: the duty \"Thank the stewards.\" is asked for 21 times"
                                + " a day; check that this is meant");
    }

    @Test
    void aDutyNamesActsOfTheShow() {
        assertThat(of(1, null, null, "sole", null))
                .containsExactly(
                        "WARNING duty-names-no-act remarks[0].duty.afterAct: the duty \"Thank the stewards.\" names the act"
                                + " \"sole\", which the show does not have, so Live takes no notice of it; did you mean"
                                + " \"solo\"?");
        assertThat(of(1, null, null, null, "x"))
                .containsExactly(
                        "WARNING duty-names-no-act remarks[0].duty.beforeAct: the duty \"Thank the stewards.\" names the act \"x\","
                                + " which the show does not have, so Live takes no notice of it; name one that is there");
    }

    @Test
    void howOftenIsAskedOfTheDutiesOfTheDayAlone() {
        Remark fact = Remark.of("fact", RemarkKind.FACT, "It is round.").asked(DutyTimes.ONCE);
        Remark own = Remark.of("own", RemarkKind.DUTY, "Thanks.").asked(DutyTimes.ONCE);
        assertThat(found(List.of(act("solo", LocalTime.NOON, own)), DUTY, fact))
                .containsExactly(
                        "NOTE duty-without-meaning remarks[1].duty: the remark \"fact\" is no duty, so how often it is"
                                + " to be said means nothing; only a duty among the remarks of the show is said so often a"
                                + " day",
                        "NOTE duty-without-meaning acts[0].remarks[0].duty: the remark \"own\" belongs to an act, not"
                                + " to the day, so how often it is to be said means nothing; only a duty among the remarks"
                                + " of the show is said so often a day");
    }

    @Test
    void aShowWithoutActsHasAllTheTimeOfTheDay() {
        assertThat(found(List.of(), DUTY.asked(new DutyTimes(9, 60.0, null, null, null, false))))
                .isEmpty();
    }
}
