package crowdline.flight.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;
import crowdline.show.aircraft.Engine;
import crowdline.show.aircraft.Engine.PropellerType;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PropellerTest {
    private final Propeller light = propeller(134, 1.93, PropellerType.CONSTANT_SPEED);

    private static Propeller propeller(double kw, double diameterM, PropellerType type) {
        double radius = diameterM / 2;
        return new Propeller(kw * 1000, Math.PI * radius * radius, 2700 * 2 * Math.PI / 60, true, Blades.of(type));
    }

    /** T = (2 ρ A P²)^⅓: 134 kW on 1.93 m is 5049 N, 224 kW on 2.0 m is 7282 N at sea level. */
    private static double idealAtRestN(double kw, double diameterM) {
        return Math.cbrt(2 * 1.225 * Math.PI * diameterM * diameterM / 4 * kw * kw * 1e6);
    }

    /**
     * Momentum theory solved apart from this code for an ideal disc at sea level: T = 2ρA(V+v)v, P = T(V+v). The power
     * is divided by what is useful of it so that the ideal values come out, beyond the speeds where the pull at rest bounds.
     */
    @ParameterizedTest
    @CsvSource({
        "134, 1.93, 50, 2394",
        "134, 1.93, 70, 1824",
        "224, 2.0, 50, 3829",
        "224, 2.0, 70, 2981",
        "224, 2.0, 100, 2180"
    })
    void thrustInFlightMatchesMomentumTheory(double kw, double diameter, double speed, double newtons) {
        Propeller propeller = propeller(kw / Propeller.IN_FLIGHT, diameter, PropellerType.GEARED);
        assertThat(propeller.thrustN(speed, 1.225, 1)).isCloseTo(newtons, within(0.005 * newtons));
    }

    /**
     * One point of flight of a three-blade propeller of 2.70 m: 36.0111 m/s, 134,225.98 W, 2736.84 N
     * (JSBSim-Team/jsbsim, note in the propeller's data file).
     */
    @ParameterizedTest
    @EnumSource(
            value = PropellerType.class,
            names = {"CONSTANT_SPEED", "GEARED"})
    void aPointOfFlightIsAsComputedElsewhere(PropellerType type) {
        assertThat(propeller(134.22598, 2.70, type).thrustN(36.0111, 1.225, 1))
                .isCloseTo(2736.84, within(0.03 * 2736.84));
    }

    /** What is pulled at a share of the power is what an engine of that power pulls. */
    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.2, 0.5, 0.99})
    void partOfThePowerPullsAsASmallerEngine(double share) {
        for (double speed : List.of(0.0, 20.0, 60.0, 120.0)) {
            double idle = (1 - share) * light.thrustN(speed, 1.225, 0);
            double smaller =
                    propeller(134 * share, 1.93, PropellerType.CONSTANT_SPEED).thrustN(speed, 1.225, 1);
            assertThat(light.thrustN(speed, 1.225, share) - idle).isCloseTo(smaller, within(1e-9 * smaller));
        }
    }

    /** Measured and computed shares of the ideal pull at rest: 0.35 to 0.60 with fixed blades, 0.55 to 0.75 with variable. */
    @ParameterizedTest
    @CsvSource({
        "FIXED_CRUISE, 0.35, 0.45",
        "FIXED_CLIMB, 0.45, 0.60",
        "CONSTANT_SPEED, 0.55, 0.75",
        "TURBINE, 0.55, 0.75",
        "GEARED, 0.70, 0.85"
    })
    void pullAtRestIsAShareOfTheIdeal(PropellerType type, double least, double most) {
        double share = propeller(134, 1.93, type).thrustN(0, 1.225, 1) / idealAtRestN(134, 1.93);

        assertThat(share).isBetween(least, most);
        assertThat(share).isCloseTo(Blades.of(type).atRest, within(1e-9));
    }

    /** eta / ideal eta is 0.80 and more at J = 0.6 in the tables of fixed propellers (0.74 to 0.79 of 0.92 to 0.93). */
    @ParameterizedTest
    @EnumSource(PropellerType.class)
    void byAdvanceRatioOfSixTenthsItIsNearlyAsInFlight(PropellerType type) {
        double speed = 0.6 * 2700 / 60 * 1.93;
        double bound = propeller(134, 1.93, type).thrustN(speed, 1.225, 1);
        double free = propeller(134, 1.93, PropellerType.GEARED).thrustN(speed, 1.225, 1);

        assertThat(bound / free).isBetween(0.90, 1.0);
    }

    @ParameterizedTest
    @EnumSource(PropellerType.class)
    void thrustIsFiniteAndFallsWithSpeedWithoutAJump(PropellerType type) {
        Propeller propeller = propeller(134, 1.93, type);
        for (double share : List.of(0.0, 0.3, 1.0)) {
            double before = propeller.thrustN(-5, 1.225, share);
            for (double speed = -4.9; speed < 150; speed += 0.1) {
                double now = propeller.thrustN(speed, 1.225, share);
                assertThat(before - now).as("%s at %s", share, speed).isBetween(-1e-9, 25.0);
                before = now;
            }
        }
    }

    @ParameterizedTest
    @EnumSource(PropellerType.class)
    void thrustGrowsWithPowerAtAnySpeed(PropellerType type) {
        Propeller propeller = propeller(134, 1.93, type);
        for (double speed = 0; speed < 120; speed += 10) {
            for (double share = 0; share < 0.95; share += 0.1) {
                assertThat(propeller.thrustN(speed, 1.225, share + 0.1))
                        .as("%s at %s", share, speed)
                        .isGreaterThan(propeller.thrustN(speed, 1.225, share));
            }
        }
    }

    /** The two equations solved by halving, with the corner rounded: what is read off a curve is what they give. */
    @ParameterizedTest
    @EnumSource(PropellerType.class)
    void thrustIsWhatMomentumTheoryGivesAtAnySpeed(PropellerType type) {
        double area = Math.PI * 1.93 * 1.93 / 4;
        double watts = 134_000 * Propeller.IN_FLIGHT;
        double atRest = Blades.of(type).atRest * idealAtRestN(134, 1.93);
        double free = Math.cbrt(2 * 1.225 * area * watts * watts);
        double bound = Math.pow(Math.pow(atRest, -8) - Math.pow(free, -8), -1.0 / 8);
        for (double speed = 0; speed < 700; speed += 1.7) {
            double low = 0;
            double high = 100;
            for (int i = 0; i < 60; i++) {
                double drawn = (low + high) / 2;
                boolean isEnough = 2 * 1.225 * area * (speed + drawn) * (speed + drawn) * drawn > watts;
                low = isEnough ? low : drawn;
                high = isEnough ? drawn : high;
            }
            double inFlight = watts / (speed + low);
            double rounded = inFlight / Math.pow(1 + Math.pow(inFlight / bound, 8), 1.0 / 8);

            assertThat(propeller(134, 1.93, type).thrustN(speed, 1.225, 1))
                    .as("%s at %s", type, speed)
                    .isCloseTo(rounded, within(1e-8 * rounded));
        }
    }

    /** Rankine–Froude with power and density both halved: T = 2ρA(V+v)v at the same v is half as much. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 20, 60, 110})
    void thrustFallsInProportionToDensity(double speed) {
        assertThat(light.thrustN(speed, 0.6125, 1)).isCloseTo(light.thrustN(speed, 1.225, 1) / 2, within(1e-9));
    }

    /** At rest T³ goes with P², so a quarter of the power gives 4^(−2/3) of the thrust. */
    @Test
    void thrustAtRestGrowsWithTheTwoThirdsPowerOfPower() {
        double whole = light.thrustN(0, 1.225, 1);

        assertThat(light.thrustN(0, 1.225, 0.25)).isCloseTo(whole * Math.pow(4, -2.0 / 3), within(1e-6));
    }

    @Test
    void slidingBackItPullsAsAtRest() {
        assertThat(light.thrustN(-15, 1.225, 1)).isEqualTo(light.thrustN(0, 1.225, 1));
    }

    /**
     * Tables of CT and CP against J (JSBSim-Team/jsbsim, engine data files, a generator's output): the air turns the propeller
     * freely where CP is 0, and its drag on the disc is −8 CT / (π J²) there.
     */
    @Test
    void withoutPowerItDragsAsTablesHaveIt() {
        double fineLarge = freelyTurning(0.8, -0.0262, 0.0129, 1.0, -0.0569, -0.0387);
        double fineSmall = freelyTurning(0.8, -0.0204, 0.0100, 1.0, -0.0443, -0.0301);
        double coarse = freelyTurning(1.4, 0.0024, 0.0408, 1.6, -0.0277, -0.0036);

        assertThat(List.of(fineLarge, fineSmall))
                .allSatisfy(cd -> assertThat(cd).isBetween(0.09, 0.12));
        assertThat(dragOnDisc(PropellerType.CONSTANT_SPEED)).isBetween(fineSmall, fineLarge * 1.02);
        assertThat(dragOnDisc(PropellerType.FIXED_CLIMB)).isBetween(fineSmall, fineLarge);
        assertThat(dragOnDisc(PropellerType.FIXED_CRUISE)).isBetween(coarse, 0.05 + 1e-9);
        for (PropellerType type : PropellerType.values()) {
            assertThat(dragOnDisc(type)).isLessThanOrEqualTo(0.4);
        }
    }

    private static double freelyTurning(double j0, double ct0, double cp0, double j1, double ct1, double cp1) {
        double part = cp0 / (cp0 - cp1);
        double j = j0 + part * (j1 - j0);
        return -(ct0 + part * (ct1 - ct0)) * 8 / (Math.PI * j * j);
    }

    private static double dragOnDisc(PropellerType type) {
        Propeller propeller = propeller(134, 1.93, type);
        return -propeller.thrustN(50, 1.225, 0) / (0.5 * 1.225 * 50 * 50 * propeller.discM2());
    }

    /**
     * Raymer, Aircraft Design, eq. 12.39: a stopped propeller that is not feathered drags with 0.8 on the area of its blades. Two
     * blades of aspect ratio 8 have a solidity of 0.08, so on 1.93 m it is 103.2, 286.7 and 561.9 N at 30, 50 and 70 m/s.
     * Aerodynamics for Naval Aviators (1965), p. 149: in fine pitch a propeller drags more turning than stopped, up to some three times as
     * much, and above about 22° of pitch it drags less.
     */
    @ParameterizedTest
    @CsvSource({"30, 103.2", "50, 286.7", "70, 561.9"})
    void turningInFinePitchItDragsMoreThanStoppedAndInCoarsePitchLess(double mps, double stoppedN) {
        double solidity = 2 / (Math.PI * 8);
        double q = 0.5 * 1.225 * mps * mps;
        assertThat(0.8 * solidity * q * light.discM2()).isCloseTo(stoppedN, within(0.01 * stoppedN));

        for (PropellerType fine : List.of(PropellerType.FIXED_CLIMB, PropellerType.CONSTANT_SPEED)) {
            assertThat(-propeller(134, 1.93, fine).thrustN(mps, 1.225, 0)).isBetween(1.2 * stoppedN, 3 * stoppedN);
        }
        assertThat(-propeller(134, 1.93, PropellerType.FIXED_CRUISE).thrustN(mps, 1.225, 0))
                .isBetween(0.3 * stoppedN, stoppedN);
    }

    /**
     * Table of a fixed two-blade propeller of 75 in at 22° (JSBSim-Team/jsbsim, engine data): CT and CP against J. The power it takes there
     * gives the thrust it has there, within a tenth where its blades work well, J 0.7 to 1. Its thrust is nothing at J = 1.168, where an
     * engine held to its revolutions turns it no faster than the air does. This model holds the power and not the revolutions and has
     * no such point, so the kinds that have fixed blades must not be taken beyond it.
     */
    @Test
    void aFixedPropellersThrustFollowsItsTableAndNoKindIsFlownBeyondIt() {
        double[][] rows = {{0.7, 0.055, 0.0469}, {0.8, 0.045, 0.0426}, {0.9, 0.034, 0.0360}, {1.0, 0.024, 0.0282}};
        for (double[] row : rows) {
            Propeller taking = propeller(tableN(row[2] * 1.905, 3) / 1000, 1.905, PropellerType.FIXED_CRUISE);
            double thrustN = tableN(row[1], 2);
            assertThat(taking.thrustN(row[0] * 45 * 1.905, 1.225, 1))
                    .as("J %s", row[0])
                    .isCloseTo(thrustN, within(0.1 * thrustN));
        }
        double runsOut = 1.1 + 0.1 * 0.013 / (0.013 + 0.006);
        assertThat(runsOut).isCloseTo(1.168, within(0.001));
        int fixed = 0;
        for (String name : List.of("aerobatic two-seater", "light aerobatic biplane", "large biplane", "old trainer")) {
            Airframe kind = Rig.kind(name);
            if (kind.engine() instanceof Engine.Propeller blades
                    && (blades.type() == PropellerType.FIXED_CLIMB || blades.type() == PropellerType.FIXED_CRUISE)) {
                fixed++;
                double mps = Units.mpsFromKt(kind.neverExceedKt());
                assertThat(mps / (blades.rpm() / 60 * blades.diameterM()))
                        .as(name)
                        .isLessThan(runsOut);
            }
        }
        assertThat(fixed).isPositive();
    }

    /** A coefficient times ρ, revolutions of 45 a second to a power, and the diameter of 1.905 m to the fourth. */
    private static double tableN(double coefficient, int power) {
        return coefficient * 1.225 * Math.pow(45, power) * Math.pow(1.905, 4);
    }

    @Test
    void idlingBackwardsItDragsTheOtherWay() {
        assertThat(light.thrustN(-20, 1.225, 0)).isEqualTo(-light.thrustN(20, 1.225, 0));
    }

    @Test
    void aGlidersGivesNothing() {
        assertThat(NoDrive.NONE.thrustN(40, 1.225, 1)).isZero();
        assertThat(NoDrive.NONE.torqueNm(1.225, 1)).isZero();
    }

    /** Power is torque times rotation: 134 kW at 2,700 a minute turn with 473.9 N m. */
    @Test
    void torqueIsPowerOverRotation() {
        assertThat(-light.torqueNm(1.225, 1)).isCloseTo(473.9, within(0.1));
        assertThat(-light.torqueNm(1.225, 0.5)).isCloseTo(473.9 / 2, within(0.1));
        assertThat(-light.torqueNm(0.6125, 1)).isCloseTo(473.9 / 2, within(0.1));
    }
}
