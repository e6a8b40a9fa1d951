package crowdline.edit.act;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.show.Act;
import crowdline.show.Variant;
import crowdline.show.figure.Figure;
import crowdline.show.figure.Remark;
import crowdline.show.figure.RemarkKind;
import crowdline.show.figure.Translation;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

class OldTransitsTest {
    @Test
    void whatIsLeftOfAWayKeepsWhoSaysItInBothLanguages() {
        Remark said = Remark.of("r", RemarkKind.FACT, "It took six winters.")
                .saidBy("Ben")
                .translated(new Translation("fr", "Il a fallu six hivers.", "Claire"));
        Figure way = new Figure(
                "way", "reposition", "flying on", null, null, 10.0, null, null, null, true, List.of(), List.of(said));
        Act act = new Act(
                "a",
                "a",
                "ada",
                "wren",
                LocalTime.of(14, 0),
                10,
                null,
                List.of(way),
                List.of(new Variant("full", null, List.of("way"))),
                List.of());
        assertThat(new OldTransits(act).leftOver()).containsExactly(said);
    }
}
