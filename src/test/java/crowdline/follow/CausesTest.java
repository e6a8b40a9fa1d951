package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CausesTest {
    /** A take-off, three figures of 8, 4 and 18 s, the last of them only timed: 20, 28, 32 and 50 s. */
    private final FollowPlan plan = Small.betweenTimed(100, 40, 20, 90);

    private final Truth truth = new Truth();

    CausesTest() {
        double[] begins = {0, 20, 28, 32, 50};
        for (int f = 0; f < 4; f++) {
            truth.flown.add(new Truth.Flown(f, begins[f], begins[f + 1]));
        }
        for (double t = 0; t < 50; t += 0.1) {
            V3 mps = t < 25 ? new V3(60, 0, 0) : new V3(0, 60, 0);
            truth.instants.add(new Truth.Instant(t, new V3(0, 0, 0), mps));
        }
    }

    private Causes.Cause why(double tS, int figure) {
        return Causes.cause(plan, truth, new Score.Said(tS, figure, 1));
    }

    @Test
    void aNeighbourIsWrongByHowFarTheBoundaryIs() {
        assertThat(why(20.5, 0)).isEqualTo(Causes.Cause.WITHIN_1_S);
        assertThat(why(22.5, 0)).isEqualTo(Causes.Cause.WITHIN_3_S);
        assertThat(why(26, 0)).isEqualTo(Causes.Cause.FIGURE_LATE);
        assertThat(why(19.5, 1)).isEqualTo(Causes.Cause.WITHIN_1_S);
        assertThat(why(10, 1)).isEqualTo(Causes.Cause.EARLY);
    }

    @Test
    void whatIsNoNeighbourHasItsOwnCause() {
        assertThat(why(40, Truth.UNKNOWN)).isEqualTo(Causes.Cause.OFF_SAID);
        assertThat(why(40, Truth.BEFORE)).isEqualTo(Causes.Cause.BEFORE_SAID);
        assertThat(why(40, 1)).isEqualTo(Causes.Cause.LAP_BEHIND);
        assertThat(why(10, 2)).isEqualTo(Causes.Cause.AHEAD);
        assertThat(why(22, 3)).isEqualTo(Causes.Cause.LANDING_SAID);
        assertThat(Causes.cause(plan, truth, new Score.Said(40, 1, 0.6, 3))).isEqualTo(Causes.Cause.NAMED_SECOND);
    }

    @Test
    void onlyANeighbourOnAPathStillStraightIsWhatNoTrackShows() {
        assertThat(Causes.isStraight(truth, new Score.Said(24, 0, 1))).isTrue();
        assertThat(Causes.isStraight(truth, new Score.Said(26, 0, 1)))
                .as("it has turned")
                .isFalse();
        assertThat(Causes.isStraight(truth, new Score.Said(24, 2, 1)))
                .as("it turns first")
                .isFalse();
        assertThat(Causes.isStraight(truth, new Score.Said(18, 3, 1)))
                .as("no neighbour")
                .isFalse();
    }

    @Test
    void tableGivesEachCauseItsShareOfTheTime() {
        Causes causes = new Causes();
        causes.count(plan, truth, List.of(new Score.Said(10, 0, 1), new Score.Said(26, 0, 1)));
        assertThat(causes.table())
                .contains("wrong 50.00 %", " 50.00 %  the figure before still said, over 3 s", "2 f1 → 1 f0");
    }
}
