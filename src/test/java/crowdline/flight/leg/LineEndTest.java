package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.show.figure.Element.Until;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Lines without thrust and drag: v² falls by 2 g for each metre of height, whatever the slope. */
class LineEndTest {
    private static final double G = 9.80665;
    private static final Offset<Double> CLOSE = within(1e-3);

    private static FlightState slope(double pathDeg, double headingDeg) {
        double path = Math.toRadians(pathDeg);
        double heading = Math.toRadians(headingDeg);
        Vec t = new Vec(Math.cos(path) * Math.cos(heading), Math.cos(path) * Math.sin(heading), Math.sin(path));
        return new FlightState(0, new Vec(30, 40, 500), 80, t, Vec.UP.across(t).unit());
    }

    private static FlightState flown(FlightState from, Until until, double value) {
        return Rig.fly(Rig.dragFree(), from, Rig.line(until, value));
    }

    @Test
    void lineOfMetresIsAsLongInEveryDirection() {
        for (double path : new double[] {0, 30, -40}) {
            for (double heading : new double[] {0, 60, 200}) {
                FlightState from = slope(path, heading);
                Vec gone =
                        flown(from, Until.METRES, 150).place().plus(from.place().times(-1));
                assertThat(gone.length()).isCloseTo(150, CLOSE);
            }
        }
    }

    @Test
    void lineToAHeightEndsThereWithTheSpeedThatIsLeft() {
        double toM = 600 * 0.3048 + 500;
        FlightState up = flown(slope(50, 100), Until.FEET, toM / 0.3048);
        FlightState down = flown(slope(-50, 100), Until.FEET, 1000);

        assertThat(up.place().z()).isCloseTo(toM, CLOSE);
        assertThat(up.speedMps()).isCloseTo(Math.sqrt(80 * 80 - 2 * G * 600 * 0.3048), CLOSE);
        assertThat(down.place().z()).isCloseTo(304.8, CLOSE);
    }

    @Test
    void lineToAPlaceEndsThereInEitherDirection() {
        assertThat(flown(slope(0, 0), Until.ALONG_M, 400).place().x()).isCloseTo(400, CLOSE);
        assertThat(flown(slope(0, 180), Until.ALONG_M, -400).place().x()).isCloseTo(-400, CLOSE);
    }

    @Test
    void lineThatIsBeyondItsPlaceOrNeverComesThereHasNoLength() {
        assertThat(flown(slope(0, 0), Until.ALONG_M, 20).tS()).isZero();
        assertThat(flown(slope(0, 90), Until.ALONG_M, 400).tS()).isZero();
        assertThat(flown(slope(0, 0), Until.FEET, 3000).tS()).isZero();
    }

    /** 80 m/s are 155.5 kt: up it slows to less, down it gains more, by the height that the energy tells. */
    @Test
    void lineToASpeedEndsThereSlowingOrGaining() {
        double slow = 120 * 1852 / 3600.0;
        double fast = 180 * 1852 / 3600.0;
        FlightState up = flown(slope(60, 0), Until.KNOTS, 120);
        FlightState down = flown(slope(-60, 0), Until.KNOTS, 180);

        assertThat(up.speedMps()).isCloseTo(slow, CLOSE);
        assertThat(up.place().z() - 500).isCloseTo((80 * 80 - slow * slow) / (2 * G), within(0.01));
        assertThat(down.speedMps()).isCloseTo(fast, CLOSE);
        assertThat(down.place().z() - 500).isCloseTo((80 * 80 - fast * fast) / (2 * G), within(0.01));
    }
}
