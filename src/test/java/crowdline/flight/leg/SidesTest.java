package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.show.figure.Element.Side;
import org.junit.jupiter.api.Test;

/** The crowd looks along the second axis: to the right of the aircraft when it flies to the commentator's right. */
class SidesTest {
    private static int of(Side side, Vec direction, Vec up) {
        return Sides.of(side, new FlightState(0, new Vec(0, 0, 500), 60, direction, up));
    }

    @Test
    void rightAndLeftArePilotsHoweverHeFlies() {
        for (Vec direction : new Vec[] {new Vec(1, 0, 0), new Vec(-1, 0, 0), new Vec(0, 1, 0)}) {
            for (Vec up : new Vec[] {Vec.UP, Vec.UP.times(-1)}) {
                assertThat(of(Side.RIGHT, direction, up)).isEqualTo(1);
                assertThat(of(Side.LEFT, direction, up)).isEqualTo(-1);
            }
        }
    }

    @Test
    void crowdIsOnTheRightOfWhoFliesToTheCommentatorsRight() {
        assertThat(of(Side.CROWD, new Vec(1, 0, 0), Vec.UP)).isEqualTo(1);
        assertThat(of(Side.AWAY, new Vec(1, 0, 0), Vec.UP)).isEqualTo(-1);
        assertThat(of(Side.CROWD, new Vec(-1, 0, 0), Vec.UP)).isEqualTo(-1);
        assertThat(of(Side.AWAY, new Vec(-1, 0, 0), Vec.UP)).isEqualTo(1);
    }

    @Test
    void headDownTheCrowdIsOnTheOtherSide() {
        assertThat(of(Side.CROWD, new Vec(1, 0, 0), Vec.UP.times(-1))).isEqualTo(-1);
        assertThat(of(Side.AWAY, new Vec(1, 0, 0), Vec.UP.times(-1))).isEqualTo(1);
    }

    @Test
    void straightUpTheWingsDecide() {
        // With the wheels to the right, as after a pull from flight to the right.
        assertThat(of(Side.CROWD, Vec.UP, new Vec(-1, 0, 0))).isEqualTo(1);
        assertThat(of(Side.CROWD, Vec.UP, new Vec(1, 0, 0))).isEqualTo(-1);
    }

    /** Straight at the crowd or away from it neither side is nearer; the pilot's right counts as away. */
    @Test
    void flyingStraightAtTheCrowdAwayIsThePilotsRight() {
        assertThat(of(Side.AWAY, new Vec(0, -1, 0), Vec.UP)).isEqualTo(1);
        assertThat(of(Side.CROWD, new Vec(0, 1, 0), Vec.UP)).isEqualTo(-1);
    }
}
