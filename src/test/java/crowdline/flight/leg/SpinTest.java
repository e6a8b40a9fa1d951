package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.SpinKind;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The biplane spins at 200° each second and loses 250 ft in each turn, 42.3 m each second. */
class SpinTest {
    private final Forces forces = Rig.seaLevel(Rig.biplane());
    private static final double SINK_MPS = 250 * 0.3048 * 200 / 360;

    private SpinLeg leg(SpinKind kind, int side, double turns) {
        return new SpinLeg(forces, Rig.level(22, 1500), kind, side, turns);
    }

    private FlightState spun(SpinKind kind, double turns) {
        return Rig.unwatched().fly(leg(kind, -1, turns), 0).moment();
    }

    private Look settled(SpinKind kind, int side, double turned) {
        SpinLeg leg = leg(kind, side, 6);
        double sink = kind.isFlat() ? 0.75 * SINK_MPS : SINK_MPS;
        Look look = new Look();
        leg.look(10, new double[] {0, 0, 800, 0, 0, -sink, 2 * Math.PI * turned}, look);
        return look;
    }

    /** Rotation grows as 1 − exp(−t/τ), so the turns after t are rate · (t − τ (1 − exp(−t/τ))) with τ 0.7 s. */
    @ParameterizedTest
    @CsvSource({"UPRIGHT, 200", "INVERTED, 200", "FLAT, 266.667"})
    void turnsBuildUpToTheAirframesRate(SpinKind kind, double degPerS) {
        for (double turns : new double[] {0.5, 1, 3}) {
            double t = spun(kind, turns).tS();
            double turned = degPerS * (t - 0.7 * (1 - Math.exp(-t / 0.7)));
            assertThat(turned).isCloseTo(360 * turns, Percentage.withPercentage(0.01));
        }
    }

    /**
     * A manufacturer's manual of a two-seat training glider, section 4, p. 4-19: 3.5 s for each turn, and 260 ft with one on board to 390 ft
     * with two. It sinks then with 22.6 to 34.0 m/s and turns at 103° a second.
     */
    @Test
    void theKindOfGliderSpinsAsAManualOfOneSays() {
        Forces glider = Rig.seaLevel(Rig.kind("aerobatic glider"));
        FlightState three = Rig.unwatched()
                .fly(new SpinLeg(glider, Rig.level(20, 1500), SpinKind.UPRIGHT, -1, 3), 0)
                .moment();
        FlightState four = Rig.unwatched()
                .fly(new SpinLeg(glider, Rig.level(20, 1500), SpinKind.UPRIGHT, -1, 4), 0)
                .moment();

        assertThat(four.tS() - three.tS()).isCloseTo(3.5, within(0.05));
        assertThat((three.place().z() - four.place().z()) / 0.3048).isBetween(260.0, 390.0);
        assertThat(four.speedMps()).isBetween(22.6, 34.0);
    }

    /** Common practice, no source: flat goes round a third faster and down a quarter slower. */
    @Test
    void flatSpinIsQuickerRoundAndSlowerDown() {
        double upright =
                spun(SpinKind.UPRIGHT, 9).tS() - spun(SpinKind.UPRIGHT, 8).tS();
        double flat = spun(SpinKind.FLAT, 9).tS() - spun(SpinKind.FLAT, 8).tS();

        assertThat(upright).isCloseTo(360 / 200.0, within(1e-3));
        assertThat(flat).isCloseTo(upright * 3 / 4, within(1e-3));
        assertThat(spun(SpinKind.UPRIGHT, 9).speedMps()).isCloseTo(SINK_MPS, within(0.1));
        assertThat(spun(SpinKind.FLAT, 9).speedMps()).isCloseTo(0.75 * SINK_MPS, within(0.1));
        assertThat(spun(SpinKind.INVERTED_FLAT, 9).tS())
                .isCloseTo(spun(SpinKind.FLAT, 9).tS(), within(1e-9));
    }

    /** FAA-H-8083-25C, ch. 5: about 1 g when settled; upside down it hangs the pilot in the straps. */
    @Test
    void settledSpinFeelsOneGAndTheInvertedOneMinusOne() {
        assertThat(settled(SpinKind.UPRIGHT, -1, 2).g).isCloseTo(1, within(1e-6));
        assertThat(settled(SpinKind.FLAT, -1, 2).g).isCloseTo(1, within(1e-6));
        assertThat(settled(SpinKind.INVERTED, -1, 2).g).isCloseTo(-1, within(1e-6));
        assertThat(settled(SpinKind.INVERTED_FLAT, -1, 2).g).isCloseTo(-1, within(1e-6));
    }

    @Test
    void settledDragCarriesTheWeightWithoutThrust() {
        Look look = settled(SpinKind.UPRIGHT, -1, 2);

        assertThat(look.dragN).isCloseTo(forces.body.weightN(), within(0.01));
        assertThat(look.thrustN).isZero();
        assertThat(look.rhoKgM3).isEqualTo(1.225);
        assertThat(look.stalledOnPurpose).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"UPRIGHT, 60, 1", "INVERTED, 60, -1", "FLAT, 20, 1"})
    void noseHangsDownAndTheCanopyShowsTheKind(SpinKind kind, double noseDownDeg, int canopy) {
        Look look = settled(kind, -1, 2);

        assertThat(Math.toDegrees(Math.asin(-look.tz))).isCloseTo(noseDownDeg, within(0.01));
        assertThat(look.tx).isPositive();
        assertThat(look.uz * canopy).isPositive();
    }

    /** A quarter of a turn after flying to the right: to the left is away from the crowd. */
    @Test
    void spinToTheLeftTurnsAwayFromTheCrowdAfterFlyingToTheRight() {
        assertThat(settled(SpinKind.UPRIGHT, -1, 0.25).ty).isGreaterThan(0.4);
        assertThat(settled(SpinKind.UPRIGHT, 1, 0.25).ty).isLessThan(-0.4);
    }

    /** After a turn and a quarter to the left it faces away from the crowd; pulled or pushed out it would fly there. */
    @Test
    void spinEndsStraightDownFacingWhereItTurnedTo() {
        FlightState upright = spun(SpinKind.UPRIGHT, 1.25);
        assertThat(upright.direction()).isEqualTo(Vec.DOWN);
        assertThat(upright.up().y()).isCloseTo(1, within(1e-6));
        assertThat(upright.headingRad()).isCloseTo(Math.PI / 2, within(1e-6));

        assertThat(spun(SpinKind.INVERTED, 1.25).up().y()).isCloseTo(-1, within(1e-6));
    }

    @ParameterizedTest
    @EnumSource(SpinKind.class)
    void spinBeginsWithTheNoseWhereItWasAndTheSpeedItHad(SpinKind kind) {
        SpinLeg leg = leg(kind, 1, 2);
        Look look = new Look();
        leg.look(0, leg.start(), look);

        assertThat(look.tx).isCloseTo(1, within(1e-9));
        assertThat(look.speedMps).isCloseTo(22, within(1e-9));
    }

    /** A line slows it to the stall first: 50 kt is 25.7 m/s, the biplane stalls at 25.3 upright and 27.5 inverted. */
    @Test
    void spinWaitsForTheStall() {
        FlightState fast = Rig.level(30, 1500);
        double upright = entryMps(fast, SpinKind.UPRIGHT);
        double inverted = entryMps(fast.facing(fast.direction(), Vec.DOWN), SpinKind.INVERTED);

        assertThat(upright).isCloseTo(forces.body.stallMps(1.225), within(1e-3));
        assertThat(inverted).isCloseTo(upright * Math.sqrt(1.3 / 1.1), within(1e-2));
    }

    private double entryMps(FlightState from, SpinKind kind) {
        double[] speed = {0};
        Integrator.Watcher watcher = (leg, tS, legS, y) -> {
            if (leg instanceof SpinLeg && legS == 0) {
                speed[0] = Math.hypot(y[3], y[5]);
            }
        };
        Rig.fly(forces, Rig.watched(watcher), from, new Element.Spin(kind, Side.LEFT, 1, 0));
        return speed[0];
    }
}
