package crowdline.flight.moment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.CatalogueFlightTest;
import crowdline.flight.ElementFlight;
import crowdline.flight.Flight;
import crowdline.flight.Predictor;
import crowdline.flight.body.Rig;
import crowdline.flight.leg.Sample;
import crowdline.show.DayAir;
import crowdline.show.aircraft.Airframe;
import crowdline.show.catalogue.Catalogue;
import crowdline.show.catalogue.CatalogueEntry;
import crowdline.show.figure.Element;
import crowdline.show.figure.Figure;
import crowdline.show.figure.MomentKind;
import crowdline.show.figure.MomentName;
import crowdline.show.figure.SpinKind;
import crowdline.storage.show.CatalogueFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The moments of predicted figures, against what a person at the fence would point at. */
class FigureMomentsTest {
    private static final double A_SAMPLE_S = Predictor.SAMPLE_S + 1e-6;

    /** What is seen between "begins" and "flies out", in order; an asterisk for what is worth watching. */
    private static final Map<String, String> SEEN = table("moments-by-figure.txt");

    private static Map<String, String> table(String name) {
        Map<String, String> table = new HashMap<>();
        try (InputStream in = Objects.requireNonNull(FigureMomentsTest.class.getResourceAsStream(name))) {
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                int colon = line.indexOf(":");
                table.put(line.substring(0, colon), line.substring(colon + 1).strip());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return table;
    }

    static Stream<CatalogueEntry> simulated() {
        return CatalogueFlightTest.simulated();
    }

    private static Flight fly(CatalogueEntry entry) {
        return CatalogueFlightTest.fly(entry);
    }

    private static FigureMoments moments(Flight flight) {
        return FigureMoments.of(flight.figures().get(0), flight.samples());
    }

    private static Flight fly(Airframe airframe, double kt, Element... elements) {
        Figure own = new Figure("it", "it", null, null, List.of(elements), null, null, null, List.of(), List.of());
        return Rig.predictor(airframe, new Catalogue(List.of()), 4000, kt, DayAir.STANDARD, own)
                .predict();
    }

    private static String told(FigureMoments moments) {
        List<Moment> all = moments.moments();
        return String.join(
                ", ",
                all.subList(1, all.size() - 1).stream()
                        .map(m -> m.name().words() + (m.worthWatching() ? "*" : ""))
                        .toList());
    }

    private static double when(FigureMoments moments, MomentKind kind) {
        return moments.find(MomentName.first(kind)).orElseThrow().afterS();
    }

    private static Sample at(Flight flight, double tS) {
        return FigureMoments.within(flight.samples(), tS - 1e-6, Double.POSITIVE_INFINITY)
                .get(0);
    }

    @ParameterizedTest
    @MethodSource("simulated")
    void everySimulatedFigureHasTheMomentsAPersonWouldName(CatalogueEntry entry) {
        assertThat(told(moments(fly(entry)))).isEqualTo(SEEN.get(entry.name()));
    }

    @ParameterizedTest
    @MethodSource("simulated")
    void momentsAreInOrderWithinTheFigureAndNoTwoAreCalledTheSame(CatalogueEntry entry) {
        Flight flight = fly(entry);
        List<Moment> moments = moments(flight).moments();
        assertThat(moments.get(0)).isEqualTo(new Moment(MomentName.first(MomentKind.BEGINS), 0, false));
        assertThat(moments.get(moments.size() - 1))
                .isEqualTo(new Moment(MomentName.first(MomentKind.FLIES_OUT), flight.totalS(), false));
        assertThat(moments).isSortedAccordingTo((a, b) -> Double.compare(a.afterS(), b.afterS()));
        assertThat(moments.stream().map(Moment::name)).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("simulated")
    void theTopIsWhereItIsHighest(CatalogueEntry entry) {
        Flight flight = fly(entry);
        for (Moment moment : moments(flight).moments()) {
            if (moment.name().kind() == MomentKind.OVER_THE_TOP) {
                List<Sample> near = FigureMoments.within(flight.samples(), moment.afterS() - 2, moment.afterS() + 2);
                double highestM =
                        near.stream().mapToDouble(s -> s.place().z()).max().orElseThrow();
                double least = near.stream()
                        .filter(s -> s.place().z() > highestM - 0.05)
                        .mapToDouble(s -> Math.abs(s.tS() - moment.afterS()))
                        .min()
                        .orElseThrow();
                assertThat(least).as("%s", moment).isLessThanOrEqualTo(0.1);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("simulated")
    void upAndOutBeginWhenTheNoseStartsToRise(CatalogueEntry entry) {
        Flight flight = fly(entry);
        for (Moment moment : moments(flight).moments()) {
            MomentKind kind = moment.name().kind();
            if (kind == MomentKind.PULLS_UP || kind == MomentKind.PUSHES_UP) {
                assertThat(at(flight, moment.afterS()).pathAngleDeg()).isBetween(-8.0, 8.0);
                assertThat(at(flight, moment.afterS() + 0.5).pathAngleDeg()).isGreaterThan(1.9);
            } else if (kind == MomentKind.PULLS_OUT || kind == MomentKind.PUSHES_OUT) {
                double before = at(flight, moment.afterS()).pathAngleDeg();
                assertThat(before).isLessThan(-14);
                assertThat(at(flight, moment.afterS() + 0.5).pathAngleDeg()).isGreaterThan(before + 0.5);
            }
        }
    }

    @Test
    void pivotsWhenTheNoseStartsToGoRound() {
        Flight flight =
                fly(Rig.biplane(), 125, pull(60, 3.7), pull(30, 2.5), to(45), new Element.Pivot(Element.Side.LEFT, 1));
        double at = when(moments(flight), MomentKind.PIVOTS);
        ElementFlight pivot = flight.figures().get(0).elements().get(3);
        assertThat(at).isEqualTo(pivot.lastLegS()).isGreaterThan(pivot.startS());
        assertThat(pivot.endS() - at).isCloseTo(Rig.biplane().pivotS(), within(1e-6));
        assertThat(at(flight, at - 0.1).pathAngleDeg()).isCloseTo(90, within(1e-3));
        assertThat(at(flight, at + 0.2).pathAngleDeg()).isLessThan(89);
    }

    @Test
    void spinBeginsAtTheStallAndStopsWhenTheTurnsAreFlown() {
        Element spin = new Element.Spin(SpinKind.UPRIGHT, Element.Side.LEFT, 3, 0);
        Flight flight = fly(Rig.trainer(), 90, spin, Rig.line(Element.Until.KNOTS, 100));
        FigureMoments moments = moments(flight);
        ElementFlight flown = flight.figures().get(0).elements().get(0);
        double begins = when(moments, MomentKind.SPIN_BEGINS);
        assertThat(when(moments, MomentKind.SLOWING_FOR_THE_SPIN)).isZero();
        assertThat(begins).isGreaterThan(1);
        assertThat(at(flight, begins - 0.1).pathAngleDeg()).isCloseTo(0, within(1e-3));
        assertThat(at(flight, begins + 0.2).pathAngleDeg()).isLessThan(-5);
        assertThat(when(moments, MomentKind.SPIN_STOPS)).isEqualTo(flown.endS());
    }

    @Test
    void slowAlreadyItIsNotSlowingForTheSpin() {
        double stallKt = 39;
        Element spin = new Element.Spin(SpinKind.UPRIGHT, Element.Side.LEFT, 1, 0);
        Flight flight = fly(Rig.trainer(), 60, Rig.line(Element.Until.SECONDS, 1), slowTo(stallKt + 6), spin);
        assertThat(told(moments(flight))).doesNotContain("slowing").startsWith("the spin begins*");
    }

    @Test
    void slideBeginsAtRestAndTheNoseFallsThroughTheHorizon() {
        Element slide = new Element.Slide(Element.SlideKind.WHEELS_DOWN, 0);
        Flight flight = fly(Rig.biplane(), 125, pull(60, 3.7), pull(30, 2.5), to(70), slide);
        FigureMoments moments = moments(flight);
        double back = when(moments, MomentKind.SLIDES_BACKWARDS);
        double through = when(moments, MomentKind.NOSE_FALLS_THROUGH);
        assertThat(at(flight, back).speedMps()).isLessThan(1.2);
        assertThat(at(flight, through - A_SAMPLE_S).pathAngleDeg()).isPositive();
        assertThat(at(flight, through + A_SAMPLE_S).pathAngleDeg()).isNegative();
        double highest = flight.samples().stream()
                .max((a, b) -> Double.compare(a.place().z(), b.place().z()))
                .orElseThrow()
                .tS();
        assertThat(back).isCloseTo(highest, within(0.1));
    }

    @Test
    void ownElementsHaveMomentsTooAndSeveralOfAKindAreCounted() {
        Element half = new Element.Roll(Element.RollStyle.AILERON, Element.Side.LEFT, 180, null, 0, 0, 1);
        Flight flight = fly(
                Rig.monoplane(),
                170,
                pull(360, 4),
                Rig.line(Element.Until.SECONDS, 2),
                half,
                Rig.line(Element.Until.SECONDS, 2),
                half,
                pull(360, 4));
        assertThat(told(moments(flight)))
                .isEqualTo("pulls up, over the top*, pulls out, rolls upside down, rolls upright, pulls up 2,"
                        + " over the top 2*, pulls out 2");
    }

    @Test
    void aSlowTopIsWorthWatchingAndAFastOneIsNot() {
        FigureMoments slow = moments(fly(Rig.biplane(), 125, pull(70, 3.5), pull(60, 1.5), pull(100, 1.1)));
        Element fastTurn = new Element.Turn(Element.Side.AWAY, 180, 50, 25, 0, 1);
        FigureMoments fast = moments(fly(Rig.biplane(), 125, fastTurn));
        assertThat(slow.find(MomentName.first(MomentKind.OVER_THE_TOP))
                        .orElseThrow()
                        .worthWatching())
                .isTrue();
        assertThat(fast.find(MomentName.first(MomentKind.OVER_THE_TOP))
                        .orElseThrow()
                        .worthWatching())
                .isFalse();
    }

    @Test
    void whatIsOnlyTimedBeginsAndFliesOut() {
        Figure timed = new Figure("it", "it", null, null, null, 20.0, null, null, List.of(), List.of());
        Flight flight =
                Rig.predictor(new Catalogue(List.of()), 2000, 100, timed).predict();
        assertThat(moments(flight)).isEqualTo(FigureMoments.timed(20));
        assertThat(told(FigureMoments.timed(20))).isEmpty();
        assertThat(FigureMoments.timed(20).moments()).hasSize(2);
    }

    @Test
    void whatCannotBeFlownToItsEndHasTheMomentsItCameTo() {
        Flight flight = fly(Rig.biplane(), 100, pull(90, 3), Rig.line(Element.Until.SECONDS, 60), pull(90, 3));
        assertThat(flight.figures().get(0).completed()).isFalse();
        assertThat(told(moments(flight))).isEqualTo("pulls up, straight up");
    }

    @Test
    void momentsAreCountedFromTheirOwnFigure() {
        Catalogue shipped = CatalogueFile.shipped();
        Flight two = Rig.predictor(shipped, 3000, 130, Figure.of("a", "loop"), Figure.of("b", "loop"))
                .predict();
        FigureMoments second = FigureMoments.of(two.figures().get(1), two.samples());
        assertThat(told(second)).isEqualTo(SEEN.get("loop"));
        assertThat(when(second, MomentKind.PULLS_UP)).isLessThan(0.2);
    }

    @Test
    void inAFigureOfAnotherLengthMomentsKeepTheirShare() {
        FigureMoments predicted = moments(fly(Rig.biplane(), 125, pull(360, 3)));
        double length = predicted.moments().get(predicted.moments().size() - 1).afterS();
        FigureMoments learned = predicted.lasting(length * 1.5);
        for (int i = 0; i < predicted.moments().size(); i++) {
            assertThat(learned.moments().get(i).afterS())
                    .isCloseTo(predicted.moments().get(i).afterS() * 1.5, within(1e-9));
            assertThat(learned.moments().get(i).name())
                    .isEqualTo(predicted.moments().get(i).name());
        }
        assertThat(FigureMoments.timed(0).lasting(8)).isEqualTo(FigureMoments.timed(8));
    }

    @Test
    void momentsThatComeLaterLeaveTheBeginningWhereItIs() {
        FigureMoments loop = moments(fly(Rig.biplane(), 125, pull(360, 3)));
        double top = when(loop, MomentKind.OVER_THE_TOP);
        assertThat(when(loop.later(2), MomentKind.OVER_THE_TOP)).isEqualTo(top + 2);
        assertThat(when(loop.later(2), MomentKind.BEGINS)).isZero();
        assertThat(when(loop.later(-100), MomentKind.OVER_THE_TOP)).isZero();
    }

    private static Element pull(double degrees, double g) {
        return Rig.pullG(degrees, g);
    }

    private static Element to(double kt) {
        return Rig.line(Element.Until.KNOTS, kt);
    }

    private static Element slowTo(double kt) {
        return new Element.Line(Element.Until.KNOTS, kt, 0);
    }
}
