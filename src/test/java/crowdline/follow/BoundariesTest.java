package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.storage.file.ShowFileException;
import crowdline.telemetry.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class BoundariesTest {
    private final FollowPlan plan = Small.plan(50, 50, 50, 50);
    private final List<FollowNow> said = new ArrayList<>();
    private double nowS;

    private void says(int figure, double seconds) {
        for (double end = nowS + seconds; nowS < end - 0.01; nowS += 0.1) {
            said.add(new FollowNow(nowS, FollowNow.State.ON_PLAN, figure, 0, 0.5, 0.9, List.of(), 0));
        }
    }

    private Boundaries found() {
        return Boundaries.said(plan, said, List.of());
    }

    @Test
    void figureThatWasOnlyGlimpsedWasNotFlownAndTheNextBeganThen() {
        says(0, 10);
        says(1, 3);
        says(2, 7);
        says(3, 9);
        assertThat(found().figures()).extracting(Boundaries.Span::figureIndex).containsExactly(0, 2, 3);
        assertThat(found().figures().get(1).startS()).isCloseTo(10, within(0.11));
        assertThat(found().dropped()).containsExactly(1);
    }

    /** Of similar acts half the figures and more are found in each other's flights, in whatever order they come there. */
    @Test
    void figuresInAnotherOrderAreOfAnotherAct() {
        FollowPlan four = Small.plan(50, 50, 50, 50);
        for (int f : List.of(3, 2, 1, 0)) {
            says(f, 10);
        }
        Boundaries back = Boundaries.said(four, said, List.of());
        assertThat(back.figures()).hasSize(4);
        assertThat(back.recognised(four)).isEqualTo(1);
        assertThat(back.show(four)).isFalse();
        said.clear();
        for (int f : List.of(0, 2, 1, 3)) {
            says(f, 10);
        }
        Boundaries swapped = Boundaries.said(four, said, List.of());
        assertThat(swapped.recognised(four)).isEqualTo(3);
        assertThat(swapped.show(four)).as("two were swapped").isTrue();
    }

    /** In a log with few readings what is low and level is soon taken for the landing, and then goes on. */
    @Test
    void landingThatIsSoonFollowedByAFigureIsNone() {
        FollowPlan timed = Small.betweenTimed(50, 50, 50, 90);
        says(0, 4);
        says(1, 9);
        says(3, 5);
        says(2, 9);
        says(3, 6);
        assertThat(Boundaries.said(timed, said, List.of()).figures())
                .extracting(Boundaries.Span::figureIndex)
                .as("a take-off takes what it takes, and so does the last landing")
                .containsExactly(0, 1, 2, 3);
    }

    @Test
    void figureSaidOnBothSidesOfAGlimpseIsOne() {
        says(0, 6);
        says(2, 2);
        says(0, 5);
        says(1, 9);
        assertThat(found().figures()).extracting(Boundaries.Span::figureIndex).containsExactly(0, 1);
        assertThat(found().repeated()).isEmpty();
    }

    /** A log may begin and end within a figure. */
    @Test
    void firstAndLastMayBeShort() {
        says(1, 2);
        says(2, 9);
        says(3, 2);
        assertThat(found().figures()).extracting(Boundaries.Span::figureIndex).containsExactly(1, 2, 3);
    }

    @Test
    void figureFlownTwiceIsRepeatedOnceAndOneNotSeenIsDropped() {
        says(0, 9);
        says(1, 9);
        says(0, 9);
        says(3, 9);
        says(0, 9);
        assertThat(found().repeated()).containsExactly(0);
        assertThat(found().dropped()).containsExactly(2);
    }

    @Test
    void figureIsAsSureAsItWasOnTheMean() {
        for (int i = 0; i <= 100; i++) {
            double confidence = i <= 75 ? 0.8 : 0.4;
            said.add(new FollowNow(i * 0.1, FollowNow.State.ON_PLAN, 0, 0, 0.5, confidence, List.of(), 0));
        }
        assertThat(found().figures().get(0).confidence()).isCloseTo(0.7, within(1e-9));
        assertThat(found().figures().get(0).endS()).isCloseTo(10, within(1e-9));
    }

    @Test
    void whatIsOffThePlanBeforeOrAfterItIsNoFigure() {
        says(-1, 5);
        says(0, 9);
        for (double end = nowS + 9; nowS < end; nowS += 0.1) {
            said.add(new FollowNow(nowS, FollowNow.State.OFF_PLAN, 1, 0, 0.5, 0.9, List.of(), 0));
        }
        says(3, 9);
        says(4, 9);
        assertThat(found().figures()).extracting(Boundaries.Span::figureIndex).containsExactly(0, 3);
        assertThat(found().figures().get(0).startS()).isCloseTo(5, within(0.11));
        assertThat(found().figures().get(1).startS()).isCloseTo(23, within(0.21));
    }

    /** Between two figures nearly two seconds apart nobody knows what was flown. */
    @Test
    void figureDoesNotBeginWithAGlimpseLongBeforeIt() {
        says(0, 9);
        says(1, 3);
        nowS += 1.8;
        says(2, 9);
        assertThat(found().figures()).extracting(Boundaries.Span::figureIndex).containsExactly(0, 2);
        assertThat(found().figures().get(1).startS()).isCloseTo(13.8, within(0.11));
    }

    private void saysBetween(int figure, double fromS, double toS) {
        nowS = fromS;
        says(figure, toS - fromS);
    }

    /** Level for 20 s, then a climb of 30 m/s, as the first two figures are planned. */
    private static List<Reading> climbsAt(double tS) {
        return IntStream.range(0, 200)
                .mapToObj(i -> 0.2 * i)
                .map(t -> new Reading(t, 60 * t, 0, 300 + 30 * Math.max(0, t - tS), null, null))
                .toList();
    }

    private double secondBegins(double climbS) {
        List<Boundaries.Span> spans =
                Boundaries.said(plan, said, climbsAt(climbS)).figures();
        assertThat(spans).hasSize(2);
        return spans.get(1).startS();
    }

    /** A pull is begun a little before the path has it. */
    @Test
    void changeFromOneFigureToTheNextIsTimedByTheBend() {
        saysBetween(0, 10, 20.6);
        saysBetween(1, 20.6, 30);
        List<Boundaries.Span> spans = Boundaries.said(plan, said, climbsAt(20)).figures();
        assertThat(spans.get(1).startS()).isCloseTo(19.8, within(0.11));
        assertThat(spans.get(0).endS()).isEqualTo(spans.get(1).startS());
        assertThat(spans.get(0).startS()).isEqualTo(10);
    }

    /** The bend at 20 s is near, but between the two figures nobody knows what was flown. */
    @Test
    void afterAPauseTheFigureBeginsWhenItWasSaid() {
        saysBetween(0, 10, 19.1);
        saysBetween(1, 20.9, 30);
        assertThat(secondBegins(20)).isEqualTo(20.9);
    }

    @Test
    void bendLeavesNeitherFigureLessThanASecond() {
        saysBetween(0, 19.2, 20.6);
        saysBetween(1, 20.6, 30);
        assertThat(secondBegins(20)).as("0.6 s would be left of the first").isCloseTo(20.55, within(0.06));
        said.clear();
        saysBetween(0, 10, 19.6);
        saysBetween(1, 19.6, 21);
        assertThat(secondBegins(20.4)).as("0.7 s would be left of the second").isCloseTo(19.6, within(0.06));
    }

    /** Two receivers may tell of the same moment. */
    @Test
    void figureSaidTwiceAtOneMomentIsAsSureAsAfterwards() {
        for (double t : new double[] {100, 100, 104, 110}) {
            double confidence = t < 105 ? 0.8 : 0.4;
            said.add(new FollowNow(t, FollowNow.State.ON_PLAN, 0, 0, 0.5, confidence, List.of(), 0));
        }
        assertThat(found().figures().get(0).confidence()).isCloseTo((4 * 0.8 + 6 * 0.4) / 10, within(1e-9));
    }

    @Tag("slow")
    @Test
    void figureDroppedInFlightIsMissedInTheSummaryThoughItWasExpected() throws ShowFileException {
        Display display = FollowTrial.display("jackanapes-solo");
        int missed = 0;
        for (long seed = 5000; seed < 5006; seed++) {
            Truth truth = Scenario.plain("", 0.10, 0, Radio.good(5))
                    .with(Scenario.Change.DROPPED)
                    .fly(display, seed);
            List<Reading> log = Radio.good(5).receive(truth, new SplittableRandom(seed));
            List<Integer> flown = truth.flown.stream().map(Truth.Flown::figure).toList();
            List<Integer> left =
                    display.asPlanned().stream().filter(f -> !flown.contains(f)).toList();
            missed += Boundaries.of(display.plan, log).dropped().containsAll(left) ? 1 : 0;
        }
        assertThat(missed).isGreaterThanOrEqualTo(4);
    }
}
