package crowdline.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crowdline.flight.air.Air;
import crowdline.flight.air.StandardAtmosphere;
import crowdline.flight.air.Wind;
import crowdline.flight.body.FlightState;
import crowdline.flight.body.Rig;
import crowdline.flight.body.Vec;
import crowdline.measure.Units;
import crowdline.show.aircraft.Airframe;
import crowdline.show.figure.Element;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One figure flown by itself, from a place that is not the datum. */
class FigureTrialTest {
    private static final double G = Units.G_MPS2;

    private final Airframe airframe = Rig.monoplane();
    private final FigureTrial trial = new FigureTrial(airframe, Air.STANDARD);
    private final FlightState from = new FlightState(7, new Vec(-300, 40, 200), 60, new Vec(1, 0, 0), Vec.UP);

    @Test
    void knowsTheWindAlongTheDisplayLine() {
        assertThat(trial.windAlongMps()).isZero();
        Air westerly = new Air(new StandardAtmosphere(), Wind.steady(270, 10, 90));
        assertThat(new FigureTrial(airframe, westerly).windAlongMps()).isCloseTo(Units.mpsFromKt(10), within(1e-9));
    }

    /** m g = ½ ρ v² S c, and v is greater where the air is thinner. */
    @Test
    void stallsWhereTheWingJustCarriesTheWeight() {
        double mps = Math.sqrt(2 * 869.6 * G / (1.225 * 10.44 * 1.5));
        assertThat(trial.stallMps(0)).isCloseTo(mps, within(0.01));
        assertThat(trial.stallMps(2000)).isBetween(1.05 * mps, 1.15 * mps);
    }

    /** Thrust less drag over the weight: twice the speed for a climb of that sine keeps its speed. */
    @Test
    void climbsAsSteeplyAsItsPowerHolds() {
        double sine = trial.climbs(50, 200);
        assertThat(sine).isBetween(0.15, 0.6);
        Element line = Rig.line(Element.Until.SECONDS, 0.5);
        Vec up = new Vec(Math.sqrt(1 - sine * sine), 0, sine);
        FlightState climbing =
                new FlightState(0, new Vec(0, 0, 200), 50, up, Vec.UP.across(up).unit());
        assertThat(trial.fly(List.of(line), climbing).end().speedMps()).isCloseTo(50, within(0.1));
        assertThat(trial.climbs(120, 200)).as("faster than it flies level").isNegative();
    }

    @Test
    void aLineTakesItsTimeAndItsRoom() {
        FigureTrial.Outcome outcome = trial.fly(List.of(new Element.Line(Element.Until.SECONDS, 5, 0.5)), from);
        assertThat(outcome.flown()).isTrue();
        assertThat(outcome.isWell()).isTrue();
        assertThat(outcome.lack()).isNull();
        assertThat(outcome.seconds()).isCloseTo(5, within(1e-6));
        assertThat(outcome.end().tS()).isCloseTo(12, within(1e-6));
        FigureTrial.Box box = outcome.box();
        assertThat(box.leftM()).isEqualTo(-300);
        assertThat(box.rightM())
                .isCloseTo(outcome.end().place().x(), within(1e-6))
                .isGreaterThan(-50);
        assertThat(box.nearestM()).isCloseTo(40, within(1e-6));
        assertThat(box.farthestM()).isCloseTo(40, within(1e-6));
        assertThat(box.lowestM()).isCloseTo(200, within(1e-6));
        assertThat(box.highestM()).isCloseTo(200, within(1e-6));
        assertThat(box.slowestMps()).isEqualTo(Math.min(60, outcome.end().speedMps()));
        assertThat(box.fastestMps()).isEqualTo(Math.max(60, outcome.end().speedMps()));
    }

    /** Round and back to where it began: its box is what it saw on the way, and not where it began and ended. */
    @Test
    void aLoopTakesTheRoomItIsSeenIn() {
        FigureTrial.Outcome outcome = trial.fly(
                List.of(Rig.pullRound(360, 110)), new FlightState(7, from.place(), 75, from.direction(), Vec.UP));
        FigureTrial.Box box = outcome.box();
        assertThat(box.highestM()).isCloseTo(420, within(1.0));
        assertThat(box.lowestM()).isCloseTo(200, within(0.5));
        assertThat(box.rightM()).isCloseTo(-190, within(2.0));
        assertThat(box.leftM()).isCloseTo(-410, within(2.0));
        assertThat(box.slowestMps()).isLessThan(55);
    }

    @Test
    void anOpenFigureIsDrawnAndFlown() {
        Element open = new Element.Arc(Element.Way.PULL, 360.0, null, Element.Size.USUAL, 0, 1, 1.0);
        FigureTrial.Outcome outcome =
                trial.fly(List.of(open), new FlightState(7, new Vec(-300, 40, 200), 75, new Vec(1, 0, 0), Vec.UP));
        assertThat(outcome.flown()).isTrue();
        assertThat(outcome.closes()).isTrue();
        assertThat(outcome.elements()).hasSize(1).noneMatch(Element::isOpen);
        assertThat(outcome.seconds())
                .isCloseTo(outcome.end().tS() - 7, within(1e-9))
                .isPositive();
        assertThat(outcome.box().highestM()).isGreaterThan(250);
    }

    @Test
    void whatCannotBeFlownStaysWhereItBeganAndSaysWhatIsMissing() {
        FlightState slow = new FlightState(7, new Vec(-300, 40, 200), 30, new Vec(1, 0, 0), Vec.UP);
        FigureTrial.Outcome outcome = trial.fly(List.of(Rig.pullRound(360, 200)), slow);
        assertThat(outcome.flown()).isFalse();
        assertThat(outcome.isWell()).isFalse();
        assertThat(outcome.lack()).isNotBlank();
        assertThat(outcome.end()).isEqualTo(slow);
        assertThat(outcome.seconds()).isZero();
        assertThat(outcome.box()).isEqualTo(new FigureTrial.Box(-300, -300, 40, 40, 200, 200, 30, 30));
    }
}
