package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A stone thrown up at 20 m/s under 10 m/s² from nothing: z = 20 t − 5 t², so everything is known. */
class IntegratorTest {
    private interface End {
        double of(double t, double[] y);
    }

    /** Ends where told, and has run out of speed below a speed. */
    private record Stone(End end, double leastMps, double longestS) implements Leg {
        @Override
        public double[] start() {
            return new double[] {0, 0, 0, 20};
        }

        @Override
        public void rates(double t, double[] y, double[] dy) {
            dy[0] = 0;
            dy[1] = 0;
            dy[2] = y[3];
            dy[3] = -10;
        }

        @Override
        public double end(double t, double[] y) {
            return end.of(t, y);
        }

        @Override
        public boolean outOfSpeed(double t, double[] y) {
            return y[3] < leastMps;
        }

        @Override
        public void look(double t, double[] y, Look look) {
            look.direction(0, 0, 1);
        }

        @Override
        public FlightState after(double tS, double t, double[] y) {
            return new FlightState(tS, new Vec(y[0], y[1], y[2]), y[3], Vec.UP, new Vec(1, 0, 0));
        }
    }

    private static Integrator.Result fly(End end, double leastMps) {
        return Rig.unwatched().fly(new Stone(end, leastMps, 60), 5);
    }

    @Test
    void endIsFoundWhereItsFunctionIsNothing() {
        Integrator.Result at15 = fly((t, y) -> y[2] - 15, -100);
        Integrator.Result falling = fly((t, y) -> -15 - y[2], -100);

        assertThat(at15.outcome()).isEqualTo(Integrator.Outcome.FLOWN);
        assertThat(at15.moment().tS()).isCloseTo(5 + 1, within(1e-8));
        assertThat(at15.moment().place().z()).isCloseTo(15, within(1e-8));
        assertThat(at15.moment().speedMps()).isCloseTo(10, within(1e-7));
        // −15 = 20 t − 5 t² after 2 + sqrt(7) seconds.
        assertThat(falling.moment().tS()).isCloseTo(5 + 2 + Math.sqrt(7), within(1e-8));
    }

    @Test
    void whatIsOverAlreadyHasNoLength() {
        assertThat(fly((t, y) -> y[2], -100).moment().tS()).isEqualTo(5);
    }

    @Test
    void speedThatRunsOutIsNoticedWithinATenthOfASecond() {
        Integrator.Result result = fly((t, y) -> y[2] - 1000, 4);

        assertThat(result.outcome()).isEqualTo(Integrator.Outcome.OUT_OF_SPEED);
        assertThat(result.moment().tS()).isBetween(5 + 1.6, 5 + 1.7);
        assertThat(result.moment().speedMps()).isBetween(3.0, 4.0);
    }

    @Test
    void legThatNeverEndsIsLeftAfterTheLongestItMayLast() {
        Integrator.Result result = Rig.unwatched().fly(new Stone((t, y) -> -1, -1000, 7), 5);

        assertThat(result.outcome()).isEqualTo(Integrator.Outcome.NEVER_ENDS);
        assertThat(result.moment().tS()).isBetween(5 + 7.0, 5 + 9.0);
    }

    @Test
    void watcherSeesStartEndAndEveryPointOfTheGridWhereItIs() {
        List<Double> times = new ArrayList<>();
        Integrator.Watcher watcher = (leg, tS, legS, y) -> {
            times.add(Math.round(tS * 1e6) / 1e6);
            assertThat(tS).isCloseTo(5.25 + legS, within(1e-9));
            assertThat(y[2]).isCloseTo(20 * legS - 5 * legS * legS, within(1e-6));
        };
        new Integrator(0.5, Integrator.FINE, watcher).fly(new Stone((t, y) -> t - 1.5, -100, 60), 5.25);

        assertThat(times).containsExactly(5.25, 5.5, 6.0, 6.5, 6.75);
    }
}
