package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.storage.file.ShowFileException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What the demo act looks like to the follower. */
class BinsTest {
    private static FollowPlan plan;

    @BeforeAll
    static void predict() throws ShowFileException {
        plan = FollowTrial.display("jackanapes-solo").plan;
    }

    private static int figure(String id) {
        for (int f = 0; f < plan.size(); f++) {
            if (plan.figureId(f).equals(id)) {
                return f;
            }
        }
        throw new IllegalArgumentException(id);
    }

    @Test
    void whatOnlyTurnsRoundIsKnown() {
        List<String> round = new ArrayList<>();
        for (int f = 0; f < plan.size(); f++) {
            if (plan.bins.round[f]) {
                round.add(plan.figureId(f));
            }
        }
        assertThat(round).containsExactly("first-rest", "second-rest", "last-turn", "second-turn-right", "steep-turn");
    }

    /** In the prediction the place has been passed already when the height is reached; on the day it may not have been. */
    @Test
    void lineOfNoLengthCanBeWaitedOnUntilItsPlace() {
        int last = plan.bins.first[figure("last-turn") + 1] - 1;
        assertThat(plan.bins.xM[last]).isGreaterThan(-200);
        assertThat(plan.bins.lineEnd[last]).isEqualTo(last + 1);
        assertThat(plan.bins.toHeight[last]).isFalse();
        assertThat(plan.bins.goalM[last]).isEqualTo(-200);
    }

    /** A run that is a second long was waited on for three, and a turn back for its place not at all. */
    @Test
    void wayEndsWhereTheNextFigureBeginsHoweverLongItTakes() throws ShowFileException {
        Bins act = FollowTrial.display("arranged/flights-for-the-trial").plan.bins;
        for (int f = 0; f + 1 < act.figures; f++) {
            if (act.isWay(f)) {
                int end = act.first[f + 1];
                assertThat(act.lineEnd[end - 1]).isEqualTo(end);
                assertThat(act.toHeight[end - 1]).isFalse();
                assertThat(act.goalM[end - 1]).isCloseTo(act.xM[end], within(20.0));
            }
        }
        int run = 12;
        assertThat(act.length(run)).isLessThan(6);
        assertThat(act.mayEndEarly(act.first[run])).as("waits for nothing").isFalse();
        assertThat(act.mayEndEarly(act.first[15])).as("a turn back waits").isTrue();
    }

    /** However long it slows down for its spin. */
    @Test
    void spinBeginsWhenTheAircraftIsSlowEnough() throws ShowFileException {
        Bins act = FollowTrial.display("wrackenholt/teasel-solo").plan.bins;
        int slowing = act.first[0] + 5;
        assertThat(act.toSpeed[slowing]).isTrue();
        int spins = act.lineEnd[slowing];
        while (act.toSpeed[spins]) {
            spins = act.lineEnd[spins];
        }
        assertThat(spins).isBetween(act.first[0] + 10, act.half(0));
        assertThat(act.toSpeed[spins]).isFalse();
        assertThat(act.vzMps[spins - 2]).as("level").isGreaterThan(-5);
        assertThat(act.vzMps[spins + 15]).as("in the spin").isLessThan(-15);
    }

    @Test
    void turnIsNoStraightLine() {
        int turn = figure("steep-turn");
        assertThat(plan.bins.elastic[plan.bins.half(turn)]).isFalse();
        assertThat(plan.bins.half(turn)).isEqualTo((plan.bins.first[turn] + plan.bins.first[turn + 1]) / 2);
        assertThat(Small.plan(50, 40).bins.elastic[20])
                .as("level flight is one")
                .isTrue();
    }

    @Test
    void heightOfALineIsInMetres() {
        int spin = figure("spin");
        double goal = 0;
        for (int i = plan.bins.first[spin]; i < plan.bins.first[spin + 1]; i++) {
            goal = plan.bins.lineEnd[i] > 0 && plan.bins.toHeight[i] ? plan.bins.goalM[i] : goal;
        }
        assertThat(goal).isEqualTo(950 * 0.3048);
    }

    @Test
    void takeOffEndsWithTheWayInToTheFirstFigure() {
        int dive = plan.bins.first[figure("dive-in")];
        int last = dive - 1;
        assertThat(plan.bins.isLead(last)).isTrue();
        assertThat(plan.bins.xM[last]).isCloseTo(plan.bins.xM[dive] - 0.2 * plan.bins.vxMps[dive], within(1e-9));
        assertThat(plan.bins.isLead(plan.bins.leadFrom[0] - 1)).isFalse();
        assertThat(last - plan.bins.leadFrom[0] + 1).isEqualTo(30);
        assertThat(plan.bins.mayEndEarly(plan.bins.leadFrom[0])).isFalse();
        assertThat(plan.bins.mayEndEarly(plan.bins.leadFrom[0] - 1)).isTrue();
    }
}
