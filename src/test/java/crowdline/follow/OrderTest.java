package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** A take-off, eight figures of which the path is known, and a landing. */
class OrderTest {
    private static final int LANDING = 9;
    private static final Offset<Double> EXACTLY = within(1e-12);

    private final Bins bins = Small.betweenTimed(5, 5, 5, 5, 5, 5, 5, 5, 5, 5).bins;
    private final Order order = new Order(bins);

    private double[] after(int f) {
        double[] row = new double[bins.figures + 2];
        order.after(f, row);
        return row;
    }

    private double[] afterUnknown() {
        double[] row = new double[bins.figures + 2];
        order.afterUnknown(row);
        return row;
    }

    private void flown(int... figures) {
        for (int f : figures) {
            order.saw(f, 1);
        }
    }

    /** As it was, half a landing seen was enough to go back to the pass before it, for that had to be the likeliest. */
    @Test
    void littleComesBackToAPlanThatHasBeenFlown() {
        flown(0, 1, 2);
        double[] row = new double[bins.figures + 2];
        assertThat(order.afterUnknown(row)).as("in the middle").isEqualTo(1);
        flown(3, 4, 5, 6, 7);
        assertThat(order.afterUnknown(row)).as("with one figure left").isGreaterThan(0.9);
        flown(8, LANDING);
        assertThat(order.afterUnknown(row)).as("with none left").isLessThan(0.15);
    }

    @Test
    void nextOfThePlanIsByFarTheLikeliestAndChancesAddUpToOne() {
        flown(0, 1, 2);
        double[] row = after(3);
        assertThat(row[4]).isGreaterThan(0.85);
        assertThat(Arrays.stream(row).sum()).isCloseTo(1, within(1e-12));
    }

    @Test
    void figureMayBeDroppedOrFlownAgain() {
        flown(0, 1, 2);
        assertThat(after(3)[5]).as("the one after the next").isBetween(0.01, 0.1);
        assertThat(after(3)[3]).as("the same again").isBetween(0.01, 0.1);
        assertThat(after(3)[6]).as("one further on").isLessThan(0.001);
    }

    @Test
    void whatWasPassedOverMayStillCome() {
        flown(0, 1, 3);
        assertThat(after(3)[2]).isGreaterThan(0.05);
        flown(2);
        assertThat(after(3)[2]).as("once it has been flown").isLessThan(0.002);
    }

    @Test
    void whatWasPassedOverLongAgoHardlyComes() {
        flown(0, 1, 3, 4, 5);
        assertThat(after(5)[2]).isLessThan(0.005);
    }

    /** Two were swapped and nobody told of it. */
    @Test
    void afterASwapItGoesOnWithTheFirstThatHasNotBeenFlown() {
        flown(0, 1, 3, 2);
        assertThat(after(2)[4]).isGreaterThan(0.5);
        assertThat(after(2)[3]).isLessThan(after(2)[4] / 5);
    }

    @Test
    void flightMayBreakOffToLand() {
        flown(0, 1, 2);
        assertThat(after(3)[LANDING]).isBetween(0.001, 0.02);
        assertThat(afterUnknown()[LANDING]).isBetween(0.02, 0.3);
    }

    @Test
    void whereTheActMayHaveBegunUnheardAnyFigureMayCome() {
        double[] heard = afterUnknown();
        assertThat(heard[7]).as("it begins with the first").isLessThan(heard[1] / 10);
        order.isHeardLate();
        double[] late = afterUnknown();
        assertThat(late[7]).isEqualTo(late[1]).isGreaterThan(heard[7]);
        flown(7);
        assertThat(afterUnknown()[1]).as("once one has been seen").isLessThan(afterUnknown()[8] / 10);
    }

    /** A take-off fits nearly any gentle flight. */
    @Test
    void whatIsOnlyTimedIsNotJumpedTo() {
        order.saw(3, 1);
        assertThat(after(3)[0]).isLessThan(after(3)[1] / 10);
        assertThat(afterUnknown()[0]).isLessThan(afterUnknown()[1] / 10);
    }

    @Test
    void offThePlanItComesBackNearWhereItLeftAndToWhatHasNotBeenFlown() {
        flown(0, 1, 2, 3);
        double[] row = afterUnknown();
        assertThat(row[4])
                .isGreaterThan(1.5 * row[5])
                .isGreaterThan(10 * row[3])
                .isGreaterThan(10 * row[8]);
    }

    /** A receiver may be heard only when most of the act is over. */
    @Test
    void offThePlanAnyFigureMayCome() {
        int[] lengths = new int[30];
        Arrays.fill(lengths, 5);
        double[] row = new double[32];
        new Order(Small.plan(lengths).bins).afterUnknown(row);
        assertThat(row[29]).isGreaterThan(1e-4);
    }

    @Test
    void orderThatWasToldIsThePlan() {
        order.told(List.of(0, 2, 1, 4, 5));
        flown(0, 2);
        assertThat(after(2)[1]).isGreaterThan(0.85);
        flown(1);
        assertThat(after(1)[4]).isGreaterThan(0.85);
        assertThat(after(4)[3]).as("left out").isLessThan(0.005);
        assertThat(after(5)[bins.figures + 1]).as("over").isGreaterThan(0.7);
    }

    @Test
    void handSaysThatWhatComesAfterHasNotBeenFlown() {
        flown(0, 1, 2, 3, 4);
        order.begins(2);
        assertThat(order.flown(1)).isEqualTo(1);
        assertThat(order.flown(3)).isZero();
        assertThat(after(2)[3]).isGreaterThan(0.85);
    }

    /** The weights as they are written: what is next 0.7, what is after it 0.025, again 0.02, landing 0.003, off 0.03. */
    @Test
    void chancesAreTheWeightsTheyAreMadeOf() {
        flown(0, 1, 2);
        double sum = 0.7 + 0.025 + 0.02 + 0.003 + 0.03;
        double[] row = after(3);
        assertThat(row[4]).isCloseTo(0.7 / sum, EXACTLY);
        assertThat(row[5]).isCloseTo(0.025 / sum, EXACTLY);
        assertThat(row[3]).isCloseTo(0.02 / sum, EXACTLY);
        assertThat(row[LANDING]).isCloseTo(0.003 / sum, EXACTLY);
        assertThat(row[bins.figures]).isCloseTo(0.03 / sum, EXACTLY);
        assertThat(row[1] + row[2] + row[6] + row[7] + row[8] + row[bins.figures + 1])
                .isZero();
    }

    /** Passed over within the last two: 0.13, less what speaks for its having been flown; before that a hundredth. */
    @Test
    void whatWasPassedOverWeighsByWhenAndByHowLikelyItWasFlown() {
        flown(0);
        order.saw(2, 0.3);
        order.saw(4, 1);
        double two = 0.13 * 0.4 * (1 - 0.95 * 0.3);
        double three = 0.13;
        double one = 0.13 * 0.01;
        double sum = 0.7 + 0.025 + 0.02 + 0.003 + 0.03 + one + two + three;
        double[] row = after(4);
        assertThat(row[3]).isCloseTo(three / sum, EXACTLY);
        assertThat(row[2]).as("two before it is not long ago").isCloseTo(two / sum, EXACTLY);
        assertThat(row[1]).isCloseTo(one / sum, EXACTLY);
    }

    @Test
    void afterASwapItGoesOnWithTheFirstNotFlownHoweverManyWere() {
        flown(0, 1, 3, 2);
        double sum = 0.7 * 0.05 + 0.025 + 0.02 + 0.003 + 0.03 + 0.7;
        assertThat(after(2)[4]).isCloseTo(0.725 / sum, EXACTLY);
        flown(4);
        double more = 0.7 * 0.05 + 0.025 * 0.05 + 0.02 + 0.003 + 0.03 + 0.7;
        assertThat(after(2)[5]).isCloseTo(0.7 / more, EXACTLY);
    }

    /** What is as likely as not to have been flown is still what comes next. */
    @Test
    void halfSeenIsNoSwap() {
        flown(0, 1, 2);
        order.saw(4, 0.5);
        double sum = 0.7 * (1 - 0.95 * 0.5) + 0.025 + 0.02 + 0.003 + 0.03;
        assertThat(after(3)[4]).isCloseTo(0.7 * 0.525 / sum, EXACTLY);
        order.saw(4, 0.6);
        double swapped = 0.7 * (1 - 0.95 * 0.6) + 0.025 + 0.02 + 0.003 + 0.03 + 0.7 * 0.6;
        assertThat(after(3)[5]).isCloseTo((0.025 + 0.42) / swapped, EXACTLY);
    }

    @Test
    void chancesOffThePlanFallWithTheDistanceFromWhereItLeft() {
        flown(0, 1, 2, 3);
        double[] row = afterUnknown();
        assertThat(row[5] / row[4]).isCloseTo((0.001 + Math.exp(-1 / 1.5)) / 1.001, EXACTLY);
        assertThat(row[3] / row[5]).as("flown already").isCloseTo(0.03, EXACTLY);
        assertThat(row[LANDING] / row[4]).isCloseTo(0.1 / 1.001, EXACTLY);
    }

    @Test
    void chancesAreFilledInAnewEachTime() {
        flown(0, 1, 2);
        double[] row = new double[bins.figures + 2];
        order.after(LANDING, row);
        order.after(3, row);
        assertThat(row).isEqualTo(after(3));
        order.after(LANDING, row);
        order.afterUnknown(row);
        assertThat(row).isEqualTo(afterUnknown());
    }

    @Test
    void figuresLeftOutHaveNoPlaceButComeBetweenTheirNeighbours() {
        order.told(List.of(0, 1, 4, 5));
        assertThat(order.next(1)).isEqualTo(4);
        assertThat(order.next(2)).isEqualTo(4);
        assertThat(order.next(3)).isEqualTo(4);
        assertThat(order.next(5)).isEqualTo(bins.figures);
        order.told(List.of(4, 5));
        assertThat(order.next(0)).as("before the first").isEqualTo(4);
    }

    @Test
    void figureOnceSeenIsNotUnseenByADoubt() {
        order.saw(2, 0.8);
        order.saw(2, 0.3);
        assertThat(order.flown(2)).isEqualTo(0.8);
    }

    /** What was hardly seen is not where the flight was when it left the plan. */
    @Test
    void itComesBackToWhereItWasMoreLikelyThanNot() {
        flown(0, 1, 2);
        order.saw(7, 0.5);
        assertThat(afterUnknown()[3]).isGreaterThan(5 * afterUnknown()[8]);
        order.saw(6, 0.51);
        assertThat(afterUnknown()[7]).as("half flown").isGreaterThan(afterUnknown()[3]);
    }

    @Test
    void chancesAfterAStretchOffThePlanAddUpToOne() {
        assertThat(Arrays.stream(afterUnknown()).sum()).isCloseTo(1, within(1e-12));
        assertThat(afterUnknown()[bins.figures]).isZero();
    }

    @Test
    void afterTheLastFigureTheActIsOver() {
        assertThat(order.next(LANDING)).isEqualTo(bins.figures);
        assertThat(order.next(LANDING - 1)).isEqualTo(LANDING);
        assertThat(after(LANDING)[bins.figures + 1]).isGreaterThan(0.65);
        assertThat(after(3)[bins.figures + 1]).isZero();
        assertThat(after(3)[bins.figures]).as("off the plan").isBetween(0.02, 0.06);
    }

    /** A jet's act with a way, 6, to a barrel roll, 7, a way, 8, and a Derry turn, 9. */
    private static double[] afterInTheJet(int f, int... flown) throws Exception {
        Bins jet = FollowTrial.display("arranged/pilot-three-jet-trainer").plan.bins;
        Order order = new Order(jet);
        for (int g : flown) {
            order.saw(g, 1);
        }
        double[] row = new double[jet.figures + 2];
        order.after(f, row);
        return row;
    }

    /** A figure is left out with the way that leads to it, and so is not what comes after that way. */
    @Test
    void afterAFigureThatIsLeftOutTheWayToTheOneAfterItComes() throws Exception {
        double[] row = afterInTheJet(5, 0, 1, 2, 3, 4);
        assertThat(row[8] / row[6]).as("the way to the one after").isCloseTo(0.025 / 0.7, EXACTLY);
        assertThat(row[7] / row[6]).as("without the way").isCloseTo(0.01 / 0.7, EXACTLY);
        assertThat(row[9]).isZero();
    }

    @Test
    void figureIsFlownAgainByTheWayThatLeadsToIt() throws Exception {
        double[] row = afterInTheJet(7, 0, 1, 2, 3, 4, 5, 6);
        assertThat(row[6] / row[8]).isCloseTo(0.002 / 0.7, EXACTLY);
        assertThat(row[7] / row[8]).isCloseTo(0.02 / 0.7, EXACTLY);
        assertThat(row[3]).as("a way to another").isZero();
        assertThat(afterInTheJet(16, 15)[15]).as("before the landing").isZero();
    }

    @Test
    void whatWasPassedOverComesByItsWay() throws Exception {
        double[] row = afterInTheJet(9, 0, 1, 2, 3, 4, 5, 8);
        assertThat(row[6] / row[10]).isCloseTo(0.13 / 0.7, EXACTLY);
        assertThat(row[7] / row[10]).isCloseTo(0.13 / 0.7, EXACTLY);
        assertThat(afterInTheJet(9, 0, 1, 2, 3, 4, 5, 6, 8)[6])
                .as("the figure was passed over and its way was not")
                .isZero();
        double[] later = afterInTheJet(14, 0, 1, 2, 3, 4, 5, 8, 9, 10, 11, 12, 13);
        assertThat(later[6] / later[15]).as("four figures ago").isCloseTo(0.0013 / 0.7, EXACTLY);
    }

    @Test
    void figureThatIsNotThereIsRefused() {
        assertThatThrownBy(() -> order.told(List.of(0, 10))).isInstanceOf(IndexOutOfBoundsException.class);
    }

    @Test
    void orderThatNamesAFigureTwiceIsRefused() {
        assertThatThrownBy(() -> order.told(List.of(0, 1, 1)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the order [0, 1, 1] names a figure twice");
    }
}
