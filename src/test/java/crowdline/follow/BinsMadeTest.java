package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Attitude;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.measure.Units;
import crowdline.show.figure.Element;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/** Bins of paths that are written down here, each number against the path it stands for. */
class BinsMadeTest {
    private static final Vec NOSE = new Vec(1, 0, 0);
    private static final Attitude ANY = new Attitude(0, 0);

    /** A flight on a path, seen every tenth of a second, at a speed of 40 m/s and as many more as seconds have gone. */
    private static Flight flight(DoubleFunction<Vec> path, FigureFlight... figures) {
        double endS = figures[figures.length - 1].endS();
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i <= Math.round(endS * 10); i++) {
            double t = i / 10.0;
            samples.add(new Sample(t, path.apply(t), 40 + t, NOSE, Vec.UP, 1, 1, 1));
        }
        return new Flight("act", "full", List.of(figures), samples, List.of());
    }

    private static FigureFlight figure(double fromS, double toS, ElementFlight... elements) {
        return figure(true, true, fromS, toS, elements);
    }

    private static FigureFlight timed(double fromS, double toS) {
        return figure(false, true, fromS, toS);
    }

    private static FigureFlight figure(
            boolean simulated, boolean completed, double fromS, double toS, ElementFlight... elements) {
        return new FigureFlight(
                "f" + fromS,
                "f" + fromS,
                simulated,
                completed,
                fromS,
                toS,
                40,
                40,
                40,
                40,
                0,
                500,
                1,
                1,
                400,
                400,
                0,
                0,
                0,
                List.of(elements));
    }

    private static ElementFlight toPlace(double alongM, double fromS, double toS) {
        return new ElementFlight(0, new Element.Line(Element.Until.ALONG_M, alongM, 1), fromS, fromS, toS, ANY, ANY);
    }

    private static ElementFlight toHeight(double feet, double fromS, double toS) {
        return new ElementFlight(0, new Element.Line(Element.Until.FEET, feet, 1), fromS, fromS, toS, ANY, ANY);
    }

    private static Vec straight(double t, double vx, double vy, double vz) {
        return new Vec(-500 + vx * t, 30 + vy * t, 300 + vz * t);
    }

    /** Round to the left with so many metres a second, and so many of them across the path a second. */
    private static DoubleFunction<Vec> circle(double mps, double mps2, double climbMps) {
        double radius = mps * mps / mps2;
        return t -> new Vec(
                radius * Math.sin(t * mps / radius), radius * (1 - Math.cos(t * mps / radius)), 300 + climbMps * t);
    }

    @Test
    void everyBinHasThePlaceAndTheVelocityOfItsMiddle() {
        Bins bins = new Bins(flight(t -> straight(t, 60, 5, -8), figure(0, 4), figure(4, 10)));
        assertThat(bins.figures).isEqualTo(2);
        assertThat(bins.size).isEqualTo(50);
        assertThat(bins.first).containsExactly(0, 20, 50);
        assertThat(bins.length(0)).isEqualTo(20);
        assertThat(bins.length(1)).isEqualTo(30);
        assertThat(bins.half(0)).isEqualTo(10);
        assertThat(bins.half(1)).isEqualTo(35);
        for (int i = 0; i < 50; i++) {
            Vec middle = straight((i + 0.5) * 0.2, 60, 5, -8);
            assertThat(bins.figure[i]).isEqualTo(i < 20 ? 0 : 1);
            assertThat(bins.xM[i]).isCloseTo(middle.x(), within(1e-9));
            assertThat(bins.yM[i]).isCloseTo(middle.y(), within(1e-9));
            assertThat(bins.zM[i]).isCloseTo(middle.z(), within(1e-9));
            assertThat(bins.vxMps[i]).isCloseTo(60, within(1e-6));
            assertThat(bins.vyMps[i]).isCloseTo(5, within(1e-6));
            assertThat(bins.vzMps[i]).isCloseTo(-8, within(1e-6));
            assertThat(bins.timed[i]).isFalse();
            assertThat(bins.lineEnd[i]).isZero();
        }
    }

    /** 5.32 s are 27 bins of a little less than 0.2 s, and what is shorter than a bin still has one. */
    @Test
    void figureHasAWholeNumberOfBins() {
        Bins bins =
                new Bins(flight(t -> straight(t, 60, 0, 0), figure(0, 5.32), figure(5.32, 5.37), figure(5.37, 7.37)));
        assertThat(bins.first).containsExactly(0, 27, 28, 38);
        assertThat(bins.xM[1] - bins.xM[0]).isCloseTo(60 * 5.32 / 27, within(1e-6));
        assertThat(bins.xM[27]).isCloseTo(-500 + 60 * 5.345, within(1e-6));
    }

    @Test
    void velocityIsTakenOverATenthOfASecondToEitherSide() {
        Bins bins = new Bins(flight(circle(60, 20, 0), figure(0, 20)));
        double turned = 20.0 / 60 * 10.1;
        // A chord over 0.2 s of a circle: shorter than the arc by the sine of half its angle.
        double half = 0.1 * 20 / 60;
        assertThat(Math.hypot(bins.vxMps[50], bins.vyMps[50])).isCloseTo(60 * Math.sin(half) / half, within(1e-6));
        assertThat(Math.atan2(bins.vyMps[50], bins.vxMps[50]))
                .isCloseTo(turned - 2 * Math.PI * Math.round(turned / 2 / Math.PI), within(1e-6));
    }

    @Test
    void speedsAreThoseOfTheSamplesWhereAFigureBeginsAndEnds() {
        Bins bins = new Bins(flight(t -> straight(t, 60, 0, 0), figure(0, 4), figure(4, 10), figure(10, 12)));
        assertThat(bins.startMps).containsExactly(40, 44, 50);
        assertThat(bins.endMps).containsExactly(44, 50, 52);
    }

    @Test
    void whatHasNoPathOrDoesNotEndIsOnlyTimed() {
        DoubleFunction<Vec> path = t -> straight(t, 60, 0, -10);
        Bins bins = new Bins(flight(
                path,
                figure(false, true, 0, 2),
                figure(true, false, 2, 4, toPlace(0, 2, 4), toHeight(900, 2, 4)),
                figure(true, true, 4, 6)));
        for (int i = 0; i < 30; i++) {
            assertThat(bins.timed[i]).isEqualTo(i < 20);
            assertThat(bins.elastic[i]).isEqualTo(i >= 20);
            assertThat(bins.lineEnd[i]).isZero();
        }
    }

    @Test
    void pathIsStraightThatBendsByLessThanTwoAndAHalfMetresASecondSquared() {
        assertThat(new Bins(flight(circle(60, 2.4, 0), figure(0, 4))).elastic[10])
                .isTrue();
        assertThat(new Bins(flight(circle(60, 2.6, 0), figure(0, 4))).elastic[10])
                .isFalse();
        assertThat(new Bins(flight(t -> new Vec(60 * t, 0, 1.2 * t * t), figure(0, 4))).elastic[10])
                .isTrue();
        assertThat(new Bins(flight(t -> new Vec(60 * t, 0, 1.4 * t * t), figure(0, 4))).elastic[10])
                .isFalse();
        // 2 along and 2 across upwards are 2.8 of bend, from whichever side the two come.
        assertThat(new Bins(flight(t -> new Vec(60 * t, t * t, t * t), figure(0, 4))).elastic[1])
                .isFalse();
    }

    /** Slowing down by 6 m/s² climbing straight up and to the side at once. */
    @Test
    void whatOnlyChangesTheSpeedBendsNothing() {
        Vec way = new Vec(2, 1, 2).times(1 / 3.0);
        Bins bins = new Bins(flight(t -> way.times(60 * t - 3 * t * t), figure(0, 8)));
        for (int i = 1; i < 30; i++) {
            assertThat(bins.elastic[i]).as("bin %d", i).isTrue();
        }
    }

    @Test
    void pathFlownSlowlyIsNeverStraight() {
        assertThat(new Bins(flight(t -> straight(t, 19, 0, 0), figure(0, 4))).elastic[10])
                .isFalse();
        assertThat(new Bins(flight(t -> straight(t, 21, 0, 0), figure(0, 4))).elastic[10])
                .isTrue();
        assertThat(new Bins(flight(t -> straight(t, 12, 12, 12), figure(0, 4))).elastic[10])
                .isTrue();
    }

    @Test
    void lineToAPlaceMarksItsBinsAndNoOthers() {
        Bins bins = new Bins(flight(t -> straight(t, 60, 0, 0), figure(0, 4), figure(4, 10, toPlace(-20, 5, 8))));
        for (int i = 0; i < 50; i++) {
            boolean on = i >= 25 && i < 40;
            assertThat(bins.lineEnd[i]).as("bin %d", i).isEqualTo(on ? 40 : 0);
            assertThat(bins.toHeight[i]).isFalse();
            assertThat(bins.goalM[i]).isEqualTo(on ? -20 : 0);
        }
    }

    @Test
    void lineToAHeightIsFlownToItsMetresAboveTheDatum() {
        Bins bins = new Bins(flight(t -> straight(t, 60, 0, -10), figure(0, 10, toHeight(700, 1, 8))));
        for (int i = 0; i < 50; i++) {
            boolean on = i >= 5 && i < 40;
            assertThat(bins.lineEnd[i]).as("bin %d", i).isEqualTo(on ? 40 : 0);
            assertThat(bins.toHeight[i]).isEqualTo(on);
            assertThat(bins.goalM[i]).isEqualTo(on ? Units.mFromFt(700) : 0);
        }
    }

    /** A level line comes to no height, and one straight away from the crowd to no place along it. */
    @Test
    void lineThatComesNoNearerDoesNotWaitForItsGoal() {
        FigureFlight toHeight = figure(0, 4, toHeight(1000, 1, 3));
        assertThat(new Bins(flight(t -> straight(t, 60, 0, 3.9), toHeight)).lineEnd)
                .containsOnly(0);
        assertThat(new Bins(flight(t -> straight(t, 60, 0, -4.1), toHeight)).lineEnd[10])
                .isEqualTo(15);
        FigureFlight toPlace = figure(0, 4, toPlace(0, 1, 3));
        assertThat(new Bins(flight(t -> straight(t, -3.9, 60, 0), toPlace)).lineEnd)
                .containsOnly(0);
        assertThat(new Bins(flight(t -> straight(t, 4.1, 60, 0), toPlace)).lineEnd[10])
                .isEqualTo(15);
    }

    /** Whoever flies a line waits for its end, even if the path bends a little on the way. */
    @Test
    void lineIsElasticHoweverItBends() {
        Bins bins = new Bins(flight(circle(60, 6, 10), figure(0, 6, toHeight(1100, 1, 3))));
        assertThat(bins.elastic[4]).isFalse();
        assertThat(bins.elastic[5]).isTrue();
        assertThat(bins.elastic[14]).isTrue();
        assertThat(bins.elastic[15]).isFalse();
    }

    @Test
    void lineOfNoLengthHasOneBinWithinItsFigure() {
        DoubleFunction<Vec> path = t -> straight(t, 60, 0, 0);
        Bins middle = new Bins(flight(path, figure(0, 4), figure(4, 8, toPlace(0, 6, 6))));
        assertThat(middle.lineEnd[29]).isEqualTo(30);
        assertThat(middle.lineEnd[28]).isZero();
        assertThat(middle.lineEnd[30]).isZero();
        // At the very end of its figure: its last bin, and none of the next.
        Bins last = new Bins(flight(path, figure(0, 4, toPlace(0, 4, 4)), figure(4, 8)));
        assertThat(last.lineEnd[19]).isEqualTo(20);
        assertThat(last.lineEnd[20]).isZero();
        // At its very beginning there is none to wait in.
        Bins first = new Bins(flight(path, figure(0, 4), figure(4, 8, toPlace(0, 4, 4))));
        assertThat(first.lineEnd).containsOnly(0);
    }

    @Test
    void lineReachesNoFurtherThanItsFigure() {
        Bins bins = new Bins(
                flight(t -> straight(t, 60, 0, 0), figure(0, 4), figure(4, 8, toPlace(-20, 3.5, 8.5)), figure(8, 12)));
        for (int i = 0; i < 60; i++) {
            assertThat(bins.lineEnd[i]).as("bin %d", i).isEqualTo(i >= 20 && i < 40 ? 40 : 0);
        }
    }

    @Test
    void figureTurnsRoundThatTurnsThroughMoreThanTwoRadiansEitherWay() {
        // 60 m/s and 20 m/s² turn by a third of a radian a second; from the middle of the first bin to that of the
        // last.
        assertThat(new Bins(flight(circle(60, 20, 0), figure(0, 5.8))).round[0]).isFalse();
        assertThat(new Bins(flight(circle(60, 20, 0), figure(0, 6.4))).round[0]).isTrue();
        DoubleFunction<Vec> left = circle(60, 20, 0);
        DoubleFunction<Vec> right = t -> {
            Vec p = left.apply(t);
            return new Vec(p.x(), -p.y(), p.z());
        };
        assertThat(new Bins(flight(right, figure(0, 5.8))).round[0]).isFalse();
        assertThat(new Bins(flight(right, figure(0, 6.4))).round[0]).isTrue();
    }

    /** Round and back again, as a wing-over and a turn the other way, is round all the same. */
    @Test
    void figureThatTurnsBackAgainHasTurnedRound() {
        DoubleFunction<Vec> there = circle(60, 20, 0);
        DoubleFunction<Vec> andBack = t -> {
            if (t <= 8) {
                return there.apply(t);
            }
            // The same path mirrored at its end, so that what was turned is turned back.
            Vec end = there.apply(8);
            Vec before = there.apply(16 - t);
            double along = Math.cos(8 / 3.0);
            double across = Math.sin(8 / 3.0);
            Vec back = before.minus(end);
            double forward = back.x() * along + back.y() * across;
            return new Vec(
                    end.x() + back.x() - 2 * forward * along, end.y() + back.y() - 2 * forward * across, end.z());
        };
        assertThat(new Bins(flight(andBack, figure(0, 16))).round[0]).isTrue();
    }

    @Test
    void figureThatClimbsOrSinksFastDoesMoreThanTurnRound() {
        assertThat(new Bins(flight(circle(60, 20, 15.5), figure(0, 10))).round[0])
                .isTrue();
        assertThat(new Bins(flight(circle(60, 20, 16.5), figure(0, 10))).round[0])
                .isFalse();
        assertThat(new Bins(flight(circle(60, 20, -16.5), figure(0, 10))).round[0])
                .isFalse();
    }

    @Test
    void eachFigureTurnsRoundByItself() {
        DoubleFunction<Vec> turning = circle(60, 20, 0);
        Bins bins = new Bins(flight(turning, figure(0, 4), figure(4, 14), timed(14, 24)));
        assertThat(bins.round).containsExactly(false, true, false);
    }

    @Test
    void timedFigureEndsWithSixSecondsStraightInToTheNextOne() {
        DoubleFunction<Vec> path = t -> straight(t, 60, 5, -8);
        Bins bins = new Bins(flight(path, timed(0, 10), figure(10, 14)));
        assertThat(bins.leadFrom).containsExactly(20, 70);
        Vec goal = path.apply(10.1);
        for (int i = 0; i < 50; i++) {
            assertThat(bins.isLead(i)).as("bin %d", i).isEqualTo(i >= 20);
            assertThat(bins.mayEndEarly(i)).as("bin %d", i).isEqualTo(i < 20);
            if (i >= 20) {
                double beforeS = (50 - i) * 0.2;
                assertThat(bins.xM[i]).isCloseTo(goal.x() - 60 * beforeS, within(1e-6));
                assertThat(bins.yM[i]).isCloseTo(goal.y() - 5 * beforeS, within(1e-6));
                assertThat(bins.zM[i]).as("level").isCloseTo(goal.z(), within(1e-6));
                assertThat(bins.vxMps[i]).isCloseTo(60, within(1e-6));
                assertThat(bins.vyMps[i]).isCloseTo(5, within(1e-6));
                assertThat(bins.vzMps[i]).isZero();
            }
        }
        assertThat(bins.isLead(50)).isFalse();
        assertThat(bins.mayEndEarly(50)).isFalse();
    }

    @Test
    void wayInIsNoLongerThanItsFigure() {
        Bins bins = new Bins(flight(t -> straight(t, 60, 0, 0), figure(0, 4), timed(4, 8), figure(8, 12)));
        assertThat(bins.leadFrom).containsExactly(20, 20, 60);
        assertThat(bins.mayEndEarly(20)).isFalse();
    }

    @Test
    void onlyATimedFigureBeforeOneWithAPathHasAWayIn() {
        Bins bins = new Bins(
                flight(t -> straight(t, 60, 0, 0), timed(0, 10), timed(10, 20), figure(20, 30), timed(30, 40)));
        assertThat(bins.leadFrom).containsExactly(50, 70, 150, 200);
        assertThat(bins.mayEndEarly(0)).isFalse();
        assertThat(bins.mayEndEarly(50)).isTrue();
        assertThat(bins.mayEndEarly(199)).isFalse();
        assertThat(bins.isLead(199)).isFalse();
    }
}
