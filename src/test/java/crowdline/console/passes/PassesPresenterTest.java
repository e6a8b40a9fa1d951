package crowdline.console.passes;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.console.paint.Form;
import crowdline.console.passes.PassesView.PassLine;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import crowdline.timing.LearnedTimes;
import crowdline.timing.Pass;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class PassesPresenterTest {
    private static final Instant THEN = Instant.parse("2030-06-01T12:00:00Z");
    private static final ActTimes PREDICTED = new ActTimes(
            "dawn", "full", List.of(new FigureTime("loop", 0, 12, 11, 13.1), new FigureTime("roll", 12, 6, 5, 7)));

    private static PassesView view(List<Pass> passes) {
        return new PassesPresenter(id -> id.equals("loop") ? "Loop" : "Slow roll", ZoneId.of("Europe/London"))
                .view(LearnedTimes.of(PREDICTED, passes), passes);
    }

    private static List<Pass> loops(double... seconds) {
        List<Pass> passes = new ArrayList<>();
        for (double s : seconds) {
            passes.add(Pass.of(
                    "p" + (passes.size() + 1),
                    "dawn",
                    "full",
                    Pass.How.BY_HAND,
                    THEN,
                    List.of(new Pass.TimedFigure("loop", 0, s))));
        }
        return passes;
    }

    @Test
    void withoutPassesItSaysSo() {
        PassesView view = view(List.of());
        assertThat(view.summary()).isEqualTo("No passes yet");
        assertThat(view.detail(0)).isEqualTo("Loop: predicted 12 s, not timed yet");
    }

    @Test
    void figureSaysPredictedLearnedBandAndPasses() {
        PassesView view = view(loops(12.5, 12.5, 12.5));
        assertThat(view.figures().get(0).predicted()).isEqualTo("12 s");
        assertThat(view.figures().get(0).passes()).isEqualTo("3");
        assertThat(view.detail(0))
                .matches("Loop: predicted 12\\.0 s, learned 12\\.[34] s \\([0-9.]+–[0-9.]+ s\\) from 3 passes");
        assertThat(view.figures().get(1).passes()).isEmpty();
        assertThat(view.summary()).isEqualTo("Passes: 3 of 3 used");
    }

    @Test
    void passSaysHowWhenAndWhetherItCounts() {
        List<Pass> passes = loops(12, 12.5);
        passes.set(1, passes.get(1).counting(false).withNote("gusty"));
        passes.add(Pass.of("w", "dawn", "full", Pass.How.WALKED, THEN, List.of()));
        List<PassLine> lines = view(passes).passes();
        assertThat(lines.get(0).title()).isEqualTo("Pass 1, by hand, 1 Jun 2030, 13:00");
        assertThat(lines.get(0).mark().word()).isEqualTo("Counts");
        assertThat(lines.get(1).mark().word()).isEqualTo("Ignored");
        assertThat(lines.get(1).spoken()).endsWith("Ignored. gusty");
        assertThat(lines.get(2).mark().word()).isEqualTo("Walked only");
    }

    @Test
    void oddPassIsMarkedWithAShapeAWordAndTheReason() {
        PassLine odd = view(loops(12, 12.4, 19.2, 13)).passes().get(2);
        assertThat(odd.mark().form()).isEqualTo(Form.DIAMOND);
        assertThat(odd.mark().word()).isEqualTo("Counts, but unusual");
        assertThat(odd.odd()).containsExactly("Loop, pass 3: 19.2 s, others 12.0–13.0 s");
        assertThat(odd.spoken()).contains("19.2 s, others");
    }
}
