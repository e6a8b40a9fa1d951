package crowdline.flight.moment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.ElementFlight;
import crowdline.flight.body.Attitude;
import crowdline.flight.leg.Sample;
import crowdline.show.figure.Element;
import crowdline.show.figure.MomentKind;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What is told of noses that move at rates a test gives, each moment within a hundredth of a second of where geometry has it,
 * and each threshold from both sides. The words are those of somebody who points at it: common practice, no source.
 */
class PathMomentsTest {
    private static final Attitude LEVEL = new Attitude(0, 0);

    static List<FigureMoments.Seen> seen(Nose nose, ElementFlight... elements) {
        List<Sample> samples = nose.samples();
        List<ElementFlight> flown = List.of(elements);
        List<FigureMoments.Seen> all = new ArrayList<>();
        PathMoments.runs(
                        samples,
                        flown,
                        flown.stream().map(e -> ElementMoments.of(e, samples)).toList())
                .forEach(run -> all.addAll(run.seen()));
        return all;
    }

    /** That these kinds are seen at these times, in order. */
    static void isSeen(List<FigureMoments.Seen> seen, Object... kindsAndTimes) {
        List<MomentKind> kinds = new ArrayList<>();
        for (int i = 0; i < kindsAndTimes.length; i += 2) {
            kinds.add((MomentKind) kindsAndTimes[i]);
        }
        assertThat(seen).extracting(FigureMoments.Seen::kind).containsExactlyElementsOf(kinds);
        for (int i = 0; i < kinds.size(); i++) {
            assertThat(seen.get(i).tS())
                    .as(kinds.get(i).words())
                    .isCloseTo((Double) kindsAndTimes[2 * i + 1], within(0.01));
        }
    }

    @Test
    void loopPullsUpGoesOverAndPullsOut() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 9, 360, 10, 360)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.OVER_THE_TOP,
                5.0,
                MomentKind.PULLS_OUT,
                7.0);
    }

    @Test
    void outsideLoopPushesUpAndOutTheSameWay() {
        isSeen(
                seen(Nose.inverted(0, 0, 1, 0, 9, 360, 10, 360)),
                MomentKind.PUSHES_UP,
                1.0,
                MomentKind.OVER_THE_TOP,
                5.0,
                MomentKind.PUSHES_OUT,
                7.0);
    }

    @Test
    void halfLoopIsAtItsTopWhereItIsAsGoodAsLevel() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 5, 180, 9, 180)),
                MomentKind.PULLS_UP,
                1.0,
                // 0.3 degrees before it at 45 a second.
                MomentKind.OVER_THE_TOP,
                5 - 0.3 / 45);
    }

    @Test
    void steepClimbIsPushedOverAndAFlatOneLevelsOff() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 31, 4, 31, 5, 0, 8, 0)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.PUSHES_OVER,
                4.0);
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 30, 4, 30, 5, 0, 8, 0)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.LEVELS_OFF,
                5 - 0.3 / 30);
    }

    @Test
    void climbThatGoesOnSteeperInItsMiddleIsPushedOverAllTheSame() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 45, 3, 45, 4, 20, 6, 20, 7, 0, 9, 0)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.PUSHES_OVER,
                6.0);
    }

    @Test
    void noseThatRisesALittleIsNoClimb() {
        isSeen(seen(Nose.upright(0, 0, 1, 0, 2, 14.9, 4, 14.9, 5, 0, 6, 0)));
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 15.1, 4, 15.1, 5, 0, 7, 0)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.LEVELS_OFF,
                5 - 0.3 / 15.1);
    }

    @Test
    void climbThatOnlyGetsFlatterGoesOn() {
        // Level again is flatter than six degrees; ten degrees are still the same climb.
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 25, 3, 25, 4, 10, 6, 10, 7, 25, 8, 25, 9, 0, 11, 0)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.LEVELS_OFF,
                9 - 0.3 / 25);
    }

    @Test
    void diveHeadsDownAndIsPulledOrPushedOut() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, -45, 4, -45, 5, 0, 7, 0)),
                MomentKind.HEADS_DOWN,
                1.0,
                MomentKind.PULLS_OUT,
                4.0);
        isSeen(
                seen(Nose.inverted(0, 0, 1, 0, 2, -45, 4, -45, 5, 0, 7, 0)),
                MomentKind.HEADS_DOWN,
                1.0,
                MomentKind.PUSHES_OUT,
                4.0);
    }

    @Test
    void diveOutOfWhichItClimbsAtOncePullsOutAndThenUp() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, -40, 4, -40, 6, 40, 8, 40)),
                MomentKind.HEADS_DOWN,
                1.0,
                MomentKind.PULLS_OUT,
                4.0,
                MomentKind.PULLS_UP,
                5.0);
    }

    @Test
    void climbThatIsPushedThroughLevelIntoADiveGoesOverTheTop() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 45, 3, 45, 5, -45, 7, -45, 8, 0, 9, 0)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.OVER_THE_TOP,
                4.0,
                MomentKind.PULLS_OUT,
                7.0);
        // A moment level on the way through changes nothing.
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 45, 3, 45, 4, 0, 4.3, 0, 5.3, -45, 7, -45, 8, 0, 9, 0)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.OVER_THE_TOP,
                4 - 0.3 / 45,
                MomentKind.PULLS_OUT,
                7.0);
    }

    @Test
    void climbPushedToLevelAndSomeTimeLaterIntoADiveIsTwoThings() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 45, 3, 45, 4, 0, 6, 0, 7, -45, 9, -45, 10, 0, 11, 0)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.PUSHES_OVER,
                3.0,
                MomentKind.HEADS_DOWN,
                6.0,
                MomentKind.PULLS_OUT,
                9.0);
    }

    @Test
    void topThatIsHeldForSomeTimeHeadsDownAfterwards() {
        // Half a loop, held upside down for two seconds, then pulled on down.
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 5, 180, 7, 180, 9, 270, 11, 360, 12, 360)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.OVER_THE_TOP,
                5 - 0.3 / 45,
                MomentKind.HEADS_DOWN,
                7.0,
                MomentKind.PULLS_OUT,
                9.0);
        // Held for half a second, it is one way down.
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 5, 180, 5.5, 180, 7.5, 270, 9.5, 360, 10, 360)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.OVER_THE_TOP,
                5 - 0.3 / 45,
                MomentKind.PULLS_OUT,
                7.5);
    }

    @Test
    void straightUpAndDownIsToldWhereItIsHeldForMoreThanAMoment() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 3, 90, 3.8, 90, 5.8, 180, 8, 180)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.OVER_THE_TOP,
                5.8 - 0.3 / 45,
                MomentKind.STRAIGHT_UP,
                3.0);
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 3, 90, 3.6, 90, 5.6, 180, 8, 180)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.OVER_THE_TOP,
                5.6 - 0.3 / 45);
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, -79, 4, -79, 5, 0, 6, 0)),
                MomentKind.HEADS_DOWN,
                1.0,
                MomentKind.PULLS_OUT,
                4.0);
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, -81, 4, -81, 5, 0, 6, 0)),
                MomentKind.HEADS_DOWN,
                1.0,
                MomentKind.PULLS_OUT,
                4.0,
                MomentKind.STRAIGHT_DOWN,
                2.0);
    }

    private static ElementFlight flown(Element element, double startS, double lastLegS, double endS) {
        return new ElementFlight(0, element, startS, lastLegS, endS, LEVEL, LEVEL);
    }

    private static Element line() {
        return new Element.Line(Element.Until.SECONDS, 1, List.of(), 1);
    }

    @Test
    void whatBeginsWithAnElementBeginsExactlyThere() {
        isSeen(
                seen(
                        Nose.upright(0, 0, 1.04, 0, 2.04, 45, 4.07, 45, 5.07, 0, 7, 0),
                        flown(line(), 0, 0, 1.04),
                        flown(line(), 1.04, 1.04, 4.07),
                        flown(line(), 4.07, 4.07, 7)),
                MomentKind.PULLS_UP,
                1.04,
                MomentKind.PUSHES_OVER,
                4.07);
        // Held straight from within a step on: where the element began that holds it.
        isSeen(
                seen(
                        Nose.upright(0, 0, 1, 0, 3.06, 90, 5, 90),
                        flown(line(), 0, 0, 3.06),
                        flown(line(), 3.06, 3.06, 5)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.STRAIGHT_UP,
                3.06);
    }

    @Test
    void whileItTumblesTheNoseTellsNothingAndAfterwardsItDoesAgain() {
        Element tumble = new Element.Tumble(Element.Side.CROWD, 1, 1);
        List<FigureMoments.Seen> seen = seen(
                Nose.upright(0, 0, 1, 0, 2, 45, 3, 45, 4, -60, 5, 60, 6, -45, 8, -45, 9, 0, 10, 0),
                flown(line(), 0, 0, 3),
                flown(tumble, 3, 3, 6),
                flown(line(), 6, 6, 10));
        isSeen(seen, MomentKind.PULLS_UP, 1.0, MomentKind.PULLS_OUT, 8.0);
    }
}
