package crowdline.flight.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlightStateTest {
    private static final Offset<Double> SAME = within(1e-9);

    private static FlightState heading(double rad) {
        return new FlightState(0, new Vec(0, 0, 300), 60, new Vec(Math.cos(rad), Math.sin(rad), 0), Vec.UP);
    }

    /** Turned upwards about the right wing, through any angle. */
    private static FlightState pitched(FlightState m, double rad) {
        Vec direction = m.direction().turnedAbout(m.rightWing(), rad);
        return new FlightState(m.tS(), m.place(), m.speedMps(), direction, m.up().turnedAbout(m.rightWing(), rad));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.4, 1.6, 3, -0.4, -2.9})
    void headingIsTheSameLevelAndPulledStraightUpOrPushedStraightDown(double rad) {
        FlightState level = heading(rad);

        assertThat(level.headingRad()).isCloseTo(rad, SAME);
        assertThat(pitched(level, 1).headingRad()).isCloseTo(rad, SAME);
        assertThat(pitched(level, Math.PI / 2).headingRad()).isCloseTo(rad, SAME);
        assertThat(pitched(level, -Math.PI / 2).headingRad()).isCloseTo(rad, SAME);
    }

    /** As the package has it: flying level to the commentator's right, the right wing is towards the crowd. */
    @Test
    void rightWingIsTowardsTheCrowdWhenFlyingToTheRight() {
        Vec wing = heading(0).rightWing();

        assertThat(wing.y()).isCloseTo(-1, SAME);
        assertThat(Math.hypot(wing.x(), wing.z())).isCloseTo(0, SAME);
    }

    @Test
    void rollToTheRightPutsTheCanopyWhereTheRightWingWas() {
        Vec up = heading(0).rolledUp(Math.PI / 2);

        assertThat(up.y()).isCloseTo(-1, SAME);
        assertThat(up.z()).isCloseTo(0, SAME);
    }

    /** Closed form: h + v²/2g, so a stone thrown up at 24.5 m/s has 30.6 m more (OpenStax University Physics 1, §3.5). */
    @Test
    void energyHeightIsHeightPlusWhatTheSpeedIsWorth() {
        FlightState thrown = new FlightState(0, new Vec(5, 6, 100), 24.5, Vec.UP, new Vec(1, 0, 0));

        assertThat(thrown.energyHeightM()).isCloseTo(130.6, within(0.05));
    }

    @Test
    void facingElsewhereKeepsTheCanopyAtARightAngleToTheNose() {
        FlightState m = heading(0).facing(new Vec(2, 0, 2), new Vec(0, 0, 1));
        double half = Math.sqrt(0.5);

        assertThat(m.direction().x()).isCloseTo(half, SAME);
        assertThat(m.direction().z()).isCloseTo(half, SAME);
        assertThat(m.up().x()).isCloseTo(-half, SAME);
        assertThat(m.up().z()).isCloseTo(half, SAME);
    }
}
