package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class WayTest {
    private final Way way = new Way(300, 350, -2, 5, 100, 150);

    private static Seen seen(double heightM, double mps, double climbMps) {
        return new Seen(900, 4000, heightM, 0.6 * mps, -0.8 * mps, climbMps, 1, 1);
    }

    @Test
    void anyPlaceAndAnyDirectionFitsAtItsHeightAndSpeed() {
        assertThat(way.fit(seen(320, 120, 0), false, 0)).isCloseTo(3000, within(1e-9));
        assertThat(way.fit(seen(350, 150, 5), false, 0)).isCloseTo(3000, within(1e-9));
    }

    @Test
    void endOfAWayIsKnownByItsPath() {
        assertThat(way.fit(seen(320, 120, 0), true, 0)).isCloseTo(300, within(1e-9));
    }

    @Test
    void whatIsTooHighTooFastOrTooSteepFitsLess() {
        assertThat(way.fit(seen(230, 120, 0), false, 0)).isBetween(300.0, 1500.0);
        assertThat(way.fit(seen(900, 120, 0), false, 0)).isLessThan(60);
        assertThat(way.fit(seen(320, 400, 0), false, 0)).isLessThan(200);
        assertThat(way.fit(seen(320, 120, 60), false, 0)).isLessThan(30);
        assertThat(way.fit(seen(320, 120, -30), false, 0)).isLessThan(300);
    }

    @Test
    void oneThatCameInTooLowClimbsBackToItsHeight() {
        Seen climbs = seen(100, 120, 35);
        assertThat(way.fit(climbs, false, -250)).isCloseTo(3000, within(1e-9));
        assertThat(way.fit(climbs, false, 0)).as("not known to be low").isLessThan(30);
        assertThat(way.fit(climbs, false, 250)).as("too high, and it climbs").isLessThan(30);
        assertThat(way.fit(seen(100, 120, 70), false, -250))
                .as("no aircraft climbs so steeply on its way")
                .isLessThan(1000);
        assertThat(way.fit(seen(550, 120, -35), false, 250)).isCloseTo(3000, within(1e-9));
    }

    @Test
    void whatIsNotKnownSaysNothing() {
        double nan = Double.NaN;
        assertThat(way.fit(new Seen(0, 0, 320, nan, nan, nan, 1, 1), false, 0)).isCloseTo(3000, within(1e-9));
    }

    /** Else a dive back from a kilometre up explains any level flight below it, for as long as that takes. */
    @Test
    void wayKeepsToWhatIsPlannedAboutThen() throws Exception {
        Bins jet = FollowTrial.display("arranged/pilot-three-jet-trainer").plan.bins;
        int dive = IntStream.range(0, jet.figures)
                .filter(jet::isWay)
                .filter(f -> jet.zM[jet.first[f]] - jet.zM[jet.first[f + 1] - 1] > 1000)
                .findFirst()
                .orElseThrow();
        int first = jet.first[dive];
        int last = jet.first[dive + 1] - 1;
        Seen high = seen(jet.zM[first], Math.sqrt(jet.squareOfSpeed(first)), 0);
        Seen low = seen(jet.zM[last], Math.sqrt(jet.squareOfSpeed(last)), 0);
        Way begins = Objects.requireNonNull(jet.way(first));
        Way ends = Objects.requireNonNull(jet.way(last));
        assertThat(begins.fit(high, false, 0)).isCloseTo(3000, within(1e-9));
        assertThat(begins.fit(low, false, 0)).as("low already").isLessThan(60);
        assertThat(ends.fit(low, false, 0)).isCloseTo(3000, within(1e-9));
        assertThat(ends.fit(high, false, 0)).as("high still").isLessThan(60);
    }

    @Test
    void turnsBackAreWaysAndFiguresAreNot() throws Exception {
        FollowPlan jet = FollowTrial.display("arranged/pilot-three-jet-trainer").plan;
        for (int f = 0; f < jet.size(); f++) {
            boolean leads =
                    jet.name(f).startsWith("turning back") || jet.name(f).equals("running in");
            assertThat(jet.bins.isWay(f)).as(jet.name(f)).isEqualTo(leads);
        }
    }
}
