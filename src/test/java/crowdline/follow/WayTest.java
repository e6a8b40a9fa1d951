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
