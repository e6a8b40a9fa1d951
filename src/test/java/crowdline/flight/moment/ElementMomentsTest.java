package crowdline.flight.moment;

import static org.assertj.core.api.Assertions.assertThat;

import crowdline.flight.ElementFlight;
import crowdline.flight.body.Attitude;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.show.figure.Element;
import crowdline.show.figure.MomentKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** What is told of rolls that turn at rates a test gives, each threshold from both sides; common practice, no source. */
class ElementMomentsTest {
    private static final double STEP_S = 0.1;
    private static final Attitude LEVEL = new Attitude(0, 0);

    /** Rolls about a level nose, banked so far from knot to knot. */
    private static List<Sample> rolling(double... knots) {
        Knots bank = new Knots(knots);
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i <= Math.round(bank.endS() / STEP_S); i++) {
            double rad = Math.toRadians(bank.deg(i * STEP_S));
            samples.add(new Sample(
                    i * STEP_S,
                    new Vec(5.0 * i, 0, 100),
                    50,
                    new Vec(1, 0, 0),
                    new Vec(0, -Math.sin(rad), Math.cos(rad)),
                    1,
                    0,
                    0));
        }
        return samples;
    }

    private static ElementFlight roll(double degrees, double seconds, double startBankDeg) {
        Element.Roll roll = new Element.Roll(Element.RollStyle.SLOW, Element.Side.CROWD, degrees, seconds, 0, 0, 1);
        return new ElementFlight(
                0, roll, 0, 0, seconds, new Attitude(0, startBankDeg), new Attitude(0, startBankDeg + degrees));
    }

    @Test
    void slowRollIsUpsideDownInItsMiddleOncePerTurn() {
        PathMomentsTest.isSeen(
                ElementMoments.of(roll(720, 12, 0), rolling(0, 0, 12, 720)).seen(),
                MomentKind.ROLLS,
                0.0,
                MomentKind.UPSIDE_DOWN,
                3.0,
                MomentKind.UPSIDE_DOWN,
                9.0,
                MomentKind.ROLL_ENDS,
                12.0);
    }

    @Test
    void rollThatBeginsUpsideDownComesToItsBackAfterAWholeTurn() {
        PathMomentsTest.isSeen(
                ElementMoments.of(roll(720, 12, 180), rolling(0, 180, 12, 900)).seen(),
                MomentKind.ROLLS,
                0.0,
                MomentKind.UPSIDE_DOWN,
                6.0,
                MomentKind.UPSIDE_DOWN,
                12.0,
                MomentKind.ROLL_ENDS,
                12.0);
    }

    @Test
    void quickRollIsNotToldUpsideDown() {
        // 2.5 seconds a turn is the limit.
        assertThat(ElementMoments.of(roll(360, 2.5, 0), rolling(0, 0, 2.5, 360)).seen())
                .extracting(FigureMoments.Seen::kind)
                .containsExactly(MomentKind.ROLLS, MomentKind.ROLL_ENDS);
        assertThat(ElementMoments.of(roll(360, 2.6, 0), rolling(0, 0, 2.6, 360)).seen())
                .extracting(FigureMoments.Seen::kind)
                .containsExactly(MomentKind.ROLLS, MomentKind.UPSIDE_DOWN, MomentKind.ROLL_ENDS);
    }

    /** A barrel roll of three seconds, as high as a test gives at each tenth of a second. */
    private static List<MomentKind> barrel(DoubleUnaryOperator heightM) {
        Element.Roll barrel = new Element.Roll(Element.RollStyle.BARREL, Element.Side.CROWD, 360, 3.0, 0, 0, 1);
        List<Sample> samples = new ArrayList<>();
        for (int i = -10; i <= 40; i++) {
            double tS = i * STEP_S;
            samples.add(new Sample(
                    tS,
                    new Vec(50 * tS, 0, heightM.applyAsDouble(tS)),
                    50,
                    new Vec(1, 0, 0),
                    new Vec(0, 0, 1),
                    1,
                    0,
                    0));
        }
        return ElementMoments.of(new ElementFlight(0, barrel, 0, 0, 3, LEVEL, LEVEL), samples).seen().stream()
                .map(FigureMoments.Seen::kind)
                .toList();
    }

    @Test
    void barrelRollGoesOverTheTopUnlessItIsHighestWhereItBeginsOrEnds() {
        assertThat(barrel(tS -> 300 - Math.abs(tS - 1.5)))
                .containsExactly(MomentKind.ROLLS, MomentKind.OVER_THE_TOP, MomentKind.ROLL_ENDS);
        assertThat(barrel(tS -> 300 - Math.abs(tS - 0.3)))
                .containsExactly(MomentKind.ROLLS, MomentKind.OVER_THE_TOP, MomentKind.ROLL_ENDS);
        assertThat(barrel(tS -> 300 - Math.abs(tS - 2.7)))
                .containsExactly(MomentKind.ROLLS, MomentKind.OVER_THE_TOP, MomentKind.ROLL_ENDS);
        for (double top : new double[] {-1, 0, 0.05, 2.95, 3, 4}) {
            assertThat(barrel(tS -> 300 - Math.abs(tS - top)))
                    .as("highest at %s s", top)
                    .containsExactly(MomentKind.ROLLS, MomentKind.ROLL_ENDS);
        }
    }

    @Test
    void partOfARollIsToldByHowTheWingLiesAfterwards() {
        Map<Double, List<MomentKind>> told = Map.of(
                19.0, List.of(),
                20.0, List.of(MomentKind.DIPS_A_WING),
                59.0, List.of(MomentKind.DIPS_A_WING),
                60.0, List.of(MomentKind.ROLLS_ONTO_ITS_SIDE),
                119.0, List.of(MomentKind.ROLLS_ONTO_ITS_SIDE),
                120.0, List.of(MomentKind.ROLLS_UPSIDE_DOWN),
                299.0, List.of(MomentKind.ROLLS_ONTO_ITS_SIDE),
                300.0, List.of(MomentKind.ROLLS, MomentKind.ROLL_ENDS));
        told.forEach((degrees, kinds) -> {
            Element.Roll roll = new Element.Roll(Element.RollStyle.AILERON, Element.Side.CROWD, degrees, null, 0, 0, 1);
            double end = degrees > 180 ? degrees - 360 : degrees;
            ElementFlight flown = new ElementFlight(0, roll, 0, 0, 1, LEVEL, new Attitude(0, end));
            assertThat(ElementMoments.of(flown, rolling(0, 0, 1, degrees)).seen())
                    .as(degrees + " degrees")
                    .extracting(FigureMoments.Seen::kind)
                    .containsExactlyElementsOf(kinds);
        });
    }
}
