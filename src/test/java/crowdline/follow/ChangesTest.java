package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How soon a changed order is noticed, counted on flights small enough to count by hand. */
class ChangesTest {
    private static final double FIGURE_S = 10;

    private static Truth flown(int... figures) {
        Truth truth = new Truth();
        for (int i = 0; i < figures.length; i++) {
            truth.flown.add(new Truth.Flown(figures[i], i * FIGURE_S, (i + 1) * FIGURE_S));
        }
        return truth;
    }

    /** Says each figure for so many seconds: figure, seconds, figure, seconds. */
    private static List<Score.Said> said(double... figuresAndSeconds) {
        List<Score.Said> said = new ArrayList<>();
        int steps = 0;
        for (int i = 0; i < figuresAndSeconds.length; i += 2) {
            for (int k = 0; k < Math.round(figuresAndSeconds[i + 1] / Score.STEP_S); k++) {
                said.add(new Score.Said(steps++ * Score.STEP_S, (int) figuresAndSeconds[i], 1));
            }
        }
        return said;
    }

    private static Changes counted(Truth truth, List<Score.Said> said) {
        Changes changes = new Changes();
        changes.count(truth, said);
        return changes;
    }

    @Test
    void whatFollowsAsPlannedIsNoChange() {
        assertThat(counted(flown(0, 1, 2), said(0, 12, 1, 9, 2, 9)).recoversS(0.5))
                .isNaN();
    }

    @Test
    void figureAfterADroppedOneRecoversWhenItIsNamedAndStays() {
        Changes changes = counted(flown(0, 2, 3), said(0, 11, 1, 2.5, 2, 1, 1, 1, 2, 4.5, 3, 10));
        assertThat(changes.recoversS(0.5)).isCloseTo(5.5, within(0.11));
    }

    @Test
    void figureNamedOnlyBeforeTheChangeDoesNotCount() {
        Changes changes = counted(flown(0, 2, 3), said(0, 9.5, 2, 1, 1, 9, 2, 0.5, 3, 10));
        assertThat(changes.recoversS(0.5)).isCloseTo(9.5, within(0.11));
    }

    @Test
    void flightThatIsNeverRightAgainCountsToItsEnd() {
        assertThat(counted(flown(0, 2), said(0, 10, 1, 10)).recoversS(0.5)).isCloseTo(FIGURE_S, within(0.11));
    }

    @Test
    void twoThatAreSwappedAreThreeChangesAndSomethingUnknownIsTwo() {
        Changes swapped = counted(flown(0, 2, 1, 3), said(0, 10, 2, 10, 1, 14, 3, 6));
        assertThat(swapped.recoversS(0.5)).isCloseTo(0, within(0.11));
        assertThat(swapped.recoversS(0.9)).isCloseTo(4, within(0.11));
        Changes unknown = counted(flown(0, Truth.UNKNOWN, 1), said(0, 13, Truth.UNKNOWN, 11, 1, 6));
        assertThat(unknown.recoversS(0.4)).isCloseTo(3, within(0.11));
        assertThat(unknown.recoversS(0.6)).isCloseTo(4, within(0.11));
    }

    @Test
    void stepBackCountsOnlyWhereItWasNotFlown() {
        Truth truth = flown(0, 1, 2);
        assertThat(counted(truth, said(0, 12, 1, 9, 2, 9)).backAFlight()).isZero();
        assertThat(counted(truth, said(0, 7, 1, 2, 0, 1, 1, 20)).backAFlight()).isZero();
        assertThat(counted(truth, said(0, 10, 1, 15, 0, 1, 2, 4)).backAFlight()).isEqualTo(1);
        assertThat(counted(truth, said(0, 10, 1, 15, Truth.UNKNOWN, 1, 0, 1, 2, 3))
                        .backAFlight())
                .isEqualTo(1);
        assertThat(counted(flown(0, 1, 0, 2), said(0, 10, 1, 10, 0, 10, 2, 10)).backAFlight())
                .isZero();
    }

    @Test
    void figureNamedTooSoonGoesAstrayAndIsNoStepBack() {
        Changes changes = counted(flown(0, 1, 2), said(0, 5, 2, 4.5, 1, 10.5, 2, 10));
        assertThat(changes.astrayAFlight()).isEqualTo(1);
        assertThat(changes.backAFlight()).isZero();
    }
}
