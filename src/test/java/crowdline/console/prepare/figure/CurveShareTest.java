package crowdline.console.prepare.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CurveShareTest {
    @Test
    void whatHardlyChangesLooksFlatAndWhatChangesFillsThePicture() {
        assertThat(CurvePicture.share(List.of(159.0, 161.0, 162.0), 40)).isLessThan(0.1);
        assertThat(CurvePicture.share(List.of(574.0, 574.0), 300)).isZero();
        assertThat(CurvePicture.share(List.of(574.0, 2140.0), 300)).isEqualTo(1);
    }
}
