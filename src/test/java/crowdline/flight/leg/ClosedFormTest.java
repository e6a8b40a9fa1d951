package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.Wind;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.figure.Element.Until;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Loops, lines and dives that have a solution on paper; all within 1e-4. */
class ClosedFormTest {
    private static final Percentage CLOSE = Percentage.withPercentage(0.01);
    private static final double G = Units.G_MPS2;

    /**
     * A round loop with thrust equal to drag: T = (4R/V0) K(m) with m = 4gR/V0², K the complete elliptic integral of the
     * first kind (values by quadrature and two libraries' elliptic integrals). Load n = cos θ + V²/(gR).
     */
    @ParameterizedTest
    @CsvSource({
        // V0, R, whole, quarter, half, five eighths, V top
        "60, 70, 10.17327, 1.98946, 5.08663, 6.84239, 29.2256",
        "70, 80, 9.12379, 1.91924, 4.56189, 5.99918, 41.9747",
        "80, 120, 12.78784, 2.54893, 6.39392, 8.54961, 41.1437",
        "90, 150, 14.10842, 2.82887, 7.05421, 9.41508, 47.0745",
        "100, 200, 17.78745, 3.42021, 8.89373, 12.02751, 46.4185"
    })
    void roundLoopKeepsTheTimesOfTheEllipticIntegral(
            double v0, double radius, double whole, double quarter, double half, double fiveEighths, double vTop) {
        Forces forces = Rig.dragFree();
        FlightState start = Rig.level(v0, 100);
        assertThat(Rig.fly(forces, start, Rig.pullRound(360, radius)).tS()).isCloseTo(whole, CLOSE);
        assertThat(Rig.fly(forces, start, Rig.pullRound(90, radius)).tS()).isCloseTo(quarter, CLOSE);
        assertThat(Rig.fly(forces, start, Rig.pullRound(225, radius)).tS()).isCloseTo(fiveEighths, CLOSE);
        FlightState top = Rig.fly(forces, start, Rig.pullRound(180, radius));
        assertThat(top.tS()).isCloseTo(half, CLOSE);
        assertThat(top.speedMps()).isCloseTo(vTop, CLOSE);
        assertThat(top.place().z() - 100).isCloseTo(2 * radius, CLOSE);
    }

    /**
     * A loop at constant load factor with thrust equal to drag: V(θ) = V0 (n−1)/(n − cos θ); whole time
     * (V0 (n−1)/g) 2π n/(n²−1)^1.5; height of the top (V0² − Vtop²)/2g.
     */
    @ParameterizedTest
    @CsvSource({
        // V0, n, whole, V top, to the top, height, along at the end
        "70, 4, 9.2641, 42.0000, 4.6320, 159.892, 194.55",
        "80, 4, 10.5875, 48.0000, 5.2938, 208.838, 254.10",
        "90, 4, 11.9109, 54.0000, 5.9555, 264.310, 321.60",
        "90, 5, 9.8088, 60.0000, 4.9044, 229.436, 220.70",
        "70, 3.5, 10.4001, 38.8889, 5.2000, 172.722, 242.67",
        "60, 3.5, 8.9144, 33.3333, 4.4572, 126.898, 178.29"
    })
    void constantLoadLoopKeepsItsClosedForm(
            double v0, double n, double whole, double vTop, double toTop, double height, double along) {
        Forces forces = Rig.dragFree();
        FlightState start = Rig.level(v0, 100);
        FlightState top = Rig.fly(forces, start, Rig.pullG(180, n));
        assertThat(top.speedMps()).isCloseTo(vTop, CLOSE);
        assertThat(top.tS()).isCloseTo(toTop, CLOSE);
        assertThat(top.place().z() - 100).isCloseTo(height, CLOSE);
        FlightState end = Rig.fly(forces, start, Rig.pullG(360, n));
        assertThat(end.tS()).isCloseTo(whole, CLOSE);
        assertThat(end.place().x()).isCloseTo(along, CLOSE);
        assertThat(end.speedMps()).isCloseTo(v0, CLOSE);
    }

    /** The loop-the-loop of University Physics, vol. 1, §7.3 (OpenStax): v² at the foot is 5 g R, so n is 6, 3 and 0. */
    @Test
    void slowestFrictionlessLoopFeelsSixThreeAndNothing() {
        double radius = 100;
        double v0 = Math.sqrt(5 * G * radius);
        Look look = new Look();
        ArcLeg leg = (ArcLeg) arcLeg(v0, radius);
        double[] y = leg.start();
        leg.look(0, y, look);
        assertThat(look.g).isCloseTo(6, CLOSE);
        FlightState quarter = Rig.fly(Rig.dragFree(), Rig.level(v0, 0), Rig.pullRound(90, radius));
        assertThat(quarter.speedMps() * quarter.speedMps() / (G * radius)).isCloseTo(3, CLOSE);
        FlightState top = Rig.fly(Rig.dragFree(), Rig.level(v0, 0), Rig.pullRound(180, radius));
        assertThat(top.speedMps() * top.speedMps() / (G * radius) - 1).isCloseTo(0, within(1e-4));
    }

    private static Leg arcLeg(double v0, double radius) {
        return ArcLeg.byRadius(Rig.dragFree(), Rig.level(v0, 0), 2 * Math.PI, 1, radius, 1);
    }

    /** A vertical line without power or drag: h = V²/2g, t = V/g. */
    @ParameterizedTest
    @CsvSource({"100, 134.9, 5.25", "140, 264.5, 7.34", "200, 539.7, 10.49"})
    void verticalLineWithoutPowerOrDragGoesAsHighAsItsEnergy(double kt, double height, double time) {
        FlightState top = Rig.fly(Rig.dragFree(), straightUp(Units.mpsFromKt(kt)), Rig.line(Until.KNOTS, 0));
        assertThat(top.place().z()).isCloseTo(height, within(0.06));
        assertThat(top.tS()).isCloseTo(time, within(0.006));
    }

    /** With drag and no thrust, c = ρ S CD0/2m: h = ln(1 + cV²/g)/2c, t = arctan(V sqrt(c/g))/sqrt(cg). */
    @ParameterizedTest
    @CsvSource({
        "400, 11.8, 0.012, 65, 205.94, 6.433",
        "500, 9.15, 0.05, 80, 278.09, 7.337",
        "900, 10.44, 0.030, 102.889, 485.78, 9.783"
    })
    void verticalLineWithDragFollowsTheLogarithm(
            double mass, double area, double cd0, double v0, double height, double time) {
        Forces forces = new Forces(Rig.body(mass, area, cd0, 0), Rig.SEA_LEVEL, Wind.CALM);
        FlightState top = Rig.fly(forces, straightUp(v0), Rig.line(Until.KNOTS, 0));
        double c = 1.225 * area * cd0 / (2 * mass);
        assertThat(top.place().z()).isCloseTo(Math.log(1 + c * v0 * v0 / G) / (2 * c), CLOSE);
        assertThat(top.tS()).isCloseTo(Math.atan(v0 * Math.sqrt(c / G)) / Math.sqrt(c * G), CLOSE);
        assertThat(top.place().z()).isCloseTo(height, within(0.006));
        assertThat(top.tS()).isCloseTo(time, within(0.0006));
    }

    /** A dive from rest: v = vt tanh(g t/vt), h = (vt²/g) ln cosh(g t/vt), vt the terminal speed. */
    @ParameterizedTest
    @CsvSource({
        "500, 9.15, 0.05, 5, 46.904, 119.87",
        "500, 9.15, 0.05, 10, 83.332, 451.07",
        "900, 10.44, 0.03, 5, 48.197, 121.53",
        "900, 10.44, 0.03, 10, 91.760, 474.15"
    })
    void diveFromRestFollowsTheHyperbolicTangent(
            double mass, double area, double cd0, double seconds, double speed, double depth) {
        Forces forces = new Forces(Rig.body(mass, area, cd0, 0), Rig.SEA_LEVEL, Wind.CALM);
        FlightState start = new FlightState(0, new Vec(0, 0, 1000), 0, Vec.DOWN, new Vec(1, 0, 0));
        FlightState end = Rig.fly(forces, start, Rig.line(Until.SECONDS, seconds));
        assertThat(end.speedMps()).isCloseTo(speed, CLOSE);
        assertThat(1000 - end.place().z()).isCloseTo(depth, CLOSE);
    }

    /** University Physics, vol. 1, §6.4 (OpenStax), ρ 1.21, g 9.80: 75 kg, C 0.70, A 0.18 m² falls at 98 m/s. */
    @Test
    void longDiveReachesThePublishedTerminalSpeed() {
        Forces forces = new Forces(Rig.body(75, 0.18, 0.70, 0), z -> 1.21, Wind.CALM);
        FlightState start = new FlightState(0, new Vec(0, 0, 9000), 0, Vec.DOWN, new Vec(1, 0, 0));
        assertThat(Rig.fly(forces, start, Rig.line(Until.SECONDS, 55)).speedMps())
                .isCloseTo(98, within(0.5));
    }

    /** University Physics, vol. 1, §3.5 (OpenStax): up at 24.5 m/s, 30.6 m high after 2.5 s (g 9.80). */
    @Test
    void ballThrownUpRisesAsInTheTextbook() {
        FlightState top = Rig.fly(Rig.dragFree(), straightUp(24.5), Rig.line(Until.KNOTS, 0));
        assertThat(top.place().z()).isCloseTo(30.6, within(0.05));
        assertThat(top.tS()).isCloseTo(2.5, within(0.01));
    }

    private static FlightState straightUp(double speedMps) {
        return new FlightState(0, new Vec(0, 0, 0), speedMps, Vec.UP, new Vec(-1, 0, 0));
    }
}
