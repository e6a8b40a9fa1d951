package crowdline.flight.leg;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Variation;
import crowdline.flight.body.Vec;
import crowdline.show.figure.Element;
import crowdline.show.figure.Element.FlickKind;
import crowdline.show.figure.Element.RollStyle;
import crowdline.show.figure.Element.Side;
import crowdline.show.figure.Element.Size;
import crowdline.show.figure.Element.Until;
import crowdline.show.figure.Element.Way;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** Elements on paper: thrust equals drag, the speed on a level line stays, rolls go round at 200° each second. */
class ElementFlyerTest {
    private static final double G = 9.80665;
    private static final double HEIGHT_M = 500;
    private static final Offset<Double> CLOSE = within(1e-4);
    /** Pulls and rolls by a quarter more, pauses by a half. */
    private static final Variation MORE = new Variation(1, 1, 1, 1.25, 1.25, 1.5, 0, 0, 0);

    private final Forces forces = Rig.dragFree();

    private FlightState flown(FlightState from, Element element) {
        return Rig.fly(forces, from, element);
    }

    private FlightState flownMore(FlightState from, Element element) {
        try {
            return new ElementFlyer(forces, Rig.unwatched(), MORE).fly(element, from);
        } catch (CannotFly e) {
            throw new AssertionError(e);
        }
    }

    private static FlightState level(double mps) {
        return Rig.level(mps, HEIGHT_M);
    }

    private static FlightState inverted(double mps) {
        return level(mps).facing(new Vec(1, 0, 0), Vec.DOWN);
    }

    private static Element.Roll roll(RollStyle style, double degrees, @Nullable Double seconds) {
        return new Element.Roll(style, Side.LEFT, degrees, seconds, 4, 0.5, 1);
    }

    @Test
    void hesitationRollPausesBetweenItsPointsAndNotBehindTheLast() {
        assertThat(flown(level(80), roll(RollStyle.HESITATION, 360, null)).tS())
                .isCloseTo(360 / 200.0 + 3 * 0.5, CLOSE);
        assertThat(flown(level(80), roll(RollStyle.HESITATION, 270, null)).tS())
                .isCloseTo(270 / 200.0 + 2 * 0.5, CLOSE);
        assertThat(flown(level(80), roll(RollStyle.HESITATION, 100, null)).tS()).isCloseTo(100 / 200.0 + 0.5, CLOSE);
    }

    /** The rate of an aileron roll is the airframe's, so only the pauses vary here. */
    @Test
    void hesitationRollVariesItsPauses() {
        assertThat(flownMore(level(80), roll(RollStyle.HESITATION, 360, null)).tS())
                .isCloseTo(360 / 200.0 + 3 * 0.5 * 1.5, CLOSE);
    }

    @Test
    void halfAHesitationRollToTheLeftEndsOnItsBackOverTheLeftWing() {
        FlightState quarter = flown(level(80), roll(RollStyle.HESITATION, 90, null));
        // Flying to the right, the left wing is away from the crowd, and the canopy goes there.
        assertThat(quarter.up().y()).isCloseTo(1, CLOSE);
        assertThat(flown(level(80), roll(RollStyle.HESITATION, 180, null)).up().z())
                .isCloseTo(-1, CLOSE);
    }

    @Test
    void slowRollTakesItsSecondsAndLessWhereAllIsRolledFaster() {
        assertThat(flown(level(80), roll(RollStyle.SLOW, 360, 8.0)).tS()).isCloseTo(8, CLOSE);
        assertThat(flownMore(level(80), roll(RollStyle.SLOW, 360, 8.0)).tS()).isCloseTo(8 / 1.25, CLOSE);
    }

    @Test
    void barrelRollTakesSixSecondsOrThoseGiven() {
        assertThat(flown(level(80), roll(RollStyle.BARREL, 360, null)).tS()).isCloseTo(6, CLOSE);
        assertThat(flown(level(80), roll(RollStyle.BARREL, 360, 8.0)).tS()).isCloseTo(8, CLOSE);
        assertThat(flownMore(level(80), roll(RollStyle.BARREL, 360, 8.0)).tS()).isCloseTo(8 / 1.25, CLOSE);
    }

    /** Nose up first and round to the left, back to where it began. */
    @Test
    void barrelRollGoesUpAndToItsSideAndComesBack() {
        double[] most = {0, 0};
        Rig.fly(
                forces,
                Rig.watched((leg, tS, legS, y) -> {
                    Look look = new Look();
                    leg.look(legS, y, look);
                    most[0] = Math.max(most[0], look.tz);
                    most[1] = Math.max(most[1], look.ty);
                }),
                level(80),
                roll(RollStyle.BARREL, 360, null));
        // The nose circles a point 15 degrees off: 15 degrees up at a quarter, 30 to the side at half.
        assertThat(most[0]).isCloseTo(Math.sin(Math.toRadians(15)), within(1e-3));
        assertThat(most[1]).isCloseTo(Math.sin(Math.toRadians(30)), within(1e-3));

        FlightState end = flown(level(80), roll(RollStyle.BARREL, 360, null));
        assertThat(end.direction().x()).isCloseTo(1, CLOSE);
        assertThat(end.up().z()).isCloseTo(1, CLOSE);
    }

    @Test
    void lineOfSecondsVariesAsPausesDo() {
        assertThat(flown(level(80), Rig.line(Until.SECONDS, 4)).tS()).isCloseTo(4, CLOSE);
        assertThat(flownMore(level(80), Rig.line(Until.SECONDS, 4)).tS()).isCloseTo(6, CLOSE);
        assertThat(flownMore(level(80), Rig.line(Until.METRES, 400)).tS()).isCloseTo(5, CLOSE);
    }

    @Test
    void pullHarderMakesTheCircleSmaller() {
        FlightState top = flownMore(level(80), Rig.pullRound(180, 100));

        assertThat(top.place().z() - HEIGHT_M).isCloseTo(2 * 100 / 1.25, within(0.01));
    }

    /** Constant load n with thrust equal to drag: the top is at V0 (n − 1) / (n + 1); here n is 1 + 3 · 1.25 = 4.75. */
    @Test
    void pullHarderPullsMoreBeyondTheOneGOfFlyingLevel() {
        assertThat(flownMore(level(80), Rig.pullG(180, 4)).speedMps()).isCloseTo(80 * 3.75 / 5.75, within(0.01));
    }

    /** Upside down the wing already holds −1 g: a push to −3 becomes −1 − 2 · 1.25 = −3.5, seen from above 3.5 up. */
    @Test
    void pushHarderUpsideDownCountsFromMinusOne() {
        Element push = new Element.Arc(Way.PUSH, 180.0, null, Size.LOAD_G, -3, 1);

        assertThat(flownMore(inverted(80), push).speedMps()).isCloseTo(80 * 2.5 / 4.5, within(0.01));
    }

    private static Element roundFrom(Way way, double g) {
        return new Element.Arc(way, 180.0, null, Size.ROUND_FROM_G, g, 1);
    }

    /** Closed form: n − 1 = V² / (g R) at the foot of the circle; below 6 g it would not get over the top. */
    @Test
    void roundFromALoadIsTheCircleThatFeelsItAtTheStart() {
        double across = 2 * 80 * 80 / (6 * G);
        double varied = 2 * 80 * 80 / (6 * 1.25 * G);

        assertThat(climbed(flown(level(80), roundFrom(Way.PULL, 7)))).isCloseTo(across, within(0.01));
        assertThat(climbed(flown(level(80), roundFrom(Way.PUSH, -5)))).isCloseTo(-across, within(0.01));
        assertThat(climbed(flownMore(level(80), roundFrom(Way.PULL, 7)))).isCloseTo(varied, within(0.01));
    }

    private static double climbed(FlightState end) {
        return end.place().z() - HEIGHT_M;
    }

    private String whyNot(FlightState from, Element element) {
        ElementFlyer flyer = new ElementFlyer(forces, Rig.unwatched(), Variation.NONE);
        return catchThrowableOfType(CannotFly.class, () -> flyer.fly(element, from))
                .why();
    }

    @Test
    void roundFromALoadThatBendsTheOtherWayIsRefused() {
        assertThat(whyNot(level(80), roundFrom(Way.PULL, 1)))
                .isEqualTo("a load of 1.0 g does not bend the path that way from here");
        assertThat(whyNot(level(80), roundFrom(Way.PUSH, 2)))
                .isEqualTo("a load of 2.0 g does not bend the path that way from here");
    }

    /** Level without thrust and drag: 80 m/s are 155.5 kt and 500 m are 1,640 ft, for ever. */
    @Test
    void lineThatNeverReachesItsEndIsToldWithWhereItGot() {
        assertThat(whyNot(level(80), Rig.line(Until.KNOTS, 300)))
                .isEqualTo("the line never reaches its end; after 60 s it is at 156 kt and 1640 ft");
    }

    /** 40 m/s are worth 81.6 m, so at 3 m/s, where it is given up, a circle of 50 m is nearly at its top. */
    @Test
    void pullThatRunsOutOfSpeedIsToldWithTheSpeed() {
        assertThat(whyNot(level(40), Rig.pullRound(180, 50))).matches("runs out of speed in the pull, at [56] kt");
        Element push = new Element.Arc(Way.PUSH, 180.0, null, Size.RADIUS_M, 50, 1);
        assertThat(whyNot(inverted(40), push)).matches("runs out of speed in the push, at [56] kt");
    }

    @Test
    void actIsPredictedForTwoHoursAndNoLonger() throws CannotFly {
        ElementFlyer flyer = new ElementFlyer(forces, Rig.unwatched(), Variation.NONE);
        FlightState at = level(80);
        FlightState last = new FlightState(7200, at.place(), 80, at.direction(), at.up());
        FlightState late = new FlightState(7200.1, at.place(), 80, at.direction(), at.up());

        assertThat(flyer.fly(Rig.line(Until.SECONDS, 4), last).tS()).isCloseTo(7204, CLOSE);
        assertThatThrownBy(() -> flyer.fly(Rig.line(Until.SECONDS, 4), late))
                .hasMessage("begins after 120 minutes, which is as long as an act is predicted for");
    }

    /** The stalled wing gives all it has: more than one up in a positive flick, and down in a negative one. */
    @Test
    void flickFeelsAllTheWingHasTheWayItIsStalled() {
        assertThat(loadsInAFlick(FlickKind.POSITIVE)).isNotEmpty().allMatch(g -> g > 1);
        assertThat(loadsInAFlick(FlickKind.NEGATIVE)).isNotEmpty().allMatch(g -> g < -1);
    }

    private static List<Double> loadsInAFlick(FlickKind kind) {
        List<Double> loads = new ArrayList<>();
        Look look = new Look();
        Rig.fly(
                Rig.seaLevel(Rig.biplane()),
                Rig.watched((leg, tS, legS, y) -> {
                    leg.look(legS, y, look);
                    loads.add(look.g);
                }),
                level(45),
                new Element.Flick(kind, Side.LEFT, 360, 1));
        return loads;
    }

    /** It banks as it goes: from beginning to end g tan(bank) / V. */
    @Test
    void levelTurnTakesItsArcAlone() {
        double seconds = Math.PI / 2 * 80 / (G * Math.tan(Math.toRadians(60)));

        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            FlightState end = flown(level(80), new Element.Turn(side, 90, 60, 0, 0, 1));
            assertThat(end.tS()).isCloseTo(seconds, CLOSE);
            assertThat(end.headingRad()).isCloseTo(side == Side.LEFT ? Math.PI / 2 : -Math.PI / 2, CLOSE);
            assertThat(end.up().z()).isCloseTo(1, CLOSE);
            assertThat(end.place().z()).isCloseTo(HEIGHT_M, within(1e-6));
        }
    }

    @Test
    void turnUpsideDownStaysUpsideDown() {
        assertThat(flown(inverted(80), new Element.Turn(Side.LEFT, 90, 60, 0, 0, 1))
                        .up()
                        .z())
                .isCloseTo(-1, CLOSE);
    }

    /** A wing-over and a rolling turn roll as they go, so they take their arc alone. */
    @Test
    void wingOverAndRollingTurnTakeNoTimeToBank() {
        double flat = Math.PI / 2 * 80 / (G * Math.tan(Math.toRadians(60)));
        FlightState rolling = flown(level(80), new Element.Turn(Side.LEFT, 90, 60, 0, 2, 1));
        FlightState wingOver = flown(level(80), new Element.Turn(Side.LEFT, 180, 60, 30, 0, 1));

        assertThat(rolling.tS()).isCloseTo(flat, CLOSE);
        // Slower above, and a lower speed turns faster; it comes back to height, speed and the other way.
        assertThat(wingOver.tS()).isLessThan(2 * flat);
        assertThat(wingOver.place().z()).isCloseTo(HEIGHT_M, within(1.0));
        assertThat(Math.abs(wingOver.headingRad())).isCloseTo(Math.PI, CLOSE);
    }

    @Test
    void wingOverReachesItsPathInItsFirstHalf() {
        double[] steepest = {0};
        Rig.fly(
                forces,
                Rig.watched((leg, tS, legS, y) -> {
                    Look look = new Look();
                    leg.look(legS, y, look);
                    steepest[0] = Math.max(steepest[0], look.tz);
                }),
                level(80),
                new Element.Turn(Side.LEFT, 180, 60, 30, 0, 1));

        assertThat(steepest[0]).isCloseTo(0.5, within(1e-3));
    }

    /** To the left one roll to the inside puts the canopy first to the left, one to the outside to the right. */
    @Test
    void rollingTurnRollsInwardsOrOutwards() {
        assertThat(leanWhileBeginning(1)).isPositive();
        assertThat(leanWhileBeginning(-1)).isNegative();
    }

    /** How far the canopy leans away from the crowd, to the left, an eighth of a turn into a rolling turn to the left. */
    private double leanWhileBeginning(double rolls) {
        double[] lean = {0};
        Rig.fly(
                forces,
                Rig.watched((leg, tS, legS, y) -> {
                    Look look = new Look();
                    leg.look(legS, y, look);
                    if (y[4] < Math.PI / 8) {
                        lean[0] = look.uy;
                    }
                }),
                level(80),
                new Element.Turn(Side.LEFT, 90, 60, 0, rolls, 1));
        return lean[0];
    }
}
