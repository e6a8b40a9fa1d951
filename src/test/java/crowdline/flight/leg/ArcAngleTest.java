package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Way;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In the vertical an arc turns the path by as much as it bends; banked, T_z = sin θ cos(bank) from level. */
class ArcAngleTest {
    private static FlightState at(double pathDeg, double bankDeg) {
        double path = Math.toRadians(pathDeg);
        Vec t = new Vec(Math.cos(path), 0, Math.sin(path));
        FlightState upright =
                new FlightState(0, new Vec(0, 0, 500), 70, t, new Vec(-Math.sin(path), 0, Math.cos(path)));
        return new FlightState(0, upright.place(), 70, t, upright.rolledUp(Math.toRadians(bankDeg)));
    }

    private static double degrees(FlightState from, Way way, double toPathDeg) throws CannotFly {
        Element.Arc arc = new Element.Arc(way, null, toPathDeg, Size.RADIUS_M, 100, 1);
        return Math.toDegrees(ArcAngle.rad(arc, from, way == Way.PULL ? 1 : -1));
    }

    @ParameterizedTest
    @CsvSource({
        // path, bank, way, to, degrees
        "0, 0, PULL, 45, 45",
        "0, 0, PULL, 90, 90",
        "0, 0, PUSH, -45, 45",
        "0, 0, PULL, -45, 225",
        "-60, 0, PULL, 0, 60",
        "30, 0, PUSH, 0, 30",
        "30, 0, PULL, 0, 150",
        "20, 0, PULL, 50, 30",
        "50, 0, PUSH, 20, 30",
        "90, 180, PULL, 0, 90",
        "0, 180, PULL, -30, 30",
        "0, 180, PUSH, 30, 30",
        // already there
        "45, 0, PULL, 45, 0",
        "0, 0, PULL, 0, 0",
        "0, 180, PUSH, 0, 0",
    })
    void arcStopsWhereItFirstPointsAsWanted(double path, double bank, Way way, double to, double degrees)
            throws CannotFly {
        assertThat(degrees(at(path, bank), way, to)).isCloseTo(degrees, within(1e-4));
    }

    @Test
    void bankedItTakesMoreOfAnArc() throws CannotFly {
        double expected = Math.toDegrees(Math.asin(Math.sin(Math.toRadians(20)) / 0.5));

        assertThat(degrees(at(0, 60), Way.PULL, 20)).isCloseTo(expected, within(1e-6));
        assertThat(degrees(at(0, 60), Way.PULL, 30)).isCloseTo(90, within(1e-2));
    }

    @Test
    void whatABankedArcNeverPointsAtIsToldInDegrees() {
        assertThatThrownBy(() -> degrees(at(0, 60), Way.PULL, 40)).hasMessage("the arc never points 40° from here");
        assertThatThrownBy(() -> degrees(at(0, 90), Way.PULL, -5)).hasMessage("the arc never points -5° from here");
    }

    @Test
    void degreesGivenAreTaken() throws CannotFly {
        Element.Arc arc = new Element.Arc(Way.PUSH, 540.0, null, Size.RADIUS_M, 100, 1);

        assertThat(ArcAngle.rad(arc, at(10, 0), -1)).isCloseTo(3 * Math.PI, within(1e-9));
    }
}
