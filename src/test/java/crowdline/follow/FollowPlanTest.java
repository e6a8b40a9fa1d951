package crowdline.follow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.ElementFlight;
import crowdline.flight.FigureFlight;
import crowdline.flight.Flight;
import crowdline.flight.body.Attitude;
import crowdline.flight.body.Vec;
import crowdline.flight.leg.Sample;
import crowdline.show.figure.Element;
import crowdline.timing.ActTimes;
import crowdline.timing.FigureTime;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** A take-off of 10 s of which only the time is known, and a loop of 8 s in three elements. */
class FollowPlanTest {
    private static final Offset<Double> EXACTLY = within(1e-9);

    private static FigureFlight figure(String id, boolean known, double startS, double endS, double... elementsS) {
        List<ElementFlight> elements = new ArrayList<>();
        for (double s : elementsS) {
            elements.add(new ElementFlight(
                    elements.size(),
                    new Element.Arc(Element.Way.PULL, 90.0, null, Element.Size.TIGHTEST, 0, 1),
                    s,
                    s,
                    s + 1,
                    new Attitude(0, 0),
                    new Attitude(0, 0)));
        }
        return new FigureFlight(
                id, "The " + id, known, true, startS, endS, 60, 60, 60, 60, 0, 500, 1, 1, 400, 400, 0, 0, 0, elements);
    }

    private static Flight flight(double heightM, FigureFlight... figures) {
        List<Sample> samples = new ArrayList<>();
        for (int i = 0; i <= 180; i++) {
            double mps = i == 90 ? 80 : 60;
            samples.add(new Sample(
                    i * 0.1, new Vec(6.0 * i, 0, heightM), mps, new Vec(1, 0, 0), new Vec(0, 0, 1), 1, 1, 1));
        }
        return new Flight("act", "full", List.of(figures), samples, List.of());
    }

    private static Flight flight(double heightM) {
        return flight(heightM, figure("take-off", false, 0, 10), figure("loop", true, 10, 18, 10, 14, 16));
    }

    private static ActTimes times(String first) {
        return new ActTimes(
                "act", "full", List.of(new FigureTime(first, 0, 10, 9, 12), new FigureTime("loop", 10, 10, 8.5, 11.5)));
    }

    @Test
    void figuresAreCalledAsInTheFlight() {
        FollowPlan plan = FollowPlan.of(flight(0));
        assertThat(plan.size()).isEqualTo(2);
        assertThat(plan.figureId(1)).isEqualTo("loop");
        assertThat(plan.name(1)).isEqualTo("The loop");
        assertThat(plan.isTimedOnly(0)).isTrue();
        assertThat(plan.isTimedOnly(1)).isFalse();
    }

    @Test
    void figureLastsAsPredictedUnlessItIsKnownBetter() {
        assertThat(FollowPlan.of(flight(0)).plannedS(1)).isCloseTo(8, EXACTLY);
        FollowPlan timed = FollowPlan.of(flight(0), times("take-off"));
        assertThat(timed.plannedS(1)).isCloseTo(10, EXACTLY);
        assertThat(timed.plannedS(0)).isCloseTo(10, EXACTLY);
    }

    /** Eight in a hundred where no band is known; 3 s between the ends of the band of 80 %, 2.563 deviations apart, else. */
    @Test
    void figureIsAsUncertainAsItsBand() {
        assertThat(FollowPlan.of(flight(0)).variance[1]).isCloseTo(0.64 * 0.64 / 8, EXACTLY);
        assertThat(FollowPlan.of(flight(0), times("take-off")).variance[1])
                .isCloseTo(Math.pow(3 / 2.563103, 2) / 10, within(1e-5));
    }

    @Test
    void figureNamedForLessThanHalfItsTimeWasNotFlownUnlessItIsOnlyTimed() {
        FollowPlan plan = FollowPlan.of(flight(0), times("take-off"));
        assertThat(plan.glimpseS(1)).isCloseTo(4.5, EXACTLY);
        assertThat(plan.glimpseS(0)).isZero();
    }

    @Test
    void elementIsTheLastThatHasBegun() {
        FollowPlan plan = FollowPlan.of(flight(0));
        assertThat(plan.element(1, 0)).isZero();
        assertThat(plan.element(1, 0.49)).isZero();
        assertThat(plan.element(1, 0.5)).isEqualTo(1);
        assertThat(plan.element(1, 1)).isEqualTo(2);
        assertThat(plan.element(0, 1)).as("it has none").isZero();
    }

    @Test
    void actBeginsOnTheGroundWithATakeOff() {
        assertThat(FollowPlan.of(flight(0)).startsOnGround()).isTrue();
        assertThat(FollowPlan.of(flight(39)).startsOnGround()).isTrue();
        assertThat(FollowPlan.of(flight(41)).startsOnGround()).isFalse();
        assertThat(FollowPlan.of(flight(0, figure("run in", true, 0, 18))).startsOnGround())
                .isFalse();
    }

    /** Half as fast again as the fastest moment, and a gale on top. */
    @Test
    void noReadingIsBelievedBeyondTwiceWhatIsFlown() {
        assertThat(FollowPlan.of(flight(0)).fastestMps).isCloseTo(1.5 * 80 + 20, EXACTLY);
    }

    @Test
    void timesOfOtherFiguresAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FollowPlan.of(flight(0), times("taxi")))
                .withMessage("the times are of the figures [taxi, loop] and the flight has [take-off, loop];"
                        + " both must have the same in the same order");
    }

    @Test
    void flightOfNothingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FollowPlan.of(flight(0, new FigureFlight[0])))
                .withMessage("the flight of act has 0 figures and 181 samples; it needs at least 1 and 2");
        Flight whole = flight(0);
        Flight one = new Flight("act", "full", whole.figures(), whole.samples().subList(0, 1), List.of());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> FollowPlan.of(one))
                .withMessageContaining("2 figures and 1 samples");
        Flight two = new Flight("act", "full", whole.figures(), whole.samples().subList(0, 2), List.of());
        assertThat(FollowPlan.of(two).size()).isEqualTo(2);
    }
}
