package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.Wind;
import crowdline.flight.body.Body;
import crowdline.flight.body.Drive;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import org.junit.jupiter.api.Test;

/** Closed forms of a path that follows the height still to go within 5 s, itself 1.2 s behind, and a throttle within 3 s. */
class GuidedLegTest {
    private static GuidedLeg leg(Forces forces, double toM, double toMps, double seconds, boolean levelAtEnd) {
        GuidedLeg.Aim aim = new GuidedLeg.Aim(toM, toMps, 0, 1);
        return new GuidedLeg(forces, Rig.level(60, 500), aim, (t, y) -> t - seconds, levelAtEnd);
    }

    private static FlightState flown(Forces forces, double toM, double toMps, double seconds, boolean levelAtEnd) {
        return Rig.unwatched()
                .fly(leg(forces, toM, toMps, seconds, levelAtEnd), 0)
                .moment();
    }

    /** 1.2 e'' + e' + e / 5 = 0 from rest: e = e0 (3 exp(−t/3) − 2 exp(−t/2)), for slopes small enough to be straight. */
    @Test
    void heightStillToGoFadesAsTwoLagsInARow() {
        for (double t : new double[] {1, 3, 6, 12}) {
            double left = 2 * (3 * Math.exp(-t / 3) - 2 * Math.exp(-t / 2));
            assertThat(502
                            - flown(Rig.seaLevel(Rig.monoplane()), 502, 60, t, false)
                                    .place()
                                    .z())
                    .isCloseTo(left, within(1e-3));
            assertThat(flown(Rig.seaLevel(Rig.monoplane()), 498, 60, t, false)
                                    .place()
                                    .z()
                            - 498)
                    .isCloseTo(left, within(1e-3));
        }
    }

    @Test
    void farAboveItsHeightItDescendsAtTwentyDegreesAndNoSteeper() {
        double steepest = Math.sin(Math.toRadians(20));

        assertThat(flown(Rig.seaLevel(Rig.monoplane()), -2000, 60, 10, false)
                        .direction()
                        .z())
                .isCloseTo(-steepest, within(1e-3));
    }

    @Test
    void climbsNoSteeperThanItsPowerHoldsTheSpeed() {
        Forces forces = Rig.seaLevel(Rig.trainer());
        FlightState climbing = flown(forces, 3000, 50, 40, false);
        double excess =
                forces.alongMps2(climbing.place().z(), climbing.speedMps(), 1, 0, 0, Units.G_MPS2, 1, 0) / Units.G_MPS2;

        assertThat(climbing.speedMps()).isCloseTo(50, within(1.0));
        assertThat(climbing.direction().z()).isCloseTo(excess, within(0.02)).isLessThan(0.2);
    }

    @Test
    void withoutPowerItSinksAndKeepsItsSpeed() {
        Forces forces = Rig.seaLevel(Rig.trainer());
        GuidedLeg.Aim aim = new GuidedLeg.Aim(3000, 45, 0, 0);
        FlightState sinking = Rig.unwatched()
                .fly(new GuidedLeg(forces, Rig.level(60, 500), aim, (t, y) -> t - 60, false), 0)
                .moment();

        assertThat(sinking.direction().z()).isNegative();
        assertThat(sinking.speedMps()).isCloseTo(45, within(2.0));
    }

    @Test
    void alongTheLineItComesBackToItGently() {
        Forces forces = Rig.seaLevel(Rig.monoplane());
        FlightState off = new FlightState(0, new Vec(0, -40, 500), 60, new Vec(1, 0, 0), Vec.UP);
        GuidedLeg.Aim aim = new GuidedLeg.Aim(500, 60, 0, 1, true, 0);
        FlightState on = Rig.unwatched()
                .fly(new GuidedLeg(forces, off, aim, (t, y) -> y[0] - 2000, true), 0)
                .moment();

        assertThat(on.place().y()).isCloseTo(0, within(1.0));
        assertThat(on.direction().x()).isEqualTo(1);
    }

    /** Between idle and full the throttle gives the speed change wanted, so what is missing fades with 3 s. */
    @Test
    void speedStillToGoFadesWithThreeSeconds() {
        Forces forces = Rig.seaLevel(Rig.biplane());
        for (double t : new double[] {1, 3, 6}) {
            assertThat(flown(forces, 500, 57, t, false).speedMps()).isCloseTo(57 + 3 * Math.exp(-t / 3), within(1e-4));
            assertThat(flown(forces, 500, 61, t, false).speedMps()).isCloseTo(61 - Math.exp(-t / 3), within(1e-4));
        }
    }

    @Test
    void throttleGivesNoMoreThanThePropellerAndNoLessThanIdle() {
        Forces forces = Rig.seaLevel(Rig.biplane());
        double full = flown(forces, 500, 200, 0.1, false).speedMps() - 60;
        double idle = flown(forces, 500, 6, 0.1, false).speedMps() - 60;
        Drive drive = forces.body.drive();
        double thrustMps2 = (drive.thrustN(60, 1.225, 1) - drive.thrustN(60, 1.225, 0)) / forces.body.massKg();

        // A tenth of a second changes thrust and drag by less than a hundredth.
        assertThat((full - idle) / 0.1).isCloseTo(thrustMps2, within(0.02 * thrustMps2));
        assertThat(idle).isNegative();
    }

    @Test
    void endsOnItsSlopeOrLevelIfThatIsWanted() {
        FlightState onSlope = flown(Rig.dragFree(), 3000, 60, 10, false);
        FlightState level = flown(Rig.dragFree(), 3000, 60, 10, true);

        assertThat(onSlope.up().dot(onSlope.direction())).isCloseTo(0, within(1e-9));
        assertThat(onSlope.direction().length()).isCloseTo(1, within(1e-9));
        assertThat(level.direction().z()).isZero();
        assertThat(level.direction().length()).isCloseTo(1, within(1e-9));
        assertThat(level.up().z()).isCloseTo(1, within(1e-9));
    }

    private static final double G = Units.G_MPS2;

    /** What it does at one moment: 500 m high, upright, at a speed, a heading and a path angle. */
    private static double[] rates(GuidedLeg leg, double awayM, double mps, double headingRad, double pathRad) {
        double[] dy = new double[6];
        leg.rates(0, new double[] {0, awayM, 500, mps, headingRad, pathRad}, dy);
        return dy;
    }

    private static GuidedLeg towards(Forces forces, GuidedLeg.Aim aim) {
        return new GuidedLeg(forces, Rig.level(60, 500), aim, (t, y) -> -1, false);
    }

    /** At the same bank, half as fast over the ground again turns the track half as fast again. */
    @Test
    void trackTurnsAsFastAsTheBankAndTheGroundHaveIt() {
        GuidedLeg.Aim aim = new GuidedLeg.Aim(500, 60, Math.toRadians(30), 1);
        double calm = G * Math.tan(Math.toRadians(30)) / 60;
        Body body = Body.of(Rig.monoplane(), Variation.NONE);
        Forces behind = new Forces(body, Rig.SEA_LEVEL, Wind.steady(270, 12 / Units.mpsFromKt(1), 90));
        assertThat(rates(towards(Rig.seaLevel(Rig.monoplane()), aim), 0, 60, 0, 0)[4])
                .isCloseTo(calm, within(1e-9));
        assertThat(rates(towards(behind, aim), 0, 60, 0, 0)[4]).isCloseTo(1.2 * calm, within(1e-9));
        GuidedLeg.Aim right = new GuidedLeg.Aim(500, 60, Math.toRadians(-30), 1);
        assertThat(rates(towards(behind, right), 0, 60, 0, 0)[4]).isCloseTo(-1.2 * calm, within(1e-9));
    }

    /** With the wind behind it the same path leads up faster, and costs as much more speed. */
    @Test
    void climbingOverTheGroundCostsTheSpeedOfWhatItClimbs() {
        GuidedLeg.Aim aim = new GuidedLeg.Aim(900, 200, 0, 1);
        Body body = Body.of(Rig.monoplane(), Variation.NONE);
        Forces behind = new Forces(body, Rig.SEA_LEVEL, Wind.steady(270, 12 / Units.mpsFromKt(1), 90));
        double calm = rates(towards(Rig.seaLevel(Rig.monoplane()), aim), 0, 60, 0, 0.2)[3];
        double blown = rates(towards(behind, aim), 0, 60, 0, 0.2)[3];
        double faster = behind.overGroundMps(500, 60, Math.cos(0.2), 0) / 60 - 1;
        assertThat(faster).isBetween(0.19, 0.2);
        assertThat(calm - blown).isCloseTo(G * Math.sin(0.2) * faster, within(1e-9));
    }

    /** Three quarters of the lift: ½ ρ v² S c / (m g). */
    private static double wingG(double mps) {
        return 0.75 * 0.5 * 1.225 * mps * mps * 10.44 * 1.5 / (869.6 * G);
    }

    @Test
    void bankIsCarriedByThreeQuartersOfTheWing() {
        Forces forces = Rig.seaLevel(Rig.monoplane());
        GuidedLeg.Aim steep = new GuidedLeg.Aim(500, 40, Math.toRadians(-70), 1);
        double carried = Math.sqrt(wingG(40) * wingG(40) - 1);
        assertThat(rates(towards(forces, steep), 0, 40, 0, 0)[4]).isCloseTo(-G * carried / 40, within(1e-9));
        assertThat(GuidedLeg.carriedTan(forces, 500, 40, 0.9 * carried)).isEqualTo(0.9 * carried);
        // However slow it is, a gentle bank is carried: 1.05 g.
        assertThat(GuidedLeg.carriedTan(forces, 500, 20, 9)).isCloseTo(Math.sqrt(1.05 * 1.05 - 1), within(1e-9));
    }

    /** Out of a dive the wing pulls with what the bank leaves of it, and always a little. */
    @Test
    void pullsOutNoHarderThanTheBankLeavesTheWing() {
        Forces forces = Rig.seaLevel(Rig.monoplane());
        double dive = Math.toRadians(-30);
        for (double tan : new double[] {0.2, 0.5, 0.9}) {
            GuidedLeg.Aim aim = new GuidedLeg.Aim(900, 30, Math.atan(tan), 1);
            double left = Math.sqrt(Math.max(wingG(40) * wingG(40) - tan * tan, 1.05 * 1.05)) - 1;
            assertThat(rates(towards(forces, aim), 0, 40, 0, dive)[5])
                    .as("a bank of tan %s", tan)
                    .isCloseTo(G * left / 40, within(1e-9));
        }
    }

    /** With wings level and power; a glider, or what is banked, climbs at twenty degrees at most. */
    @Test
    void pullsUpForAHeightWithTheSpeedItHasToSpare() {
        Forces forces = Rig.seaLevel(Rig.kind("fast jet"));
        assertThat(steepestDeg(forces, new GuidedLeg.Aim(3000, 90, 0, 1), 40)).isCloseTo(45, within(1e-9));
        assertThat(steepestDeg(forces, new GuidedLeg.Aim(3000, 90, 0, 0), 15)).isCloseTo(20, within(1e-9));
        assertThat(steepestDeg(forces, new GuidedLeg.Aim(3000, 90, 0.1, 1), 15)).isCloseTo(20, within(1e-9));
    }

    /** @param fromDeg its path by now, so near that the wing pulls as hard as that takes */
    private static double steepestDeg(Forces forces, GuidedLeg.Aim aim, double fromDeg) {
        double pathRad = Math.toRadians(fromDeg);
        return Math.toDegrees(pathRad + 1.2 * rates(towards(forces, aim), 0, 180, 0, pathRad)[5]);
    }

    /** A tenth of the wanted speed to spare levels it off twice as soon: 2.5 s for 5 s. */
    @Test
    void levelsOffSoonerWithSpeedToSpare() {
        Forces forces = Rig.seaLevel(Rig.monoplane());
        assertThat(climbs(forces, 60, new GuidedLeg.Aim(510, 60, 0, 1))).isCloseTo(10 / (5.0 * 60), within(1e-9));
        assertThat(climbs(forces, 63, new GuidedLeg.Aim(510, 60, 0, 1))).isCloseTo(1.5 * 10 / (5.0 * 63), within(1e-9));
        assertThat(climbs(forces, 66, new GuidedLeg.Aim(510, 60, 0, 1))).isCloseTo(2 * 10 / (5.0 * 66), within(1e-9));
        assertThat(climbs(forces, 66, new GuidedLeg.Aim(490, 60, 0, 1))).isCloseTo(-10 / (5.0 * 66), within(1e-9));
    }

    /** Of 10 m/s to spare at 150 m/s, a height of 50 m still to be had takes 50 g / 150 = 3.3; what is left fades with 3 s. */
    @Test
    void speedThatIsHeightStillToBeHadIsNotTakenOff() {
        Forces forces = Rig.seaLevel(Rig.kind("fast jet"));
        double left = 10 - 50 * G / 150;
        assertThat(rates(towards(forces, new GuidedLeg.Aim(550, 140, 0, 1)), 0, 150, 0, 0)[3])
                .isCloseTo(-left / 3, within(1e-9));
        assertThat(rates(towards(forces, new GuidedLeg.Aim(450, 148, 0, 1)), 0, 150, 0, 0)[3])
                .isCloseTo(-2.0 / 3, within(1e-9));
        // Nor is more of it won where the height takes all there is.
        assertThat(rates(towards(forces, new GuidedLeg.Aim(900, 140, 0, 1)), 0, 150, 0, 0)[3])
                .isCloseTo(0, within(1e-9));
    }

    /** The path angle, 1.2 s behind, at which power to spare and speed to spare climb. */
    private static double climbs(Forces forces, double mps, GuidedLeg.Aim aim) {
        return Math.sin(1.2 * rates(towards(forces, aim), 0, mps, 0, 0)[5]);
    }

    @Test
    void climbsWithThePowerAndTheSpeedItHasToSpare() {
        Forces forces = Rig.seaLevel(Rig.trainer());
        double level = forces.alongMps2(500, 50, 1, 0, 0, G, 1, 0) / G;
        assertThat(level).as("what the test needs").isBetween(0.05, 0.25);
        assertThat(climbs(forces, 50, new GuidedLeg.Aim(3000, 50, 0, 1))).isCloseTo(level, within(1e-9));
        assertThat(climbs(forces, 50, new GuidedLeg.Aim(3000, 48, 0, 1))).isCloseTo(level + 2.0 / 48, within(1e-9));
        assertThat(climbs(forces, 50, new GuidedLeg.Aim(3000, 52, 0, 1))).isCloseTo(level - 0.4 * 2 / 52, within(1e-9));
        double banked = forces.alongMps2(500, 50, 1, 0, 0, G * Math.hypot(1, 0.5), 1, 0) / G;
        assertThat(climbs(forces, 50, new GuidedLeg.Aim(3000, 50, Math.atan(0.5), 1)))
                .isCloseTo(banked, within(1e-9));
        assertThat(climbs(forces, 50, new GuidedLeg.Aim(3000, 48, Math.atan(0.5), 1)))
                .isCloseTo(banked + 0.4 * 2 / 48, within(1e-9));
        // With too little speed and power it stays level, and does not dive for them.
        assertThat(climbs(forces, 50, new GuidedLeg.Aim(3000, 90, 0, 1))).isCloseTo(0, within(1e-9));
    }

    @Test
    void glidingItDivesForSpeedItDoesNotHave() {
        Body unpowered = Rig.body(850, 16, 0.03, 0.05);
        Forces glider = new Forces(unpowered, Rig.SEA_LEVEL, Wind.CALM);
        double sinks = glider.alongMps2(500, 50, 1, 0, 0, G, 0, 0) / G;
        assertThat(sinks).as("what the test needs").isBetween(-0.2, -0.01);
        for (double power : new double[] {0, 1}) {
            assertThat(climbs(glider, 50, new GuidedLeg.Aim(3000, 50, 0, power)))
                    .isCloseTo(sinks, within(1e-9));
            assertThat(climbs(glider, 50, new GuidedLeg.Aim(3000, 51, 0, power)))
                    .isCloseTo(sinks - 1.2 / 51, within(1e-9));
        }
        Forces powered = Rig.seaLevel(Rig.trainer());
        double idle = powered.alongMps2(500, 50, 1, 0, 0, G, 0, 0) / G;
        assertThat(climbs(powered, 50, new GuidedLeg.Aim(3000, 49, 0, 0)))
                .as("with the throttle closed")
                .isCloseTo(idle + 1.2 / 49, within(1e-9));
        assertThat(climbs(glider, 50, new GuidedLeg.Aim(3000, 90, 0, 1)))
                .isCloseTo(-Math.sin(Math.toRadians(20)), within(1e-9));
    }

    private static GuidedLeg alongLine(boolean toRight, double awayM) {
        FlightState from = FlightState.along(new Vec(0, 0, 500), 60, toRight);
        GuidedLeg.Aim aim = new GuidedLeg.Aim(500, 60, 0, 1, true, awayM);
        return new GuidedLeg(Rig.seaLevel(Rig.monoplane()), from, aim, (t, y) -> -1, false);
    }

    /** It heads back as if to be there in 5 s, at 20° at most, and turns on to that heading within 1.5 s. */
    @Test
    void turnsTowardsTheLineFromEitherSideAndEitherWay() {
        for (double off : new double[] {-400, -20, 0, 20, 400}) {
            double wanted = Math.min(Math.atan(Math.abs(off) / 300), Math.toRadians(20)) * Math.signum(off) / 1.5;
            // Never with more than 40° of bank.
            double most = G * Math.tan(Math.toRadians(40)) / 60;
            double back = Math.min(Math.max(wanted, -most), most);
            assertThat(rates(alongLine(true, 25), 25 + off, 60, 0, 0)[4])
                    .as("to the right, %s m off", off)
                    .isCloseTo(-back, within(1e-9));
            for (double same : new double[] {Math.PI, -Math.PI}) {
                assertThat(rates(alongLine(false, 25), 25 + off, 60, same, 0)[4])
                        .as("to the left, %s m off", off)
                        .isCloseTo(back, within(1e-9));
            }
        }
    }

    @Test
    void turnsOutOfAWrongHeadingWithFortyDegreesOfBankAtMost() {
        double ten = Math.toRadians(10);
        assertThat(rates(alongLine(true, 0), 0, 60, ten, 0)[4]).isCloseTo(-ten / 1.5, within(1e-9));
        assertThat(rates(alongLine(true, 0), 0, 60, -ten, 0)[4]).isCloseTo(ten / 1.5, within(1e-9));
        assertThat(rates(alongLine(false, 0), 0, 60, Math.PI - ten, 0)[4]).isCloseTo(ten / 1.5, within(1e-9));
        double most = G * Math.tan(Math.toRadians(40)) / 60;
        assertThat(rates(alongLine(true, 0), 0, 60, 6 * ten, 0)[4]).isCloseTo(-most, within(1e-9));
        assertThat(rates(alongLine(true, 0), 0, 60, -6 * ten, 0)[4]).isCloseTo(most, within(1e-9));
    }

    @Test
    void itsEndPointsWhereItFliesOrAlongTheLine() {
        double[] y = {10, 20, 500, 60, 0.5, 0.2};
        FlightState end =
                towards(Rig.dragFree(), new GuidedLeg.Aim(500, 60, 0, 1)).after(7, 3, y);
        assertThat(end.tS()).isEqualTo(7);
        assertThat(end.place()).isEqualTo(new Vec(10, 20, 500));
        assertThat(end.speedMps()).isEqualTo(60);
        assertThat(end.direction())
                .isEqualTo(new Vec(Math.cos(0.2) * Math.cos(0.5), Math.cos(0.2) * Math.sin(0.5), Math.sin(0.2)));
        assertThat(end.up().z()).isCloseTo(Math.cos(0.2), within(1e-9));
        assertThat(alongLine(true, 0).after(7, 3, y).direction()).isEqualTo(new Vec(1, 0, 0));
        assertThat(alongLine(false, 0).after(7, 3, y).direction()).isEqualTo(new Vec(-1, 0, 0));
    }

    @Test
    void withLessThanFiveMetresASecondItIsOutOfSpeed() {
        GuidedLeg leg = alongLine(true, 0);
        assertThat(leg.outOfSpeed(0, new double[] {0, 0, 500, 5, 0, 0})).isFalse();
        assertThat(leg.outOfSpeed(0, new double[] {0, 0, 500, 4.99, 0, 0})).isTrue();
    }
}
