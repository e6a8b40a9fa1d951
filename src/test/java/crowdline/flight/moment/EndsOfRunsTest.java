package crowdline.flight.moment;

import static crowdline.flight.moment.PathMomentsTest.isSeen;
import static crowdline.flight.moment.PathMomentsTest.seen;

import crowdline.flight.ElementFlight;
import crowdline.flight.body.Attitude;
import crowdline.show.figure.Element;
import crowdline.show.figure.MomentKind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is told where a stretch of path begins or ends in the middle of something, and of a nose quicker than its samples. */
class EndsOfRunsTest {
    private static ElementFlight flown(Element element, double startS, double endS) {
        return new ElementFlight(0, element, startS, startS, endS, new Attitude(0, 0), new Attitude(0, 0));
    }

    private static Element line() {
        return new Element.Line(Element.Until.SECONDS, 1, List.of(), 1);
    }

    @Test
    void noseThatRisesOrFallsFromTheFirstSampleDoesSoFromThere() {
        isSeen(seen(Nose.upright(0, 0, 1, 45, 2, 45)), MomentKind.PULLS_UP, 0.0);
        isSeen(seen(Nose.upright(0, 0, 1, -45, 2, -45)), MomentKind.HEADS_DOWN, 0.0);
    }

    @Test
    void climbInWhichItBeginsIsPushedOver() {
        isSeen(seen(Nose.upright(0, 45, 1, 45, 2, 0, 4, 0)), MomentKind.PUSHES_OVER, 1.0);
        isSeen(seen(Nose.upright(0, 45, 1, 0, 3, 0)), MomentKind.PUSHES_OVER, 0.0);
    }

    @Test
    void noseThatStillFallsWhereItEndsIsLevelledOffOnTheWay() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 25, 3, 25, 4, -10)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.LEVELS_OFF,
                3 + 24.7 / 35);
    }

    @Test
    void noseThatRisesInTheLastStepAloneIsPulledUp() {
        isSeen(seen(Nose.upright(0, 0, 1, 0, 1.1, 20)), MomentKind.PULLS_UP, 1.0);
        isSeen(seen(Nose.upright(0, 0, 0.1, 20)), MomentKind.PULLS_UP, 0.0);
        isSeen(seen(Nose.upright(0, 0, 0.1, -20)), MomentKind.HEADS_DOWN, 0.0);
    }

    @Test
    void diveThatHasOnlyJustBecomeLevelWhereItEndsIsPulledOut() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, -30, 3, -30, 4, -6.09, 5, -5.995)),
                MomentKind.HEADS_DOWN,
                1.0,
                MomentKind.PULLS_OUT,
                5.0);
    }

    /** From steep to beyond level within two samples, and held there flatter than a dive or a climb. */
    @Test
    void noseThatIsThroughLevelBetweenTwoSamplesHasLeftItsClimbOrDive() {
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, 45, 3, 45, 3.2, -10, 6, -10)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.PUSHES_OVER,
                3.0);
        isSeen(
                seen(Nose.upright(0, 0, 1, 0, 2, -45, 3, -45, 3.2, 10, 6, 10)),
                MomentKind.HEADS_DOWN,
                1.0,
                MomentKind.PULLS_OUT,
                3.0);
    }

    @Test
    void elementThatBeginsASampleEarlierOrLaterIsNotWhereItHappens() {
        isSeen(
                seen(
                        Nose.upright(0, 0, 1, 0, 2, 45, 3, 45),
                        flown(line(), 0, 0.9),
                        flown(line(), 0.9, 1.1),
                        flown(line(), 1.1, 3)),
                MomentKind.PULLS_UP,
                1.0);
        isSeen(
                seen(
                        Nose.upright(0, 0, 1, 0, 3, 90, 5, 90),
                        flown(line(), 0, 2.9),
                        flown(line(), 2.9, 3.0),
                        flown(line(), 3.0, 5)),
                MomentKind.PULLS_UP,
                1.0,
                MomentKind.STRAIGHT_UP,
                3.0);
    }

    /** What a tumble leaves straight down was told by it; what becomes so two samples later is news. */
    @Test
    void straightDownAfterATumbleIsToldIfItWasNotSoAtOnce() {
        Element tumble = new Element.Tumble(Element.Side.CROWD, 1, 1);
        isSeen(seen(Nose.upright(0, -90, 4, -90), flown(tumble, 0, 1), flown(line(), 1, 4)));
        isSeen(
                seen(Nose.upright(0, -79, 1, -79, 1.2, -85, 4, -85), flown(tumble, 0, 1), flown(line(), 1, 4)),
                MomentKind.STRAIGHT_DOWN,
                1.2);
    }
}
