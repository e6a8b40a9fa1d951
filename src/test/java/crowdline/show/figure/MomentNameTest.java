package crowdline.show.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class MomentNameTest {
    @Test
    void everyKindIsReadBackFromItsWords() {
        for (MomentKind kind : MomentKind.values()) {
            assertThat(MomentName.of(kind.words())).contains(MomentName.first(kind));
            assertThat(MomentName.of(kind.words() + " 12")).contains(new MomentName(kind, 12));
            assertThat(new MomentName(kind, 12).words()).isEqualTo(kind.words() + " 12");
        }
    }

    @Test
    void noTwoKindsAreCalledTheSame() {
        assertThat(Arrays.stream(MomentKind.values()).map(MomentKind::words)).doesNotHaveDuplicates();
    }

    @Test
    void theFirstOfAKindHasNoNumber() {
        assertThat(MomentName.first(MomentKind.OVER_THE_TOP).words()).isEqualTo("over the top");
        assertThat(MomentName.of("over the top 1")).contains(MomentName.first(MomentKind.OVER_THE_TOP));
    }

    @Test
    void capitalsAndSpacesDoNotMatter() {
        assertThat(MomentName.of("  Over  the Top   2 ")).contains(new MomentName(MomentKind.OVER_THE_TOP, 2));
    }

    @Test
    void anythingElseIsNoMoment() {
        for (String words :
                new String[] {"", "over", "over the top 0", "over the top 02", "over the top two", "rolls 1000"}) {
            assertThat(MomentName.of(words)).as(words).isEmpty();
        }
    }

    @Test
    void aRemarkSaysWhatItIsTiedTo() {
        Remark why = Remark.of("why", RemarkKind.EXPLANATION, "Why.");
        MomentName begins = MomentName.first(MomentKind.SPIN_BEGINS);
        MomentName top = new MomentName(MomentKind.OVER_THE_TOP, 2);
        assertThat(why.tie()).isEmpty();
        assertThat(why.tied(top, null).tie()).isEqualTo("at \"over the top 2\"");
        assertThat(why.tied(begins, top).tie()).isEqualTo("from \"the spin begins\" to \"over the top 2\"");
        assertThat(why.tied(null, top).tie()).isEqualTo("before \"over the top 2\"");
        assertThat(Remark.of("call", RemarkKind.CALL, "Now.").tied(top, null).tie())
                .isEmpty();
    }

    @Test
    void countsFromOne() {
        assertThatThrownBy(() -> new MomentName(MomentKind.PIVOTS, 0)).hasMessageContaining("from 1 to 999, not 0");
        assertThatThrownBy(() -> new MomentName(MomentKind.PIVOTS, 1000)).hasMessageContaining("not 1000");
    }
}
