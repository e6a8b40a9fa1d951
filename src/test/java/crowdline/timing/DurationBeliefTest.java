package crowdline.timing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class DurationBeliefTest {
    private final DurationBelief predicted = DurationBelief.fromPrediction(12, 0.10);

    @Test
    void startsAtThePrediction() {
        assertThat(predicted.medianS()).isCloseTo(12, within(1e-9));
        assertThat(predicted.bandS(0.8).holds(12)).isTrue();
    }

    @Test
    void medianIsTheWeightedGeometricMean() {
        DurationBelief belief = predicted.update(14).update(14).update(14);
        assertThat(belief.medianS()).isCloseTo(Math.pow(12, 0.25) * Math.pow(14, 0.75), within(1e-9));
    }

    @Test
    void agreeingPassesNarrowTheBand() {
        Band before = predicted.bandS(0.8);
        Band after = predicted.update(12.1).update(11.9).update(12).bandS(0.8);
        assertThat(after.high() - after.low()).isLessThan(0.6 * (before.high() - before.low()));
    }

    @Test
    void passTimedByHandTeachesLessThanOneFromALog() {
        assertThat(predicted.updateByHand(14).medianS())
                .isGreaterThan(12)
                .isLessThan(predicted.update(14).medianS());
    }

    @Test
    void reactionTimeMattersMoreForAShortFigure() {
        DurationBelief shortOne = DurationBelief.fromPrediction(2, 0.10);
        double shortShare = Math.log(shortOne.updateByHand(2.2).medianS() / 2) / Math.log(1.1);
        double longShare = Math.log(predicted.updateByHand(13.2).medianS() / 12) / Math.log(1.1);
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
                belief = belief.update(Math.exp(rhythm + spread * random.nextGaussian()));
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

    @Test
    void refusesADurationOfNothing() {
        assertThatThrownBy(() -> predicted.update(0)).hasMessageContaining("0.0 s; it must be above 0");
        assertThatThrownBy(() -> DurationBelief.fromPrediction(Double.NaN, 0.1)).hasMessageContaining("NaN");
    }
}
