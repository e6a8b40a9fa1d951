package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** What is said of a belief in two figures of 50 and 40 bins, whose chances are given. */
class AnswerTest {
    private final FollowPlan plan = Small.plan(50, 40);
    private final Belief belief = new Belief(plan.bins);
    private final Doubt doubt = new Doubt(new Order(plan.bins));

    private void in(int figure, int bin, double chance) {
        belief.add(0, plan.bins.first[figure] + bin, Moments.of(chance, 100, 50), 1);
    }

    private FollowNow said(boolean silent) {
        belief.settle(0, 0, 0);
        return new Answer(plan, belief, doubt).at(100, silent, 0.2, false);
    }

    /** As a loop and a half Cuban, which begin alike. */
    @Test
    void whereTwoBeginAlikeBothAreNamedUntilOneIsSure() {
        in(0, 15, 0.6);
        in(1, 12, 0.4);
        FollowNow both = said(false);
        assertThat(both.figureIndex()).isZero();
        assertThat(both.or()).map(FollowNow.Candidate::figureIndex).contains(1);
        assertThat(both.isSure()).isFalse();
    }

    @Test
    void whatIsHardlyLikelyIsNotNamedToo() {
        in(0, 15, 0.9);
        in(1, 12, 0.1);
        assertThat(said(false).or()).isEmpty();
    }

    @Test
    void figureThatLeadsIntoTheNextIsNamedAlone() {
        in(0, 48, 0.4);
        in(1, 1, 0.6);
        assertThat(said(false).figureIndex()).isEqualTo(1);
        assertThat(said(false).or()).isEmpty();
    }

    @Test
    void nextFigureIsNotNamedBesideOneThatEnds() {
        in(0, 48, 0.6);
        in(1, 1, 0.4);
        assertThat(said(false).figureIndex()).isZero();
        assertThat(said(false).or()).isEmpty();
    }

    @Test
    void aircraftThatMovesMayHaveBegun() {
        belief.before = 1;
        belief.settle(0, 0, 0);
        assertThat(new Answer(plan, belief, doubt).at(100, false, 0.2, false).isSure())
                .isTrue();
        FollowNow moving = new Answer(plan, belief, doubt).at(100, false, 0.2, true);
        assertThat(moving.state()).isEqualTo(FollowNow.State.BEFORE);
        assertThat(moving.isSure()).isFalse();
    }

    private void isSaid(FollowNow.State state, int figure, double confidence) {
        FollowNow now = said(false);
        assertThat(now.state()).isEqualTo(state);
        assertThat(now.figureIndex()).isEqualTo(figure);
        assertThat(now.confidence()).isCloseTo(confidence, within(1e-9));
    }

    @Test
    void likeliestFigureIsSaidWithHowFarThroughItIs() {
        in(0, 40, 0.3);
        in(1, 19, 0.4);
        in(1, 31, 0.2);
        belief.off = 0.1;
        isSaid(FollowNow.State.ON_PLAN, 1, 0.6);
        assertThat(said(false).phase()).as("bin 23, in its middle").isCloseTo(23.5 / 40, within(1e-9));
        assertThat(said(false).tS()).isEqualTo(100);
        assertThat(said(false).silentS()).isEqualTo(0.2);
    }

    @Test
    void figuresThatMayBeFlownAreNamedTheLikeliestFirst() {
        in(0, 10, 0.05);
        in(1, 10, 0.95);
        assertThat(said(false).alternatives())
                .containsExactly(
                        new FollowNow.Candidate(1, 0.95, 10.5 / 40), new FollowNow.Candidate(0, 0.05, 10.5 / 50));
    }

    @Test
    void figureUnderFiveInAHundredIsNotNamed() {
        in(0, 10, 0.96);
        in(1, 10, 0.04);
        assertThat(said(false).alternatives())
                .extracting(FollowNow.Candidate::figureIndex)
                .containsExactly(0);
    }

    @Test
    void figureIsSaidFromAnEvenChanceOn() {
        in(0, 10, 0.5);
        in(1, 10, 0.3);
        belief.off = 0.2;
        isSaid(FollowNow.State.ON_PLAN, 0, 0.5);
    }

    @Test
    void figureThatIsOnlyTheLikeliestIsUnsure() {
        in(0, 10, 0.45);
        in(1, 10, 0.3);
        belief.off = 0.25;
        isSaid(FollowNow.State.UNSURE, 0, 0.45);
    }

    @Test
    void actThatHasMostLikelyNotBegunHasNoFigure() {
        in(0, 10, 0.25);
        belief.before = 0.4;
        belief.off = 0.35;
        isSaid(FollowNow.State.BEFORE, -1, 0.4);
        assertThat(said(false).phase()).isZero();
    }

    @Test
    void betweenNotBegunAndAFigureAsLikelyItIsTheFigure() {
        in(0, 10, 0.5);
        belief.before = 0.5;
        isSaid(FollowNow.State.ON_PLAN, 0, 0.5);
    }

    @Test
    void actThatIsMostLikelyOverIsAfterItsLastFigure() {
        in(1, 10, 0.25);
        belief.before = 0.1;
        belief.after = 0.4;
        belief.off = 0.25;
        isSaid(FollowNow.State.AFTER, 2, 0.4);
        assertThat(said(false).phase()).isZero();
    }

    @Test
    void whatIsNotInThePlanNamesTheFigureThatComesClosest() {
        in(1, 10, 0.4);
        belief.off = 0.35;
        belief.offGently = 0.25;
        isSaid(FollowNow.State.OFF_PLAN, 1, 0.6);
    }

    @Test
    void whatIsNotInThePlanIsUnsureUnderAnEvenChance() {
        in(0, 10, 0.3);
        in(1, 10, 0.25);
        belief.off = 0.45;
        isSaid(FollowNow.State.UNSURE, 0, 0.45);
    }

    @Test
    void silentReceiverIsNeverSure() {
        doubt.told(0);
        in(0, 10, 1);
        isSaid(FollowNow.State.ON_PLAN, 0, 1);
        FollowNow silent = said(true);
        assertThat(silent.state()).isEqualTo(FollowNow.State.UNSURE);
        assertThat(silent.confidence()).isEqualTo(0.85);
    }

    @Test
    void silenceBeforeTheActChangesNothingButTheConfidence() {
        belief.before = 1;
        FollowNow silent = said(true);
        assertThat(silent.state()).isEqualTo(FollowNow.State.BEFORE);
        assertThat(silent.confidence()).isEqualTo(0.85);
    }
}
