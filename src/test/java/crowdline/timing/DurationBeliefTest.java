package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DurationBeliefTest {
    /** The error of a duration between two marks by hand: sqrt(2) · 0.25 s. */
    private static final double BY_HAND_S = 0.35355;

    private final DurationBelief predicted = DurationBelief.fromPrediction(12, 0.10);

    @Test
    void startsAtThePrediction() {
        assertThat(predicted.medianS()).isCloseTo(12, within(1e-9));
        assertThat(predicted.bandS(0.8).holds(12)).isTrue();
    }

    @Test
    void medianIsTheWeightedGeometricMean() {
        DurationBelief belief = predicted.update(14, 0).update(14, 0).update(14, 0);
        assertThat(belief.medianS()).isCloseTo(Math.pow(12, 0.25) * Math.pow(14, 0.75), within(1e-9));
    }

    @Test
    void agreeingPassesNarrowTheBand() {
        Band before = predicted.bandS(0.8);
        Band after = predicted.update(12.1, 0).update(11.9, 0).update(12, 0).bandS(0.8);
        assertThat(after.high() - after.low()).isLessThan(0.6 * (before.high() - before.low()));
    }

    @Test
    void passTimedByHandTeachesLessThanOneFromALog() {
        assertThat(predicted.update(14, BY_HAND_S).medianS())
                .isGreaterThan(12)
                .isLessThan(predicted.update(14, 0).medianS());
    }

    @Test
    void reactionTimeMattersMoreForAShortFigure() {
        DurationBelief shortOne = DurationBelief.fromPrediction(2, 0.10);
        double shortShare = Math.log(shortOne.update(2.2, BY_HAND_S).medianS() / 2) / Math.log(1.1);
        double longShare = Math.log(predicted.update(13.2, BY_HAND_S).medianS() / 12) / Math.log(1.1);
        assertThat(shortShare).isLessThan(0.6 * longShare);
    }

    @Test
    void bandOfAGivenLevelHoldsThatShareOfFlights() {
        // Pilots drawn from the belief itself: each has a rhythm and a spread of his own; of their fourth passes four
        // in
        // five must fall into the band learned from three.
        Random random = new Random(11);
        int inside = 0;
        int pilots = 20_000;
        for (int i = 0; i < pilots; i++) {
            double chiSquared = 0;
            for (int k = 0; k < DurationBelief.PREDICTION_FREEDOM; k++) {
                chiSquared += Math.pow(random.nextGaussian(), 2);
            }
            double spread = Math.sqrt(DurationBelief.PREDICTION_FREEDOM * 0.01 / chiSquared);
            double rhythm = Math.log(12) + spread / Math.sqrt(DurationBelief.PREDICTION_WEIGHT) * random.nextGaussian();
            DurationBelief belief = predicted;
            for (int pass = 0; pass < 3; pass++) {
                belief = belief.update(Math.exp(rhythm + spread * random.nextGaussian()), 0);
            }
            if (belief.bandS(0.8).holds(Math.exp(rhythm + spread * random.nextGaussian()))) {
                inside++;
            }
        }
        assertThat(inside / (double) pilots).isCloseTo(0.8, within(0.01));
    }

    @Test
    void figureTimeCarriesTheShownBand() {
        FigureTime time = predicted.figureTime("loop", 30);
        assertThat(time.startS()).isEqualTo(30);
        assertThat(time.durationS()).isCloseTo(12, within(1e-9));
        assertThat(new Band(time.lowS(), time.highS())).isEqualTo(predicted.bandS(Band.SHOWN_LEVEL));
    }

    /** A normal value whose variance is known, timed with a known error: both count by their precision (Hoff 2009, 5.2). */
    @Test
    void passTimedAsRoughlyAsTheFigureVariesCountsHalf() {
        DurationBelief half = predicted.update(14, 0.10 * 14);

        assertThat(half.logSeconds().weight()).isCloseTo(1.5, within(1e-12));
        assertThat(half.logSeconds().freedom()).isCloseTo(4.5, within(1e-12));
        assertThat(half.medianS()).isCloseTo(Math.pow(12, 2 / 3.0) * Math.pow(14, 1 / 3.0), within(1e-9));
    }

    @Test
    void predictionThatHardlyVariedIsStillGivenAnEverydaySpread() {
        assertThat(DurationBelief.fromPrediction(12, 0)).isEqualTo(DurationBelief.fromPrediction(12, 0.05));
        assertThat(DurationBelief.fromPrediction(12, 0.06)).isNotEqualTo(DurationBelief.fromPrediction(12, 0.05));
    }

    @Test
    void refusesADurationOfNothing() {
        assertThatThrownBy(() -> predicted.update(0, 0))
                .hasMessage("the observed duration is 0.0 s; it must be above 0");
        assertThatThrownBy(() -> DurationBelief.fromPrediction(0, 0.1))
                .hasMessage("the predicted duration is 0.0 s; it must be above 0");
        assertThatThrownBy(() -> DurationBelief.fromPrediction(Double.NaN, 0.1))
                .hasMessage("the predicted duration is NaN s; it must be above 0");
    }

    @Test
    void refusesASpreadOrAnErrorBelowNothing() {
        assertThatThrownBy(() -> DurationBelief.fromPrediction(12, -0.01))
                .hasMessage("logSpread is -0.01; it must be 0 or more");
        assertThatThrownBy(() -> DurationBelief.fromPrediction(12, Double.POSITIVE_INFINITY))
                .hasMessage("logSpread is Infinity; it must be 0 or more");
        assertThatThrownBy(() -> predicted.update(12, -0.1)).hasMessage("errorS is -0.1; it must be 0 or more");
        assertThatThrownBy(() -> predicted.update(12, Double.NaN)).hasMessage("errorS is NaN; it must be 0 or more");
    }
}
