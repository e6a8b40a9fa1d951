package crowdline.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.aircraft.Sliders;
import crowdline.storage.show.KindsFile;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EstimatingTest {
    private static FigureTrial trial(String kind) {
        return new FigureTrial(KindsFile.shipped().named(kind).airframe("a", "A", Sliders.TYPICAL), Air.STANDARD);
    }

    /** An even turn was thought of, which takes them 9 to 13 s longer. */
    @ParameterizedTest
    @ValueSource(strings = {"aerobatic two-seater", "large biplane", "old trainer"})
    void aTurnBackThatClimbsIsThoughtToTakeWhatItDoes(String kind) {
        FigureTrial trial = trial(kind);
        double mps = Units.mpsFromKt(trial.usual().rollKt());
        Joining joining = new Joining(trial, 200, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        for (double faster : new double[] {1, 1.05, 1.1}) {
            FlightState at = FlightState.along(new Vec(0, 0, 205), faster * mps, true);
            Entry to = new Entry(0, 0, 205, mps, 0.85 * mps, 1.3 * mps, false);
            List<Piece> way = Objects.requireNonNull(joining.from(at, to, false));
            double flown = way.stream().mapToDouble(Piece::seconds).sum();

            assertThat(way).extracting(Piece::transit).containsExactly(Transit.TURNS_UP);
            assertThat(joining.estimating.estimate(at, to).seconds()).isCloseTo(flown, within(7.0));
        }
    }

    /** It came out at 135.2 m/s, 1.6 too slow, and came round twice more: 114 s for 46. */
    @Test
    void nobodyComesRoundForAKnotOrThree() {
        Joining joining = new Joining(trial("piston fighter"), 250, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        FlightState at = FlightState.along(new Vec(-37, 0, 255), 118.4, true);
        List<Piece> way =
                Objects.requireNonNull(joining.from(at, new Entry(-119, 0, 255, 144.0, 136.8, 158.4, false), false));

        assertThat(way.stream().filter(Piece::turns)).hasSize(1);
    }

    /** What it comes from the middle for is a turn; the last digit of where that is may be one less than it takes. */
    @Test
    void justAsFarAheadAsItNeedsIsNotComeRoundFor() {
        FigureTrial trial = trial("piston fighter");
        Straight straight = new Straight(trial, Climbing.of(trial, 300), Double.POSITIVE_INFINITY);
        Estimating estimating = new Estimating(straight);
        for (int i = 0; i < 100; i++) {
            FlightState at = FlightState.along(new Vec(-900 + 17.3 * i, 0, 200), 110 + 0.31 * i, true);
            Entry here = new Entry(at.place().x(), 0, 500 + 1.7 * i, 80, 70, 90, true);
            double aheadM = straight.needM(at, here);

            assertThat(estimating.estimate(at, here.at(here.alongM() + aheadM)).reachM())
                    .as("from %s", at)
                    .isZero();
            assertThat(estimating
                            .estimate(at, here.at(here.alongM() + aheadM - 20))
                            .reachM())
                    .as("from %s", at)
                    .isNotZero();
        }
    }
}
