package crowdline.layout;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.FigureTrial;
import crowdline.flight.air.Air;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Vec;
import crowdline.show.aircraft.Sliders;
import crowdline.storage.show.KindsFile;
import org.junit.jupiter.api.Test;

class EstimatingTest {
    /** What it comes from the middle for is a turn; the last digit of where that is may be one less than it takes. */
    @Test
    void justAsFarAheadAsItNeedsIsNotComeRoundFor() {
        FigureTrial trial = new FigureTrial(
                KindsFile.shipped().named("piston fighter").airframe("a", "A", Sliders.TYPICAL), Air.STANDARD);
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
