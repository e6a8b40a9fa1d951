package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.IntUnaryOperator;
import org.junit.jupiter.api.Test;

/** Flights drawn by hand, at 50 m/s: four figures of 20 s, of which another may be flown in the place of the third. */
class LossTest {
    private static final double MPS = 50;
    private static final double EACH_S = 20;

    private static Truth flight(List<Integer> figures, DoubleFunction<V3> place) {
        Truth truth = new Truth();
        for (int i = 0; i <= 10 * EACH_S * figures.size(); i++) {
            truth.instants.add(new Truth.Instant(i / 10.0, place.apply(i / 10.0), new V3(MPS, 0, 0)));
        }
        for (int i = 0; i < figures.size(); i++) {
            truth.flown.add(new Truth.Flown(figures.get(i), EACH_S * i, EACH_S * (i + 1)));
        }
        return truth;
    }

    private static V3 straight(double t) {
        return new V3(MPS * t, 0, 100);
    }

    /** It climbs by 10 m/s from the third figure on. */
    private static V3 climbing(double t) {
        return new V3(MPS * t, 0, 100 + 10 * Math.max(0, t - 2 * EACH_S));
    }

    private static List<Score.Said> said(Truth truth, IntUnaryOperator atTenth) {
        List<Score.Said> said = new ArrayList<>();
        for (int i = 0; i < 10 * truth.endS(); i++) {
            said.add(new Score.Said((i + 0.5) / 10, atTenth.applyAsInt(i), 0.8));
        }
        return said;
    }

    private static List<Truth> others(double apartM) {
        List<Truth> others = new ArrayList<>();
        for (int k = -1; k <= 1; k++) {
            double slope = k * apartM / EACH_S;
            others.add(flight(
                    List.of(0, 1, 2, 3), t -> new V3(MPS * t, 300 * slope, 100 + slope * Math.max(0, t - 2 * EACH_S))));
        }
        return others;
    }

    @Test
    void changeShowsOnceItsTrackIsTwiceAsFarOffAsPilotsAre() {
        Truth truth = flight(List.of(0, 1, 3), LossTest::climbing);
        // Noise alone makes 4 m, and 10 m/s make twice that in 0.8 s.
        assertThat(Loss.showsS(truth, 2, others(0))).isCloseTo(0.9, within(0.11));
        // Pilots who drift apart by 2 m/s each: 10 t = 2 √(4 t² + 16).
        assertThat(Loss.showsS(truth, 2, others(2 * EACH_S))).isCloseTo(0.9, within(0.11));
        assertThat(Loss.showsS(truth, 2, others(6 * EACH_S))).isEqualTo(EACH_S);
    }

    @Test
    void trackThatGoesOnAsPlannedShowsNoChange() {
        Truth truth = flight(List.of(0, 1, 3), LossTest::straight);
        assertThat(Loss.showsS(truth, 2, others(0))).isEqualTo(EACH_S);
    }

    @Test
    void whatIsLostIsOutsideOfChangesOrUntilTheyAreNoticedSoonOrLate() {
        Truth truth = flight(List.of(0, 1, 3), LossTest::climbing);
        Loss soon = new Loss();
        soon.count(truth, said(truth, i -> i < 30 ? 1 : i < 200 ? 0 : i < 400 ? 1 : i < 460 ? 2 : 3), others(0));
        assertThat(soon.outside()).isCloseTo(100 * 3 / 60.0, within(0.3));
        assertThat(soon.soon()).isCloseTo(100 * 6 / 60.0, within(0.3));
        assertThat(soon.late()).isZero();
        Loss late = new Loss();
        late.count(truth, said(truth, i -> i < 200 ? 0 : i < 400 ? 1 : i < 520 ? 2 : 3), others(0));
        assertThat(late.outside()).isZero();
        assertThat(late.late()).isCloseTo(100 * 12 / 60.0, within(0.3));
    }
}
