package crowdline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.sight.fact.Flown;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class FigureSightTest {
    private static final Vec AHEAD = new Vec(1, 0, 0);
    private static final Vec UP = new Vec(0, 0, 1);

    /** From 300 m left of the datum to 300 m right in ten seconds, 200 m up in the middle. */
    private static Flight arch() {
        return Flown.written(10, t -> {
            double x = -300 + 60 * t;
            return new Sample(t, new Vec(x, 0, 200 * (1 - x * x / 90000)), 60, AHEAD, UP, 1, 0, 0);
        });
    }

    private static FigureSight sight(Instant begins) {
        return FigureSight.of(Flown.show(Flown.biplane()), Flown.biplane(), arch(), begins)
                .get(0);
    }

    @Test
    void crowdLooksWhereTheFigureBeginsAndWhereItIsHighest() {
        FigureSight seen = FigureSight.of(Flown.show(Flown.biplane()), Flown.biplane(), arch(), null)
                .get(0);
        assertThat(seen.start().tS()).isZero();
        // 300 m left of the datum, 200 m off.
        assertThat(seen.start().look().rightDeg()).isCloseTo(-56.31, within(0.01));
        assertThat(seen.start().look().words()).isEqualTo("low to your left, about ten o'clock");
        assertThat(seen.highest().tS()).isCloseTo(5, within(1e-9));
        assertThat(seen.highest().look().upDeg()).isCloseTo(45, within(1e-9));
        assertThat(seen.highest().look().words()).isEqualTo("high straight ahead, about twelve o'clock");
    }

    @Test
    void soundAndSizeGoByTheLineOfSight() {
        FigureSight seen = sight(Instant.parse("2027-06-01T12:00:00Z"));
        double slantM = 200 * Math.sqrt(2);
        assertThat(seen.highest().soundDelayS()).isCloseTo(slantM / 340.0, within(0.01));
        assertThat(seen.highest().size().degrees()).isCloseTo(Math.toDegrees(5.28 / slantM), within(0.001));
    }

    @Test
    void withoutATimeNothingIsSaidOfTheSun() {
        FigureSight seen = FigureSight.of(Flown.show(Flown.biplane()), Flown.biplane(), arch(), null)
                .get(0);
        assertThat(seen.start().glare()).isNull();
        assertThat(seen.highest().glare()).isNull();
    }

    /** The show's crowd looks north from latitude 52, so the sun is behind it at noon. */
    @Test
    void noonSunIsBehindACrowdThatLooksNorth() {
        Glare glare = Objects.requireNonNull(
                sight(Instant.parse("2027-06-01T12:00:00Z")).highest().glare());
        assertThat(glare.intoSun()).isFalse();
        // The sun is 60° up behind: over the top that is 180 − 60 − 45 = 75° from the aircraft.
        assertThat(glare.degrees()).isCloseTo(75, within(1.5));
    }

    @Test
    void figureWithoutASampleIsLeftOut() {
        Flight flight = arch();
        FigureFlight later = Flown.figure("later", 10, flight.samples());
        Flight without = new Flight("act", "full", List.of(later), List.of(), List.of());
        assertThat(FigureSight.of(Flown.show(Flown.biplane()), Flown.biplane(), without, null))
                .isEmpty();
    }
}
