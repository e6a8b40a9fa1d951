package crowdline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SignedSecondsTest {
    @Test
    void whatIsJustBelowNothingIsNotMinusNothing() {
        assertThat(DebriefSheet.signed(-0.04)).isEqualTo("+0.0 s");
        assertThat(DebriefSheet.signed(-0.06)).isEqualTo("-0.1 s");
        assertThat(DebriefSheet.signed(1.25)).isEqualTo("+1.2 s");
        assertThat(DebriefSheet.signed(null)).isEmpty();
    }
}
