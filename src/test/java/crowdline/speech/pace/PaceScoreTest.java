package crowdline.speech.pace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.speech.say.SpokenText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PaceScoreTest {
    private static TimedRemark said(int letters, double factor) {
        SpokenText text = new SpokenText("w", "w".repeat(letters));
        return new TimedRemark(Pace.DEFAULT.seconds(text) * factor, text);
    }

    @Test
    void twoRemarksForetellEachOtherByTheirRatio() {
        // Each alone scales the default by its own factor: 1 foretells 1.25 s as 1, and 1.25 foretells 1 s as 1.25.
        PaceScore score =
                PaceScore.leaveOneOut(List.of(said(20, 1), said(60, 1.25))).orElseThrow();
        assertThat(score.meanError()).isCloseTo((0.2 + 0.25) / 2, within(1e-12));
        assertThat(score.shareUnderTenth()).isZero();
    }

    @Test
    void steadySpeakerIsForetoldExactly() {
        List<TimedRemark> steady = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            steady.add(said(15 + 7 * i, 1.1));
        }
        PaceScore score = PaceScore.leaveOneOut(steady).orElseThrow();
        assertThat(score.remarks()).isEqualTo(12);
        assertThat(score.meanError()).isLessThan(1e-9);
        assertThat(score.shareUnderTenth()).isEqualTo(1);
    }

    @Test
    void tenRemarksAreScoredByTheModelOfTen() {
        // No scaling of the default foretells a speaker with the same letters and ten times the fixed time.
        List<TimedRemark> slowToStart = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            SpokenText text = new SpokenText("w", "w".repeat(10 + 9 * i));
            slowToStart.add(new TimedRemark(0.5 + 0.06 * text.letters(), text));
        }
        double ten = PaceScore.leaveOneOut(slowToStart).orElseThrow().meanError();
        double nine =
                PaceScore.leaveOneOut(slowToStart.subList(0, 9)).orElseThrow().meanError();
        assertThat(ten).isLessThan(nine / 2);
    }

    @Test
    void oneRemarkTellsNothing() {
        assertThat(PaceScore.leaveOneOut(List.of(said(20, 1)))).isEmpty();
    }

    @Test
    void scoreIsSaidInPercentAndCounted() {
        assertThat(PaceScore.inWords(Optional.of(new PaceScore(12, 0.0456, 0.75))))
                .isEqualTo("Each predicted from the others: mean error 4.6%, 9 of 12 within 10%.");
        assertThat(PaceScore.inWords(Optional.empty())).startsWith("There are too few to say how good it is");
    }
}
