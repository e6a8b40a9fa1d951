package crowdline.flight.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.CannotFly;
import crowdline.flight.leg.ElementFlyer;
import crowdline.flight.leg.Forces;
import crowdline.show.aircraft.Airframe;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.Side;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Every turn that is drawn is flown here, and ends as it is meant to. */
class TurnsTest {
    private static final double G = 9.80665;

    private final Airframe airframe = Rig.monoplane();
    private final Forces forces = Rig.seaLevel(airframe);
    private final ElementFlyer quiet = new ElementFlyer(forces, Rig.unwatched(), Variation.NONE);
    private final Turns turns = turns(forces);

    private Turns turns(Forces by) {
        Attempt attempt = new Attempt(4, -2, 1, false, 1.3, new Attempt.Throttle(1, 0.5));
        return new Turns(new Bends(by, attempt), airframe.usual(), new Parts(by));
    }

    private static Element.Turn turn(double degrees, @Nullable Double bankDeg, double power) {
        return new Element.Turn(Side.LEFT, degrees, bankDeg, 0, false, 0, false, power);
    }

    private static double bank(Element.Turn turn) {
        Double deg = turn.bankDeg();
        assertThat(deg).isNotNull();
        return deg;
    }

    @Test
    void turnKeepsAllButWhatIsDrawn() throws CannotFly {
        Element.Turn asked = new Element.Turn(Side.AWAY, 90, 50.0, 0, false, 1, true, 0.8);
        assertThat(turns.drawn(asked, Rig.level(60, 500), 0.5))
                .isEqualTo(new Element.Turn(Side.AWAY, 90, 50.0, 0, false, 1, true, 0.4));
    }

    /** cos φ = 1 / n at the load n the wing comfortably gives: 85 % of ½ ρ v² S c / (m g). */
    @Test
    void bankIsTheUsualOneAsFarAsTheWingCarriesIt() throws CannotFly {
        assertThat(bank(turns.drawn(turn(90, null, 1), Rig.level(70, 500), 1)))
                .isEqualTo(Math.rint(airframe.usual().turnBankDeg()));
        double wingG = 0.85 * 0.5 * 1.225 * 36 * 36 * 10.44 * 1.5 / (869.6 * G);
        assertThat(bank(turns.drawn(turn(90, null, 1), Rig.level(36, 500), 1)))
                .isEqualTo(Math.rint(Math.toDegrees(Math.acos(1 / wingG))));
        assertThat(bank(turns.drawn(turn(90, 30.0, 1), Rig.level(70, 500), 1))).isEqualTo(30);
    }

    /**
     * A climbing turn through half a circle takes 20 s and a wing-over 14: v times the rate of the heading over g is the
     * tangent of the bank, which is never more than the usual one.
     */
    @Test
    void climbingTurnIsBankedForTheTimePeopleSeeItTake() throws CannotFly {
        FlightState fast = Rig.level(100, 500);
        for (double degrees : new double[] {90, 180, 270}) {
            double climbing = Math.toDegrees(Math.atan(100 * Math.PI / 20 / G));
            double wingOver = Math.toDegrees(Math.atan(100 * Math.PI / 14 / G));
            Element.Turn asked = new Element.Turn(Side.LEFT, degrees, null, 30, true, 0, false, 1);
            assertThat(bank(turns.drawn(asked, fast, 1))).isEqualTo(Math.rint(Math.min(climbing, 60)));
            Element.Turn back = new Element.Turn(Side.LEFT, degrees, null, 30, false, 0, false, 1);
            assertThat(bank(turns.drawn(back, fast, 1)))
                    .isEqualTo(Math.rint(Math.min(wingOver, airframe.usual().turnBankDeg())));
        }
        Element.Turn slow = new Element.Turn(Side.LEFT, 180, null, 30, false, 0, false, 1);
        assertThat(bank(turns.drawn(slow, Rig.level(50, 500), 1)))
                .isEqualTo(Math.rint(Math.toDegrees(Math.atan(50 * Math.PI / 14 / G))));
    }

    @Test
    void climbingTurnHasTheMostPowerThatLeavesFourFifthsOfTheSpeed() throws CannotFly {
        FlightState at = Rig.level(80, 500);
        Element.Turn drawn = turns.drawn(new Element.Turn(Side.LEFT, 180, 52.0, 12, true, 0, false, 1), at, 1);
        assertThat(drawn.power()).isStrictlyBetween(0.05, 0.95);
        assertThat(quiet.fly(drawn, at).speedMps()).isCloseTo(64, within(0.1)).isLessThanOrEqualTo(64);
        assertThat(quiet.fly(moved(drawn, 0.003), at).speedMps()).isGreaterThan(64);
    }

    @Test
    void openClimbingTurnIsAsSteepAsLeavesHalfOfTheSpeedWithAllItsPower() throws CannotFly {
        FlightState at = Rig.level(80, 500);
        Element.Turn drawn = turns.drawn(new Element.Turn(Side.LEFT, 180, null, 12, true, 0, false, 1), at, 1);
        assertThat(drawn.power()).isEqualTo(1);
        assertThat(drawn.peakPathDeg()).isGreaterThan(20);
        assertThat(quiet.fly(drawn, at).speedMps()).isBetween(40.0, 48.0);
    }

    /**
     * Half of the speed is left and never less than 1.4 stalling speeds; and no steeper than levels off at 5.5 m/s² within
     * 20 s for half a circle, nor than 40°.
     */
    @Test
    void openClimbingTurnIsNoSteeperThanLeavesItsSpeedOrLevelsOffGently() throws CannotFly {
        double stall = forces.body.stallMps(1.225);
        for (double mps : new double[] {60, 70, 80, 110, 140}) {
            FlightState at = Rig.level(mps, 500);
            double left = Math.max(0.5 * mps, 1.4 * stall);
            double steepest = Math.min(Math.toDegrees(5.5 * 20 / (Math.PI * left)), 40);
            Element.Turn drawn = turns.drawn(new Element.Turn(Side.LEFT, 180, null, 12, true, 0, false, 1), at, 1);
            double deg = drawn.peakPathDeg();
            assertThat(deg).as("at %s m/s", mps).isBetween(8.0, Math.rint(steepest));
            if (deg < Math.rint(steepest)) {
                assertThat(endMps(drawn, deg + 1, at)).as("a degree steeper").isLessThan(left);
            }
            if (deg > 9) {
                assertThat(endMps(drawn, deg - 1, at)).as("a degree less").isGreaterThan(left);
            }
        }
        assertThat(turns.drawn(new Element.Turn(Side.LEFT, 180, null, 12, true, 0, false, 1), Rig.level(140, 500), 1)
                        .peakPathDeg())
                .as("fast enough for the steepest that levels off gently")
                .isEqualTo(Math.rint(Math.toDegrees(5.5 * 20 / (Math.PI * 70))));
    }

    private double endMps(Element.Turn turn, double peakPathDeg, FlightState at) {
        try {
            return quiet.fly(
                            new Element.Turn(
                                    turn.toward(),
                                    turn.degrees(),
                                    bank(turn),
                                    peakPathDeg,
                                    true,
                                    0,
                                    false,
                                    turn.power()),
                            at)
                    .speedMps();
        } catch (CannotFly e) {
            return 0;
        }
    }

    @Test
    void climbingTurnThatIsTooSlowAnywayHasAllItsPower() throws CannotFly {
        FlightState at = Rig.level(60, 500);
        Element.Turn drawn = turns.drawn(new Element.Turn(Side.LEFT, 180, null, 45, true, 0, false, 0.3), at, 1);
        assertThat(drawn.power()).isEqualTo(0.3);
        assertThat(quiet.fly(drawn, at).speedMps()).isLessThan(48);
    }

    @Test
    void wingOverHasTheMostPowerThatBringsItDownAsHighAsItBegan() throws CannotFly {
        FlightState at = Rig.level(70, 500);
        Element.Turn drawn = turns.drawn(new Element.Turn(Side.LEFT, 180, null, 30, false, 0, false, 1), at, 1);
        double endM = quiet.fly(drawn, at).place().z();
        assertThat(endM).isGreaterThanOrEqualTo(500);
        if (drawn.power() < 1) {
            assertThat(quiet.fly(moved(drawn, 0.003), at).place().z()).isLessThan(500);
        }
    }

    @Test
    void circleIsNoSteeperThanThePowerCarriesIt() throws CannotFly {
        FlightState at = Rig.level(45, 500);
        Element.Turn drawn = turns.drawn(turn(360, null, 0.4), at, 1);
        double deg = bank(drawn);
        assertThat(deg).isStrictlyBetween(25.0, airframe.usual().turnBankDeg());
        assertThat(quiet.fly(drawn, at).speedMps()).isCloseTo(45, within(0.2));
        // Two degrees steeper even full power does not hold the speed.
        Element.Turn steeper = turn(360, deg + 2, 0.4);
        assertThat(quiet.fly(steeper, at).speedMps()).isLessThanOrEqualTo(0.997 * 45);
    }

    @Test
    void circleWithPowerToSpareHasOnlyWhatKeepsItsSpeed() throws CannotFly {
        FlightState at = Rig.level(50, 500);
        Element.Turn drawn = turns.drawn(turn(360, 45.0, 1), at, 1);
        assertThat(bank(drawn)).isEqualTo(45);
        assertThat(drawn.power()).isStrictlyBetween(0.05, 0.95);
        assertThat(quiet.fly(drawn, at).speedMps()).isCloseTo(50, within(0.1)).isLessThanOrEqualTo(50);
        assertThat(quiet.fly(moved(drawn, 0.003), at).speedMps()).isGreaterThan(50);
    }

    /** Without power no bank keeps the speed, so that the circle stays as it was. */
    @Test
    void circleThatNothingCarriesStaysAsSteepAsItIs() throws CannotFly {
        Element.Turn drawn = turns.drawn(turn(360, 60.0, 0), Rig.level(60, 500), 1);
        assertThat(drawn).isEqualTo(turn(360, 60.0, 0));
    }

    /** v times a whole circle in 42 s over g is the tangent of the bank: 51° at 80 m/s, and there the power carries only 46°. */
    @Test
    void circleIsNotMadeSoWideThatItTakesTooLong() throws CannotFly {
        FlightState at = Rig.level(80, 500);
        double leastDeg = Math.toDegrees(Math.atan(80 * 2 * Math.PI / 42 / G));
        assertThat(quiet.fly(turn(360, leastDeg, 0.8), at).speedMps()).isLessThan(0.997 * 80);
        assertThat(quiet.fly(turn(360, 45.0, 0.8), at).speedMps()).isGreaterThan(0.997 * 80);
        assertThat(turns.drawn(turn(360, 60.0, 0.8), at, 1)).isEqualTo(turn(360, 60.0, 0.8));
        assertThat(bank(turns.drawn(turn(360, 60.0, 0.8), Rig.level(78, 500), 1)))
                .as("a little slower the power carries enough")
                .isBetween(50.0, 53.0);
    }

    /** Less than most of a circle is not seen to close. */
    @Test
    void onlyFromThreeHundredDegreesOnATurnIsACircle() throws CannotFly {
        FlightState at = Rig.level(50, 500);
        assertThat(turns.drawn(turn(299, 45.0, 1), at, 1).power()).isEqualTo(1);
        assertThat(turns.drawn(turn(300, 45.0, 1), at, 1).power()).isLessThan(0.95);
    }

    private static Element.Turn moved(Element.Turn turn, double power) {
        return new Element.Turn(
                turn.toward(),
                turn.degrees(),
                turn.bankDeg(),
                turn.peakPathDeg(),
                turn.climbs(),
                turn.rolls(),
                false,
                turn.power() + power);
    }

    /** From a place, straight towards or away from the crowd. */
    private static FlightState across(double awayM, double towardsY, double mps) {
        Vec direction = new Vec(Math.sqrt(1 - towardsY * towardsY), towardsY, 0);
        return new FlightState(0, new Vec(0, awayM, 500), mps, direction, Vec.UP);
    }

    private double awayAfter(double metres, double power, Element.Turn turn, FlightState at) throws CannotFly {
        FlightState on = quiet.fly(new Element.Line(Element.Until.METRES, metres, power), at);
        return quiet.fly(turn, on).place().y();
    }

    /** The last turn ends on the line the figure began on, whichever way it is come at. */
    @Test
    void lineBeforeTheLastTurnIsSoLongThatItEndsOnItsLine() throws CannotFly {
        for (double towards : new double[] {-1, -0.8, 0.8, 1}) {
            FlightState at = across(towards > 0 ? -900 : 960, towards, 60);
            Element.Turn last = turn(90, 45.0, 1);
            double metres = turns.backToTheLineM(last, at, 30, 0.3, 1);
            assertThat(metres).as("towards %s", towards).isStrictlyBetween(100.0, 2000.0);
            assertThat(awayAfter(metres, 0.3, last, at))
                    .as("towards %s", towards)
                    .isCloseTo(30, within(3.0));
        }
    }

    /** How far it is to its line counts, and not how far either is from the display line. */
    @Test
    void lineBeforeTheLastTurnCountsFromWhereItIs() throws CannotFly {
        Element.Turn last = turn(90, 45.0, 1);
        for (double atM : new double[] {20, 300}) {
            FlightState at = across(atM, 1, 60);
            double metres = turns.backToTheLineM(last, at, 900, 1, 1);
            assertThat(metres).as("from %s", atM).isGreaterThan(100);
            assertThat(awayAfter(metres, 1, last, at)).as("from %s", atM).isCloseTo(900, within(10.0));
        }
    }

    @Test
    void turnAtTheEndIsThoughtOfWithTheBankAndThePowerItIsFlownWith() throws CannotFly {
        FlightState at = across(-900, 1, 60);
        Element.Turn open = new Element.Turn(Side.LEFT, 90, null, 0, false, 0, false, 0.8);
        Element.Turn flown = turn(90, (double) Math.round(airframe.usual().turnBankDeg()), 0.4);
        double metres = turns.backToTheLineM(open, at, 0, 1, 0.5);
        assertThat(awayAfter(metres, 1, flown, at)).isCloseTo(0, within(1.0));
        assertThat(turns.backToTheLineM(open, at, 0, 1, 1)).isNotEqualTo(metres);
        assertThat(turns.backToTheLineM(open, at, 0, 0.2, 0.5)).isNotEqualTo(metres);
    }

    @Test
    void whoFliesAwayFromItsLineTurnsAtOnce() throws CannotFly {
        Element.Turn last = turn(90, 45.0, 1);
        assertThat(turns.backToTheLineM(last, across(400, 1, 60), 0, 1, 1)).isZero();
        assertThat(turns.backToTheLineM(last, across(-400, -1, 60), 0, 1, 1)).isZero();
        assertThat(turns.backToTheLineM(last, across(30, 1, 60), 30, 1, 1)).isZero();
        assertThat(turns.backToTheLineM(last, across(0, 0, 60), 500, 1, 1)).isZero();
        assertThat(turns.backToTheLineM(last, across(0, 0, 60), 900, 1, 1))
                .as("along it")
                .isZero();
    }

    @Test
    void whoIsTooNearTurnsAtOnce() throws CannotFly {
        Element.Turn last = turn(90, 45.0, 1);
        assertThat(turns.backToTheLineM(last, across(-50, 1, 60), 0, 1, 1)).isZero();
        assertThat(turns.backToTheLineM(last, across(50, -1, 60), 0, 1, 1)).isZero();
    }
}
