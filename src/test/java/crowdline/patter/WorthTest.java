package crowdline.patter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.show.figure.RemarkForm;
import crowdline.show.figure.RemarkKind;
import java.util.List;
import org.junit.jupiter.api.Test;

class WorthTest {
    private static long full(RemarkKind kind, double weight) {
        return Worth.of(kind, weight, RemarkForm.FULL, false);
    }

    @Test
    void eachKindIsWorthAHundredOfTheNext() {
        assertThat(full(RemarkKind.EXPLANATION, 1)).isEqualTo(100 * full(RemarkKind.FACT, 1));
        assertThat(full(RemarkKind.CALL, 1)).isEqualTo(100 * full(RemarkKind.EXPLANATION, 1));
        assertThat(full(RemarkKind.DUTY, 1)).isEqualTo(100 * full(RemarkKind.CALL, 1));
    }

    @Test
    void worthGrowsWithTheWeightUpToAThousand() {
        assertThat(full(RemarkKind.FACT, 3)).isEqualTo(3 * full(RemarkKind.FACT, 1));
        assertThat(full(RemarkKind.FACT, 1e9)).isEqualTo(1000 * full(RemarkKind.FACT, 1));
        assertThat(full(RemarkKind.FACT, 1e-12)).isPositive();
    }

    /** The full form is worth three tenths of a remark of the next kind down more; of itself for a fact. */
    @Test
    void fullFormIsWorthThreeTenthsOfTheNextKindMore() {
        assertThat(moreInFull(RemarkKind.DUTY)).isEqualTo(3 * full(RemarkKind.CALL, 2) / 10);
        assertThat(moreInFull(RemarkKind.CALL)).isEqualTo(3 * full(RemarkKind.EXPLANATION, 2) / 10);
        assertThat(moreInFull(RemarkKind.EXPLANATION)).isEqualTo(3 * full(RemarkKind.FACT, 2) / 10);
        assertThat(moreInFull(RemarkKind.FACT)).isEqualTo(3 * full(RemarkKind.FACT, 2) / 10);
    }

    private static long moreInFull(RemarkKind kind) {
        return full(kind, 2) - Worth.of(kind, 2, RemarkForm.SHORT, false);
    }

    @Test
    void whatWasOnThePlanIsWorthATwentiethOfTheNextKindMore() {
        long kept = Worth.of(RemarkKind.EXPLANATION, 1, RemarkForm.FULL, true) - full(RemarkKind.EXPLANATION, 1);

        assertThat(kept).isEqualTo(full(RemarkKind.FACT, 1) / 20);
    }

    @Test
    void rulesOutOfTheirRangesAreRefusedWithTheRange() {
        assertThatThrownBy(() -> new PatterRules(-0.1, 1, 2, 8, 3, 0.5, 6, 2, 60))
                .hasMessage("breathS is -0.1; it must be 0.0 or more");
        assertThatThrownBy(() -> new PatterRules(0.6, -1, 2, 8, 3, 0.5, 6, 2, 60))
                .hasMessage("callEndsAtLeastBeforeS is -1.0; it must be 0.0 or more");
        assertThatThrownBy(() -> new PatterRules(0.6, 1, 1, 8, 3, 0.5, 6, 2, 60))
                .hasMessage("callEndsAtMostBeforeS is 1.0; it must be 1.1 or more");
        assertThatThrownBy(() -> new PatterRules(0.6, 1, 2, 1.9, 3, 0.5, 6, 2, 60))
                .hasMessage("callStartsAtMostBeforeS is 1.9; it must be 2.0 or more");
        assertThatThrownBy(() -> new PatterRules(0.6, 1, 2, 8, -1, 0.5, 6, 2, 60))
                .hasMessage("runPastS is -1.0; it must be 0.0 or more");
        assertThatThrownBy(() -> new PatterRules(0.6, 1, 2, 8, 3, Double.NaN, 6, 2, 60))
                .hasMessage("spareS is NaN; it must be 0.0 or more");
        assertThatThrownBy(() -> new PatterRules(0.6, 1, 2, 8, 3, 0.5, 0, 2, 60))
                .hasMessage("leastFillerGapS is 0.0; it must be 0.1 or more");
        assertThatThrownBy(() -> new PatterRules(0.6, 1, 2, 8, 3, 0.5, 6, 2, Double.POSITIVE_INFINITY))
                .hasMessage("openEndS is Infinity; it must be 0.1 or more");
    }

    @Test
    void rulesAtTheEndsOfTheirRangesAreTaken() {
        assertThat(new PatterRules(0, 0, 0.1, 0.1, 0, 0, 0.1, 0, 0.1).spareS()).isZero();
    }

    @Test
    void slotMustBeInOrder() {
        assertThat(new Slot("loop", 5, 5, 5, 5, List.of()).endS()).isEqualTo(5);
        String order = "; these must be in the order start, low, end, high";
        assertThatThrownBy(() -> new Slot("loop", 5, 10, 4, 11, List.of())).hasMessageEndingWith(order);
        assertThatThrownBy(() -> new Slot("loop", 5, 10, 10.5, 11, List.of()))
                .hasMessage("slot loop from 5.0 s to 10.0 s with an end between 10.5 and 11.0 s" + order);
        assertThatThrownBy(() -> new Slot("loop", 5, 10, 9, 9.5, List.of())).hasMessageEndingWith(order);
        assertThatThrownBy(() -> new Slot("loop", 5, 10, 9, Double.POSITIVE_INFINITY, List.of()))
                .hasMessageEndingWith(order);
    }

    @Test
    void spokenLengthLiesInItsBandAboveNothing() {
        String band = "; it must be above 0 and lie in its band";
        assertThat(new SpokenLength(3, 3, 3)).isEqualTo(SpokenLength.of(3));
        assertThatThrownBy(() -> SpokenLength.of(0)).hasMessage("spoken length 0.0 s with band 0.0 to 0.0" + band);
        assertThatThrownBy(() -> new SpokenLength(3, 3.1, 4)).hasMessageEndingWith(band);
        assertThatThrownBy(() -> new SpokenLength(3, 2, 2.9)).hasMessageEndingWith(band);
        assertThatThrownBy(() -> new SpokenLength(3, 2, Double.POSITIVE_INFINITY))
                .hasMessageEndingWith(band);
    }

    @Test
    void slotsMustFollowOneAnotherAndDiffer() {
        Slot loop = Acts.slot("loop", 5, 10);
        assertThat(Acts.request(0, List.of(loop, Acts.slot("roll", 5, 8))).slots())
                .hasSize(2);
        assertThatThrownBy(() -> Acts.request(0, List.of(loop, Acts.slot("roll", 4.9, 8))))
                .hasMessage("slot roll starts at 4.9 s, before the one ahead of it; slots must be in the order of their"
                        + " starts");
        assertThatThrownBy(() -> Acts.request(0, List.of(loop, Acts.slot("loop", 10, 12))))
                .hasMessage("two slots have the id loop; ids must differ");
        assertThatThrownBy(() -> Acts.request(Double.NaN, List.of())).hasMessage("nowS is NaN; it must be a number");
    }
}
