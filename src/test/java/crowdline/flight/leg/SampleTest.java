package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.Track;
import crowdline.flight.Track.Stretch;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class SampleTest {
    private static Sample sample(double tS, Vec nose, Vec up) {
        return new Sample(tS, new Vec(tS, 0, 0), 60, nose, up, 1, 0, 0);
    }

    private static Sample banked(double degrees) {
        FlightState level = new FlightState(0, new Vec(0, 0, 0), 60, new Vec(1, 0, 0), Vec.UP);
        return sample(0, level.direction(), level.rolledUp(Math.toRadians(degrees)));
    }

    @Test
    void pathAngleIsThatOfTheNoseOverTheHorizon() {
        double c = Math.cos(Math.toRadians(30));
        Vec up = new Vec(0, 1, 0);
        assertThat(sample(0, new Vec(c, 0, 0.5), up).pathAngleDeg()).isCloseTo(30, within(1e-9));
        assertThat(sample(0, new Vec(c, 0, -0.5), up).pathAngleDeg()).isCloseTo(-30, within(1e-9));
        assertThat(sample(0, new Vec(0, 0, 1 + 1e-12), up).pathAngleDeg()).isEqualTo(90);
    }

    @Test
    void rollIsPositiveWithTheRightWingDown() {
        for (double degrees : new double[] {0, 40, -40, 90, 150, -150}) {
            assertThat(banked(degrees).rollDeg()).isCloseTo(degrees, within(1e-9));
        }
    }

    @Test
    void rollOnAVerticalPathMeansNothing() {
        assertThat(sample(0, Vec.UP, new Vec(0.6, 0.8, 0)).rollDeg()).isZero();
    }

    @Test
    void trackGivesEveryFlownFigureItsOwnPlaces() {
        List<Sample> samples = List.of(level(0), level(1), level(2), level(3), level(4));
        Flight flight = new Flight(
                "act",
                "full",
                List.of(figure("loop", true, 0, 2), figure("taxi", false, 2, 3), figure("roll", true, 3, 4)),
                samples,
                List.of());

        assertThat(Track.of(flight).stretches())
                .containsExactly(
                        new Stretch("loop", 0, places(0, 1, 2)),
                        new Stretch("taxi", 2, List.of()),
                        new Stretch("roll", 3, places(3, 4)));
    }

    private static Sample level(double tS) {
        return sample(tS, new Vec(1, 0, 0), Vec.UP);
    }

    private static List<Vec> places(double... alongM) {
        return Arrays.stream(alongM).mapToObj(x -> new Vec(x, 0, 0)).toList();
    }

    private static FigureFlight figure(String name, boolean simulated, double startS, double endS) {
        return new FigureFlight(
                name, name, simulated, true, startS, endS, 60, 60, 60, 60, 0, 0, 1, 1, 0, 0, 0, 0, 0, List.of());
    }
}
