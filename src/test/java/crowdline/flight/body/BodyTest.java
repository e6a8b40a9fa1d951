package crowdline.flight.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.measure.Units;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

class BodyTest {
    private static final Percentage CLOSE = Percentage.withPercentage(0.01);
    private final Body biplane = Body.of(Rig.biplane(), Variation.NONE);

    /** Lift formula, L = ½ρV²S CL: at the stall lift carries weight, so V = sqrt(2 m g / (ρ S CL)). */
    @Test
    void stallsWhereTheWingJustCarriesTheWeight() {
        double stall = biplane.stallMps(1.225);

        assertThat(stall).isCloseTo(Math.sqrt(2 * 475 * 9.80665 / (1.225 * 9.15 * 1.3)), CLOSE);
        assertThat(biplane.mostG(0.5 * 1.225 * stall * stall)).isCloseTo(1, CLOSE);
    }

    /** The stalling speed rises with the square root of the load: 2 g at 1.41 times (FAA-H-8083-25C, ch. 5). */
    @Test
    void loadTheWingGivesGrowsWithTheSquareOfSpeed() {
        double fast = biplane.stallMps(1.225) * Math.sqrt(2);

        assertThat(biplane.mostG(0.5 * 1.225 * fast * fast)).isCloseTo(2, CLOSE);
    }

    @Test
    void upsideDownTheWingGivesLess() {
        assertThat(biplane.leastG(1000)).isCloseTo(-biplane.mostG(1000) * 1.1 / 1.3, CLOSE);
    }

    /** The worked polar: 0.045 + 0.11 CL², on 9.15 m² at 1000 Pa with half a CL. */
    @Test
    void dragIsAParabolaOfLift() {
        double halfCl = 0.5 * 1000 * 9.15;

        assertThat(biplane.dragN(1000, halfCl)).isCloseTo((0.045 + 0.11 * 0.25) * 9150, CLOSE);
        assertThat(biplane.dragN(1000, -halfCl)).isCloseTo(biplane.dragN(1000, halfCl), CLOSE);
        assertThat(biplane.dragN(1000, 0)).isCloseTo(0.045 * 9150, CLOSE);
        assertThat(biplane.dragN(0, 5000)).isZero();
    }

    @Test
    void liftBeyondTheStallCostsNoMoreDragThanTheStall() {
        double most = (0.045 + 0.11 * 1.3 * 1.3) * 9150;

        assertThat(biplane.dragN(1000, 1e6)).isCloseTo(most, CLOSE);
    }

    @Test
    void rollsInProportionToSpeedUpToTheSpeedGiven() {
        double given = Units.mpsFromKt(120);
        double full = Math.toRadians(200);

        assertThat(biplane.rollRateAt(given)).isCloseTo(full, CLOSE);
        assertThat(biplane.rollRateAt(given / 2)).isCloseTo(full / 2, CLOSE);
        assertThat(biplane.rollRateAt(given * 1.5)).isCloseTo(full, CLOSE);
    }

    @Test
    void hardlyMovingItStillRollsALittleAndTheSameWay() {
        assertThat(biplane.rollRateAt(-20)).isPositive().isEqualTo(biplane.rollRateAt(0));
    }

    /** 250 ft in a turn at 200° each second are 250 · 0.3048 · 200/360 = 42.33 m each second. */
    @Test
    void spinSinksByTheDescentOfEachTurn() {
        assertThat(biplane.spinSinkMps()).isCloseTo(42.333, CLOSE);
        assertThat(biplane.spinRateRadPerS()).isCloseTo(Math.toRadians(200), CLOSE);
    }

    @Test
    void variationChangesWhatItNames() {
        Body other = Body.of(Rig.biplane(), new Variation(1.1, 0.9, 1.2, 1, 0.8, 1, 0, 0, 0));

        assertThat(other.massKg()).isCloseTo(475 * 1.1, CLOSE);
        assertThat(other.cd0()).isCloseTo(0.045 * 1.2, CLOSE);
        assertThat(other.rollRateRadPerS()).isCloseTo(Math.toRadians(200) * 0.8, CLOSE);
        assertThat(other.flickRateRadPerS()).isCloseTo(Math.toRadians(420) * 0.8, CLOSE);
        assertThat(((Propeller) other.drive()).powerW()).isCloseTo(134_000 * 0.9, CLOSE);
        assertThat(other.spinRateRadPerS()).isEqualTo(biplane.spinRateRadPerS());
    }

    /** A disc of 1.93 m across has 2.9255 m²; 2,700 turns a minute are 282.74 rad/s. */
    @Test
    void propellerIsTheAirframes() {
        Propeller propeller = (Propeller) biplane.drive();

        assertThat(propeller.discM2()).isCloseTo(2.9255, CLOSE);
        assertThat(propeller.rotationRadPerS()).isCloseTo(282.743, CLOSE);
        assertThat(propeller.clockwise()).isTrue();
        assertThat(biplane.weightN()).isCloseTo(4658.16, within(0.01));
    }
}
