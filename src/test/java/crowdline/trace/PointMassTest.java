package crowdline.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Flights that owe nothing to the flight computed here: a mass that is pulled, pushed, rolled and turned. */
@Tag("slow")
class PointMassTest {
    private static FindScore score(long... seeds) {
        FindScore score = new FindScore();
        LongStream.of(seeds).forEach(seed -> {
            FlightOf flight = PointMassFlights.of(seed);
            score.add(
                    flight, new FlightFigures(FindTrial.catalogue(), FindTrial.trial(flight.kind())).in(flight.log()));
        });
        return score;
    }

    /** Five kinds of aircraft; what is lost is mostly at one reading a second with gaps. */
    @Test
    void figuresOfAFlightFlownBySomethingElseAreNamed() {
        FindScore score = score(1, 2, 3, 4, 5);
        assertThat(score.twoShare()).isGreaterThan(0.75);
        assertThat(score.extraAFlight()).isLessThan(2);
    }

    /** A loop takes as long as a circle of its radius at its speeds, and ends about as high as it began. */
    @Test
    void massFliesALoopAsAMassDoes() {
        PointMass mass = new PointMass(new PointMass.Machine("any", 70, 27, 4, 4, 180), new SplittableRandom(1), 0);
        double height = mass.at.z();
        double speed = mass.mps;
        double begins = mass.tS();
        mass.pull(180, 4, 0);
        double up = mass.at.z() - height;
        // Speed for height without power, but for what drag takes.
        assertThat(mass.mps * mass.mps + 2 * 9.81 * up).isBetween(0.6 * speed * speed, speed * speed);
        mass.pull(180, 4, 1);
        assertThat(mass.at.z()).isBetween(height - 60, height + 60);
        assertThat(mass.tS() - begins).isBetween(9.0, 20.0);
    }
}
