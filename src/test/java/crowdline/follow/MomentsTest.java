package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Beliefs moved about and merged, counted by hand. */
class MomentsTest {
    private static final Offset<Double> EXACTLY = within(1e-9);

    private static Moments at(double chance, double alongM, double heightM) {
        Moments moved = new Moments();
        moved.moved(Moments.of(chance, 100, 50), alongM, heightM);
        return moved;
    }

    @Test
    void movingABeliefKeepsHowSureItIs() {
        Moments m = new Moments();
        m.moved(at(0.4, 30, -20), 5, -1);
        assertThat(m.chance).isEqualTo(0.4);
        assertThat(m.mean(Moments.ALONG)).isCloseTo(35, EXACTLY);
        assertThat(m.mean(Moments.HEIGHT)).isCloseTo(-21, EXACTLY);
        assertThat(m.variance(Moments.ALONG)).isCloseTo(100, EXACTLY);
        assertThat(m.variance(Moments.HEIGHT)).isCloseTo(50, EXACTLY);
        assertThat(m.mean(Moments.FASTER)).isZero();
        assertThat(m.variance(Moments.FASTER)).isCloseTo(0.12 * 0.12, EXACTLY);
    }

    /** A quarter at 30 m and three quarters at -10 m: in the middle nought, and 300 m² between them. */
    @Test
    void twoBeliefsMergedAreAsUnsureAsTheyAreApart() {
        Moments m = new Moments();
        m.add(at(0.5, 30, 0), 0.5);
        m.add(at(1, -10, 0), 0.75);
        assertThat(m.chance).isEqualTo(1);
        assertThat(m.mean(Moments.ALONG)).isCloseTo(0, EXACTLY);
        assertThat(m.variance(Moments.ALONG)).isCloseTo(100 + 300, EXACTLY);
    }

    @Test
    void beliefGrowsLessCertainByWhatIsSaid() {
        Moments m = at(0.4, 30, 0);
        m.widen(Moments.ALONG, 44);
        assertThat(m.mean(Moments.ALONG)).isCloseTo(30, EXACTLY);
        assertThat(m.variance(Moments.ALONG)).isCloseTo(144, EXACTLY);
        assertThat(m.variance(Moments.HEIGHT)).isCloseTo(50, EXACTLY);
    }

    @Test
    void whatIsBelievedOfTheSpeedFadesToWhatPilotsDifferBy() {
        Moments m = Moments.of(0.5, 1, 1);
        m.parts[Moments.FASTER] = 0.5 * 0.2;
        m.parts[Moments.FASTER + 1] = 0.5 * (0.2 * 0.2 + 0.01);
        m.fade(0.5);
        assertThat(m.mean(Moments.FASTER)).isCloseTo(0.1, EXACTLY);
        assertThat(m.variance(Moments.FASTER)).isCloseTo(0.25 * 0.01 + 0.75 * Moments.FASTER2, EXACTLY);
    }

    @Test
    void beliefIsReadFromAStateAndForgotten() {
        Bins bins = Small.plan(50, 40).bins;
        Belief belief = new Belief(bins);
        belief.add(2, 60, at(0.4, 30, -20), 0.5);
        Moments m = at(1, 1, 1);
        m.set(belief, belief.state(2, 60));
        assertThat(m.chance).isEqualTo(0.2);
        assertThat(m.mean(Moments.HEIGHT)).isCloseTo(-20, EXACTLY);
        m.clear();
        assertThat(m.chance).isZero();
        assertThat(m.parts).containsOnly(0);
    }
}
