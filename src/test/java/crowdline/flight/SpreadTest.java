package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.show.figure.Figure;
import crowdline.storage.show.CatalogueFile;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadTest {
    private static final Figure TIMED =
            new Figure("timed", "take-off", null, null, null, 80.0, null, null, List.of(), List.of());
    private static final Figure LOOP = Figure.of("loop", "loop");
    private static final Figure ROLL = Figure.of("roll", "slow roll");

    private final Predictor flyable = predictor(125, LOOP, ROLL);

    @Test
    void sameSeedGivesTheSameBands() {
        assertThat(fly(flyable, 7, 40)).isEqualTo(fly(flyable, 7, 40));
    }

    @Test
    void anotherSeedGivesOtherBands() {
        assertThat(fly(flyable, 8, 40).bands()).isNotEqualTo(fly(flyable, 7, 40).bands());
    }

    @Test
    void bandsAreInOrderHoweverManyFly() {
        for (int flights : new int[] {2, 3, 10, 11, 150}) {
            Spread.Bands bands = fly(flyable, 1, flights);
            assertThat(bands.flights()).isEqualTo(flights);
            assertThat(bands.complete()).isEqualTo(flights);
            assertThat(bands.bands()).hasSize(2).allSatisfy(band -> {
                assertThat(band.lowS()).isPositive().isLessThan(band.middleS());
                assertThat(band.middleS()).isLessThan(band.highS());
            });
        }
    }

    @Test
    void oneFlightIsItsOwnBand() {
        assertThat(fly(flyable, 1, 1).bands()).allSatisfy(band -> {
            assertThat(band.lowS()).isEqualTo(band.middleS());
            assertThat(band.highS()).isEqualTo(band.middleS());
        });
    }

    @Test
    void bandsHoldTheFlightAsPlanned() {
        Flight planned = flyable.predict();
        List<Spread.Band> bands = fly(flyable, 1, 150).bands();
        for (int i = 0; i < bands.size(); i++) {
            assertThat(planned.figures().get(i).durationS())
                    .isBetween(bands.get(i).lowS(), bands.get(i).highS());
        }
    }

    @Test
    void figureThatIsOnlyTimedDoesNotVary() {
        assertThat(fly(predictor(60, TIMED), 1, 20).bands()).containsExactly(new Spread.Band(80, 80, 80));
    }

    @Test
    void figureNobodyCanFlyAndAllBehindItHaveNoBand() {
        Spread.Bands bands = fly(predictor(40, TIMED, LOOP, ROLL), 1, 20);

        assertThat(bands.flights()).isEqualTo(20);
        assertThat(bands.complete()).isZero();
        assertThat(bands.bands().get(0)).isEqualTo(new Spread.Band(80, 80, 80));
        assertThat(bands.bands().subList(1, 3)).allSatisfy(band -> {
            assertThat(band.lowS()).isNaN();
            assertThat(band.middleS()).isNaN();
            assertThat(band.highS()).isNaN();
        });
    }

    @Test
    void progressIsToldOncePerFlightUpToTheWhole() {
        ConcurrentLinkedQueue<Double> told = new ConcurrentLinkedQueue<>();
        new Spread(flyable, 1, Workers.ALONE).fly(8, told::add);
        assertThat(told).containsExactlyInAnyOrder(0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1.0);
    }

    @Test
    void bandsDoNotDependOnWhoFlies() {
        Spread.Bands alone = fly(flyable, 3, 60);
        Workers backwards = (count, work) -> {
            for (int i = count - 1; i >= 0; i--) {
                work.accept(i);
            }
        };
        Workers many = (count, work) -> IntStream.range(0, count).parallel().forEach(work);
        for (Workers workers : List.of(backwards, many)) {
            assertThat(new Spread(flyable, 3, workers).fly(60, share -> {})).isEqualTo(alone);
        }
    }

    @Test
    void noFlightsAreRefused() {
        assertThatThrownBy(() -> fly(flyable, 1, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the number of flights is 0; it must be 1 or more");
    }

    private static Spread.Bands fly(Predictor predictor, long seed, int flights) {
        return new Spread(predictor, seed, Workers.ALONE).fly(flights, share -> {});
    }

    /** The light biplane, level at 1500 ft. */
    private static Predictor predictor(double kt, Figure... figures) {
        return Rig.predictor(CatalogueFile.shipped(), 1500, kt, figures);
    }

    /** As wide as it says on either side of the plan: a bell's standard deviation, a little less for being cut off. */
    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1, 2})
    void flightDepartsFromItsPlanByAsMuchAsIsSaid(double much) {
        double[] usual = {0.02, 0.03, 0.05, 0.08, 0.08, 0.15, 2, 1.5, 1.5};
        double[] sum = new double[usual.length];
        double[] squares = new double[usual.length];
        int flights = 4000;
        SplittableRandom random = new SplittableRandom(9);
        for (int i = 0; i < flights; i++) {
            Variation v = Spread.drawn(random, much);
            double[] by = {
                v.mass() - 1,
                v.power() - 1,
                v.drag() - 1,
                v.pull() - 1,
                v.rollRate() - 1,
                v.pause() - 1,
                v.entryMps(),
                v.windAlongMps(),
                v.windAwayMps()
            };
            for (int k = 0; k < by.length; k++) {
                sum[k] += by[k];
                squares[k] += by[k] * by[k];
            }
        }
        for (int k = 0; k < usual.length; k++) {
            assertThat(sum[k] / flights / usual[k] / much).as("mean %d", k).isBetween(-0.06, 0.06);
            assertThat(Math.sqrt(squares[k] / flights) / usual[k] / much)
                    .as("width %d", k)
                    .isBetween(0.8, 1.05);
        }
    }

    @Test
    void flightThatDoesNotDepartIsThePlan() {
        Variation none = Spread.drawn(new SplittableRandom(1), 0);
        assertThat(List.of(none.mass(), none.power(), none.drag(), none.pull(), none.rollRate(), none.pause()))
                .containsOnly(1.0);
        assertThat(Math.abs(none.entryMps()) + Math.abs(none.windAlongMps()) + Math.abs(none.windAwayMps()))
                .isZero();
        assertThatThrownBy(() -> Spread.drawn(new SplittableRandom(1), 2.001))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Spread.drawn(new SplittableRandom(1), -0.001))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
