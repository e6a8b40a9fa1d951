package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class WayTest {
    private final Way way = new Way(300, 350, -2, 5, 100, 150);

    private static Seen seen(double heightM, double mps, double climbMps) {
        return new Seen(900, 4000, heightM, 0.6 * mps, -0.8 * mps, climbMps, 1, 1);
    }

    @Test
    void anyPlaceAndAnyDirectionFitsAtItsHeightAndSpeed() {
        assertThat(way.fit(seen(320, 120, 0), false)).isCloseTo(3000, within(1e-9));
        assertThat(way.fit(seen(350, 150, 5), false)).isCloseTo(3000, within(1e-9));
    }

    @Test
    void endOfAWayIsKnownByItsPath() {
        assertThat(way.fit(seen(320, 120, 0), true)).isCloseTo(300, within(1e-9));
    }

    @Test
    void whatIsTooHighTooFastOrTooSteepFitsLess() {
        assertThat(way.fit(seen(230, 120, 0), false)).isBetween(300.0, 1500.0);
        assertThat(way.fit(seen(900, 120, 0), false)).isLessThan(60);
        assertThat(way.fit(seen(320, 400, 0), false)).isLessThan(200);
        assertThat(way.fit(seen(320, 120, 60), false)).isLessThan(30);
        assertThat(way.fit(seen(320, 120, -30), false)).isLessThan(300);
    }

    @Test
    void whatIsNotKnownSaysNothing() {
        double nan = Double.NaN;
        assertThat(way.fit(new Seen(0, 0, 320, nan, nan, nan, 1, 1), false)).isCloseTo(3000, within(1e-9));
    }

    @Test
    void turnsBackAreWaysAndFiguresAreNot() throws Exception {
        FollowPlan jet = FollowTrial.display("arranged/pilot-three-jet-trainer").plan;
        for (int f = 0; f < jet.size(); f++) {
            boolean leads =
                    jet.name(f).startsWith("turning back") || jet.name(f).equals("running in");
            assertThat(jet.bins.way(f) != null).as(jet.name(f)).isEqualTo(leads);
        }
    }
}
